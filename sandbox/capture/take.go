package capture

import (
	"fmt"
	"math/big"

	"whorlbench/engine"
	"whorlbench/engine/duet"
	"whorlbench/engine/frac"
	"whorlbench/engine/tether"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/paint"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// Take is a pattern with everything decided about its capture.
type Take struct {
	Options
	// Workers is how many frames are painted at a time, 1 if not set.
	Workers int

	pattern engine.Pattern
	words   *words.Table
	theme   theme.Theme
	tracks  []*engine.Track
	round   frac.Frac // of the longest lane, beats
	beats   frac.Frac // that are captured
	seconds frac.Frac
	closing frac.Frac
	closes  bool
	tethers []tether.Result // where they are shown
	props   []duet.Span     // likewise, of two hands
}

// New makes a pattern ready to be captured. Its errors say, line by line, what
// was found in the options and what is allowed.
func New(p engine.Pattern, o Options, w *words.Table) (*Take, error) {
	t, err := prepare(p, o, w)
	if err != nil {
		return nil, err
	}
	if !t.Show.HideSlack || t.Show.Taken {
		for _, track := range t.tracks {
			t.tethers = append(t.tethers, tether.Of(track, p.Tempo, p.Performer.Rigid))
		}
	}
	if left, right := t.hand(engine.Left), t.hand(engine.Right); t.Show.Timing && left != nil && right != nil {
		r := duet.Read(left, right)
		t.props = r.Props
	}
	if n := frames(t.seconds, o.FPS); n.Cmp(big.NewInt(mostFrames)) > 0 {
		if o.Rounds == 0 && t.closes {
			return nil, fmt.Errorf(w.Capture.TooManyWays, w.CountRounds(t.closing.Div(t.round).Round(frac.Int(1)).Num()), mostFrames)
		}
		return nil, fmt.Errorf(w.Capture.TooMany, n, mostFrames)
	}
	if o.Extent == (scene.Extent{}) {
		t.Extent = t.reach()
	}
	return t, nil
}

// hand returns a hand's lane, nil if there is none.
func (t *Take) hand(side engine.Side) *engine.Track {
	for _, track := range t.tracks {
		if track.Lane.Side == side {
			return track
		}
	}
	return nil
}

// prepare is New but for what takes longer the more beats there are.
func prepare(p engine.Pattern, o Options, w *words.Table) (*Take, error) {
	if err := o.Check(w); err != nil {
		return nil, err
	}
	t := &Take{Options: o, Workers: 1, pattern: p, words: w, theme: *o.theme()}
	if o.Ground == Coloured {
		t.theme.Stage = o.ground()
		t.theme.Hair = display.Mix(t.theme.Stage, t.theme.Ink, hairShare)
	}
	t.Show.HideWhole = true // nothing is in hand
	for _, l := range p.Lanes {
		t.tracks = append(t.tracks, engine.NewTrack(l))
		if b := l.Beats(); t.round.Less(b) {
			t.round = b
		}
	}
	t.closing, t.closes = engine.ClosingTime(t.tracks...)
	switch {
	case o.Rounds > 0:
		t.beats = t.round.Mul(frac.Int(int64(o.Rounds)))
	case t.closes:
		t.beats = t.closing
	default:
		t.beats = t.round
	}
	t.seconds = t.beats.Mul(frac.Int(60)).Div(frac.FromFloat(p.Tempo)).Mul(o.Slow)
	return t, nil
}

// hairShare is how much of the ink is in the decoration on a ground of its own
// colour: about as much as the themes have.
const hairShare = 0.17

// reach returns what of the plane the captured beats reach, and the trail
// before them.
func (t *Take) reach() scene.Extent {
	back, s := 0.0, session.New(t.pattern)
	for lane := range t.tracks {
		back = max(back, t.Show.Trail.Beats(s, lane))
	}
	if t.closes && !t.beats.Less(t.closing) {
		back = 0 // what was before is what will be
	}
	return scene.ExtentOf(t.pattern, t.tracks, -back, t.beats.Float(), t.Show.Options)
}

// Timeline returns the frames of a loop at the rate that was asked for.
func (t *Take) Timeline() Timeline {
	return Timeline{int(frames(t.seconds, t.FPS).Int64()), t.beats, t.seconds}
}

// Title returns the pattern's.
func (t *Take) Title() string { return t.pattern.Title }

// Pattern returns what is captured.
func (t *Take) Pattern() engine.Pattern { return t.pattern }

// Note says, if it is so, that a loop does not join.
func (t *Take) Note() string {
	w := &t.words.Capture
	switch {
	case !t.closes:
		return fmt.Sprintf(w.NeverJoins, t.pattern.Title)
	case !t.beats.Div(t.closing).IsInt():
		return fmt.Sprintf(w.NotYet, t.pattern.Title, t.words.CountRounds(t.closing.Div(t.round).Num()))
	}
	return ""
}

// artist draws a take's pictures. It is not safe for use from several
// goroutines; each has its own.
type artist struct {
	*Take
	session *session.Session
	faces   *face.Set
	pixels  *paint.Pixels
	parts   *rows   // of a whole picture, once they are shared out
	width   float64 // for which named says how names are written
	named   naming
}

func (t *Take) artist() (*artist, error) {
	faces, err := face.New()
	if err != nil {
		return nil, err
	}
	s := session.New(t.pattern)
	s.Playing = true // the trail is what counts, no piece is in hand
	return &artist{Take: t, session: s, faces: faces, pixels: paint.NewPixels(faces)}, nil
}
