package bench

import (
	"math"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/grip"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/widget"
)

// Names of the stage's controls.
const (
	idFit     = "fit"
	idCutHere = "cut-here"
	idEnd     = session.OfEnd
	idBegin   = "begin"
)

// How near, in pixels, a finger must come to a curve and to a handle, and
// within how many pixels along the curve a good place for a cut is meant.
const (
	curveReach  = 24
	handleReach = 26
	snapReach   = 14
	leastSnap   = 1.0 / 12 // beats, as the playhead's cuts have it
	mostSnap    = 0.5      // beats: where the head slows down, pixels say little
)

// onStage is what hands do on the drawn pattern.
type onStage struct {
	hands    grip.Machine
	gestures []grip.Gesture
	zoom     scene.Zoom
	reach    float64 // m: how far is seen, though less might do
	drag     *stageDrag
	scrub    *scrub
	panFrom  display.Pt // where the view was taken, or carried to last
	mark     cutMark
	ends     [2]endOf
}

// cutMark is where a tap has put the playhead, to cut there.
type cutMark struct {
	on   bool
	rev  int
	beat float64
	sel  session.Select
}

// endOf keeps how far the end of a piece can go.
type endOf struct {
	rev     int
	at      session.Select
	stretch *session.Stretch
}

// viewPlace is where on the stage the pattern has its place: all of it, or what
// a tryout's words leave free.
func (b *Bench) viewPlace() display.Rect {
	r := b.plan.stage
	if b.trying() != nil {
		r.H = b.tryoutRow().Y - b.tryoutWords() - r.Y
	}
	return r
}

// keepReach lets the view stay as it is while the pattern gets a little smaller:
// what is made smaller is to look smaller.
func (b *Bench) keepReach() {
	const least = 0.6 // of what is seen
	need := scene.Reach(b.Session.Tracks())
	if need > b.stage.reach || need < least*b.stage.reach && !b.Session.Holding() {
		b.stage.reach = need
	}
}

// fitView is the view that shows everything.
func (b *Bench) fitView() scene.View {
	return scene.FitReach(max(b.stage.reach, scene.Reach(b.Session.Tracks())), b.viewPlace(), stageMargin, b.Session.Mirror)
}

// StageView is how the stage is seen now: the one way between pixels and
// the plane.
func (b *Bench) StageView() scene.View {
	if d := b.stage.drag; d != nil {
		return d.view
	}
	return b.stage.zoom.Of(b.fitView(), b.plan.stage)
}

// showsHandles reports whether the piece in hand can be shaped on the stage:
// while it stands still and is shown.
func (b *Bench) showsHandles() bool {
	return !b.Session.Playing && !b.view.HideWhole && !b.plan.stageOnly
}

// marked reports whether the place that was tapped is still where Cut cuts.
func (b *Bench) marked() (piece int, at frac.Frac, ok bool) {
	s, m := b.Session, b.stage.mark
	if !m.on || s.Playing || m.rev != s.Revision() || m.beat != s.Beat() || m.sel != s.Selected() {
		return 0, at, false
	}
	return s.CutPlace()
}

// stretch returns how far the end of a piece can go: of the one in hand or the
// one before it.
func (b *Bench) stretch(at session.Select) *session.Stretch {
	s := b.Session
	e := &b.stage.ends[0]
	if at != s.Selected() {
		e = &b.stage.ends[1]
	}
	if e.stretch == nil || e.rev != s.Revision() || e.at != at {
		*e = endOf{s.Revision(), at, s.StretchOf(at)}
	}
	return e.stretch
}

// arrangeStage declares what can be pressed on the stage.
func (b *Bench) arrangeStage() {
	w, s := &b.Words.Stage, b.Session
	if b.stage.zoom.On() {
		b.add(widget.Control{ID: idFit, Label: w.Fit.Label, Caption: w.Fit.Short, Keys: "0", Rect: b.fitPlace()})
	}
	v := b.StageView()
	if b.showsHandles() {
		b.arrangeEnds(v)
	}
	if piece, at, ok := b.marked(); ok {
		t := s.Tracks()[s.Selected().Lane]
		round, _, _ := t.Locate(s.Beat())
		p := t.PointAt(round, piece, at.Float()/t.Legs[piece].Span)
		b.add(widget.Control{ID: idCutHere, Label: w.CutHere.Label, Caption: w.CutHere.Short, Rect: b.besideHead(v.ToScreen(p.Head), v.ToScreen(p.Hand))})
	}
}

// arrangeEnds declares the twins of the handles at the ends of the piece in
// hand; what the other handles do has its sliders.
func (b *Bench) arrangeEnds(v scene.View) {
	s := b.Session
	for _, h := range scene.Handles(s) {
		end, ok := stretched(h.Grip, s.Selected())
		if !ok {
			continue
		}
		label := b.Words.Stage.End
		if h.Grip == scene.GripBegin {
			label = b.Words.Stage.Begin
		}
		p := s.Pattern().Lanes[end.Lane].Pieces[end.Piece]
		b.add(widget.Control{ID: endIDs[h.Grip], Kind: widget.Slider, Twin: true, Label: label, Rect: b.about(v.ToScreen(h.At)),
			Value: p.Length().Float(), Min: 1.0 / engine.CutGrid, Max: b.stretch(end).Most().Float(), Step: 1.0 / engine.CutGrid, KeyStep: 0.25,
			Text: b.reading(h.Grip)})
	}
}

// fitPlace is where the view is fitted again: the stage's upper right corner.
func (b *Bench) fitPlace() display.Rect {
	const inset = 8
	st, wide := b.plan.stage, b.plan.taller(64, 24)
	return display.Rect{X: st.X + st.W - wide - inset, Y: st.Y + inset, W: wide, H: theme.Finger}
}

// about returns a finger's room about a place, within the stage.
func (b *Bench) about(at display.Pt) display.Rect {
	return b.within(display.Rect{X: at.X - theme.Finger/2, Y: at.Y - theme.Finger/2, W: theme.Finger, H: theme.Finger})
}

func (b *Bench) within(r display.Rect) display.Rect {
	st := b.plan.stage
	r.X = min(max(r.X, st.X), st.X+st.W-r.W)
	r.Y = min(max(r.Y, st.Y), st.Y+st.H-r.H)
	return r
}

// besideHead returns room for a button that leaves head and tether free:
// beyond the head if there is room, else on its other side.
func (b *Bench) besideHead(head, hand display.Pt) display.Rect {
	const away = 62.0
	wide := b.plan.taller(96, 80)
	out := head.Sub(hand)
	if out.Len() < 1 {
		out = display.Pt{Y: -1}
	}
	out = out.Scale(1 / out.Len())
	best, free := display.Rect{}, math.Inf(-1)
	for _, d := range []display.Pt{out, {X: -out.Y, Y: out.X}, {X: out.Y, Y: -out.X}, out.Scale(-1)} {
		c := head.Add(display.Pt{X: d.X * (away + wide/4), Y: d.Y * away})
		r := b.within(display.Rect{X: c.X - wide/2, Y: c.Y - theme.Finger/2, W: wide, H: theme.Finger})
		// How far the button stays from the head, by its nearest edge.
		gap := math.Max(math.Max(r.X-head.X, head.X-r.X-r.W), math.Max(r.Y-head.Y, head.Y-r.Y-r.H))
		if f := b.fitPlace(); r.X < f.X+f.W && f.X < r.X+r.W && r.Y < f.Y+f.H && f.Y < r.Y+r.H {
			gap = -1e9 // taken
		}
		if gap > free+1 {
			best, free = r, gap
		}
		if gap >= 24 {
			return r
		}
	}
	return best
}

// stageLook returns how the pattern is drawn.
func (b *Bench) stageLook() scene.Stage {
	return scene.Stage{Theme: b.theme, Faces: b.faces, Words: b.Words, Area: b.plan.stage, Options: b.view, Text: max(b.plan.text, b.plan.bigText()), View: b.StageView()}
}

// drawStageStill draws the stage and what lies under the trails.
func (b *Bench) drawStageStill(l *display.List, st *scene.Stage) {
	l.FillRect(b.plan.stage, 0, b.theme.Stage)
	if b.point.on {
		st.DrawPointStill(l, b.Session)
		return
	}
	if b.showsHandles() {
		st.DrawPath(l, b.Session)
	}
	st.DrawStill(l, b.Session)
	b.drawSlack(l, st)
}

// drawStageMoving draws the pattern at the playhead, and what can be done with
// it by hand.
func (b *Bench) drawStageMoving(l *display.List, st *scene.Stage) {
	s := b.Session
	st.DrawMoving(l, s)
	if b.showsHandles() && b.trying() == nil {
		b.drawHandles(l, st)
	}
	b.drawTryout(l, st)
	if piece, at, ok := b.marked(); ok {
		st.DrawCut(l, s, piece, at.Float()/s.Tracks()[s.Selected().Lane].Legs[piece].Span)
	}
}

// onStageEvent takes a pointer event that no control has.
func (b *Bench) onStageEvent(ev widget.Pointer, now float64) {
	if ev.Phase == widget.Down && !b.plan.stage.Contains(ev.At) {
		return
	}
	if ev.Phase == widget.Down {
		b.toast = toast{} // it may lie over what is reached for
	}
	st := &b.stage
	st.gestures = st.hands.Handle(st.gestures[:0], ev)
	if b.plan.stageOnly {
		b.onStageOnly(st.gestures, now)
		return
	}
	for _, g := range st.gestures {
		b.hintUntil = 0
		switch g.Act {
		case grip.Tap:
			b.tapped(g.At)
		case grip.DoubleTap:
			b.tappedTwice(g.At, now)
		case grip.Take:
			b.take(g.From)
		case grip.Carry:
			b.drag(g.At)
		case grip.Drop, grip.PutBack:
			b.letGo(g.Act == grip.Drop)
		case grip.Pinch:
			st.zoom = st.zoom.Moved(b.fitView(), b.plan.stage, g.From, g.At, g.Scale)
		}
		if st.panFrom = g.At; g.Act == grip.Take {
			st.panFrom = g.From
		}
		b.settle()
	}
}

// tapped takes the piece that was tapped on its curve in hand and puts the
// playhead there, standing still: Cut would divide it there.
func (b *Bench) tapped(at display.Pt) {
	s := b.Session
	b.stage.mark = cutMark{}
	hit, ok := scene.Nearest(s, b.StageView(), at, curveReach)
	if !ok {
		return
	}
	t := s.Tracks()[hit.Lane]
	g := &t.Legs[hit.Piece]
	near := min(max(snapReach/max(hit.Pace, 1e-9), leastSnap), mostSnap)
	beat := t.SnapCut(hit.Piece, hit.U, near).Float()
	beat = min(max(beat, 0), g.Span)
	s.Playing = false
	s.GoTo(float64(hit.Round)*t.Beats + g.Start + beat)
	s.Select(hit.Select)
	b.stage.mark = cutMark{true, s.Revision(), s.Beat(), s.Selected()}
}

// tappedTwice cuts where the first tap has put the playhead; beside the
// curves it looks closer, or fits the whole in view again.
func (b *Bench) tappedTwice(at display.Pt, now float64) {
	if b.stage.mark.on {
		b.stage.mark = cutMark{}
		b.press(idCut, now)
		return
	}
	if b.stage.zoom.On() {
		b.stage.zoom = scene.Zoom{}
		return
	}
	b.zoomAt(at, tapZoom)
}

// doOnStage carries out an intent on a control of the stage; ok is false if
// it is another's.
func (b *Bench) doOnStage(in widget.Intent, now float64) (ok bool) {
	switch {
	case in.ID == idFit && in.Act == widget.Press:
		b.stage.zoom = scene.Zoom{}
	case in.ID == idCutHere && in.Act == widget.Press:
		b.stage.mark = cutMark{}
		b.press(idCut, now)
	case (in.ID == idEnd || in.ID == idBegin) && in.Act == widget.Set:
		const grid = 1.0 / engine.CutGrid
		end := b.Session.Selected()
		if in.ID == idBegin {
			if end.Piece == 0 {
				return true
			}
			end.Piece--
		}
		st := b.stretch(end)
		_ = b.Session.StretchTo(st, frac.New(int64(math.Round(in.Value/grid)), engine.CutGrid)) // else it stays
	default:
		return in.ID == idFit || in.ID == idCutHere || in.ID == idEnd || in.ID == idBegin
	}
	return true
}
