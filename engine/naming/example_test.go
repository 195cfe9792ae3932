package naming_test

import (
	"fmt"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
)

func ExampleOf() {
	piece := engine.Stroke(engine.CirclePath(0, 0.6), frac.Int(-1), frac.Int(3), frac.New(1, 2), frac.Int(2))
	track := engine.NewTrack(engine.Lane{Side: engine.Right, Tether: 0.6, ArmAt: 270, PropAt: 270, Pieces: []engine.Piece{piece}})
	f := naming.Of(&track.Legs[0])
	fmt.Println("ratio", f.Ratio, "with", f.Petals, "petals, the first at", f.FirstTip)
	fmt.Println("flower:", f.Kind == naming.Flower, "antispin:", f.Spin == naming.SpinAnti, "diamond:", f.Mode == naming.Diamond)
	// Output:
	// ratio -3 with 4 petals, the first at 0
	// flower: true antispin: true diamond: true
}
