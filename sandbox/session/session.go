// Package session is the work in hand: the open pattern, what is selected,
// where the playhead stands, and how to undo. It knows no drawing and no
// browser.
package session

import (
	"errors"
	"math"
	"slices"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/presets"
)

// Select is the piece in hand.
type Select struct{ Lane, Piece int }

// Session is the state of the bench that lasts beyond a frame.
type Session struct {
	pattern engine.Pattern
	sel     Select
	also    int // the other end of what is selected: a piece of the lane in hand
	undo    []moment
	redo    []moment
	held    *moment // before the drag that is going on
	holds   int     // how many hands drag
	rev     int
	id      int // of the state that is shown
	ids     int // how many have been given out

	tracks  []*engine.Track
	figures [][]naming.Figure
	seams   [][]seam.Seam // made when asked for
	closing *closing      // made when asked for

	beat    float64 // of the playhead, from 0
	Playing bool
	Speed   float64 // share of the tempo at which it plays, > 0
	Loop    Loop
	Steps   Steps
	Mirror  bool           // the stage shows what a mirror would
	hidden  [2]bool        // sides left out of the picture
	clip    []engine.Piece // what Paste puts in
}

// moment is what undo brings back, and the edit that led away from it.
type moment struct {
	pattern engine.Pattern
	sel     Select
	left    Edit
	id      int // 0: a state that has not been shown yet
}

// Edit says what an edit was: its sort and, where a number was changed, the
// name that its caller knows it by.
type Edit struct {
	What What
	Of   string
}

// What is a sort of edit.
type What uint8

// The sorts of edit. A dial is any number, path or law of a piece.
const (
	Dialled What = iota
	Opened
	Renamed
	DidCut
	DidRejoin
	DidMove
	DidThereAndBack
	DidFlip
	DidRepeat
	DidDelete
)

// New returns a session with p open.
func New(p engine.Pattern) *Session {
	s := &Session{Speed: 1}
	s.show(moment{pattern: p})
	return s
}

func (s *Session) now(left Edit) moment { return moment{s.pattern, s.sel, left, s.id} }

// show makes m what is seen and takes stock of it.
func (s *Session) show(m moment) {
	s.pattern, s.id = m.pattern, m.id
	if s.id == 0 {
		s.ids++
		s.id = s.ids
	}
	s.Select(m.sel)
	s.rev++
	s.tracks = s.tracks[:0:0]
	s.figures = s.figures[:0:0]
	s.seams, s.closing = nil, nil
	for _, l := range s.pattern.Lanes {
		t := engine.NewTrack(l)
		s.tracks = append(s.tracks, t)
		names := make([]naming.Figure, len(t.Legs))
		for i := range t.Legs {
			names[i] = naming.Of(&t.Legs[i])
		}
		s.figures = append(s.figures, names)
	}
}

// Pattern returns the open pattern; the caller does not change it.
func (s *Session) Pattern() engine.Pattern { return s.pattern }

// Revision changes whenever the pattern does.
func (s *Session) Revision() int { return s.rev }

// Tracks returns the lanes made ready, in the pattern's order.
func (s *Session) Tracks() []*engine.Track { return s.tracks }

// Figure returns what a piece is a slice of.
func (s *Session) Figure(at Select) naming.Figure { return s.figures[at.Lane][at.Piece] }

// Seams returns how the pieces of each lane join, in the pattern's order.
func (s *Session) Seams() [][]seam.Seam {
	if s.seams == nil {
		for _, t := range s.tracks {
			s.seams = append(s.seams, seam.Of(t, s.pattern.Tempo, s.pattern.Performer.Rigid))
		}
	}
	return s.seams
}

// WorstSeam returns the worst seam of all lanes, the first of its kind; ok is
// false if all are smooth.
func (s *Session) WorstSeam() (lane int, worst seam.Seam, ok bool) {
	worst.Verdict = seam.Smooth
	for i, seams := range s.Seams() {
		for _, x := range seams {
			if x.Verdict < worst.Verdict {
				lane, worst, ok = i, x, true
			}
		}
	}
	return lane, worst, ok
}

// SelectedPiece returns the piece in hand as written.
func (s *Session) SelectedPiece() engine.Piece {
	return s.pattern.Lanes[s.sel.Lane].Pieces[s.sel.Piece]
}

// Round returns the length in beats of the longest lane's round.
func (s *Session) Round() float64 {
	longest := 0.0
	for _, t := range s.tracks {
		longest = math.Max(longest, t.Beats)
	}
	return longest
}

// Beat returns where the playhead stands, in beats from the start.
func (s *Session) Beat() float64 { return s.beat }

// RoundBeat returns where the playhead stands in the longest lane's round.
func (s *Session) RoundBeat() float64 {
	r := s.Round()
	b := math.Mod(s.beat, r)
	if b < 0 {
		b += r
	}
	return b
}

// Seek puts the playhead at a beat of the round it is in; the beat is within
// [0, Round], and the very end is shown as the end, not as the next start.
func (s *Session) Seek(beat float64) {
	r := s.Round()
	beat = math.Min(math.Max(beat, 0), r)
	s.beat = math.Floor(s.beat/r)*r + math.Min(beat, math.Nextafter(r, 0))
}

// SelectUnderPlayhead takes the piece under the playhead in hand, on the lane
// in hand.
func (s *Session) SelectUnderPlayhead() {
	_, i, _ := s.tracks[s.sel.Lane].Locate(s.beat)
	s.Select(Select{s.sel.Lane, i})
}

// RoundOf returns which round of the whole's closing the playhead is in, from
// 1, and how many there are, 0 if it never closes.
func (s *Session) RoundOf() (round, of int) {
	r := s.Round()
	round = int(math.Floor(s.beat/r)) + 1
	if c := s.closes(); c.ok {
		of = int(math.Min(math.Round(c.beats/r), farBeat))
	}
	return round, of
}

// ErrUnwritable says that an edit was refused because a file could not hold
// its result.
var ErrUnwritable = errors.New("the result could not be saved")

// edit shows a new pattern, with undo.
func (s *Session) edit(what What, p engine.Pattern, sel Select) error {
	return s.editAs(Edit{What: what}, p, sel)
}

func (s *Session) editAs(what Edit, p engine.Pattern, sel Select) error {
	if err := presets.Validate(p); err != nil {
		return errors.Join(ErrUnwritable, err)
	}
	s.letGo()
	s.undo = append(s.undo, s.now(what))
	s.redo = nil
	s.show(moment{pattern: p, sel: sel})
	return nil
}

// lane edits the lane in hand.
func (s *Session) lane(what What, sel Select, change func(engine.Lane) (engine.Lane, error)) error {
	l, err := change(s.pattern.Lanes[s.sel.Lane])
	if err != nil {
		return err
	}
	return s.edit(what, s.pattern.WithLane(s.sel.Lane, l), sel)
}

// CanUndo reports whether there is something to undo.
func (s *Session) CanUndo() bool { return len(s.undo) > 0 }

// CanRedo reports whether there is something to redo.
func (s *Session) CanRedo() bool { return len(s.redo) > 0 }

// Undo goes back by one edit and says which; ok is false if there is none.
func (s *Session) Undo() (what Edit, ok bool) { return s.back(&s.undo, &s.redo) }

// Redo goes forward again.
func (s *Session) Redo() (what Edit, ok bool) { return s.back(&s.redo, &s.undo) }

func (s *Session) back(from, to *[]moment) (Edit, bool) {
	s.letGo()
	n := len(*from)
	if n == 0 {
		return Edit{}, false
	}
	m := (*from)[n-1]
	*from = (*from)[:n-1]
	*to = append(*to, s.now(m.left))
	s.show(m)
	return m.left, true
}

// Hold begins a drag: until its Release, Try shows changes without piling
// them up for undo. Several hands may drag at once; what they do from the first
// Hold to the last Release is one.
func (s *Session) Hold() {
	s.holds++
	s.hold()
}

func (s *Session) hold() {
	if s.held == nil {
		m := s.now(Edit{What: Dialled})
		s.held = &m
	}
}

// Try shows a change of the piece in hand while it is held; outside a drag
// it is an edit of its own. Undo names what was changed by of.
func (s *Session) Try(of string, change func(engine.Piece) engine.Piece) error {
	sel := s.sel
	l, err := s.pattern.Lanes[sel.Lane].Replace(sel.Piece, change(s.SelectedPiece()))
	if err != nil {
		return err
	}
	p := s.pattern.WithLane(sel.Lane, l)
	return s.TryPattern(of, func(engine.Pattern) engine.Pattern { return p })
}

// TryPattern is Try for a change of the whole pattern; the pieces stay as
// many as they are.
func (s *Session) TryPattern(of string, change func(engine.Pattern) engine.Pattern) error {
	p, sel := change(s.pattern), s.sel
	if p.Equal(s.pattern) {
		return nil
	}
	if s.holds == 0 {
		return s.editAs(Edit{Dialled, of}, p, sel)
	}
	s.hold() // anew, if another edit has come between
	s.held.left.Of = of
	s.show(moment{pattern: p, sel: sel})
	return nil
}

// Release ends a drag; all of it is undone at once.
func (s *Session) Release() {
	if s.holds = max(s.holds-1, 0); s.holds == 0 {
		s.letGo()
	}
}

// letGo makes what has been dragged so far one step to undo.
func (s *Session) letGo() {
	if s.held == nil {
		return
	}
	before := *s.held
	s.held = nil
	if !before.pattern.Equal(s.pattern) {
		s.undo = append(s.undo, before)
		s.redo = nil
	}
}

// Holding reports whether a drag is going on.
func (s *Session) Holding() bool { return s.held != nil }

// Open shows another pattern; the one before can be brought back by undo.
func (s *Session) Open(p engine.Pattern) error {
	if err := s.edit(Opened, p, Select{}); err != nil {
		return err
	}
	s.beat = 0
	return nil
}

// Rename changes title and notes.
func (s *Session) Rename(title, notes string) error {
	p := s.pattern
	p.Title, p.Notes = title, notes
	if p.Equal(s.pattern) {
		return nil
	}
	return s.edit(Renamed, p, s.sel)
}

// CutPlace says where Cut would cut: the piece under the playhead on the lane
// in hand, and the beat from that piece's beginning; ok is false at a seam.
func (s *Session) CutPlace() (piece int, at frac.Frac, ok bool) {
	// Beats. Nobody hits a moving place to a twelfth of a beat: while it plays,
	// the nearest good place is meant.
	near := 1.0 / 12
	if s.Playing {
		near = 0.5
	}
	t := s.tracks[s.sel.Lane]
	_, piece, u := t.Locate(s.beat)
	at = t.SnapCut(piece, u, near)
	return piece, at, at.Sign() > 0 && at.Less(t.Legs[piece].Piece.Length())
}

// Cut divides the piece under the playhead on the lane in hand and takes the
// later half in hand.
func (s *Session) Cut() error {
	piece, at, _ := s.CutPlace()
	return s.lane(DidCut, Select{s.sel.Lane, piece + 1}, func(l engine.Lane) (engine.Lane, error) { return l.Cut(piece, at) })
}

// rejoinAt returns the first of the two pieces that Rejoin would make one:
// the piece in hand with the next or, failing that, with the one before.
func (s *Session) rejoinAt() (int, bool) {
	l := s.pattern.Lanes[s.sel.Lane]
	for _, i := range []int{s.sel.Piece, s.sel.Piece - 1} {
		if l.CanRejoin(i) {
			return i, true
		}
	}
	return s.sel.Piece, false
}

// CanRejoin reports whether the piece in hand continues into a neighbour.
func (s *Session) CanRejoin() bool {
	_, ok := s.rejoinAt()
	return ok
}

// Rejoin makes the piece in hand and a neighbour one.
func (s *Session) Rejoin() error {
	i, ok := s.rejoinAt()
	if !ok {
		return engine.ErrNotOne
	}
	return s.lane(DidRejoin, Select{s.sel.Lane, i}, func(l engine.Lane) (engine.Lane, error) { return l.Rejoin(i) })
}

// Move puts what is selected elsewhere in its lane, so that the first of it
// becomes piece j.
func (s *Session) Move(j int) error {
	first, last := s.Range()
	if first == j {
		return nil
	}
	n := last - first + 1
	return s.several(DidMove, j, n, func(l engine.Lane) (engine.Lane, error) {
		var err error
		for k := range n {
			// Each goes to its place; what stays on its way makes room.
			from, to := first+k, j+k
			if j > first {
				from, to = first, j+n-1
			}
			if l, err = l.Move(from, to); err != nil {
				return l, err
			}
		}
		return l, nil
	})
}

// ThereAndBack puts the way back after the piece in hand.
func (s *Session) ThereAndBack() error {
	i := s.sel.Piece
	return s.lane(DidThereAndBack, Select{s.sel.Lane, i + 1}, func(l engine.Lane) (engine.Lane, error) { return l.ThereAndBack(i) })
}

// Flip lets the piece in hand sweep the other way.
func (s *Session) Flip() error {
	i := s.sel.Piece
	return s.lane(DidFlip, s.sel, func(l engine.Lane) (engine.Lane, error) { return l.Flip(i) })
}

// Repeat puts a copy after what is selected.
func (s *Session) Repeat() error {
	first, last := s.Range()
	pieces := slices.Clone(s.pattern.Lanes[s.sel.Lane].Pieces[first : last+1])
	return s.insert(DidRepeat, last, pieces)
}

// Delete takes what is selected out.
func (s *Session) Delete() error {
	err := s.takeOut(DidDelete)
	if err == nil {
		// What is left is seen as it was: in the first round, where the prop has
		// not yet carried on.
		s.beat = s.tracks[s.sel.Lane].Legs[s.sel.Piece].Start
	}
	return err
}

// takeOut removes what is selected; the piece before it is then in hand.
func (s *Session) takeOut(what What) error {
	first, last := s.Range()
	return s.lane(what, Select{s.sel.Lane, max(first-1, 0)}, func(l engine.Lane) (engine.Lane, error) {
		var err error
		for range last - first + 1 {
			if l, err = l.Delete(first); err != nil {
				return l, err
			}
		}
		return l, nil
	})
}

// CanDelete reports whether the lane in hand can spare what is selected.
func (s *Session) CanDelete() bool {
	first, last := s.Range()
	return len(s.pattern.Lanes[s.sel.Lane].Pieces) > last-first+1
}
