package engine_test

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/frac"
)

// halfMoon is the Harbour Lane Spinners' first exercise: half an extension,
// and back again as half a four-petal antispin flower.
func halfMoon() engine.Lane {
	half := func(arm, prop int64) engine.Piece {
		return engine.Stroke(engine.CirclePath(0, 0.6), frac.Int(arm), frac.Int(prop), frac.New(1, 2), frac.Int(2))
	}
	return engine.Lane{
		Side: engine.Right, Tether: 0.6, ArmAt: 90, PropAt: 90,
		Pieces: []engine.Piece{half(1, 1), half(-1, 3)},
	}
}

func ExampleNewTrack() {
	track := engine.NewTrack(halfMoon())
	for _, beat := range []float64{0.5, 1.5, 2.25, 3.75} {
		at := track.At(beat)
		fmt.Printf("beat %v: hand %.3f, head %.3f\n", beat, at.Hand, at.Head)
	}
	fmt.Println("closes after", track.Closing().Beats, "beats")
	// Output:
	// beat 0.5: hand (-0.424+0.424i), head (-0.849+0.849i)
	// beat 1.5: hand (-0.424-0.424i), head (-0.849-0.849i)
	// beat 2.25: hand (-0.230-0.554i), head (0.325-0.784i)
	// beat 3.75: hand (-0.230+0.554i), head (0.325+0.784i)
	// closes after 4 beats
}

func ExampleLane_Cut() {
	lane, err := halfMoon().Cut(0, frac.New(2, 3))
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range lane.Pieces {
		fmt.Println(p.Cycles, "cycles in", p.Beats, "beats")
	}
	// Nothing has moved, and the two are still one stroke.
	whole, err := lane.Rejoin(0)
	fmt.Println(whole.Equal(halfMoon()), err)
	// Output:
	// 1/6 cycles in 2/3 beats
	// 1/3 cycles in 4/3 beats
	// 1/2 cycles in 2 beats
	// true <nil>
}

func ExampleLane_ThereAndBack() {
	lane := halfMoon()
	lane.Pieces = lane.Pieces[:1]
	lane, err := lane.ThereAndBack(0)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range lane.Pieces {
		fmt.Println("arm", p.Arm, "prop", p.Prop)
	}
	// Output:
	// arm 1 prop 1
	// arm -1 prop 1
}

func ExampleClosingTime() {
	left := halfMoon()
	left.Side = engine.Left
	left.Pieces = []engine.Piece{engine.Stroke(engine.CirclePath(0, 0.6), frac.Int(1), frac.New(1, 3), frac.Int(1), frac.Int(2))}
	beats, ok := engine.ClosingTime(engine.NewTrack(left), engine.NewTrack(halfMoon()))
	fmt.Println(beats, ok)
	// Output:
	// 12 true
}
