package bench

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/practice"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// PractiseWish is what is asked for before practising, numbers as they were
// typed.
type PractiseWish struct {
	Tempo   string `json:"tempo"`
	CountIn string `json:"countIn"`
	Ladder  bool   `json:"ladder"`
	Up      string `json:"up"`
	Rounds  string `json:"rounds"`
	Ceiling string `json:"ceiling"`
	Mirror  bool   `json:"mirror"`
}

// Count is what is read from afar while practising.
type Count struct {
	Beat    int  // counted from the start; below 0 in the count-in
	First   bool // of a round
	CountIn bool
	Number  string // of the beat in its round; of the count-in, how many are left
	Round   string
	Tempo   string
	Next    string // what becomes of the tempo; empty if it stays
	Slack   string // a caution for this tempo, or empty
}

// practising is what goes on while the pattern is practised.
type practising struct {
	schedule *practice.Schedule
	plan     practice.Plan
	hands    []words.TautHand
	given    float64 // seconds, up to which the events have been given out
	asked    float64 // beats a minute, by hand, from the second below on; 0: none
	askedAt  float64
	rounds   int // done before the last pause
	now      countedAt
	shown    Count

	// What is put back in the end.
	beat            float64
	playing, mirror bool
	zoom            scene.Zoom
}

// countedAt is all that a Count depends on.
type countedAt struct {
	beat, number, round int
	tempo, next         float64
	left                int // rounds until the next tempo
}

// hair (beats) is what rounding may take from a beat.
const hair = 1e-9

// PractiseTempo returns the open pattern's tempo as it is typed.
func (b *Bench) PractiseTempo() string { return plain(frac.FromFloat(b.Session.Pattern().Tempo)) }

// BeforePractice says how the tempo would go, which cautions a wish calls for
// besides the usual ones, and why it is refused; if it is, nothing else.
func (b *Bench) BeforePractice(w PractiseWish) (tempo string, cautions []string, refused string) {
	p, refused := b.practicePlan(w)
	if refused != "" {
		return "", nil, refused
	}
	l, to := p.Ladder, math.Max(p.Tempo, p.Ladder.Ceiling)
	lines := b.Words.BeforePractice(b.tautHands(), p.Tempo, to)
	return b.Words.TempoPlan(p.Tempo, l.Up, l.Rounds, to), lines[:len(lines)-len(b.Words.Practice.Cautions)], ""
}

// tautHands returns when the hands' tethers are taut, which the study has found
// out in most cases by the time that someone asks.
func (b *Bench) tautHands() []words.TautHand {
	for b.study.Of(b.Session); !b.study.Done(); {
		b.study.Step(b.Session)
	}
	var hands []words.TautHand
	for i, t := range b.Session.Tracks() {
		r := b.study.Tethers[i]
		hands = append(hands, words.TautHand{Side: t.Lane.Side, Rigid: r.Rigid, Window: r.Window})
	}
	return hands
}

// practicePlan reads a wish for the open pattern.
func (b *Bench) practicePlan(w PractiseWish) (p practice.Plan, refused string) {
	// What cannot be read is out of every range.
	number := func(text string) float64 {
		if v, err := typed(text); err == nil {
			return v.Float()
		}
		return math.NaN()
	}
	whole := func(text string) int {
		v, err := typed(text)
		if x := v.Float(); err == nil && v.IsInt() && math.Abs(x) <= math.MaxInt32 {
			return int(x)
		}
		return -1
	}
	p = practice.Plan{Pattern: b.Session.Pattern(), Tempo: number(w.Tempo), CountIn: whole(w.CountIn)}
	if w.Ladder {
		p.Ladder = practice.Ladder{Up: number(w.Up), Rounds: whole(w.Rounds), Ceiling: number(w.Ceiling)}
	}
	err := p.Check()
	var f *practice.Fault
	if !errors.As(err, &f) {
		return p, "" // a pattern has a hand
	}
	t := &b.Words.Practice.Screen
	labels := [...]string{t.Tempo, t.CountIn, t.Up, t.Rounds, t.Ceiling}
	texts := [...]string{w.Tempo, w.CountIn, w.Up, w.Rounds, w.Ceiling}
	isWhole := f.Part == practice.OfCountIn || f.Part == practice.OfRounds
	return p, b.Words.PracticeRefused(labels[f.Part], shorten(texts[f.Part], 40), f.Least, f.Most, isWhole)
}

// Practise begins to practise: from now on the playhead is where Host.Heard says
// it is. It returns why a wish is refused.
func (b *Bench) Practise(w PractiseWish) (refused string) {
	p, refused := b.practicePlan(w)
	if refused != "" {
		return refused
	}
	b.StopPractice()
	b.endCompare()
	s := b.Session
	b.practising = &practising{
		plan: p, hands: b.tautHands(),
		beat: s.Beat(), playing: s.Playing, mirror: s.Mirror, zoom: b.stage.zoom,
	}
	b.stage.zoom = scene.Zoom{}
	s.Mirror = w.Mirror
	b.begin()
	return ""
}

// begin counts in, and in the round at which the practice has arrived.
func (b *Bench) begin() {
	p := b.practising
	schedule, err := practice.New(p.plan)
	if err != nil { // each change of the plan has been checked
		panic(fmt.Sprintf("bench: %v", err))
	}
	p.schedule, p.given, p.asked = schedule, 0, 0
	b.Session.Playing = true
	b.followSound()
}

// Clicks returns the events of the practice up to a second, from where the last
// ones ended: none is given twice, and none left out.
func (b *Bench) Clicks(to float64) []practice.Event {
	p := b.practising
	if p == nil || !b.Session.Playing || to <= p.given {
		return nil
	}
	from := p.given
	p.given = to
	return p.schedule.Between(from, to)
}

// followSound puts the playhead to what is heard.
func (b *Bench) followSound() {
	p := b.practising
	if !b.Session.Playing {
		return
	}
	seconds := math.Max(b.host.Heard(), 0)
	beat := p.schedule.BeatAt(seconds)
	if seconds >= p.askedAt {
		p.asked = 0
	}
	b.Session.PlayTo(float64(float64(p.rounds)*p.schedule.Round().Float()) + math.Max(beat, 0))
	b.showCount(beat)
}

// showCount shows where practice is at a beat. What has been given out beyond
// it is nobody's business yet, but for a tempo that was asked for by hand: that
// is shown at once, so that the key that was pressed is answered.
func (b *Bench) showCount(beat float64) {
	p, w := b.practising, &b.Words.Practice.Screen
	round := p.schedule.Round().Float()
	now := countedAt{beat: int(math.Floor(beat + hair)), tempo: p.schedule.TempoOn(beat + hair), round: p.rounds + 1}
	from := beat
	if p.asked > 0 {
		now.tempo, from = p.asked, p.schedule.BeatAt(p.askedAt)
	}
	if beat < -hair {
		now.number = int(math.Ceil(-beat - hair))
	} else {
		done := math.Floor(beat/round + hair)
		now.number = int(math.Max(math.Floor(beat-float64(done*round)+hair), 0)) + 1
		now.round += int(done)
	}
	if step, ok := p.schedule.NextStep(from + hair); ok {
		now.next = step.Tempo
		now.left = max(int(math.Ceil((step.Beat-math.Max(beat, 0))/round-hair)), 1)
	}
	if now == p.now {
		return
	}
	p.now = now
	c := Count{Beat: now.beat, CountIn: beat < -hair, First: beat >= -hair && now.number == 1, Number: fmt.Sprint(now.number), Tempo: words.Number(now.tempo, 1)}
	c.Round = fmt.Sprintf(w.Round, fmt.Sprint(now.round))
	switch {
	case now.left > 0:
		c.Next = b.Words.NextTempo(now.next, now.left)
	case p.plan.Ladder != practice.Ladder{}:
		c.Next = w.TopTempo
	}
	for _, h := range p.hands {
		if !h.Taut(now.tempo) {
			c.Slack = w.SlackNow
		}
	}
	p.shown = c
	b.host.Count(c)
}

// PausePractice holds the practice where it is.
func (b *Bench) PausePractice() {
	if p := b.practising; p != nil && b.Session.Playing {
		b.followSound()
		beat := p.schedule.BeatAt(math.Max(b.host.Heard(), 0))
		p.rounds += int(math.Max(math.Floor(beat/p.schedule.Round().Float()+hair), 0))
		p.setTempo(p.now.tempo)
		b.Session.Playing = false
	}
}

// ResumePractice counts in again and begins the round anew that was broken off.
func (b *Bench) ResumePractice() {
	if b.practising != nil && !b.Session.Playing {
		b.begin()
	}
}

// setTempo makes a tempo the one that the plan begins with.
func (p *practising) setTempo(tempo float64) {
	p.plan.Tempo = tempo
	if (p.plan.Ladder != practice.Ladder{}) {
		p.plan.Ladder.Ceiling = math.Max(p.plan.Ladder.Ceiling, tempo)
	}
}

// PracticeTempo makes practice faster or slower by some beats a minute, as soon
// as what has been given out is over.
func (b *Bench) PracticeTempo(by float64) {
	p := b.practising
	if p == nil {
		return
	}
	tempo := min(max(p.now.tempo+by, practice.LeastTempo), practice.MostTempo)
	p.setTempo(tempo)
	if !b.Session.Playing {
		p.now.tempo = tempo
		p.shown.Tempo = words.Number(tempo, 1)
		p.shown.Next, p.shown.Slack = "", ""
		b.host.Count(p.shown)
		return
	}
	schedule, err := p.schedule.Retempo(p.given, tempo)
	if err != nil { // the tempo is within the range
		panic(fmt.Sprintf("bench: %v", err))
	}
	p.schedule, p.asked, p.askedAt = schedule, tempo, p.given
	b.followSound()
}

// MirrorPractice says whether the pattern is seen as in a mirror.
func (b *Bench) MirrorPractice(on bool) {
	if b.practising != nil {
		b.Session.Mirror = on
	}
}

// KeepPracticeTempo makes the tempo that has been reached the pattern's, and
// says so, or why it cannot be.
func (b *Bench) KeepPracticeTempo() string {
	p := b.practising
	if p == nil {
		return ""
	}
	tempo := words.Number(p.now.tempo, 3)
	if refused := b.Answer(idTempo, tempo, 0); refused != "" {
		return refused
	}
	return fmt.Sprintf(b.Words.Practice.Screen.Kept, tempo)
}

// StopPractice ends practising and puts the bench back as it was.
func (b *Bench) StopPractice() {
	p, s := b.practising, b.Session
	if p == nil {
		return
	}
	b.practising = nil
	s.Playing, s.Mirror, b.stage.zoom = p.playing, p.mirror, p.zoom
	s.GoTo(p.beat)
}

// drawDoings writes under the stage what each hand does, as large as the line
// holds.
func (b *Bench) drawDoings(l *display.List) {
	r := b.plan.line
	if r.H == 0 {
		return
	}
	l.FillRect(r, 0, b.theme.Ground)
	text := strings.Join(b.doings(b.Session), " · ")
	size := b.shrink(text, r.H*0.62, theme.TextBody, r.W-24)
	text = b.faces.Fit(text, size, true, r.W-24)
	l.Text(display.Pt{X: r.X + (r.W-b.faces.Width(text, size, true))/2, Y: r.Y + r.H/2 + size*0.36}, size, true, b.theme.Ink, text)
}

// Openings returns how often a pattern was opened: while it stays the same, the
// one on the bench is the same work, whatever was edited.
func (b *Bench) Openings() int { return b.openings }
