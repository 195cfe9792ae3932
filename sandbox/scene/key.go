package scene

import (
	"image/color"

	"whorlbench/engine/naming"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
)

// Kinds returns how the strokes of all pieces that are seen are drawn, if any of
// them is drawn otherwise than plain, each with a figure that is drawn so; of a
// double stroke, one of each kind of figure. In-spin comes first, then antispin.
func (st *Stage) Kinds(all ...*session.Session) []naming.Figure {
	if st.PlainInk {
		return nil
	}
	var out []naming.Figure
	marked := false
	for _, spin := range []naming.Spin{naming.SpinIn, naming.SpinAnti, naming.SpinUnit} {
		known := map[naming.Kind]bool{}
		for _, s := range all {
			for lane, t := range s.Tracks() {
				for i := range t.Legs {
					f := s.Figure(session.Select{Lane: lane, Piece: i})
					if f.Spin != spin || s.Hidden(lane) || known[f.Kind] || spin != naming.SpinUnit && len(known) > 0 {
						continue
					}
					known[f.Kind] = true
					out = append(out, f)
					marked = marked || spin != naming.SpinIn
				}
			}
		}
	}
	if !marked {
		return nil
	}
	return out
}

// Sample draws how a kind's stroke looks, from a place so far (px) to the right,
// over a ground.
func Sample(l *display.List, spin naming.Spin, from display.Pt, long, width float64, c, ground color.NRGBA) {
	to := from.Add(display.Pt{X: long})
	if spin == naming.SpinUnit {
		l.Segment(from, to, width/(1-coreShare), c)
		l.Segment(from, to, width/(1-coreShare)*coreShare, ground)
		return
	}
	l.Segment(from, to, width, c)
	if spin != naming.SpinAnti {
		return
	}
	const every = 7.0 // px
	half := (width + tickBeyond) / 2
	for x := from.X + every/2; x < to.X; x += every {
		l.Segment(display.Pt{X: x, Y: from.Y - half}, display.Pt{X: x, Y: from.Y + half}, tickStroke, c)
	}
}
