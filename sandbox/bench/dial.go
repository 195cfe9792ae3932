package bench

import (
	"fmt"
	"math"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// dial is a number of the pattern that a slider turns or a person types.
type dial struct {
	id       string
	name     words.Dial
	lo, hi   frac.Frac // ends of the slider
	step     frac.Frac // of the finger
	keyStep  frac.Frac // of the arrow keys
	catch    float64   // how near a whole number the finger is caught
	min, max frac.Frac // what can be typed: the file's range
	get      func(s *session.Session) frac.Frac
	set      func(p engine.Pattern, at session.Select, v frac.Frac) engine.Pattern
	fits     func(p engine.Piece) bool          // nil: every piece has it
	start    func(s *session.Session) frac.Frac // what a double tap goes back to: the file's default
}

// ofPiece makes a setter of what changes one piece.
func ofPiece(change func(p *engine.Piece, v frac.Frac)) func(engine.Pattern, session.Select, frac.Frac) engine.Pattern {
	return func(p engine.Pattern, at session.Select, v frac.Frac) engine.Pattern {
		return editLane(p, at, func(l *engine.Lane) {
			pieces := append([]engine.Piece(nil), l.Pieces...)
			change(&pieces[at.Piece], v)
			l.Pieces = pieces
		})
	}
}

// ofLane makes a setter of what changes a lane.
func ofLane(change func(l *engine.Lane, at session.Select, v frac.Frac)) func(engine.Pattern, session.Select, frac.Frac) engine.Pattern {
	return func(p engine.Pattern, at session.Select, v frac.Frac) engine.Pattern {
		return editLane(p, at, func(l *engine.Lane) { change(l, at, v) })
	}
}

func editLane(p engine.Pattern, at session.Select, change func(*engine.Lane)) engine.Pattern {
	l := p.Lanes[at.Lane]
	change(&l)
	return p.WithLane(at.Lane, l)
}

// ofPath makes a setter of what changes a hand path, of all the pieces that are
// on it unless each is to change alone.
func (b *Bench) ofPath(change func(p *engine.Piece, v frac.Frac)) func(engine.Pattern, session.Select, frac.Frac) engine.Pattern {
	return ofLane(func(l *engine.Lane, at session.Select, v frac.Frac) {
		b.onPath(l, at, func(p *engine.Piece) { change(p, v) })
	})
}

// makeDials returns every number that can be turned, in the order in which they
// are offered.
func (b *Bench) makeDials(w *words.Dials) []dial {
	i, q := frac.Int, frac.New
	at := func(v int64) func(*session.Session) frac.Frac {
		return func(*session.Session) frac.Frac { return i(v) }
	}
	twentieth := q(1, 20)
	// Between whole speeds, which are caught from a quarter away, a finger
	// finds halves and quarters; anything else is typed.
	const speedCatch = 0.25
	piece := func(get func(engine.Piece) frac.Frac) func(*session.Session) frac.Frac {
		return func(s *session.Session) frac.Frac { return get(s.SelectedPiece()) }
	}
	lane := func(get func(engine.Lane) frac.Frac) func(*session.Session) frac.Frac {
		return func(s *session.Session) frac.Frac { return get(s.Pattern().Lanes[s.Selected().Lane]) }
	}
	moves := func(p engine.Piece) bool { return !p.Path.IsPoint() }
	turns := func(p engine.Piece) bool { return moves(p) && p.Path.Kind != engine.OnCircle }
	return []dial{
		{id: idArm, start: at(1), name: w.Arm, lo: i(-4), hi: i(4), step: q(1, 4), keyStep: q(1, 4), catch: speedCatch, min: i(-64), max: i(64),
			get: piece(func(p engine.Piece) frac.Frac { return p.Arm }),
			set: ofPiece(func(p *engine.Piece, v frac.Frac) { p.Arm = v })},
		{id: idProp, start: at(1), name: w.Prop, lo: i(-propReach), hi: i(propReach), step: q(1, 4), keyStep: q(1, 4), catch: speedCatch, min: i(-64), max: i(64),
			get: piece(func(p engine.Piece) frac.Frac { return p.Prop }),
			set: ofPiece(func(p *engine.Piece, v frac.Frac) { p.Prop = v })},
		{id: "cycles", start: at(1), name: w.Cycles, lo: q(1, 8), hi: i(4), step: q(1, 8), keyStep: q(1, 8), min: q(1, 1_000_000), max: i(1000),
			get: piece(func(p engine.Piece) frac.Frac { return p.Cycles }),
			set: ofPiece(func(p *engine.Piece, v frac.Frac) { p.Cycles = v })},
		{id: idLength, start: at(1), name: w.Length, lo: q(1, 4), hi: i(8), step: q(1, 4), keyStep: q(1, 4), min: q(1, 1_000_000), max: i(10_000),
			get: piece(engine.Piece.Length),
			set: ofPiece(func(p *engine.Piece, v frac.Frac) { p.Beats = v.Div(p.Kept()) })},
		{id: idRadius, start: lane(func(l engine.Lane) frac.Frac { return frac.FromFloat(l.Tether) }), name: w.Radius, lo: twentieth, hi: q(6, 5), step: twentieth, keyStep: twentieth, min: q(1, 1000), max: i(5), fits: moves,
			get: piece(func(p engine.Piece) frac.Frac { return frac.FromFloat(p.Path.A) }),
			set: b.ofPath(setRadius)},
		{id: idTilt, start: at(0), name: w.Tilt, lo: i(-90), hi: i(90), step: i(5), keyStep: i(5), min: i(-36_000), max: i(36_000), fits: turns,
			get: piece(func(p engine.Piece) frac.Frac { return frac.FromFloat(float64(p.Path.Tilt)) }),
			set: b.ofPath(func(p *engine.Piece, v frac.Frac) { p.Path.Tilt = engine.Degrees(v.Float()) })},
		{id: "centre-x", start: at(0), name: w.CentreX, lo: i(-1), hi: i(1), step: twentieth, keyStep: twentieth, min: i(-7), max: i(7),
			get: piece(func(p engine.Piece) frac.Frac { return frac.FromFloat(real(p.Path.Centre)) }),
			set: b.ofPath(func(p *engine.Piece, v frac.Frac) { p.Path.Centre = complex(v.Float(), imag(p.Path.Centre)) })},
		{id: "centre-y", start: at(0), name: w.CentreY, lo: i(-1), hi: i(1), step: twentieth, keyStep: twentieth, min: i(-7), max: i(7),
			get: piece(func(p engine.Piece) frac.Frac { return frac.FromFloat(imag(p.Path.Centre)) }),
			set: b.ofPath(func(p *engine.Piece, v frac.Frac) { p.Path.Centre = complex(real(p.Path.Centre), v.Float()) })},
		{id: "arm-start", start: at(90), name: w.ArmStart, lo: i(-180), hi: i(180), step: i(5), keyStep: i(5), min: i(-36_000), max: i(36_000),
			get: func(s *session.Session) frac.Frac { return frac.FromFloat(float64(startOf(s).arm)) },
			set: ofLane(func(l *engine.Lane, at session.Select, v frac.Frac) {
				beginAt(l, at, armStart, engine.Degrees(v.Float()))
			})},
		{id: idPropStart, start: func(s *session.Session) frac.Frac {
			return frac.FromFloat(float64(startOf(s).arm))
		}, name: w.PropStart, lo: i(-180), hi: i(180), step: i(5), keyStep: i(5), min: i(-36_000), max: i(36_000),
			get: func(s *session.Session) frac.Frac { return frac.FromFloat(float64(startOf(s).prop)) },
			set: ofLane(func(l *engine.Lane, at session.Select, v frac.Frac) {
				beginAt(l, at, propStart, engine.Degrees(v.Float()))
			})},
		{id: "from", start: at(0), name: w.From, lo: i(0), hi: q(23, 24), step: q(1, 24), keyStep: q(1, 24), min: i(0), max: q(999, 1000),
			get: piece(func(p engine.Piece) frac.Frac { return p.From }),
			set: ofPiece(func(p *engine.Piece, v frac.Frac) {
				if v.Less(p.To) {
					p.From = v
				}
			})},
		{id: "to", start: at(1), name: w.To, lo: q(1, 24), hi: i(1), step: q(1, 24), keyStep: q(1, 24), min: q(1, 1000), max: i(1),
			get: piece(func(p engine.Piece) frac.Frac { return p.To }),
			set: ofPiece(func(p *engine.Piece, v frac.Frac) {
				if p.From.Less(v) {
					p.To = v
				}
			})},
		{id: "tether", start: func(s *session.Session) frac.Frac { return frac.FromFloat(s.Pattern().Performer.Tether) }, name: w.Tether, lo: q(1, 5), hi: q(3, 2), step: twentieth, keyStep: twentieth, min: twentieth, max: i(3),
			get: lane(func(l engine.Lane) frac.Frac { return frac.FromFloat(l.Tether) }),
			set: ofLane(func(l *engine.Lane, _ session.Select, v frac.Frac) { l.Tether = v.Float() })},
		{id: "turn", start: at(90), name: w.Turn, lo: i(-180), hi: i(180), step: i(5), keyStep: i(5), min: i(-36_000), max: i(36_000),
			get: lane(func(l engine.Lane) frac.Frac { return frac.FromFloat(float64(l.ArmAt)) }),
			set: func(p engine.Pattern, at session.Select, v frac.Frac) engine.Pattern {
				return p.Turn(engine.Degrees(v.Float()) - p.Lanes[at.Lane].ArmAt)
			}},
		{id: "scale", start: func(s *session.Session) frac.Frac { return frac.FromFloat(engine.DefaultPerformer().Tether) },
			name: w.Scale, lo: q(1, 5), hi: q(3, 2), step: twentieth, keyStep: twentieth, min: twentieth, max: i(3),
			get: lane(func(l engine.Lane) frac.Frac { return frac.FromFloat(l.Tether) }),
			set: func(p engine.Pattern, at session.Select, v frac.Frac) engine.Pattern {
				return nanometres(p.Scale(v.Float() / p.Lanes[at.Lane].Tether))
			}},
		{id: idTempo, start: at(120), name: w.Tempo, lo: i(40), hi: i(240), step: i(1), keyStep: i(1), min: i(10), max: i(400),
			get: func(s *session.Session) frac.Frac { return frac.FromFloat(s.Pattern().Tempo) },
			set: func(p engine.Pattern, _ session.Select, v frac.Frac) engine.Pattern { p.Tempo = v.Float(); return p }},
	}
}

// nanometres rounds all lengths that scaling has changed, so that a third of
// 0.9 m is written as 0.3.
func nanometres(p engine.Pattern) engine.Pattern {
	const per = 1e9
	round := func(x float64) float64 { return math.Round(x*per) / per }
	place := func(z complex128) complex128 { return complex(round(real(z)), round(imag(z))) }
	p.Performer.Tether = round(p.Performer.Tether)
	for i, l := range p.Lanes {
		l.Tether, l.Centre = round(l.Tether), place(l.Centre)
		l.Pieces = append([]engine.Piece(nil), l.Pieces...)
		for k := range l.Pieces {
			h := &l.Pieces[k].Path
			h.Centre, h.A, h.B = place(h.Centre), round(h.A), round(h.B)
		}
		p = p.WithLane(i, l)
	}
	return p
}

func (b *Bench) dial(id string) *dial {
	for i := range b.dials {
		if b.dials[i].id == id {
			return &b.dials[i]
		}
	}
	return nil
}

// reads writes a dial's present value, and in full with its unit.
func (b *Bench) reads(d *dial) (short, full string) {
	if d.fits != nil && !d.fits(b.Session.SelectedPiece()) {
		return b.Words.Dials.None, b.Words.Dials.None
	}
	short = words.Value(d.get(b.Session))
	return short, fmt.Sprintf(d.name.Reads, short)
}

// turn gives a dial a value.
func (b *Bench) turn(d *dial, v frac.Frac) error {
	s := b.Session
	at := s.Selected()
	return s.TryPattern(d.id, func(p engine.Pattern) engine.Pattern { return d.set(p, at, v) })
}
