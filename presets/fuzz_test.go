package presets_test

import (
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/pelletier/go-toml/v2"

	"whorlbench/presets"
)

// FuzzDecode feeds Decode anything at all. It must not panic; what it reads
// must be written and read back equal; and on what is TOML, and which keys
// may be written again, it must agree with the TOML library.
func FuzzDecode(f *testing.F) {
	for _, test := range goodFiles {
		f.Add([]byte(test.in))
	}
	for _, test := range badFiles {
		if len(test.in) < 10_000 {
			f.Add([]byte(test.in))
		}
	}
	for _, e := range presets.Library() {
		f.Add(e.Data)
	}
	f.Add([]byte(everyKey))
	for _, s := range tomlTables {
		f.Add([]byte(s.in))
	}
	names, err := filepath.Glob(filepath.Join("..", "testdata", "presets", "*", "*"))
	if err != nil {
		f.Fatal(err)
	}
	for _, name := range names {
		data, err := os.ReadFile(name)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(data)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := presets.Decode("f.toml", data)
		if len(data) < 10_000 { // the library's check of keys is quadratic
			agree(t, data, err)
		}
		if err != nil {
			for _, line := range strings.Split(err.Error(), "\n") {
				if !strings.HasPrefix(line, "f.toml:") {
					t.Errorf("Decode() says %q, want every line to begin with the place", line)
				}
			}
			return
		}
		out, err := presets.Encode(p)
		if err != nil {
			t.Fatalf("Encode() of what Decode() read gives %v", err)
		}
		back, err := presets.Decode("f.toml", out)
		if err != nil || !back.Equal(p) {
			t.Fatalf("Decode(Encode()) = %+v, %v, want %+v", back, err, p)
		}
		if again, err := presets.Encode(back); err != nil || string(again) != string(out) {
			t.Fatalf("Encode() = \n%s\n%v the second time, want\n%s", again, err, out)
		}
	})
}

// agree compares Decode's verdict on a text as TOML with the library's.
func agree(t *testing.T, data []byte, err error) {
	var doc map[string]any
	theirs := toml.Unmarshal([]byte(strings.TrimPrefix(string(data), "\uFEFF")), &doc)
	if err == nil && theirs != nil {
		t.Errorf("Decode() takes what is no TOML: %v", theirs)
	}
	if complains(err) && theirs == nil {
		t.Errorf("Decode() = %v, but the TOML library takes it", err)
	}
}

// complains reports whether an error says that a text is no TOML, or that a
// key may not be written where it is.
func complains(err error) bool {
	var all presets.Errors
	errors.As(err, &all)
	for _, e := range all {
		for _, s := range []string{"not TOML", "a second time", "another meaning"} {
			if strings.Contains(e.What, s) {
				return true
			}
		}
	}
	return false
}

// tomlTables are the ways of writing a table again, with what TOML 1.0.0 has
// to say about them in its sections Keys, Table, Inline Table and Array of
// Tables.
var tomlTables = []struct {
	name string
	in   string
	ok   bool
}{
	{"a key twice", "a = 1\na = 1", false},
	{"a key twice, quoted", "a = 1\n\"a\" = 1", false},
	{"dotted keys one by one", "a.b = 1\nc.d = 1\na.e = 1", true},
	{"a dotted key through a value", "a = 1\na.b = 1", false},
	{"a value where a dotted key was", "a.b = 1\na = 1", false},
	{"a table twice", "[a]\n[a]", false},
	{"a table where a key was", "[a]\nb = 1\n[a.b]", false},
	{"a longer table first", "[a.b]\n[a]", true},
	{"a longer table first, then twice", "[a.b]\n[a]\n[a]", false},
	{"out of order", "[a]\n[b]\n[a.c]", true},
	{"a header where dotted keys were", "[a]\nb.c = 1\n[a.b]", false},
	{"a longer header where dotted keys were", "[a]\nb.c = 1\n[a.b.d]", true},
	{"a dotted key into a headed table", "[a.b]\n[a]\nb.c = 1", false},
	{"a dotted key into an implied table", "[a.b.c]\n[a]\nb.d = 1", false},
	{"into an inline table", "a = {b = 1}\na.c = 1", false},
	{"a header into an inline table", "a = {b = {}}\n[a.b.c]", false},
	{"an inline table into a dotted one", "a.b = 1\na = {c = 1}", false},
	{"a key twice in an inline table", "a = {b.c = 1, b.c = 2}", false},
	{"dotted keys in an inline table", "a = {b.c = 1, b.d = 2}", true},
	{"a list of tables", "[[a]]\n[[a]]\n[a.b]\n[[a]]\n[a.b]", true},
	{"a table twice in one item", "[[a]]\n[a.b]\n[a.b]", false},
	{"a list of tables after its part", "[a.b]\n[[a]]", false},
	{"a list of tables where a list was", "a = []\n[[a]]", false},
	{"a part of a list", "a = [{}]\n[a.b]", false},
	{"a table where a list of tables was", "[[a]]\n[a]", false},
	{"a list of tables where a table was", "[[a]]\n[a.b]\n[[a.b]]", false},
	{"lists of tables in each other", "[[a]]\n[[a.b]]\n[[a.b]]\n[[a]]\n[[a.b]]", true},
}

func TestTables(t *testing.T) {
	for _, test := range tomlTables {
		in := []byte(test.in)
		_, err := presets.Decode("x.toml", in)
		if got := !complains(err); got != test.ok {
			t.Errorf("%s: Decode() takes it: %v, want %v: %v", test.name, got, test.ok, err)
		}
		agree(t, in, err)
	}
}
