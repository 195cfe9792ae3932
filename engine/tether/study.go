package tether

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/seam"
)

// Margin (m) is added to the clear radius for the others: common practice.
const Margin = 1.0

// Extreme is a least or greatest figure, with the beat, from the beginning of
// round 0, at which it is first reached, and the prop's angle there.
type Extreme struct {
	Value, Beat float64
	Prop        engine.Degrees // −180 to 180
}

// Piece is what there is to say of one piece: its least pull, and whether the
// tether would go slack in it.
type Piece struct {
	Least Extreme
	Slack bool
}

// Result is what there is to say of a lane's tether, over the closing rounds,
// seam.MostRounds at most, or over one round if the lane never closes. Impulses at joins
// are left out.
type Result struct {
	Rounds int // that were looked at

	// Least and Greatest are of the pull, in multiples of the head's weight;
	// Pieces has each piece's own. A negative one is a push.
	Least, Greatest Extreme
	Pieces          []Piece

	// Slack says whether the tether would have to push anywhere, and
	// Spans when. A rigid prop can push: it is never slack and has no window.
	Rigid  bool
	Slack  bool
	Spans  []Span
	Window Window

	TopSpeed Extreme // of the head, m/s
	Clear    float64 // m, the margin included: see Margin

	// Astray is the greatest distance (m) of the hand that is really taken from
	// the ideal one, Growth how many times greater a small wobble is a round
	// later. There is none of either where the tether is slack or the prop rigid,
	// and no growth of rounds of thousands of turns, which are not followed.
	HasAstray, HasGrowth bool
	Astray               Extreme
	Growth               float64
}

// Of studies a lane at a tempo in beats a minute, above 0. A rigid prop may
// be pushed.
func Of(t *engine.Track, tempo float64, rigid bool) Result {
	s := New(t, tempo, rigid)
	for !s.Step(math.MaxInt) {
	}
	return s.Result()
}

// Study is a lane being studied, a little at a time. The result does not
// depend on how much is done at a time.
type Study struct {
	track  *engine.Track
	gauge  gauge
	tempo  float64      // beats a second
	square float64      // of the tempo
	turned []complex128 // by how much the prop has, at the beginning of each round
	all    bool         // the movement comes back after these rounds

	phase       phase
	piece       int // that is looked at
	part, parts int // of it
	round       int // in which it is to be looked at next
	stretch     stretch
	beats       float64 // how long the stretch is

	window window
	astray Extreme
	rate   float64 // of ρ/L over the beats looked at, their sum (1/s² · beats)
	looked float64 // those beats
	hold   *hold
	result Result
}

type phase uint8

const (
	looking phase = iota // at pull, speed and reach
	taking               // the hand that is really taken
	holding              // what becomes of a wobble
	finished
)

// New begins a study; see Of.
func New(t *engine.Track, tempo float64, rigid bool) *Study {
	s := &Study{
		track: t, gauge: newGauge(t.Lane), tempo: tempo / 60, square: tempo / 60 * tempo / 60,
		window: newWindow(),
	}
	rounds, all := roundsOf(t)
	s.all = all
	for r := range rounds {
		by := t.AtPiece(r, 0, 0).Prop - t.AtPiece(0, 0, 0).Prop
		sin, cos := math.Sincos(by)
		s.turned = append(s.turned, complex(cos, sin))
	}
	s.result = Result{Rounds: rounds, Rigid: rigid, Pieces: make([]Piece, len(t.Legs))}
	for i := range t.Legs {
		m := momentOf(t.Legs[i].State(0))
		s.result.Pieces[i].Least = Extreme{s.gauge.pull(&m, s.square), t.Legs[i].Start, m.prop()}
	}
	m := momentOf(t.Legs[0].State(0))
	s.result.Greatest = s.result.Pieces[0].Least
	s.result.TopSpeed = Extreme{s.gauge.speed(&m) * s.tempo, 0, m.prop()}
	s.astray = Extreme{s.gauge.astray(&m, s.square), 0, m.prop()}
	s.result.Clear = s.gauge.reach(&m)
	return s
}

// roundsOf returns how many rounds are to be looked at, as many as of seams but
// only one where the lane never closes, and whether the movement comes back
// after them.
func roundsOf(t *engine.Track) (rounds int, all bool) {
	c := t.Closing()
	if !c.Closes() {
		return 1, false
	}
	rounds = seam.Rounds(t)
	return rounds, c.Rounds.IsInt64() && c.Rounds.Int64() == int64(rounds)
}

// Step does at least as much work as looking at so many moments takes, and no
// more than looking at a thousand beyond that; it reports whether all is done.
func (s *Study) Step(moments int) bool {
	const atOnce = 64 // steps of the pendulum, each of two moments
	for moments > 0 && s.phase != finished {
		switch s.phase {
		case looking:
			moments -= s.each((*Study).look)
		case taking:
			moments -= s.each((*Study).take)
		case holding:
			moments -= 2 * atOnce
			if s.hold.advance(atOnce) {
				s.result.Growth, s.result.HasGrowth = s.hold.growth()
				s.phase = finished
			}
		}
	}
	return s.phase == finished
}

// Result returns what has been found, all of it once Step has said so.
func (s *Study) Result() Result { return s.result }

// each does something with the stretch in the next round, made ready before the
// first, and ends the phase after the last round of the last. It returns how
// many moments there were.
func (s *Study) each(do func(s *Study, round int, by complex128)) int {
	moments := 0
	if s.round == 0 {
		s.prepare()
		moments = len(s.stretch.base)
	}
	do(s, s.round, s.turned[s.round])
	moments += len(s.stretch.base)
	if s.round++; s.round < len(s.turned) {
		return moments
	}
	s.round = 0
	if s.part++; s.part < s.parts {
		return moments
	}
	s.part = 0
	if s.piece++; s.piece == len(s.track.Legs) {
		s.piece = 0
		s.next()
	}
	return moments
}

// prepare makes the stretch ready.
func (s *Study) prepare() {
	leg := &s.track.Legs[s.piece]
	all := turns(leg)
	kept := min(all, mostTurns)
	s.parts = max(int(math.Ceil(kept/stretchTurns)), 1)
	share := 1.0
	if all > mostTurns {
		share = kept / all
	}
	n := float64(s.parts)
	from, to := float64(share*float64(s.part))/n, float64(share*float64(s.part+1))/n
	s.stretch.set(leg, from, to, kept/n)
	s.beats = float64((to - from) * leg.Span)
}

// next ends a phase.
func (s *Study) next() {
	r := &s.result
	switch s.phase {
	case looking:
		s.gather()
		if r.Slack || r.Rigid {
			s.phase = finished
			return
		}
		s.phase = taking
	case taking:
		r.Astray, r.HasAstray = s.astray, true
		s.hold = newHold(s.track, &s.gauge, s.tempo, r.Rounds, math.Sqrt(s.rate/s.looked))
		s.phase = holding
	}
}

// gather puts together what the first phase has found.
func (s *Study) gather() {
	r := &s.result
	r.Least = r.Pieces[0].Least
	for _, p := range r.Pieces {
		r.Least.less(p.Least.Value, p.Least.Beat, p.Least.Prop)
		r.Slack = r.Slack || p.Slack
	}
	r.Clear += Margin
	if r.Rigid {
		return
	}
	r.Window = s.window.perMinute()
	r.Spans = merge(r.Spans, float64(r.Rounds)*s.track.Beats, s.all)
}

// look is the first phase.
func (s *Study) look(round int, by complex128) {
	r, g, piece := &s.result, &s.gauge, &s.result.Pieces[s.piece]
	pull := func(m *moment) float64 { return g.pull(m, s.square) }
	s.greatest(&r.Greatest, pull, round, by)
	s.least(&piece.Least, pull, round, by)
	s.greatest(&r.TopSpeed, func(m *moment) float64 { return g.speed(m) * s.tempo }, round, by)
	if _, far, ok := s.stretch.top(g.reach, by, r.Clear); ok {
		r.Clear = far
	}
	if r.Rigid {
		return
	}
	size := 0.0
	for k := range s.stretch.base {
		size = max(size, g.size(&s.stretch.base[k]))
	}
	s.window.narrow(&s.stretch, g, by, size)
	level := -engine.TolSlack * max(1, s.square*size)
	piece.Slack = piece.Slack || piece.Least.Value < level
	if len(r.Spans) < mostSpans {
		was := len(r.Spans)
		r.Spans = s.stretch.slack(r.Spans, pull, by, level)
		for i := was; i < len(r.Spans); i++ {
			piece.Slack = true
			r.Spans[i] = Span{s.beat(round, r.Spans[i].From), s.beat(round, r.Spans[i].To)}
		}
	}
}

// take is the second phase.
func (s *Study) take(round int, by complex128) {
	g, a := &s.gauge, &s.astray
	if u, far, ok := s.stretch.farthest(g, by, s.square, a.Value-float64(2*tie(a.Value))); ok {
		a.more(far, s.beat(round, u), s.propAt(u, by))
	}
	sum := 0.0
	for k := range s.stretch.base {
		m := s.stretch.base[k].turned(by)
		sum += g.carried(&m, s.square).norm()
	}
	s.rate += float64(sum / float64(len(s.stretch.base)) / g.length * s.beats)
	s.looked += s.beats
}

// beat returns the beat of a share of the piece in a round.
func (s *Study) beat(round int, u float64) float64 {
	g := &s.track.Legs[s.piece]
	return float64(float64(round)*s.track.Beats) + g.Start + float64(u*g.Span)
}

func (s *Study) propAt(u float64, by complex128) engine.Degrees {
	m := s.stretch.at(u, by)
	return m.prop()
}

// greatest takes the stretch's greatest value of a measure in.
func (s *Study) greatest(e *Extreme, f measure, round int, by complex128) {
	if u, v, ok := s.stretch.top(f, by, e.Value-float64(2*tie(e.Value))); ok {
		e.more(v, s.beat(round, u), s.propAt(u, by))
	}
}

// least takes the stretch's least value of a measure in.
func (s *Study) least(e *Extreme, f measure, round int, by complex128) {
	u, v, ok := s.stretch.top(func(m *moment) float64 { return -f(m) }, by, -e.Value-float64(2*tie(e.Value)))
	if ok {
		e.less(-v, s.beat(round, u), s.propAt(u, by))
	}
}

// more puts a value in e's place that is greater, or equal and earlier.
func (e *Extreme) more(v, beat float64, prop engine.Degrees) {
	same := tie(e.Value)
	if v > e.Value+same || v >= e.Value-same && beat < e.Beat {
		*e = Extreme{v, beat, prop}
	}
}

// less does the same for one that is less.
func (e *Extreme) less(v, beat float64, prop engine.Degrees) {
	same := tie(e.Value)
	if v < e.Value-same || v <= e.Value+same && beat < e.Beat {
		*e = Extreme{v, beat, prop}
	}
}
