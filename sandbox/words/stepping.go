package words

import (
	"fmt"
	"math"
	"math/big"
	"math/cmplx"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/engine/step"
)

// Instructions are a pattern told as plain steps.
type Instructions struct {
	View     string      // whose left and right it is
	Hands    []HandSteps // the pattern's hands, the right one first
	Together []string    // about both hands, none for one
	Tempo    string
	Care     string
}

// HandSteps are one hand's.
type HandSteps struct {
	Side  engine.Side
	Head  string   // which hand, in which plane
	Start string   // where hand and prop begin
	Steps []string // numbered
	// Beats say of each step how hand and prop stand on each of its beats; none
	// where it is no longer than one.
	Beats [][]string
	Close string // what closes it
}

// Lines returns all lines in the order in which they are read.
func (s *Instructions) Lines() []string {
	lines := []string{s.View}
	for _, h := range s.Hands {
		lines = append(lines, h.Head, h.Start)
		for i, step := range h.Steps {
			lines = append(lines, step)
			if i < len(h.Beats) {
				lines = append(lines, h.Beats[i]...)
			}
		}
		lines = append(lines, h.Close)
	}
	lines = append(lines, s.Together...)
	return append(lines, s.Tempo, s.Care)
}

// Text returns the lines as one text.
func (s *Instructions) Text() string { return strings.Join(s.Lines(), "\n") + "\n" }

// StepByStep tells a pattern as plain steps, as an audience sees it or as a learner
// does in a mirror. At most MostSteps steps of a hand are told.
func (t *Table) StepByStep(p engine.Pattern, mirror bool) Instructions {
	w := &t.Steps
	out := Instructions{View: w.Facing, Tempo: fmt.Sprintf(w.Tempo, number(p.Tempo, 0)), Care: w.Care}
	if mirror {
		out.View = w.Mirror
	}
	var tracks []*engine.Track
	for _, side := range []engine.Side{engine.Right, engine.Left} {
		for _, l := range p.Lanes {
			if l.Side != side {
				continue
			}
			k := stepper{Table: t, track: engine.NewTrack(l), who: p.Performer, mirror: mirror}
			k.seams = seam.Of(k.track, p.Tempo, p.Performer.Rigid)
			tracks = append(tracks, k.track)
			out.Hands = append(out.Hands, k.hand())
		}
	}
	if len(tracks) == 2 {
		both := w.NeverBoth
		if beats, ok := engine.ClosingTime(tracks...); ok {
			both = fmt.Sprintf(w.Together, t.beatCount(beats))
		}
		out.Together = []string{w.TogetherBegin, both}
	}
	return out
}

// stepper tells one hand's steps.
type stepper struct {
	*Table
	track  *engine.Track
	seams  []seam.Seam
	who    engine.Performer
	mirror bool
}

func (k *stepper) place(d step.Toward) string { return k.Table.Steps.Places[k.plane()][k.seen(d)] }

func (k *stepper) pointing(d step.Toward) string { return k.Table.Steps.Pointing[k.plane()][k.seen(d)] }

func (k *stepper) plane() engine.Plane { return k.track.Lane.Plane }

// swaps reports whether left and right of the plane are seen reversed. Fore
// and aft are the same in a mirror.
func (k *stepper) swaps() bool { return k.mirror && k.plane() != engine.Wheel }

func (k *stepper) seen(d step.Toward) step.Toward {
	if k.swaps() {
		return d.Mirrored()
	}
	return d
}

func (k *stepper) way(w step.Way) string {
	if k.mirror && k.plane() == engine.Wall { // from above it is one way round for everyone
		w = w.Mirrored()
	}
	if w == step.Anticlockwise {
		return k.Table.Steps.Ways[k.plane()][1]
	}
	return k.Table.Steps.Ways[k.plane()][0]
}

func (k *stepper) hand() HandSteps {
	w := &k.Table.Steps
	l := k.track.Lane
	moves := make([]step.Move, len(k.track.Legs))
	for i := range moves {
		moves[i] = step.Of(&k.track.Legs[i])
	}
	said := make([]told, len(moves))
	for i := range said {
		said[i] = told{k.step(moves, i, false), k.step(moves, i, true), k.join(moves, i)}
	}
	steps, beats := k.fold(said)
	return HandSteps{
		Side:  l.Side,
		Head:  fmt.Sprintf(w.Heads[l.Plane], capital(k.Side(l.Side))),
		Start: k.start(&moves[0]),
		Steps: steps,
		Beats: beats,
		Close: k.closing(),
	}
}

// told is one piece: what is done in it, the same with regard to the piece
// before, and how it joins the next.
type told struct{ body, after, join string }

// MostSteps bounds how many steps a hand is told: nobody learns more by
// reading.
const MostSteps = 200

// fold numbers the steps, repeated ones as one, and a round that is a shorter
// one again and again as that one.
func (k *stepper) fold(said []told) (lines []string, beats [][]string) {
	w := &k.Table.Steps
	n := len(said)
	lap := n
	for p := 1; p <= n/2; p++ {
		if n%p == 0 && slices.Equal(said[p:], said[:n-p]) {
			lap = p
			break
		}
	}
	for i := 0; i < lap; {
		if len(lines) == MostSteps {
			lines = append(lines, w.NotAll)
			break
		}
		run := 1
		for i+run < lap && said[i+run].body == said[i].body && said[i+run-1].join == said[i].join {
			run++
		}
		line := said[i].body
		if i > 0 {
			line = said[i].after
		}
		if lap == 1 {
			run = n
		}
		if run > 1 {
			line = fmt.Sprintf(w.Repeated, line, k.often(run))
		}
		if last := said[i+run-1].join; last != "" && (n > 1 || k.needs(0)) {
			line += " " + last
		}
		lines = append(lines, fmt.Sprintf(w.Number, len(lines)+1, line))
		beats = append(beats, k.onBeats(i, run))
		i += run
	}
	if lap < n && lap > 1 {
		lines = append(lines, fmt.Sprintf(w.AllAgain, k.often(n/lap)))
	}
	return lines, beats
}

// mostBeats bounds the beats of a piece that are told one by one.
const mostBeats = 16

// onBeats tells how hand and prop stand on each beat of a piece that is longer
// than one. Nothing is told where it would be true once only: of a prop that is
// elsewhere in the next round, or in the next of the times that a piece is done.
func (k *stepper) onBeats(i, run int) (lines []string) {
	g := &k.track.Legs[i]
	p := g.Piece
	if known := k.track.Pinned || k.track.PerRound.IsInt(); !known || !frac.Int(1).Less(p.Length()) {
		return nil
	}
	if run > 1 && (k.track.Pinned || !p.PropTurns().IsInt()) {
		return nil
	}
	w := &k.Table.Steps
	for beat := math.Ceil(g.Start - hairBeat); beat < g.Start+g.Span-hairBeat; beat++ {
		if len(lines) == mostBeats {
			return nil
		}
		lines = append(lines, k.stance(math.Max(beat, g.Start), w.OnBeat, w.OnBeatStay, number(beat+1, 0)))
	}
	return lines
}

// hairBeat is what rounding may take from a beat.
const hairBeat = 1e-9

// needs reports whether the join of a piece with itself is worth a word.
func (k *stepper) needs(i int) bool {
	s := &k.seams[i]
	return s.Verdict != seam.Smooth || s.HandTurnsBack && !k.track.Legs[i].Path().IsLine() || s.PropReverses
}

// start tells where hand and prop begin, and how large the first circle is.
func (k *stepper) start(m *step.Move) string {
	w := &k.Table.Steps
	l := k.track.Lane
	path := k.track.Legs[0].Path()
	at := w.StartStay
	switch m.Hand {
	case step.Round:
		at = fmt.Sprintf(w.StartRound, k.place(m.From))
	case step.Oval:
		at = fmt.Sprintf(w.StartOval, k.place(m.From))
	case step.Line:
		at = w.StartOnLine
		if hand := k.track.Legs[0].Point(0).Hand; cmplx.Abs(hand-path.Centre) > 0.99*max(path.A, path.B) {
			at = fmt.Sprintf(w.StartLine, k.place(m.From))
		}
	}
	text := fmt.Sprintf(w.StartProp, at, k.pointing(m.Start))
	switch m.Hand {
	case step.Round:
		text += " " + fmt.Sprintf(w.Circle, centimetres(m.Radius), k.middle(path.Centre))
	case step.Line:
		text += " " + fmt.Sprintf(w.Line, k.middle(path.Centre))
	case step.Stay:
		text += " " + fmt.Sprintf(w.Place, k.middle(k.track.Legs[0].Point(0).Hand))
	}
	if l.Plane == engine.Floor {
		switch {
		case l.Offset > levelDust:
			text += " " + fmt.Sprintf(w.LevelOff[0], centimetres(l.Offset))
		case l.Offset < -levelDust:
			text += " " + fmt.Sprintf(w.LevelOff[1], centimetres(-l.Offset))
		default:
			text += " " + w.Level
		}
	}
	return text
}

const (
	// nearBody (m): a middle that is as near as a fist's breadth to a
	// shoulder is at it, for someone who copies it.
	nearBody = 0.05
	// levelDust (m): nobody sees half a centimetre.
	levelDust = 0.005
)

func centimetres(m float64) string { return number(m*100, 0) }

// middle tells where the middle of a circle is, from the body.
func (k *stepper) middle(c complex128) string {
	w := &k.Table.Steps
	l := k.track.Lane
	at, from := w.AtChest, w.FromChest
	if l.Plane == engine.Wheel {
		at, from = w.AtSide, w.FromSide
	} else {
		for _, side := range []engine.Side{engine.Left, engine.Right} {
			x := k.who.Shoulders / 2
			if side == engine.Right {
				x = -x
			}
			if cmplx.Abs(c-complex(x, 0)) < nearBody {
				return fmt.Sprintf(w.AtShoulder, k.Side(side))
			}
		}
	}
	if cmplx.Abs(c) < nearBody {
		return at
	}
	return k.off(c, from)
}

// off tells where a place is that lies c from another one.
func (k *stepper) off(c complex128, from string) string {
	w := &k.Table.Steps
	var size, to []string
	for i, x := range []float64{real(c), imag(c)} {
		if math.Abs(x) < levelDust {
			continue
		}
		d := step.Toward(2 * i)
		if x < 0 {
			d += 4
		}
		size = append(size, centimetres(math.Abs(x)))
		to = append(to, w.Offs[k.plane()][k.seen(d)/2])
	}
	if len(to) == 2 {
		return fmt.Sprintf(w.OffBoth, size[0], to[0], size[1], to[1], from)
	}
	return fmt.Sprintf(w.Off, size[0], to[0], from)
}

// step tells what hand and prop do in a piece, after the one before it or by
// itself.
func (k *stepper) step(moves []step.Move, i int, after bool) string {
	m := &moves[i]
	length := k.track.Legs[i].Piece.Length()
	hand := fmt.Sprintf(k.Table.Steps.Soft[m.Law], k.handSaid(moves, i))
	return capital(fmt.Sprintf(k.Table.Steps.Step, hand, k.propSaid(moves, i, after), k.beatCount(length)))
}

func (k *stepper) handSaid(moves []step.Move, i int) string {
	w := &k.Table.Steps
	m := &moves[i]
	span := centimetres(m.Span)
	switch m.Hand {
	case step.Stay:
		return w.Stay
	case step.Line:
		heading := w.Headings[k.plane()][k.seen(m.Heading)]
		once := math.Abs(m.Turns-1) < turnDust
		switch {
		case m.Backs == 0:
			return fmt.Sprintf(w.Straight, heading, span)
		case m.Backs == 1 && once:
			return fmt.Sprintf(w.StraightBack, heading, span)
		}
		return fmt.Sprintf(w.ToAndFro, heading, span, k.turnsOften(m.Turns))
	}
	text := k.roundSaid(m)
	if m.Hand == step.Oval {
		return fmt.Sprintf(w.Ellipse, text)
	}
	return k.elsewhere(moves, i, text)
}

// elsewhere adds how a circle differs from the one before it in the round.
func (k *stepper) elsewhere(moves []step.Move, i int, text string) string {
	w := &k.Table.Steps
	here := k.track.Legs[i].Path()
	for j := i - 1; j >= 0; j-- {
		if moves[j].Hand != step.Round {
			continue
		}
		there := k.track.Legs[j].Path()
		if c := here.Centre - there.Centre; cmplx.Abs(c) >= levelDust {
			text = fmt.Sprintf(w.NewCircle, text, k.off(c, w.LastOne))
		}
		if math.Abs(here.A-there.A) >= levelDust {
			text = fmt.Sprintf(w.NewSize, text, centimetres(here.A))
		}
		return text
	}
	if moves[0].Hand != step.Round { // the start has not said it
		text = fmt.Sprintf(w.NewSize, text, centimetres(here.A))
	}
	return text
}

func (k *stepper) roundSaid(m *step.Move) string {
	w := &k.Table.Steps
	from, to, way := k.place(m.From), k.place(m.To), k.way(m.Way)
	if m.Turns < 1-turnDust {
		much, ok := portion(w.Parts, m.Turns)
		if !ok {
			much = fmt.Sprintf(w.Arc, number(m.Turns*360, 0))
		}
		return fmt.Sprintf(w.FromTo, much, way, from, k.by(m), to)
	}
	much := w.OnceRound
	if math.Abs(m.Turns-1) >= turnDust {
		much = fmt.Sprintf(w.Rounds, k.howMany(m.Turns))
	}
	if math.Abs(m.Turns-math.Round(m.Turns)) < turnDust {
		return fmt.Sprintf(w.RoundBack, much, way, from)
	}
	return fmt.Sprintf(w.FromTo, much, way, from, k.by(m), to)
}

// by tells which side of its circle the hand goes along.
func (k *stepper) by(m *step.Move) string {
	w := &k.Table.Steps
	side := k.place(m.Over)
	if k.plane() == engine.Floor {
		return fmt.Sprintf(w.Past, side)
	}
	switch m.Over {
	case step.North:
		return w.Top
	case step.South:
		return w.Bottom
	case step.East, step.West:
		if (m.Over == step.West) == (m.Way == step.Anticlockwise) {
			return fmt.Sprintf(w.Down, side)
		}
		return fmt.Sprintf(w.Up, side)
	}
	return fmt.Sprintf(w.Past, side)
}

// propSaid tells which way round the prop goes in absolute terms: at a turning back
// it is the hand that goes the other way.
func (k *stepper) propSaid(moves []step.Move, i int, after bool) string {
	w := &k.Table.Steps
	m, before := &moves[i], &moves[(i+len(moves)-1)%len(moves)]
	switch {
	case m.Swing != 0:
		return fmt.Sprintf(w.PropSwings, number(float64(m.Swing), 1), k.turnsOften(m.Swings))
	case m.Prop == step.NoWay:
		return fmt.Sprintf(w.PropKeeps, k.pointing(m.Start))
	}
	format := w.PropWay
	if after && m.Prop == before.Prop {
		format = w.PropOn
	}
	text := fmt.Sprintf(format, k.turnCount(m.PropTurns), k.way(m.Prop))
	if m.Hand == step.Stay || m.Hand == step.Line || m.Law != engine.Even || !k.track.PerRound.IsInt() {
		return text // in line, if at all, at some moments only, or in some rounds
	}
	switch naming.Of(&k.track.Legs[i]).Kind {
	case naming.Extension:
		return fmt.Sprintf(w.PropOut, text)
	case naming.Isolation:
		return fmt.Sprintf(w.PropIn, text)
	case naming.UnitTurn:
		return fmt.Sprintf(w.PropOff, text)
	}
	return text
}

// corner (degrees): a hand that changes its heading by less goes straight on
// for someone who copies it.
const corner = 5

// join tells how a piece joins the next.
func (k *stepper) join(moves []step.Move, i int) string {
	w := &k.Table.Steps
	s := &k.seams[i]
	a, b := &moves[i], &moves[(i+1)%len(moves)]
	switch {
	case s.HandGap > engine.TolGap:
		return fmt.Sprintf(w.HandJumps, gapCentimetres(s.HandGap))
	case s.Verdict == seam.Gap:
		return fmt.Sprintf(w.PropJumps, number(float64(s.PropGap), 1))
	}
	text := k.handJoin(s, a, b)
	switch {
	case s.Verdict == seam.Stop:
		text += " " + w.Stops
	case s.PropReverses:
		text += " " + w.Reverses
	case s.Verdict == seam.Kink:
		text += " " + w.Jerks
	}
	return text
}

// gapCentimetres writes a gap so that it is never nothing.
func gapCentimetres(m float64) string {
	if s := centimetres(m); s != "0" {
		return s
	}
	return number(m*100, 4)
}

func (k *stepper) handJoin(s *seam.Seam, a, b *step.Move) string {
	w := &k.Table.Steps
	stays, next := a.Hand == step.Stay, b.Hand == step.Stay
	known := k.track.Pinned || k.track.PerRound.IsInt() // where the prop points
	switch {
	case stays && next:
		return w.Stayed
	case stays:
		return w.ThenGo
	case next:
		return w.ThenWait
	case s.HandTurnsBack && known:
		return fmt.Sprintf(w.ThenTurn, k.pointing(a.End))
	case s.HandTurnsBack:
		return w.ThenTurnAny
	case float64(s.Turn) > corner && known:
		return fmt.Sprintf(w.ThenCorner, k.pointing(a.End))
	case float64(s.Turn) > corner:
		return w.ThenAny
	case s.ArmReverses:
		return w.ThenBend
	}
	return w.ThenOn
}

func (k *stepper) closing() string {
	w := &k.Table.Steps
	c := k.track.Closing()
	switch {
	case !c.Closes():
		return fmt.Sprintf(w.Never, gapCentimetres(c.HandGap))
	case slices.ContainsFunc(k.seams, func(s seam.Seam) bool { return s.Verdict == seam.Gap }):
		return fmt.Sprintf(w.Jumps, k.beatCount(k.track.Lane.Beats()))
	case c.Rounds.IsInt64() && c.Rounds.Int64() == 1:
		return fmt.Sprintf(w.Closes, k.beatCount(c.Beats))
	}
	return fmt.Sprintf(w.ClosesLater, k.roundCount(c.Rounds), k.beatCount(c.Beats))
}

// roundCount writes a number of rounds of more than one in words.
func (k *stepper) roundCount(n *big.Int) string {
	return fmt.Sprintf(k.Table.Steps.ManyRounds, k.spelled(frac.FromBig(n)))
}
