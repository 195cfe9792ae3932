package bench

import (
	"fmt"
	"strconv"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/follow"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/presets"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
)

// What can follow a piece is a list of its own; picked, a candidate is put in.
const (
	idFollow     = "follow"
	followPrefix = "follow-"
	idHalf       = "half" // to keep half of a whole circle first
)

// offerFollow lists what can follow a piece, each with a small moving picture.
func (b *Bench) offerFollow(at session.Select) {
	s, w := b.Session, &b.Words.Follow
	s.Select(at)
	t := s.Tracks()[at.Lane]
	b.following = followed{rev: s.Revision(), at: at, list: follow.After(s.Pattern(), t, at.Piece)}
	c := Choice{ID: followPrefix + pieceID(at.Lane, at.Piece), Label: b.Words.FollowTitle(t.Lane.Side, at.Piece), Text: w.Intro}
	if len(b.following.list) == 0 {
		c.Text = w.None
	}
	if half, ok := b.halved(at); ok {
		c.Options = append(c.Options, Option{ID: idHalf, Label: w.Half.Label, Detail: w.Half.Detail, Picture: scene.MotionOf(half, t.Lane.Side, s.Pattern().Tempo, s.Mirror)})
	}
	last := seam.Gap
	for i := range b.following.list {
		x := &b.following.list[i]
		head := ""
		if v := x.Join.Verdict; v != last {
			last, head = v, b.Words.Strip.Verdicts[v]
		}
		c.Options = append(c.Options, Option{
			ID: strconv.Itoa(i), Head: head, Label: b.Words.FollowLabel(x), Detail: b.Words.FollowDetail(x),
			Picture: scene.MotionOf(&x.Leg, t.Lane.Side, s.Pattern().Tempo, s.Mirror),
		})
	}
	b.host.Choose(c)
}

// halved returns half of a piece that goes all the way round its circle: only
// of a part can the hand turn back and make a C.
func (b *Bench) halved(at session.Select) (*engine.Leg, bool) {
	t := b.Session.Tracks()[at.Lane]
	g := &t.Legs[at.Piece]
	p := g.Piece
	whole := p.Arm.Mul(p.Cycles).Mul(p.Kept()).Abs()
	if !p.Path.IsRound() || !p.Steady() || whole.Less(frac.Int(1)) {
		return nil, false
	}
	half := frac.New(1, 2).Div(whole)
	lane, err := t.Lane.Cut(at.Piece, p.Length().Mul(half))
	if err != nil {
		return nil, false
	}
	return &engine.NewTrack(lane).Legs[at.Piece], true
}

// keepHalf takes the piece's half circle for the piece, and asks what can follow
// that.
func (b *Bench) keepHalf(at session.Select, now float64) {
	half, ok := b.halved(at)
	if !ok {
		return
	}
	s := b.Session
	s.Select(at)
	l, _ := s.Pattern().Lanes[at.Lane].Replace(at.Piece, half.Piece) // it is there
	b.report(s.Adopt(session.DidCut, s.Pattern().WithLane(at.Lane, l), at), now, func() string { return b.Words.Follow.Halved })
	b.offerFollow(at)
}

// followed is what was offered to follow a piece.
type followed struct {
	rev  int
	at   session.Select
	list []follow.Candidate
}

// chosenFollow puts in what was picked; ok is false if id is another list.
func (b *Bench) chosenFollow(id, option string, now float64) (ok bool) {
	if !strings.HasPrefix(id, followPrefix) {
		return false
	}
	k := &b.following
	if option == idHalf && k.rev == b.Session.Revision() {
		b.keepHalf(k.at, now)
		return true
	}
	i, err := strconv.Atoi(option)
	if err != nil || i < 0 || i >= len(k.list) || k.rev != b.Session.Revision() {
		return true
	}
	s := b.Session
	s.Select(k.at)
	b.report(s.Follow(k.list[i].Piece), now, func() string { return fmt.Sprintf(b.Words.Follow.Added, b.Words.Name(k.list[i].Figure)) })
	s.GoTo(s.Tracks()[k.at.Lane].Legs[s.Selected().Piece].Start)
	return true
}

// idMeet asks where a piece meets another pattern, meetPrefix is the list of
// those.
const (
	idMeet     = "meet"
	meetPrefix = "meet-"
)

// offerMeet lists the built-in elementary patterns.
func (b *Bench) offerMeet(at session.Select) {
	w := &b.Words.Follow
	c := Choice{ID: meetPrefix + pieceID(at.Lane, at.Piece), Label: w.AskMeet.Label, Text: w.AskMeet.Detail}
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil || len(p.Lanes) != 1 || len(p.Lanes[0].Pieces) != 1 {
			continue
		}
		g := &engine.NewTrack(p.Lanes[0]).Legs[0]
		c.Options = append(c.Options, Option{
			ID: e.ID, Label: b.Words.Name(naming.Of(g)), Detail: p.Title,
			Picture: scene.MotionOf(g, p.Lanes[0].Side, p.Tempo, b.Session.Mirror),
		})
	}
	b.host.Choose(c)
}

// chosenMeet tells where a piece meets the pattern that was picked; ok is false
// if id is another list.
func (b *Bench) chosenMeet(id, option string) (ok bool) {
	rest, ok := strings.CutPrefix(id, meetPrefix)
	if !ok {
		return false
	}
	at, known := b.pieceOf(rest)
	for _, e := range presets.Library() {
		if p, err := e.Pattern(); known && e.ID == option && err == nil {
			b.showMeetings(at, p.Lanes[0])
		}
	}
	return true
}

// showMeetings tells where a piece meets the pattern of another lane's first
// piece, taken as large as this one where both are circles.
func (b *Bench) showMeetings(at session.Select, lane engine.Lane) {
	s := b.Session
	p := s.Pattern()
	mine := &s.Tracks()[at.Lane].Legs[at.Piece]
	text := ""
	if piece := lane.Pieces[0]; piece.Path.IsRound() && mine.Piece.Path.IsRound() {
		piece.Path = mine.Piece.Path
		lane.Pieces = []engine.Piece{piece}
		lane.Centre, lane.Tether = s.Tracks()[at.Lane].Lane.Centre, mine.Tether()
		text = " " + b.Words.Told.SameSize
	}
	other := &engine.NewTrack(lane).Legs[0]
	m := follow.Between(mine, other, p.Tempo, p.Performer.Rigid)
	b.host.ShowSheet(Sheet{
		ID:       idMeet,
		Title:    b.Words.Follow.AskMeet.Label,
		Lead:     b.Words.MeetTitle(b.Words.Name(s.Figure(at)), b.Words.Name(naming.Of(other))),
		Text:     b.Words.MeetText(m) + text,
		Sections: []Section{{Lines: b.Words.MeetLines(m)}},
	})
}
