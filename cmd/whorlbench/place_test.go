package main

import (
	"context"
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"whorlbench/sandbox/capture"
)

// TestPlace: a file appears whole under its name or not at all, whatever goes
// wrong while it is written, and what was there stays.
func TestPlace(t *testing.T) {
	half := func(err error) func(context.Context, io.Writer, string, *capture.Take, capture.Progress) error {
		return func(_ context.Context, w io.Writer, _ string, _ *capture.Take, _ capture.Progress) error {
			if _, e := io.WriteString(w, "half"); e != nil {
				return e
			}
			return err
		}
	}
	meanwhile := func(_ context.Context, w io.Writer, _ string, _ *capture.Take, _ capture.Progress) error {
		return os.WriteFile("moon.gif", []byte("another's"), 0o600)
	}
	for _, tt := range []struct {
		name   string
		before string // what is there, if anything
		force  bool
		write  func(context.Context, io.Writer, string, *capture.Take, capture.Progress) error
		want   string // what is there afterwards
		err    string
	}{
		{"fine", "", false, half(nil), "half", ""},
		{"overwritten", "old", true, half(nil), "half", ""},
		{"fault", "", false, half(errors.New("no petals")), "", "moon.toml: no petals"},
		{"fault, forced", "old", true, half(errors.New("no petals")), "old", "moon.toml: no petals"},
		{"full", "old", true, half(&os.PathError{Op: "write", Path: "x", Err: errors.New("no space left on device")}), "old", "moon.gif: cannot be written: no space left on device"},
		{"stopped", "", false, half(context.Canceled), "", "context canceled"},
		{"stopped, forced", "old", true, half(context.Canceled), "old", "context canceled"},
		{"there meanwhile", "", false, meanwhile, "another's", "moon.gif is already there; --force overwrites it"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			t.Chdir(t.TempDir())
			if tt.before != "" {
				if err := os.WriteFile("moon.gif", []byte(tt.before), 0o600); err != nil {
					t.Fatal(err)
				}
			}
			err := maker{write: tt.write}.place(context.Background(), job{from: "moon.toml", to: "moon.gif"}, tt.force, streams{}, nil)
			if got := ""; err != nil && err.Error() != tt.err || err == nil && tt.err != got {
				t.Errorf("error %v, want %q", err, tt.err)
			}
			got, _ := os.ReadFile("moon.gif")
			if string(got) != tt.want {
				t.Errorf("moon.gif holds %q, want %q", got, tt.want)
			}
			files, err := os.ReadDir(".")
			if err != nil {
				t.Fatal(err)
			}
			for _, f := range files {
				if f.Name() != "moon.gif" {
					t.Errorf("%s is left behind", f.Name())
				}
			}
		})
	}
}

// TestOutPlace: one file may have a name, several have a folder.
func TestOutPlace(t *testing.T) {
	t.Chdir(t.TempDir())
	if err := os.Mkdir("folder", 0o700); err != nil {
		t.Fatal(err)
	}
	sep := string(filepath.Separator)
	for _, tt := range []struct {
		out    string
		files  int
		folder string
		single bool
	}{
		{"", 1, "", false}, {"", 3, "", false}, {"-", 1, "", true}, {"moon.gif", 1, "", true},
		{"folder", 1, "folder" + sep, false}, {"new/", 1, "new" + sep, false}, {"new", 2, "new" + sep, false}, {"a/b//", 1, "a" + sep + "b" + sep, false},
		{"/", 1, "/", false},
	} {
		folder, single := outPlace(tt.out, tt.files)
		if folder != tt.folder || single != tt.single {
			t.Errorf("outPlace(%q, %d) = %q, %v, want %q, %v", tt.out, tt.files, folder, single, tt.folder, tt.single)
		}
	}
}

// TestFreeName: names that are taken are numbered before their ending.
func TestFreeName(t *testing.T) {
	used := map[string]bool{}
	var got []string
	for _, name := range []string{"moon-29.97fps.gif", "moon-29.97fps.gif", "sun.png", "moon-29.97fps.gif"} {
		got = append(got, freeName(name, used))
	}
	if want := "moon-29.97fps.gif moon-29.97fps-2.gif sun.png moon-29.97fps-3.gif"; strings.Join(got, " ") != want {
		t.Errorf("names %q, want %q", got, want)
	}
}
