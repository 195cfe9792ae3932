package bench_test

import (
	"fmt"
	"image"
	"testing"

	"whorlbench/presets"
	"whorlbench/sandbox/bench"
	"whorlbench/sandbox/face"
	"whorlbench/sandbox/host"
	"whorlbench/sandbox/paint"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// BenchmarkFrame makes frames as the browser does while a pattern of two
// hands plays: the display list, and the triangles that it becomes.
func BenchmarkFrame(b *testing.B) {
	for _, s := range []struct {
		frame   bench.Frame
		density float64
	}{{phone, 3}, {bench.Frame{W: 1440, H: 900, Top: 48}, 1}} {
		for _, part := range []string{"list", "mesh", "both"} {
			b.Run(fmt.Sprintf("%vx%v/%s", s.frame.W, s.frame.H, part), func(b *testing.B) {
				faces, err := face.New()
				if err != nil {
					b.Fatal(err)
				}
				p, err := presets.First().Pattern()
				for _, e := range presets.Library() {
					if e.ID == twoHands {
						p, err = e.Pattern()
					}
				}
				if err != nil {
					b.Fatal(err)
				}
				w := bench.New(session.New(p), &words.English, faces, &host.Memory{})
				w.SetFrame(s.frame)
				w.Session.Playing = true
				mesh := paint.NewMesh(paint.NewAtlas(faces))
				size := image.Pt(int(s.frame.W*s.density), int(s.frame.H*s.density))
				for range 300 { // until all is known that is said of the pattern
					w.Step(1.0/60, 0)
				}
				list := w.Draw()
				scale := s.density * w.Zoom()
				mesh.Build(list, scale)
				now := 0.0
				b.ReportAllocs()
				for b.Loop() {
					if part != "mesh" {
						now += 1000.0 / 60
						w.Step(1.0/60, now)
						list = w.Draw()
					}
					if part != "list" {
						mesh.BuildMoving(list, scale, size)
					}
				}
				b.ReportMetric(float64(len(list.Marks)-list.Still), "moving-marks")
				b.ReportMetric(float64(len(list.Marks)), "marks")
				b.ReportMetric(float64(len(list.Points)), "points")
				b.ReportMetric(float64(len(mesh.Vertices)), "vertices")
			})
		}
	}
}
