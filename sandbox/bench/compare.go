package bench

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/widget"
	"whorlbench/sandbox/words"
)

// Names of a comparison's controls; those that play have the bench's own.
const (
	idOver    = "compare-over"
	idSwap    = "compare-swap"
	idDiffers = "compare-differs" // and the sheet
	idTakeIn  = "compare-take"
	idUnpair  = "compare-leave"
)

// comparing is two patterns side by side on one playhead. The open pattern, its
// playhead and its trail of edits wait meanwhile as they are.
type comparing struct {
	sides   [2]*session.Session // A and B; what they show is never edited
	other   int                 // which of them is not the open pattern
	study   *study.Comparison
	over    bool // laid over each other
	beat    float64
	whole   float64 // beats after which both begin again together
	shown   float64 // beats along the playhead's ruler
	playing bool
	speed   float64
}

// longestShown is how many beats the ruler of a comparison shows at most, where
// both patterns begin again together only later than that.
const longestShown = 32

// Compare shows another pattern beside the open one; the bench comes back as it
// was when that is left.
func (b *Bench) Compare(other engine.Pattern) {
	c := &comparing{other: 1, playing: b.Session.Playing, speed: 1}
	c.pair(b.Session.Pattern(), other)
	b.compare = c
	b.hintUntil, b.toast, b.wait = 0, toast{}, waiting{}
	b.host.Comparing(true)
	b.host.Announce(b.sidesSaid(b.Words.Compare.Begun))
}

// pair takes a pattern for each side and looks at them anew.
func (c *comparing) pair(left, right engine.Pattern) {
	c.sides = [2]*session.Session{session.New(left), session.New(right)}
	c.study = study.Compare(left, right)
	var all []*engine.Track
	c.shown = 0
	for _, s := range c.sides {
		s.Playing = true // trails in full ink, as no piece is in hand
		all = append(all, s.Tracks()...)
		c.shown = math.Max(c.shown, s.Round())
	}
	c.whole = longestWhole * c.shown
	if x, ok := engine.ClosingTime(all...); ok && x.Float() < c.whole {
		c.whole = x.Float()
		if c.whole <= longestShown {
			c.shown = c.whole
		}
	}
	c.goTo(c.beat)
}

// longestWhole bounds, in rounds, how far the playhead of two patterns goes that
// never begin again together.
const longestWhole = 1 << 20

// goTo puts the playhead of both at a beat.
func (c *comparing) goTo(beat float64) {
	c.beat = math.Mod(math.Max(beat, 0), c.whole)
	for _, s := range c.sides {
		s.GoTo(c.beat)
	}
}

// along returns where the playhead stands on the ruler.
func (c *comparing) along() float64 { return math.Mod(c.beat, c.shown) }

// seek puts the playhead at a beat of the ruler, whose very end is shown as the
// end, not as the next start.
func (c *comparing) seek(beat float64) {
	base := math.Floor(c.beat/c.shown) * c.shown
	c.goTo(base + min(max(beat, 0), math.Nextafter(c.shown, 0)))
}

// step goes to the next whole beat, on (1) or back (−1).
func (c *comparing) step(by int) {
	const hair = 1e-6 // beats
	if c.playing = false; by > 0 {
		c.goTo(math.Floor(c.beat+hair) + 1)
	} else {
		c.goTo(math.Ceil(c.beat-hair) - 1)
	}
}

// advance moves the playhead on by seconds of real time, at the tempo of A.
func (c *comparing) advance(seconds float64) {
	if c.playing {
		c.goTo(c.beat + seconds*c.speed*c.sides[0].Pattern().Tempo/60)
	}
}

// Compared is what the page is told of a comparison.
type Compared struct {
	Titles  [2]string  `json:"titles"`
	Beats   [2]float64 `json:"beats"`
	Over    bool       `json:"over"`
	Playing bool       `json:"playing"`
	Known   bool       `json:"known"` // what differs has been worked out
}

// Compared returns what is compared now; ok is false if nothing is.
func (b *Bench) Compared() (out Compared, ok bool) {
	c := b.compare
	if c == nil {
		return out, false
	}
	out = Compared{Over: c.over, Playing: c.playing, Known: c.study.Done()}
	for i, s := range c.sides {
		out.Titles[i], out.Beats[i] = s.Pattern().Title, s.Beat()
	}
	return out, true
}

// doCompare carries an intent out while two patterns are compared: nothing of the
// bench behind can be meant.
func (b *Bench) doCompare(in widget.Intent) {
	c := b.compare
	if in.ID == idPlayhead && in.Act == widget.Set {
		c.seek(in.Value)
	}
	if in.Act != widget.Press {
		return
	}
	switch in.ID {
	case idPlay:
		c.playing = !c.playing
	case idStepBack:
		c.step(-1)
	case idStepOn:
		c.step(1)
	case idSpeed:
		c.speed = speeds[(slices.Index(speeds, c.speed)+1)%len(speeds)]
	case idOver:
		c.over = !c.over
	case idSwap:
		c.other = 1 - c.other
		c.pair(c.sides[1].Pattern(), c.sides[0].Pattern())
		b.host.Announce(b.sidesSaid(b.Words.Compare.Lead))
		b.fillDiffers()
	case idDiffers:
		b.host.ShowSheet(b.differsSheet())
	case idTakeIn:
		b.host.TakeCompared()
	case idUnpair:
		b.endCompare()
	}
}

// endCompare shows the bench again.
func (b *Bench) endCompare() {
	if b.compare != nil {
		b.compare = nil
		b.host.Comparing(false)
	}
}

// learnCompare goes on a little with what differs; when that is known it is
// spoken, and filled in where it can be seen.
func (b *Bench) learnCompare() (more bool) {
	c := b.compare
	if c.study.Done() {
		return false
	}
	if c.study.Step(tetherMoments) {
		b.host.Announce(strings.Join(c.study.Lines(b.Words), " "))
		b.fillDiffers()
	}
	return true
}

// tetherMoments is how much of a comparison is worked out in one step.
const tetherMoments = 96

// fillDiffers fills in anew what differs, if it can be seen.
func (b *Bench) fillDiffers() {
	if b.host.SheetOpen(idDiffers) {
		b.host.ShowSheet(b.differsSheet())
	}
}

// sidesSaid puts both titles into a text.
func (b *Bench) sidesSaid(format string) string {
	c := b.compare
	return fmt.Sprintf(format, c.sides[0].Pattern().Title, c.sides[1].Pattern().Title)
}

// differsSheet is what the two patterns differ in, as far as it is known.
func (b *Bench) differsSheet() Sheet {
	c, w := b.compare, &b.Words.Compare
	out := Sheet{ID: idDiffers, Title: w.Title, Lead: b.sidesSaid(w.Lead)}
	if !c.study.Done() {
		out.Text = b.Words.Told.Working
		return out
	}
	left, right := c.study.Facts()
	both := func(x words.Contrast) []words.Line {
		return []words.Line{{Name: w.Sides[0], Text: x.Left}, {Name: w.Sides[1], Text: x.Right}}
	}
	out.Text = b.Words.OnePlayhead(left, right)
	if left.Tempo != right.Tempo {
		out.Text += " " + fmt.Sprintf(w.Pace, words.Number(left.Tempo, 1))
	}
	differences := b.Words.Differences(left, right)
	if len(differences) == 0 {
		out.Sections = append(out.Sections, Section{Text: w.Alike})
	}
	for _, x := range differences {
		out.Sections = append(out.Sections, Section{Head: x.What, Lines: both(x)})
	}
	for i, x := range b.Words.Senses(left, right) {
		part := Section{Head: x.What, Lines: both(x)}
		if i == 0 {
			part.Text = w.SensesText
		}
		out.Sections = append(out.Sections, part)
	}
	out.Sections = append(out.Sections, Section{Text: b.Words.Bench.TempoCaution})
	return out
}
