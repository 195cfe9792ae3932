package scene

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/sandbox/display"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/theme"
	"whorlbench/sandbox/words"
)

// TestExtentHolds: every head, and every hand with its letter, is within the
// margins at any beat, in the mirror too; and the picture is no further away
// than it must be: two opposite margins are met.
func TestExtentHolds(t *testing.T) {
	const margin = 8
	for _, p := range everyPattern(t) {
		s := session.New(p)
		for _, area := range []display.Rect{{W: 360, H: 360}, {X: 20, Y: 40, W: 640, H: 300}, {W: 200, H: 500}} {
			for _, mirror := range []bool{false, true} {
				e := ExtentOf(p, s.Tracks(), 0, 2*s.Round(), Options{})
				v := e.View(area, margin, mirror)
				room := area.Inset(margin)
				gap := [4]float64{math.Inf(1), math.Inf(1), math.Inf(1), math.Inf(1)}
				see := func(z complex128, pad float64) {
					at := v.ToScreen(z)
					for i, d := range [4]float64{at.X - room.X, room.X + room.W - at.X, at.Y - room.Y, room.Y + room.H - at.Y} {
						gap[i] = min(gap[i], d-pad)
					}
				}
				for _, track := range s.Tracks() {
					for k := range 2000 {
						at := track.At(2 * s.Round() * float64(k) / 2000)
						see(at.Head, padHead)
						see(at.Hand, padHand)
					}
					if track.Lane.Plane == engine.Wall {
						half := p.Performer.Shoulders / 2
						see(complex(-half, 0), padHead)
						see(complex(half, half*(faceUp+faceRadius)), padHead)
					}
				}
				// The trail's chords cut corners by less than a pixel.
				const chord, sampling = 0.7, 1.5
				for i, d := range gap {
					if d < -chord {
						t.Errorf("%s, %v, mirror %v: %.2f px over edge %d", p.Title, area, mirror, -d, i)
					}
				}
				across, along := gap[0]+gap[1], gap[2]+gap[3]
				tiny := v.Scale*leastReach > min(room.W, room.H)/2-padHead-1e-6
				if min(across, along) > 2*sampling && !tiny {
					t.Errorf("%s, %v: %.2f and %.2f px to spare, want the picture to fill one way", p.Title, area, across, along)
				}
				if math.Abs(gap[0]-gap[1]) > 2*sampling || math.Abs(gap[2]-gap[3]) > 2*sampling {
					t.Errorf("%s, %v: margins %.2f, want them even", p.Title, area, gap)
				}
			}
		}
	}
}

// TestExtentWith: a framing of several holds each.
func TestExtentWith(t *testing.T) {
	area := display.Rect{W: 360, H: 360}
	var all Extent
	var each []Extent
	for _, p := range everyPattern(t) {
		s := session.New(p)
		e := ExtentOf(p, s.Tracks(), 0, s.Round(), Options{})
		all, each = all.With(e), append(each, e)
	}
	v := all.View(area, 8, false)
	for i, e := range each {
		if own := e.View(area, 8, false); own.Scale < v.Scale-1e-9 {
			t.Errorf("pattern %d alone has scale %v, with all others %v, want no less", i, own.Scale, v.Scale)
		}
	}
}

// TestStrobe: as many heads as moments, the later the stronger, each with its
// number; moments that share a place share a disc.
func TestStrobe(t *testing.T) {
	faces := newFaces(t)
	for _, p := range everyPattern(t) {
		s := session.New(p)
		area := display.Rect{W: 360, H: 360}
		st := Stage{Theme: &theme.Day, Faces: faces, Words: &words.English, Area: area,
			View: ExtentOf(p, s.Tracks(), 0, s.Round(), Options{}).View(area, 8, false), Options: Options{HideWhole: true, HideArms: true}}
		for _, clear := range []bool{false, true} {
			st.Clear = clear
			before := s.Beat()
			var l display.List
			const moments = 5
			beats := make([]float64, moments)
			for k := range beats {
				beats[k] = s.Round() * float64(k) / moments
			}
			st.DrawStrobe(&l, s, beats, s.Round())
			finite(t, p.Title, &l)
			if s.Beat() != before {
				t.Errorf("%s: drawing has moved the playhead", p.Title)
			}
			heads, texts := 0, 0
			for _, m := range l.Marks {
				switch {
				case m.Kind == display.Disc && m.Radius == 9, m.Kind == display.Ring && m.Radius == 12:
					heads++
				case m.Kind == display.Text:
					texts++
				}
			}
			if want := moments * len(p.Lanes); heads != want || texts != want {
				t.Errorf("%s: %d heads and %d numbers, want %d of each", p.Title, heads, texts, want)
			}
		}
	}
}

// TestClearStage: where nothing is behind the pattern, nothing in the ground's
// colour is painted, and the two lines of a double stroke lie side by side
// within its width.
func TestClearStage(t *testing.T) {
	faces := newFaces(t)
	for _, p := range everyPattern(t) {
		for _, playing := range []bool{true, false} {
			s := seek(session.New(p), 0.7)
			s.Playing = playing
			st := Stage{Theme: &theme.Day, Faces: faces, Words: &words.English, Area: area, View: Fit(s.Tracks(), area, 26, false), Clear: true}
			var l display.List
			st.Draw(&l, s)
			finite(t, p.Title, &l)
			ground := theme.Day.Stage
			for i, m := range l.Marks {
				if c := m.Color; c.R == ground.R && c.G == ground.G && c.B == ground.B {
					t.Errorf("%s: mark %d is painted in the ground's colour: %+v", p.Title, i, m)
				}
			}
		}
	}
	var l display.List
	l.BeginLine(3, theme.Day.Right, true)
	for k := range 50 {
		s, c := math.Sincos(float64(k) / 10)
		l.To(display.Pt{X: 50 * c, Y: 50 * s}, 0.5)
	}
	double(&l, 0)
	for i, want := range []float64{50 - 3*(1+coreShare)/4, 50 + 3*(1+coreShare)/4} {
		m := l.Marks[i]
		if math.Abs(m.Width-3*(1-coreShare)/2) > 1e-12 || m.Count != 50 {
			t.Errorf("line %d: width %v, %d points, want %v, 50", i, m.Width, m.Count, 3*(1-coreShare)/2)
		}
		for _, p := range l.Of(m)[1:49] {
			if d := p.Len() - want; math.Abs(d) > 0.02 && math.Abs(p.Len()-100+want) > 0.02 {
				t.Errorf("line %d passes %v from the middle, want %v", i, p.Len(), want)
			}
		}
	}
}

// TestTrailStandsStill: as the playhead goes on, all points of a trail but
// those at its two ends stay where they are.
func TestTrailStandsStill(t *testing.T) {
	for _, p := range everyPattern(t) {
		for _, track := range session.New(p).Tracks() {
			seen := map[complex128]bool{}
			Trail(track, 0, 2*track.Beats, func(p engine.Point, _ int, _ float64, _ bool) { seen[p.Head] = true })
			from := 0.137 * track.Beats
			odd := 0
			Trail(track, from, from+track.Beats, func(p engine.Point, _ int, _ float64, _ bool) {
				if !seen[p.Head] {
					odd++
				}
			})
			if odd > 2 {
				t.Errorf("%s: %d points have moved, want the ends only", p.Title, odd)
			}
		}
	}
}
