package capture

import (
	"fmt"
	"image/color"
	"io"
	"math"
	"slices"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/paint"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/words"
)

// How many pictures a lesson card has room for beside its words: one for each
// beat, or the fewer of a pattern of which there is more to tell.
const (
	mostBeats   = 24
	mostOthers  = 12
	mostOfHands = 18 // for each beat of two hands, whose pictures need more words
)

// most returns how many beats can have a picture each.
func (l *Lesson) most() frac.Frac {
	if len(l.tracks) > 1 {
		return frac.Int(mostOfHands)
	}
	return frac.Int(mostBeats)
}

// Moments is what a lesson card has a picture of.
type Moments uint8

// A card goes by beats where there is room for them, else by petals, else by
// joins.
const (
	EachBeat Moments = iota
	EachTip
	EachJoin
)

// Lesson holds what the pictures of a lesson card show, drawn for white paper.
type Lesson struct {
	*Take
	Moments  Moments
	OneRound bool      // not all rounds to the closing are shown
	Beats    []float64 // of the pictures, from 0, in order
	All      int       // pictures that there would be; len(Beats) but where there is no room
	artist   *artist
}

// NewLesson makes the pictures of a lesson card ready: for each beat to the
// closing or, where those are too many, of one round, and where these are too
// many, for each petal or join of it. If Per asks for petals, they come first.
func NewLesson(p engine.Pattern, per Per, mirror bool, w *words.Table) (*Lesson, error) {
	o := Defaults()
	o.Mirror, o.Ground, o.Colour = mirror, Coloured, color.NRGBA{255, 255, 255, 255}
	o.Per, o.Show.Trail = per, scene.NoTrail
	t, err := prepare(p, o, w)
	if err != nil {
		return nil, err
	}
	l := &Lesson{Take: t}
	if !t.closes || l.most().Less(t.closing) {
		l.OneRound = t.closes && t.round.Less(t.closing)
		t.beats = t.round
	}
	t.Extent = t.reach()
	l.choose()
	l.artist, err = t.artist()
	return l, err
}

// choose picks the moments that have a picture.
func (l *Lesson) choose() {
	n := l.beats.Neg().Floor().Neg() // ⌈beats⌉
	fits := !l.most().Less(n)
	if fits && l.Per == PerBeat {
		for k := range int(n.Float()) {
			l.Beats = append(l.Beats, float64(k))
		}
		l.All = len(l.Beats)
		return
	}
	tips, joins := []float64{0}, []float64{0}
	for _, t := range l.tracks {
		for round := 0.0; round*t.Beats < l.beats.Float()-sameMoment && len(joins) < mostMomentsRead; round++ {
			for _, x := range t.Tips() {
				tips = append(tips, float64(round*t.Beats)+x)
			}
			for i := range t.Legs {
				joins = append(joins, float64(round*t.Beats)+t.Legs[i].Start)
			}
		}
	}
	tips, joins = inOrder(tips, l.beats.Float()), inOrder(joins, l.beats.Float())
	l.Moments, l.Beats = EachTip, tips
	if len(tips) == 1 || len(tips) > mostOthers {
		l.Moments, l.Beats = EachJoin, joins
	}
	l.All = len(l.Beats)
	l.Beats = l.Beats[:min(l.All, mostOthers)]
}

// mostMomentsRead bounds the joins that are looked through.
const mostMomentsRead = 1 << 14

// inOrder sorts beats below end, those of one moment as one.
func inOrder(beats []float64, end float64) []float64 {
	slices.Sort(beats)
	beats = slices.DeleteFunc(beats, func(b float64) bool { return b > end-sameMoment })
	return slices.CompactFunc(beats, func(a, b float64) bool { return math.Abs(a-b) < sameMoment })
}

// The sizes of a card's pictures, in CSS pixels; they are shown as wide as the
// paper lets them be.
const (
	roundSide = 380
	stepSide  = 170
	// mostApart is up to how many pieces can be told apart where all of a lane
	// is drawn.
	mostApart = 12
)

func (l *Lesson) apart() bool {
	return !slices.ContainsFunc(l.tracks, func(t *engine.Track) bool { return len(t.Legs) > mostApart })
}

// WriteStep writes picture i as SVG.
func (l *Lesson) WriteStep(w io.Writer, i int) error {
	end := l.beats.Float()
	next := end
	if i+1 < len(l.Beats) {
		next = l.Beats[i+1]
	} else if len(l.Beats) < l.All { // whose next picture has no room: a beat on
		next = min(l.Beats[i]+1, end)
	}
	all := end
	if !l.apart() {
		all = 0
	}
	a := l.artist
	return l.write(w, stepSide, margin, l.BeatText(i), func(st *scene.Stage, d *display.List) {
		a.session.GoTo(l.Beats[i])
		st.DrawStep(d, a.session, l.Beats[i], next, all)
	})
}

// WriteRound writes the large picture as SVG: all that is done, and the joins
// marked.
func (l *Lesson) WriteRound(w io.Writer, joins []scene.Joined) error {
	const room = 26 // for letters beyond the heads
	plain := !l.apart()
	return l.write(w, roundSide, room, fmt.Sprintf(l.words.Capture.About, l.pattern.Title), func(st *scene.Stage, d *display.List) {
		l.artist.session.GoTo(0)
		st.PlainInk = plain
		st.DrawRound(d, l.artist.session, l.beats.Float(), joins)
	})
}

// BeatText says of which beat picture i is, counted from 1.
func (l *Lesson) BeatText(i int) string {
	return fmt.Sprintf(l.words.Capture.BeatAt, words.Mixed(frac.Near(l.Beats[i]+1, 0.005, 1000)))
}

func (l *Lesson) write(w io.Writer, side, margin float64, about string, draw func(st *scene.Stage, d *display.List)) error {
	var d display.List
	area := display.Rect{W: side, H: side}
	st := l.artist.stage(area)
	st.View = l.Extent.View(area, margin, l.Mirror)
	draw(st, &d)
	return paint.SVG(w, &d, l.artist.faces, side, side, 1, about)
}
