package presets_test

import (
	"fmt"

	"whorlbench/presets"
)

func ExampleDecode() {
	p, err := presets.Decode("lamp.toml", []byte(`
format = 1
title = "Lamp at the gate"
tempo = 120

[[hand]]
side = "right"

[[hand.piece]]
arm = 1
prop = "-1/3"
cycles = 3
beats = 6
`))
	if err != nil {
		fmt.Println(err)
		return
	}
	piece := p.Lanes[0].Pieces[0]
	fmt.Println(p.Title, piece.Prop, piece.Path.A)

	_, err = presets.Decode("lamp.toml", []byte(`
format = 1
title = "Lamp at the gate"
tempo = 1200
colour = "amber"

[[hand]]
side = "right"

[[hand.piece]]
arm = 1
prop = nan
cycles = 3
`))
	fmt.Println(err)

	// Output:
	// Lamp at the gate -1/3 0.6
	// lamp.toml:4:9: key "tempo": found 1200, allowed 10 to 400
	// lamp.toml:5:1: key "colour": found an unknown key, allowed format, title, notes, tempo, performer, hand
	// lamp.toml:12:8: key "hand.piece.prop" in hand 1, piece 1: found nan, allowed -64 to 64
}
