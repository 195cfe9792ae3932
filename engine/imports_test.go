package engine_test

import (
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// forbidden are the parts of the standard library by which a package could
// read a file, a clock, a screen, a browser, the network or chance. What lies
// below one of them is forbidden too.
var forbidden = []string{
	"C", "embed", "io/fs", "io/ioutil", "log", "math/rand", "net", "os", "path/filepath",
	"plugin", "runtime", "syscall", "testing", "time", "unsafe",
}

// forTests are the packages that only tests import.
var forTests = []string{"chance", "fixture"}

func within(path, root string) bool { return path == root || strings.HasPrefix(path, root+"/") }

// standard reports whether path is the standard library's: only its paths
// have no dot in their first part, but for our own module.
func standard(path string) bool {
	first, _, _ := strings.Cut(path, "/")
	return !strings.Contains(first, ".") && first != "whorlbench"
}

// TestImports: the packages under engine import the standard library, gonum
// and each other, and nothing by which the same input could give another
// output.
func TestImports(t *testing.T) {
	files := 0
	err := filepath.WalkDir(".", func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(path) != ".go" {
			return err
		}
		files++
		if slices.Contains(forTests, filepath.Dir(path)) {
			return nil
		}
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.ImportsOnly)
		if err != nil {
			return err
		}
		for _, spec := range file.Imports {
			name, err := strconv.Unquote(spec.Path.Value)
			if err != nil {
				return err
			}
			if !standard(name) && !within(name, "gonum.org/v1/gonum") && !within(name, "whorlbench/engine") {
				t.Errorf("%s imports %s, want only the standard library, gonum and engine", path, name)
			}
			if strings.HasSuffix(path, "_test.go") {
				continue
			}
			if slices.Contains(forTests, strings.TrimPrefix(name, "whorlbench/engine/")) {
				t.Errorf("%s imports %s, which is for tests alone", path, name)
			}
			if slices.ContainsFunc(forbidden, func(root string) bool { return within(name, root) }) {
				t.Errorf("%s imports %s, which knows more than its input", path, name)
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	if files < 10 {
		t.Errorf("only %d files looked at, want the whole of engine", files)
	}
}

// TestForbidden holds the test above to what it is meant to catch.
func TestForbidden(t *testing.T) {
	for _, test := range []struct {
		path     string
		standard bool
		ours     bool
	}{
		{"math/rand/v2", true, false},
		{"math/cmplx", true, false},
		{"gonum.org/v1/gonum/optimize", false, false},
		{"whorlbench/sandbox/words", false, false},
		{"whorlbench/enginex", false, false},
		{"whorlbench/engine/frac", false, true},
	} {
		if got := standard(test.path); got != test.standard {
			t.Errorf("standard(%s) = %v, want %v", test.path, got, test.standard)
		}
		if got := within(test.path, "whorlbench/engine"); got != test.ours {
			t.Errorf("within(%s, whorlbench/engine) = %v, want %v", test.path, got, test.ours)
		}
	}
}
