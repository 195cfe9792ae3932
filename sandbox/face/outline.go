package face

import (
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
)

// Op is what a step of an outline does.
type Op uint8

// The steps of an outline.
const (
	MoveTo Op = iota // begins a closed contour at the one point
	LineTo           // a straight line to the one point
	QuadTo           // a quadratic curve: the control point, the end
	CubeTo           // a cubic curve: two control points, the end
)

// Step is a step of an outline, its points at size 1, y downward from the base
// line.
type Step struct {
	Op     Op
	Points [3][2]float64
}

// Outline returns the shape of r, empty for a blank. Its contours are filled
// where they wind about a place.
func (s *Set) Outline(r rune, bold bool) []Step {
	f := s.fonts[weight(bold)]
	g, err := f.GlyphIndex(&s.buf, r)
	if err != nil {
		return nil
	}
	segments, err := f.LoadGlyph(&s.buf, g, fixed.I(measureSize), nil)
	if err != nil {
		return nil
	}
	steps := make([]Step, len(segments))
	for i, seg := range segments {
		steps[i].Op = map[sfnt.SegmentOp]Op{
			sfnt.SegmentOpMoveTo: MoveTo, sfnt.SegmentOpLineTo: LineTo, sfnt.SegmentOpQuadTo: QuadTo, sfnt.SegmentOpCubeTo: CubeTo,
		}[seg.Op]
		for k, p := range seg.Args {
			steps[i].Points[k] = [2]float64{float64(p.X) / 64 / measureSize, float64(p.Y) / 64 / measureSize}
		}
	}
	return steps
}
