package presets_test

import (
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

// What the pieces of the library are called, in the trade's words (common
// practice for the names, the numbers of petals and the modes).
const (
	ext, iso    = "extension", "isolation"
	anti4       = "four-petal antispin flower"
	tri         = "three-petal antispin flower, triquetra"
	linearOut   = "linear extension"
	linearIn    = "linear isolation"
	between     = "linear, between"
	wait        = "static spin"
	pendulum    = "pendulum"
	no, diamond = naming.NoMode, naming.Diamond
	box         = naming.Box
)

// handOf is a hand's pieces in their order; tip is where the first petal tip of
// the first piece with petals lies, mode how its four petals stand.
type handOf struct {
	side   engine.Side
	pieces []string
	mode   naming.Mode
	tip    engine.Degrees
}

func right(mode naming.Mode, tip engine.Degrees, pieces ...string) handOf {
	return handOf{engine.Right, pieces, mode, tip}
}

func left(mode naming.Mode, tip engine.Degrees, pieces ...string) handOf {
	return handOf{engine.Left, pieces, mode, tip}
}

// builtIn is what the library is meant to hold, in its order, with the number
// of rounds after which each hand closes.
var builtIn = []struct {
	family, id string
	rounds     int64
	hands      []handOf
}{
	{"units", "beam-from-the-mole", 1, []handOf{right(no, 0, ext)}},
	{"units", "tide-ring", 1, []handOf{right(no, 0, iso)}},
	{"units", "capstan", 1, []handOf{left(no, 0, "unit turn, 90° off the arm")}},
	{"units", "weather-vane", 1, []handOf{right(no, 0, ext)}},
	{"points-and-lines", "mooring-post", 1, []handOf{right(no, 0, "static spin")}},
	{"points-and-lines", "lamp-under-the-bridge", 1, []handOf{right(no, 0, pendulum)}},
	{"points-and-lines", "ferry-run", 1, []handOf{right(no, 0, linearOut)}},
	{"points-and-lines", "oar-stroke", 1, []handOf{right(no, 0, linearIn)}},
	{"in-spin", "whelk-shell", 1, []handOf{right(no, 90, "one-petal in-spin flower")}},
	{"in-spin", "twin-lanterns", 1, []handOf{left(no, 90, "two-petal in-spin flower")}},
	{"in-spin", "three-gulls", 1, []handOf{left(no, 90, "three-petal in-spin flower")}},
	{"in-spin", "four-buoys", 1, []handOf{right(diamond, 0, "four-petal in-spin flower")}},
	{"antispin", "ships-cat", 1, []handOf{right(no, 0, "two-petal antispin flower, cateye")}},
	{"antispin", "three-sails", 1, []handOf{right(no, 90, tri)}},
	{"antispin", "compass-card", 1, []handOf{right(diamond, 0, anti4)}},
	{"antispin", "harbour-square", 1, []handOf{right(box, 45, anti4)}},
	{"antispin", "starfish", 1, []handOf{left(no, 18, "five-petal antispin flower")}},
	{"stars", "coil-of-rope", 2, []handOf{right(no, 90, "three-petal in-spin star flower")}},
	{"stars", "paper-star", 2, []handOf{right(no, 18, "five-petal antispin star flower")}},
	{"stars", "net-mender", 3, []handOf{right(no, 270.0/7, "seven-petal antispin star flower")}},
	{"c-caps", "half-moon", 1, []handOf{right(diamond, 0, ext, anti4)}},
	{"c-caps", "bell-buoy", 1, []handOf{right(box, 45, iso, anti4)}},
	{"c-caps", "wind-in-the-rigging", 1, []handOf{right(no, 90, "two-petal in-spin flower", "six-petal antispin flower")}},
	{"s-caps", "swan", 1, []handOf{right(no, 0, ext, tri, ext, tri)}},
	{"s-caps", "two-bends", 1, []handOf{right(no, 0, ext, tri, ext, tri)}},
	{"s-caps", "gangway", 1, []handOf{right(box, 45, anti4, linearIn)}},
	{"diamonds", "kite", 1, []handOf{right(no, 0, linearOut, linearOut, linearOut, linearOut)}},
	{"diamonds", "sluice", 1, []handOf{right(no, 0, linearOut, between, linearIn, between)}},
	{"diamonds", "four-corners", 1, []handOf{right(no, 0, linearOut, wait, linearOut, wait, linearOut, wait, linearOut, wait)}},
	{"diamonds", "rounds-of-the-watch", 1, []handOf{right(no, 0, linearOut, between, linearIn, between, between, linearIn, between, linearOut)}},
	{"two-hands", "lock-gates", 1, []handOf{right(no, 0, iso), left(no, 0, iso)}},
	{"two-hands", "one-gig-two-oars", 1, []handOf{right(no, 0, ext), left(no, 0, ext)}},
	{"two-hands", "seesaw", 1, []handOf{right(no, 0, ext), left(no, 0, ext)}},
	{"two-hands", "leading-lights", 1, []handOf{right(no, 0, iso), left(no, 0, iso)}},
	{"two-hands", "paddle-steamer", 1, []handOf{right(no, 0, ext), left(no, 0, ext)}},
	{"two-hands", "pier-end", 1, []handOf{right(diamond, 0, ext, anti4), left(diamond, 0, anti4, ext)}},
	{"two-hands", "two-ferries", 1, []handOf{right(diamond, 0, ext, anti4), left(diamond, 0, ext, anti4)}},
	{"two-hands", "two-bell-buoys", 1, []handOf{right(box, 45, iso, anti4), left(box, 45, iso, anti4)}},
	{"two-hands", "gangway-and-bell", 1, []handOf{right(box, 45, anti4, linearIn), left(no, 0, pendulum)}},
	{"faults", "missing-plank", 1, []handOf{right(no, 7.5, ext, anti4)}},
	{"faults", "turned-back", 1, []handOf{right(no, 0, ext, ext)}},
	{"faults", "bump-at-the-quay", 1, []handOf{right(no, 30, ext, "six-petal antispin flower")}},
	{"faults", "slack-water", 1, []handOf{right(no, 0, ext)}},
	{"faults", "crossed-lines", 1, []handOf{right(no, 0, ext), left(no, 0, ext)}},
}

// pattern returns a built-in pattern.
func pattern(t *testing.T, id string) engine.Pattern {
	t.Helper()
	for _, e := range presets.Library() {
		if e.ID == id {
			p, err := e.Pattern()
			if err != nil {
				t.Fatalf("%s: Pattern() gives %v, want no error", id, err)
			}
			return p
		}
	}
	t.Fatalf("no built-in pattern %s", id)
	return engine.Pattern{}
}

// TestLibraryList: the list, the embedded files and the files on disk are the
// same, and the pattern of the first visit leads.
func TestLibraryList(t *testing.T) {
	var want, listed []string
	for _, b := range builtIn {
		want = append(want, b.family+"/"+b.id+".toml")
	}
	ids := map[string]bool{}
	for _, e := range presets.Library() {
		listed = append(listed, e.Family+"/"+e.File)
		if e.File != e.ID+".toml" || ids[e.ID] {
			t.Errorf("%s is kept in %s, want an id of its own and the file named for it", e.ID, e.File)
		}
		ids[e.ID] = true
	}
	if !slices.Equal(listed, want) {
		t.Errorf("Library() = %v\nwant %v", listed, want)
	}
	var stored []string
	for _, depth := range []string{"*", "*/*", "*/*/*"} {
		found, err := filepath.Glob(filepath.Join("library", depth))
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range found {
			if info, err := os.Stat(name); err == nil && !info.IsDir() {
				name, _ = filepath.Rel("library", name)
				stored = append(stored, filepath.ToSlash(name))
			}
		}
	}
	slices.Sort(stored)
	slices.Sort(want)
	if !slices.Equal(stored, want) {
		t.Errorf("library/ holds %v\nwant %v", stored, want)
	}
	if got := presets.First(); got.ID != "half-moon" {
		t.Errorf("First() = %s, want half-moon", got.ID)
	}
}

// TestLibraryFamilies: every family has a name of its own and stands together.
func TestLibraryFamilies(t *testing.T) {
	w := &words.English.Library
	var seen, names []string
	for _, e := range presets.Library() {
		if len(seen) > 0 && seen[len(seen)-1] == e.Family {
			continue
		}
		name := w.Family(e.Family)
		if name == "" || slices.Contains(names, name) || slices.Contains(seen, e.Family) {
			t.Errorf("family %s, called %q, comes twice, has no name or shares it", e.Family, name)
		}
		seen, names = append(seen, e.Family), append(names, name)
	}
	if got := w.Family("half-moon"); got != "" {
		t.Errorf("Family(half-moon) = %q, want nothing", got)
	}
}

func TestLibraryNames(t *testing.T) {
	for _, b := range builtIn {
		p := pattern(t, b.id)
		if len(p.Lanes) != len(b.hands) {
			t.Errorf("%s: %d hands, want %d", b.id, len(p.Lanes), len(b.hands))
			continue
		}
		for i, want := range b.hands {
			names(t, b.id, p.Lanes[i], want)
		}
	}
}

func names(t *testing.T, id string, l engine.Lane, want handOf) {
	t.Helper()
	side := words.English.Side(want.side)
	if l.Side != want.side {
		t.Errorf("%s: %s hand, want %s", id, words.English.Side(l.Side), side)
	}
	track := engine.NewTrack(l)
	var got []string
	told := false
	for i := range track.Legs {
		f := naming.Of(&track.Legs[i])
		got = append(got, words.English.Name(f))
		if f.HasTip && !told {
			told = true
			if f.Mode != want.mode || math.Abs(float64(f.FirstTip-want.tip)) > 1e-9 {
				t.Errorf("%s, %s: piece %d has mode %v, first tip %v, want %v, %v", id, side, i+1, f.Mode, f.FirstTip, want.mode, want.tip)
			}
		}
	}
	if !slices.Equal(got, want.pieces) {
		t.Errorf("%s, %s: pieces are %q, want %q", id, side, got, want.pieces)
	}
}

// TestLibraryTexts: a title of one's own, and notes of three short paragraphs:
// what it is made of, the scene, how to practise it.
func TestLibraryTexts(t *testing.T) {
	titles := map[string]bool{}
	for _, b := range builtIn {
		p := pattern(t, b.id)
		if titles[p.Title] || utf8.RuneCountInString(p.Title) > 40 {
			t.Errorf("%s: title %q is another's too, or longer than 40", b.id, p.Title)
		}
		titles[p.Title] = true
		parts := strings.Split(p.Notes, "\n")
		if n := utf8.RuneCountInString(p.Notes); n > 450 || len(parts) != 3 || !strings.HasPrefix(parts[2], "Hint: ") {
			t.Errorf("%s: notes of %d characters in %d paragraphs, want at most 450 in 3, the last a hint", b.id, n, len(parts))
		}
		if says := strings.HasPrefix(p.Notes, "Exists to show "); says != (b.family == "faults") {
			t.Errorf("%s: notes say that it exists to show a fault: %v, want %v", b.id, says, !says)
		}
	}
}

// TestLibraryCanonical holds that the files are as Encode writes them.
func TestLibraryCanonical(t *testing.T) {
	for _, e := range presets.Library() {
		p := pattern(t, e.ID)
		data, err := presets.Encode(p)
		if err != nil || string(data) != string(e.Data) {
			t.Errorf("%s: Encode() = \n%s\n%v, want\n%s", e.ID, data, err, e.Data)
		}
		stored, err := os.ReadFile(filepath.Join("library", e.Family, e.File))
		if err != nil || string(stored) != string(e.Data) {
			t.Errorf("%s: Data is not the file's", e.ID)
		}
	}
}
