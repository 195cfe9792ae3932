package presets_test

import (
	"math"
	"math/cmplx"
	"os"
	"path/filepath"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/naming"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

// builtIn is what the library is meant to hold, in the trade's words (common
// practice for the names and the modes).
var builtIn = []struct {
	id     string
	pieces [][]string // a hand's pieces, left to right in the file
	mode   naming.Mode
	tip    engine.Degrees // of the first piece with petals
}{
	{"half-moon", [][]string{{"extension", "four-petal antispin flower"}}, naming.Diamond, 0},
	{"three-sails", [][]string{{"three-petal antispin flower, triquetra"}}, naming.NoMode, 90},
	{"harbour-square", [][]string{{"four-petal antispin flower"}}, naming.Box, 45},
	{"twin-lanterns", [][]string{{"two-petal in-spin flower"}}, naming.NoMode, 90},
	{"tide-ring", [][]string{{"isolation"}}, naming.NoMode, 0},
	{"pier-end", [][]string{{"extension", "four-petal antispin flower"}, {"four-petal antispin flower", "extension"}}, naming.Diamond, 0},
}

func TestLibrary(t *testing.T) {
	all := presets.Library()
	if len(all) != len(builtIn) {
		t.Fatalf("Library() has %d entries, want %d", len(all), len(builtIn))
	}
	files, err := filepath.Glob(filepath.Join("library", "*"))
	if err != nil || len(files) != len(builtIn) {
		t.Errorf("library/ has %d files, want %d", len(files), len(builtIn))
	}
	titles := map[string]bool{}
	for i, want := range builtIn {
		e := all[i]
		if e.ID != want.id || e.File != want.id+".toml" {
			t.Errorf("entry %d is %s in %s, want %s", i, e.ID, e.File, want.id)
		}
		p, err := e.Pattern()
		if err != nil {
			t.Errorf("%s: Pattern() gives %v, want no error", e.ID, err)
			continue
		}
		if titles[p.Title] || p.Notes == "" || p.Tempo < 110 {
			t.Errorf("%s: title %q, %d bytes of notes, tempo %v, want a title of its own, notes, 110 at least", e.ID, p.Title, len(p.Notes), p.Tempo)
		}
		titles[p.Title] = true
		names(t, e.ID, p, want.pieces, want.mode, want.tip)
	}
	if got := presets.First().ID; got != "half-moon" {
		t.Errorf("First() = %s, want half-moon", got)
	}
}

func names(t *testing.T, id string, p engine.Pattern, want [][]string, mode naming.Mode, tip engine.Degrees) {
	t.Helper()
	if len(p.Lanes) != len(want) {
		t.Errorf("%s: %d hands, want %d", id, len(p.Lanes), len(want))
		return
	}
	told := false
	for i, l := range p.Lanes {
		track := engine.NewTrack(l)
		if len(track.Legs) != len(want[i]) {
			t.Errorf("%s: hand %d has %d pieces, want %d", id, i+1, len(track.Legs), len(want[i]))
			continue
		}
		for j := range track.Legs {
			f := naming.Of(&track.Legs[j])
			if got := words.English.Name(f); got != want[i][j] {
				t.Errorf("%s: hand %d, piece %d is %s, want %s", id, i+1, j+1, got, want[i][j])
			}
			if f.HasTip && !told {
				told = true
				if f.Mode != mode || math.Abs(float64(f.FirstTip-tip)) > 1e-9 {
					t.Errorf("%s: hand %d, piece %d has mode %v, first tip %v, want %v, %v", id, i+1, j+1, f.Mode, f.FirstTip, mode, tip)
				}
			}
		}
	}
}

// TestLibraryCanonical holds that the files are as Encode writes them.
func TestLibraryCanonical(t *testing.T) {
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		data, err := presets.Encode(p)
		if err != nil || string(data) != string(e.Data) {
			t.Errorf("%s: Encode() = \n%s\n%v, want\n%s", e.ID, data, err, e.Data)
		}
		stored, err := os.ReadFile(filepath.Join("library", e.File))
		if err != nil || string(stored) != string(e.Data) {
			t.Errorf("%s: Data is not the file's", e.ID)
		}
	}
}

// TestLibraryCanBeSpun holds of every built-in pattern that it closes after
// one round, that the head runs on without a jump at every seam, that the
// tether is nowhere slack, and that no hand is further from its shoulder than
// the arm is long.
func TestLibraryCanBeSpun(t *testing.T) {
	const gravity = 9.80665 // m/s², 3rd CGPM (1901), resolution 2
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		beat := 60 / p.Tempo // s
		for _, l := range p.Lanes {
			track := engine.NewTrack(l)
			c := track.Closing()
			if !c.Closes() || c.Rounds.Int64() != 1 || c.HandGap > engine.TolGap {
				t.Errorf("%s: %s hand closes after %v rounds with a gap of %v m, want 1 and 0", e.ID, words.English.Side(l.Side), c.Rounds, c.HandGap)
			}
			shoulder := complex(-p.Performer.Shoulders/2, 0)
			if l.Side == engine.Left {
				shoulder = -shoulder
			}
			n := len(track.Legs)
			for i := range track.Legs {
				end, next := track.AtPiece(0, i, 1), track.AtPiece((i+1)/n, (i+1)%n, 0)
				if gap := cmplx.Abs(next.Head - end.Head); gap > engine.TolGap {
					t.Errorf("%s: after piece %d the head is %v m away, want 0", e.ID, i+1, gap)
				}
				if jump := cmplx.Abs(next.HeadVel-end.HeadVel) / beat; jump > 1e-9 {
					t.Errorf("%s: after piece %d the head's speed jumps by %v m/s, want 0", e.ID, i+1, jump)
				}
				for k := range 361 {
					s := track.AtPiece(0, i, float64(k)/360)
					// The pull along the tether, by Newton's second law.
					rope := s.Hand - s.Head
					a := s.HeadAcc/complex(beat*beat, 0) + complex(0, gravity)
					if pull := real(a)*real(rope) + imag(a)*imag(rope); pull < 0 {
						t.Errorf("%s: piece %d is slack at %d/360, want it taut", e.ID, i+1, k)
						break
					}
					if reach := math.Hypot(cmplx.Abs(s.Hand-shoulder), l.Offset); reach > p.Performer.Reach {
						t.Errorf("%s: piece %d has the hand %v m from the shoulder, want at most %v", e.ID, i+1, reach, p.Performer.Reach)
						break
					}
				}
			}
		}
	}
}
