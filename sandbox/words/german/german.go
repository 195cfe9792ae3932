// Package german is the table of what a person reads, in German. It stands by
// itself, so that the program in the browser is as small without it: the page
// brings it as a file.
//
// The reader is called du; buttons are infinitives. Sides are adjectives
// ("linke", "rechte"), so that "%s Hand" and "der %sn Hand" come out right; amounts
// stand where a nominative or an accusative belongs, never after a word that asks
// for another case. The words of the trade and of the bench are
//
//	arm           Arm                 move          Bewegung
//	beat          Schlag              pattern       Muster
//	bench         Werkbank            petal         Blatt
//	caution       Vorsicht            piece         Stück
//	circle        Kreis               plane         Ebene
//	closing       sich schließen      playhead      Abspielmarke
//	flower        Blume               prop          Prop (das)
//	gap           Lücke               pull          Zug
//	hand path     Handbahn            round         Runde
//	head          Kopf                seam, join    Übergang
//	kink          Knick               slack, taut   schlaff, straff
//	lane          Spur                smooth        glatt
//	stage         Bühne               stop          Stopp
//	strip         Streifen            stroke        Strich
//	tether        Schnur              timing        Timing
//	tryout        Versuch             turn          Drehung
//	wobble        Wackeln
//
// and what German spinners say in English stays: Antispin, Box, CAP, Cateye,
// Diamond, Extension, Hybrid, In-Spin, Isolation, Poi, Quarter, Split, Stall, Static
// Spin, Triquetra, Unit-Turn.
package german

import "whorlbench/sandbox/words"

// German is the second language.
var German = words.Table{
	Lang:     "de",
	Endonym:  "Deutsch",
	Figure:   figure,
	Whole:    whole,
	Bench:    bench,
	Dials:    dials,
	View:     view,
	Order:    order,
	Card:     card,
	Explain:  explain,
	Why:      why,
	Strip:    strip,
	Mend:     mend,
	Follow:   follow,
	Stage:    stage,
	Tryout:   tryout,
	Told:     told,
	Page:     page,
	State:    state,
	Capture:  capture,
	Film:     film,
	Report:   report,
	Duet:     duet,
	Library:  library,
	Quantity: quantity,
	Preset:   preset,
	Tether:   tether,
	Share:    share,
	Steps:    steps,
	Compare:  compare,
	Practice: practice,
}
