package presets

import (
	"embed"
	"fmt"

	"whorlbench/engine"
)

//go:embed library/*/*.toml
var library embed.FS

// families is the library in the order in which it is shown: elementary patterns,
// one speed ratio after the other, then what is put together of them. Within a
// family the easier comes first, or the smaller number.
var families = []struct {
	id  string
	ids []string
}{
	{"units", []string{
		"beam-from-the-mole", // extension
		"tide-ring",          // isolation
		"capstan",            // unit turn with an offset
		"weather-vane",       // extension overhead, floor plane
	}},
	{"points-and-lines", []string{
		"mooring-post",          // static spin
		"lamp-under-the-bridge", // pendulum
		"ferry-run",             // linear extension
		"oar-stroke",            // linear isolation
	}},
	{"in-spin", []string{
		"whelk-shell",   // one petal
		"twin-lanterns", // two
		"three-gulls",   // three
		"four-buoys",    // four, diamond mode
	}},
	{"antispin", []string{
		"ships-cat",      // two petals, cateye
		"three-sails",    // three, triquetra
		"compass-card",   // four, diamond mode
		"harbour-square", // four, box mode
		"starfish",       // five
	}},
	{"stars", []string{
		"coil-of-rope", // in-spin, ratio 5/2
		"paper-star",   // antispin, ratio −3/2
		"net-mender",   // antispin, ratio −4/3
	}},
	{"c-caps", []string{
		"half-moon",           // extension, four-petal antispin
		"bell-buoy",           // isolation, four-petal antispin
		"wind-in-the-rigging", // two-petal in-spin, six-petal antispin
	}},
	{"s-caps", []string{
		"swan",      // extension and triquetra at equal speeds
		"two-bends", // the same without a kink
		"gangway",   // triquetra of a half circle and its diameter
	}},
	{"diamonds", []string{
		"kite",                // round with the prop
		"sluice",              // against it
		"four-corners",        // against it, waiting at the corners
		"rounds-of-the-watch", // switching
	}},
	{"two-hands", []string{
		"lock-gates",       // isolations, mirrored: together, opposite
		"one-gig-two-oars", // extensions: together, same direction
		"seesaw",           // extensions: split, opposite
		"leading-lights",   // isolations: quarter, same direction
		"paddle-steamer",   // split circles, wheel plane
		"pier-end",         // one C, props opposite
		"two-ferries",      // split C-caps, antispin with extension
		"two-bell-buoys",   // split C-caps, antispin with isolation
		"gangway-and-bell", // triquetra against pendulum
	}},
	{"faults", []string{
		"missing-plank",    // gap
		"turned-back",      // stop
		"bump-at-the-quay", // kink
		"slack-water",      // slack tether
		"crossed-lines",    // tangle
	}},
}

// Entry is one built-in pattern.
type Entry struct {
	Family string // id of its family, such as c-caps
	ID     string // stable, such as half-moon; no two entries share one
	File   string // the name under which it is saved
	Data   []byte // the file, as Encode writes it
}

// Pattern decodes the entry.
func (e Entry) Pattern() (engine.Pattern, error) { return Decode(e.File, e.Data) }

// Library returns the built-in patterns in the order in which they are shown,
// family by family.
func Library() []Entry {
	var entries []Entry
	for _, f := range families {
		for _, id := range f.ids {
			entries = append(entries, builtIn(f.id, id))
		}
	}
	return entries
}

func builtIn(family, id string) Entry {
	file := id + ".toml"
	data, err := library.ReadFile("library/" + family + "/" + file)
	if err != nil {
		// The files are part of the program; a test opens every one.
		panic(fmt.Sprintf("presets: library: %v", err))
	}
	return Entry{Family: family, ID: id, File: file, Data: data}
}

// First returns the pattern that is open at the first visit: a C-cap, as what is
// put together is what the program is for.
func First() Entry { return builtIn("c-caps", "half-moon") }
