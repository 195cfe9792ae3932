package words_test

import (
	"math"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/duet"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/engine/tether"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

// shown is a built-in pattern as the engine's rooms judge it.
type shown struct {
	pattern engine.Pattern
	tracks  []*engine.Track
	left    int // place of the left hand, of two
}

// figures hands every elementary pattern to ok and reports whether it likes one.
func (s *shown) figures(ok func(naming.Figure, *engine.Leg) bool) bool {
	for _, t := range s.tracks {
		for i := range t.Legs {
			if ok(naming.Of(&t.Legs[i]), &t.Legs[i]) {
				return true
			}
		}
	}
	return false
}

func (s *shown) wholes() (out []naming.Whole) {
	for _, t := range s.tracks {
		out = append(out, naming.Judge(t, s.seams(t)))
	}
	return out
}

func (s *shown) seams(t *engine.Track) []seam.Seam {
	return seam.Of(t, s.pattern.Tempo, s.pattern.Performer.Rigid)
}

func (s *shown) reading() duet.Reading { return duet.Read(s.tracks[s.left], s.tracks[1-s.left]) }

type judgment func(s *shown) bool

func kind(k naming.Kind) judgment {
	return func(s *shown) bool {
		return s.figures(func(f naming.Figure, _ *engine.Leg) bool { return f.Kind == k })
	}
}

func flower(spin naming.Spin, petals float64) judgment {
	return func(s *shown) bool {
		return s.figures(func(f naming.Figure, _ *engine.Leg) bool {
			return f.Kind == naming.Flower && f.Spin == spin && (petals == 0 || f.Petals.Float() == petals)
		})
	}
}

func mode(m naming.Mode) judgment {
	return func(s *shown) bool {
		return s.figures(func(f naming.Figure, _ *engine.Leg) bool { return f.Mode == m })
	}
}

func verdict(v seam.Verdict) judgment {
	return func(s *shown) bool {
		for _, t := range s.tracks {
			for _, x := range s.seams(t) {
				if x.Verdict == v {
					return true
				}
			}
		}
		return false
	}
}

func called(yes func(*naming.Whole) bool) judgment {
	return func(s *shown) bool { w := s.wholes(); return yes(&w[0]) }
}

func in(p engine.Plane) judgment {
	return func(s *shown) bool {
		for _, t := range s.tracks {
			if t.Lane.Plane != p {
				return false
			}
		}
		return true
	}
}

// props judges every span of the two props.
func props(ok func(duet.Span) bool) judgment {
	return func(s *shown) bool {
		if len(s.tracks) != 2 {
			return false
		}
		for _, x := range s.reading().Props {
			if !ok(x) {
				return false
			}
		}
		return true
	}
}

func timing(m duet.Timing) judgment {
	return props(func(x duet.Span) bool { return x.Timing == m })
}

func direction(d duet.Direction) judgment {
	return props(func(x duet.Span) bool { return x.Direction == d })
}

func slack(want bool) judgment {
	return func(s *shown) bool {
		return !s.pattern.Performer.Rigid && tether.Of(s.tracks[0], s.pattern.Tempo, false).Slack == want
	}
}

// allSmooth reports that no join asks for anything that a tether cannot do.
func allSmooth(s *shown) bool {
	for _, t := range s.tracks {
		for _, x := range s.seams(t) {
			if x.Verdict != seam.Smooth {
				return false
			}
		}
	}
	return true
}

func several(s *shown) bool { return len(s.tracks[0].Legs) > 1 }
func any1(s *shown) bool    { return len(s.tracks) > 0 }

// shows says what each word's pattern must be for it to show the word.
var shows = map[string]judgment{
	"poi": allSmooth, "prop": any1, "head": any1, "tether": slack(true), "beat": any1, "handle": kind(naming.StaticSpin),
	"staff": verdict(seam.Stop), "stop": verdict(seam.Stop), "kink": verdict(seam.Kink), "gap": verdict(seam.Gap), "smooth": allSmooth,
	"arm": kind(naming.Extension), "hand-path": kind(naming.LinearExtension), "stroke": kind(naming.LinearExtension),
	"plane": in(engine.Wall), "wall-plane": in(engine.Wall), "wheel-plane": in(engine.Wheel), "floor-plane": in(engine.Floor),
	"spin": kind(naming.StaticSpin), "static-spin": kind(naming.StaticSpin), "pendulum": kind(naming.Pendulum),
	"in-spin": flower(naming.SpinIn, 0), "antispin": flower(naming.SpinAnti, 0), "flower": kind(naming.Flower), "petal": flower(naming.SpinAnti, 4),
	"extension": kind(naming.Extension), "isolation": exactIsolation, "unit-turn": kind(naming.UnitTurn),
	"cateye": flower(naming.SpinAnti, 2), "triquetra": flower(naming.SpinAnti, 3), "star-flower": kind(naming.Star),
	"box-mode": mode(naming.Box), "diamond-mode": mode(naming.Diamond),
	"linear-extension": kind(naming.LinearExtension), "linear-isolation": kind(naming.LinearIsolation),
	"stall": stalls, "giants": giants,
	"weave": weaves, "fountain": weaves,
	"cap":          called(func(w *naming.Whole) bool { return w.Broad.Yes && w.Strict.Yes }),
	"broad-sense":  called(func(w *naming.Whole) bool { return w.Broad.Yes && !w.Strict.Yes }),
	"strict-sense": called(func(w *naming.Whole) bool { return w.Strict.Yes }),
	"c-cap":        called(func(w *naming.Whole) bool { return w.C.Yes }),
	"s-cap":        called(func(w *naming.Whole) bool { return w.S.Yes }),
	"diamond":      called(func(w *naming.Whole) bool { return w.Diamond.Yes }),
	"elementary":   called(func(w *naming.Whole) bool { return w.Elementary.Yes }),
	"transition":   switches,
	"hybrid":       func(s *shown) bool { return naming.Hybrid(s.tracks[s.left], s.tracks[1-s.left]).Yes },
	"timing":       changes, "together-time": timing(duet.Together), "split-time": timing(duet.Split), "quarter-time": timing(duet.Quarter),
	"direction": direction(duet.Opposite), "same-direction": direction(duet.Same), "opposite-direction": direction(duet.Opposite),
	"tempo": slack(true), "slack": slack(true), "taut": slack(false),
	"piece": several, "seam": several, "round": func(s *shown) bool { c := s.tracks[0].Closing(); return c.Closes() && c.Rounds.Int64() > 1 },
	"mirror": mirrored,
	"tangle": func(s *shown) bool {
		r := s.reading()
		return r.Tangle.Why == duet.Told && r.Tangle.Winding.Sign() != 0
	},
}

// exactIsolation: hand and head share one circle, whose radius is half the tether.
func exactIsolation(s *shown) bool {
	return s.figures(func(f naming.Figure, g *engine.Leg) bool {
		return f.Kind == naming.Isolation && math.Abs(g.Path().A-g.Tether()/2) < engine.TolPath
	})
}

// stalls: the prop of a pendulum comes to rest within its swing.
func stalls(s *shown) bool {
	g := &s.tracks[0].Legs[0]
	return math.Abs(g.State(0).PropRate) < 1e-9 && math.Abs(g.State(0.25).PropRate) > 0.5
}

// giants: extension on a circle of most of an arm's reach.
func giants(s *shown) bool {
	return s.figures(func(f naming.Figure, g *engine.Leg) bool {
		return f.Kind == naming.Extension && g.Path().A > 0.8*s.pattern.Performer.Reach
	})
}

// weaves: what of a weave needs no crossing, circles beside the body in split time.
func weaves(s *shown) bool {
	return in(engine.Wheel)(s) && timing(duet.Split)(s) && direction(duet.Same)(s)
}

// switches: more than one elementary pattern, one after the other, and no jolt between.
func switches(s *shown) bool { w := s.wholes(); return len(w[0].Parts) > 1 && !w[0].Jump.Yes }

// changes: two or more timings in turn.
func changes(s *shown) bool {
	seen := map[duet.Timing]bool{}
	for _, x := range s.reading().Props {
		seen[x.Timing] = true
	}
	return len(seen) > 2
}

// mirrored: at every beat the left head is the mirror image of the right one.
func mirrored(s *shown) bool {
	for beat := 0.0; beat < s.tracks[0].Beats; beat += 0.07 {
		a, b := s.tracks[0].At(beat).Head, s.tracks[1].At(beat).Head
		if math.Abs(real(a)+real(b)) > 1e-9 || math.Abs(imag(a)-imag(b)) > 1e-9 {
			return false
		}
	}
	return true
}

// TestGlossaryShows: the pattern of every word is built in, and the rooms of the
// engine find in it what the word says (definitions: common practice).
func TestGlossaryShows(t *testing.T) {
	library := map[string]presets.Entry{}
	for _, e := range presets.Library() {
		library[e.ID] = e
	}
	for _, x := range words.EnglishGlossary.Terms {
		e, ok := library[x.Shows]
		judge := shows[x.Key]
		if !ok || judge == nil {
			t.Errorf("%s is shown by %q, built in: %v, judged: %v", x.Key, x.Shows, ok, judge != nil)
			continue
		}
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		s := &shown{pattern: p}
		for i, l := range p.Lanes {
			s.tracks = append(s.tracks, engine.NewTrack(l))
			if l.Side == engine.Left {
				s.left = i
			}
		}
		if !judge(s) {
			t.Errorf("%s does not show %s", x.Shows, x.Key)
		}
	}
	if len(shows) != len(words.EnglishGlossary.Terms) {
		t.Errorf("%d words are judged, want all %d", len(shows), len(words.EnglishGlossary.Terms))
	}
}
