package engine_test

import (
	"math"
	"math/cmplx"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/chance"
)

// TestSample: what is filled in is what At gives, beat by beat, forwards,
// backwards, standing still, and over many rounds.
func TestSample(t *testing.T) {
	r := randomLanes{Rand: chance.New(t)}
	for range 400 {
		track := engine.NewTrack(r.lane())
		for _, run := range []struct{ from, step float64 }{
			{0, track.Beats / 64},
			{track.Beats * (3*r.Float64() - 1), track.Beats * 4 * (r.Float64() - 0.5)},
			{-track.Beats / 3, track.Beats / 96},
			{track.Beats * 0.77, -track.Beats / 50},
			{track.Beats * r.Float64(), 0},
		} {
			dst := make([]engine.Point, 200)
			track.Sample(dst, run.from, run.step)
			for k, got := range dst {
				beat := run.from + float64(k)*run.step
				want := track.At(beat)
				if d := max(cmplx.Abs(got.Hand-want.Hand), cmplx.Abs(got.Head-want.Head)); !(d <= 1e-12) {
					t.Fatalf("Sample(from %v, step %v)[%d] = %v, want %v, %v (%.3g m apart); lane %+v",
						run.from, run.step, k, got, want.Hand, want.Head, d, track.Lane)
				}
			}
		}
		track.Sample(nil, 0, 1)
	}
}

// TestSampleAtAHair: beats a hair to either side of a seam, also of a piece so
// short that rounding shows in it.
func TestSampleAtAHair(t *testing.T) {
	l := lengths("1", "1/1000000", "4/3")
	for i := range l.Pieces {
		l.Pieces[i].ArmAt = engine.Some(engine.Degrees(100 * i))
	}
	track := engine.NewTrack(l)
	for round := range 1000 {
		for _, start := range track.Starts() {
			seam := float64(round)*track.Beats + start.Float()
			for _, off := range []float64{-1e-9, -1e-12, -1e-15, 0, 1e-15, 1e-12, 1e-9} {
				beat := seam * (1 + off)
				dst := make([]engine.Point, 2)
				track.Sample(dst, beat-0.5, 0.5) // the seam is looked up, not come upon
				want := track.At(beat - 0.5 + 0.5)
				if got := dst[1]; cmplx.Abs(got.Hand-want.Hand) > 1e-6 || cmplx.Abs(got.Head-want.Head) > 1e-6 {
					t.Fatalf("Sample at %v = %v, want %v, %v", beat, got, want.Hand, want.Head)
				}
			}
		}
	}
}

// cap4 is a lane of four pieces as a trail of one round needs it.
func cap4() *engine.Track {
	return engine.NewTrack(lane(0.6, 90,
		stroke(circle(0.6), "1", "1", "1/2", "2"), stroke(circle(0.6), "-1", "3", "1/2", "2"),
		stroke(circle(0.6), "1", "-3", "1/2", "2"), stroke(circle(0.6), "-1", "-1", "1/2", "2")))
}

func TestSampleAllocatesNothing(t *testing.T) {
	eased := cap4().Lane
	eased.Pieces[1].Law = engine.EaseBoth
	eased.Pieces[2].Swing = 50
	eased.Pieces[3].Path = engine.EllipsePath(0, 0.6, 0.3, 20)
	turning := lane(0.6, 90, stroke(circle(0.6), "1", "1/3", "1", "4"))
	fine := lane(0.6, 90, stroke(circle(0.6), "1", "1/4294967311", "1", "4"))
	dst := make([]engine.Point, 512)
	for _, test := range []struct {
		name  string
		track *engine.Track
		from  float64
		beats float64
	}{
		{"whole prop turns, many rounds", cap4(), -20, 60},
		{"eased, swinging, on an ellipse", engine.NewTrack(eased), 0, 60},
		{"prop a third on each round", engine.NewTrack(turning), -20, 60},
		{"prop on by a great denominator, within a round", engine.NewTrack(fine), 0, 4},
	} {
		got := testing.AllocsPerRun(20, func() { test.track.Sample(dst, test.from, test.beats/float64(len(dst))) })
		if got != 0 {
			t.Errorf("%s: Sample allocates %v times, want 0", test.name, got)
		}
	}
	track := cap4()
	if got := testing.AllocsPerRun(20, func() { track.At(3.3) }); got != 0 {
		t.Errorf("At allocates %v times, want 0", got)
	}
}

// BenchmarkSample and BenchmarkTwoSincos: a sample costs a sine and cosine for
// the arm and one for the prop; the second is the floor under the first. Both
// give the time of one point.
func BenchmarkSample(b *testing.B) {
	eased := cap4().Lane
	for i := range eased.Pieces {
		eased.Pieces[i].Law = engine.EaseBoth
	}
	long := cap4().Lane
	for range 3 {
		long.Pieces = append(long.Pieces, long.Pieces...)
	}
	for _, bench := range []struct {
		name  string
		track *engine.Track
	}{{"cap", cap4()}, {"eased", engine.NewTrack(eased)}, {"32pieces", engine.NewTrack(long)}} {
		b.Run(bench.name, func(b *testing.B) {
			dst := make([]engine.Point, 1024)
			step := bench.track.Beats / float64(len(dst))
			b.ReportAllocs()
			for b.Loop() {
				bench.track.Sample(dst, 0, step)
			}
			perPoint(b, len(dst))
		})
	}
}

func BenchmarkTwoSincos(b *testing.B) {
	dst := make([]engine.Point, 1024)
	for b.Loop() {
		for k := range dst {
			u := float64(k) / 1024
			s, c := math.Sincos(1.5 + 3*u)
			hand := complex(0.6*c, 0.6*s)
			s, c = math.Sincos(1.5 - 9*u)
			dst[k] = engine.Point{Hand: hand, Head: hand + complex(0.6*c, 0.6*s)}
		}
	}
	perPoint(b, len(dst))
}

func perPoint(b *testing.B, points int) {
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/float64(points), "ns/point")
}
