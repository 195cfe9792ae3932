package bench

import (
	"math"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
)

// editCentre is what undo knows a move of the centre by.
const editCentre = "centre"

// gripEdits are what undo knows a handle's drag by.
var gripEdits = map[scene.Grip]string{
	scene.GripCentre: editCentre, scene.GripRadius: idRadius, scene.GripTilt: idTilt, scene.GripProp: idPropStart,
}

// stageDrag is a handle that is being dragged. The view stays as it was, or
// the pattern would run away from the finger.
type stageDrag struct {
	grip    scene.Grip
	at      session.Select
	off     display.Pt // of the handle from the finger
	before  engine.Pattern
	view    scene.View
	stretch *session.Stretch
	length  float64 // to which the end has been taken, in beats
}

// drawHandles draws the handles, and what the one that is held stands at.
func (b *Bench) drawHandles(l *display.List, st *scene.Stage) {
	held := scene.NoGrip
	if d := b.stage.drag; d != nil {
		held = d.grip
	}
	st.DrawHandles(l, b.Session, held)
	for _, h := range scene.Handles(b.Session) {
		at := st.View.ToScreen(h.At)
		if h.Grip == held {
			st.DrawReading(l, at, b.reading(h.Grip))
		}
		if id, ok := endIDs[h.Grip]; ok && b.focus == id {
			l.StrokeRect(b.about(at), theme.Corner, 3, b.theme.Focus)
		}
	}
}

// take begins to drag the handle nearest to a place; beside them all, a head
// or the view.
func (b *Bench) take(at display.Pt) {
	s := b.Session
	b.stage.mark = cutMark{}
	v := b.StageView()
	best := handleReach + 0.0
	var got scene.Handle
	if b.showsHandles() {
		for _, h := range scene.Handles(s) {
			if d := v.ToScreen(h.At).Sub(at).Len(); d < best {
				best, got = d, h
			}
		}
	}
	if got.Grip == scene.NoGrip {
		b.takeHead(at)
		return
	}
	d := &stageDrag{grip: got.Grip, at: s.Selected(), before: s.Pattern(), view: v}
	if end, ok := stretched(d.grip, d.at); ok {
		// The round's turn of the prop changes with the piece, so it is the
		// first round that is shaped, and the head stands at the end.
		d.stretch = s.StretchOf(end)
		d.length = s.Pattern().Lanes[end.Lane].Pieces[end.Piece].Length().Float()
		b.standAtEnd(end)
		got.At = s.Tracks()[end.Lane].PointAt(0, end.Piece, 1).Head
	}
	if d.off = v.ToScreen(got.At).Sub(at); d.off.Len() > 2*handleReach {
		d.off = display.Pt{}
	}
	s.Hold()
	b.stage.drag = d
}

// endIDs are the twins of the handles that move an end of a piece.
var endIDs = map[scene.Grip]string{scene.GripEnd: idEnd, scene.GripBegin: idBegin}

// stretched returns the piece whose end a handle moves: that of the piece in
// hand or, at its beginning, of the one before.
func stretched(g scene.Grip, at session.Select) (end session.Select, ok bool) {
	if g == scene.GripBegin {
		at.Piece--
	}
	_, ok = endIDs[g]
	return at, ok
}

// standAtEnd puts the playhead a hair before a piece's end, still within it.
func (b *Bench) standAtEnd(at session.Select) {
	const hair = 1e-7 // of a beat
	g := &b.Session.Tracks()[at.Lane].Legs[at.Piece]
	b.Session.GoTo(g.Start + max(g.Span-hair, 0))
}

// drag carries what is held to a place: a handle, a head, or the view.
func (b *Bench) drag(to display.Pt) {
	if b.stage.scrub != nil {
		b.scrubTo(to)
		return
	}
	s, d := b.Session, b.stage.drag
	if d == nil {
		if b.stage.zoom.On() {
			b.stage.zoom = b.stage.zoom.Moved(b.fitView(), b.plan.stage, b.stage.panFrom, to, 1)
		}
		return
	}
	if !s.Holding() || s.Selected() != d.at { // another hand has done something else
		b.stage.drag = nil
		s.Release()
		return
	}
	z := d.view.ToPlane(to.Add(d.off))
	if end, ok := stretched(d.grip, d.at); ok {
		d.length = d.stretch.Near(z, d.length)
		_ = s.StretchTo(d.stretch, d.stretch.Snap(d.length, b.snapNear(d, end))) // else it stays
		b.standAtEnd(end)
		return
	}
	next := b.shaped(d.grip, d.at, z)
	if presets.Validate(next) == nil {
		_ = s.TryPattern(gripEdits[d.grip], func(engine.Pattern) engine.Pattern { return next })
	}
}

// snapNear is within how many beats of a good place the end is caught.
func (b *Bench) snapNear(d *stageDrag, end session.Select) float64 {
	t := b.Session.Tracks()[end.Lane]
	pace := cmplx.Abs(t.AtPiece(0, end.Piece, 1).HeadVel) * d.view.Scale
	return min(max(snapReach/max(pace, 1e-9), 1.0/engine.CutGrid), mostSnap)
}

// shaped is the pattern with what is gripped brought to z (m).
func (b *Bench) shaped(g scene.Grip, at session.Select, z complex128) engine.Pattern {
	p := b.Session.Pattern()
	l := p.Lanes[at.Lane]
	from := z - l.Centre - l.Pieces[at.Piece].Path.Centre
	switch g {
	case scene.GripCentre:
		c := z - l.Centre
		b.onPath(&l, at, func(p *engine.Piece) { p.Path.Centre = complex(twentieths(real(c)), twentieths(imag(c))) })
	case scene.GripRadius:
		b.onPath(&l, at, func(p *engine.Piece) { setRadius(p, frac.FromFloat(max(twentieths(cmplx.Abs(from)), 0.05))) })
	case scene.GripTilt:
		b.onPath(&l, at, func(p *engine.Piece) { p.Path.Tilt = caughtAngle(from) })
	case scene.GripProp:
		t := b.Session.Tracks()[at.Lane]
		round, _, _ := t.Locate(b.Session.Beat())
		first, now := t.PointAt(0, at.Piece, 0), t.PointAt(round, at.Piece, 0)
		turned := (now.Head - now.Hand) / (first.Head - first.Hand)
		beginAt(&l, at, propStart, caughtAngle((z-now.Hand)/turned))
	}
	return p.WithLane(at.Lane, l)
}

// twentieths rounds a length to 0.05 m.
func twentieths(x float64) float64 { return math.Round(x*20)/20 + 0 }

// caughtAngle is the angle of z on a grid of 15°, of which those of 45° catch
// from further away.
func caughtAngle(z complex128) engine.Degrees {
	const fine, coarse, catch = 15, 45, 11
	if z == 0 {
		return 0
	}
	a := cmplx.Phase(z) * 180 / math.Pi
	v := math.Round(a/fine) * fine
	if c := math.Round(a/coarse) * coarse; math.Abs(a-c) <= catch {
		v = c
	}
	if v <= -180 {
		v += 360
	}
	return engine.Degrees(v + 0)
}

// letGo ends a drag; one that is called off leaves nothing.
func (b *Bench) letGo(keep bool) {
	if b.stage.scrub != nil {
		b.letHeadGo(keep)
		return
	}
	s, d := b.Session, b.stage.drag
	if d == nil {
		return
	}
	if !keep && s.Holding() {
		_ = s.TryPattern("", func(engine.Pattern) engine.Pattern { return d.before })
	}
	b.stage.drag = nil
	s.Release()
}

// reading tells what a handle stands at.
func (b *Bench) reading(g scene.Grip) string {
	s, w := b.Session, b.Words
	p := s.SelectedPiece()
	switch g {
	case scene.GripCentre:
		return w.StagePlace(real(p.Path.Centre), imag(p.Path.Centre))
	case scene.GripRadius:
		return w.StageNumber(w.Stage.Radius, p.Path.A)
	case scene.GripTilt:
		return w.StageNumber(w.Stage.Tilt, float64(p.Path.Tilt))
	case scene.GripProp:
		return w.StageNumber(w.Stage.Prop, float64(startOf(s).prop))
	}
	at, _ := stretched(g, s.Selected())
	p = s.Pattern().Lanes[at.Lane].Pieces[at.Piece]
	kept := p.Cycles.Mul(p.Kept())
	return w.EndOfPiece(p.Arm.Mul(kept), p.Prop.Mul(kept), p.Length())
}
