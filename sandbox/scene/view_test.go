package scene

import (
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/display"
)

func TestViewToScreen(t *testing.T) {
	v := View{Origin: display.Pt{X: 200, Y: 150}, Scale: 100}
	for _, tt := range []struct {
		z      complex128
		mirror bool
		want   display.Pt
	}{
		{0, false, display.Pt{X: 200, Y: 150}},
		{0, true, display.Pt{X: 200, Y: 150}},
		{1, false, display.Pt{X: 300, Y: 150}}, // x to the right
		{1, true, display.Pt{X: 100, Y: 150}},  // but in a mirror
		{1i, false, display.Pt{X: 200, Y: 50}}, // y upward
		{1i, true, display.Pt{X: 200, Y: 50}},
		{-0.5 - 0.25i, false, display.Pt{X: 150, Y: 175}},
	} {
		v.Mirror = tt.mirror
		if got := v.ToScreen(tt.z); got != tt.want {
			t.Errorf("mirror %v: ToScreen(%v) = %v, want %v", tt.mirror, tt.z, got, tt.want)
		}
	}
}

func TestViewToPlane(t *testing.T) {
	for _, v := range []View{
		{display.Pt{X: 195, Y: 240.5}, 137.25, false},
		{display.Pt{X: 195, Y: 240.5}, 137.25, true},
		{display.Pt{X: -40, Y: 3000}, 0.01, false},
		{display.Pt{X: -40, Y: 3000}, 5e4, true},
	} {
		for _, z := range []complex128{0, 1, 1i, -2.5 + 0.125i, 0.6 - 11i} {
			if got := v.ToPlane(v.ToScreen(z)); cmplx.Abs(got-z) > 1e-6/v.Scale+1e-12 {
				t.Errorf("%+v.ToPlane(ToScreen(%v)) = %v", v, z, got)
			}
			p := display.Pt{X: real(z) * 100, Y: imag(z) * 100}
			if got := v.ToScreen(v.ToPlane(p)); got.Sub(p).Len() > 1e-9 {
				t.Errorf("%+v.ToScreen(ToPlane(%v)) = %v", v, p, got)
			}
		}
	}
}

// wide is a lane whose hand is far out on a tilted ellipse, on a line and on a
// circle by turns, at several speeds.
func wide() engine.Lane {
	one := frac.Int(1)
	return engine.Lane{Side: engine.Left, Tether: 0.9, Centre: complex(0.7, -0.4), ArmAt: 12, PropAt: 70, Pieces: []engine.Piece{
		engine.Stroke(engine.EllipsePath(0.3i, 0.4, 1.1, 35), frac.Int(3), frac.Int(-7), one, one),
		engine.Stroke(engine.LinePath(-0.5, 0.8, 120), frac.New(5, 3), frac.New(9, 2), one, frac.Int(2)),
		engine.Stroke(engine.CirclePath(complex(-1, -1), 0.5), frac.Int(-1), frac.Int(5), frac.New(7, 2), one),
	}}
}

// TestFit: every place that hand and head come to, round after round, lies in
// the area, a margin from its edges.
func TestFit(t *testing.T) {
	patterns := map[string][]*engine.Track{"wide": {engine.NewTrack(wide())}}
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		for _, l := range p.Lanes {
			patterns[e.ID] = append(patterns[e.ID], engine.NewTrack(l))
		}
	}
	const margin = 26
	points := make([]engine.Point, 2000)
	for name, tracks := range patterns {
		for _, area := range []display.Rect{{X: 0, Y: 48, W: 390, H: 330}, {X: 100, Y: 0, W: 900, H: 640}, {W: 60, H: 60}} {
			for _, mirror := range []bool{false, true} {
				v := Fit(tracks, area, margin, mirror)
				if v.Mirror != mirror {
					t.Errorf("%s: Fit(mirror %v).Mirror = %v", name, mirror, v.Mirror)
				}
				within := area.Inset(margin - 1e-9)
				for _, k := range tracks {
					k.Sample(points, -k.Beats, 5*k.Beats/float64(len(points)))
					for _, p := range points {
						for _, z := range []complex128{p.Hand, p.Head} {
							if !within.Contains(v.ToScreen(z)) {
								t.Fatalf("%s: in %v, mirror %v, %v is seen at %v", name, area, mirror, z, v.ToScreen(z))
							}
						}
					}
				}
			}
		}
	}
}

// TestFitSmall: neither a tiny pattern nor a tiny area makes the scale run away.
func TestFitSmall(t *testing.T) {
	tiny := engine.Lane{Tether: 0.05, Pieces: []engine.Piece{
		engine.Stroke(engine.PointPath(0), frac.Int(0), frac.Int(1), frac.Int(1), frac.Int(1)),
	}}
	tracks := []*engine.Track{engine.NewTrack(tiny)}
	if v := Fit(tracks, display.Rect{W: 400, H: 400}, 20, false); v.Scale*0.05 > 40 {
		t.Errorf("Fit(a tether of 0.05 m).Scale = %v, want the prop seen as small", v.Scale)
	}
	for _, r := range []display.Rect{{}, {W: 10, H: 300}, {W: -5, H: -5}} {
		if v := Fit(tracks, r, 26, false); !(v.Scale > 0) {
			t.Errorf("Fit(%v).Scale = %v, want more than 0", r, v.Scale)
		}
	}
}
