package shelf

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/session"
)

// clock goes on by a second with each look at it.
type clock struct{ at int64 }

func (c *clock) now() time.Time {
	c.at++
	return time.Unix(1_800_000_000+c.at, 0)
}

// newTab returns the shelf of a new tab on a store, with IDs that tests can
// foretell: a1, a2 … for the tab a.
func newTab(store Store, name string, c *clock) *Shelf {
	n := 0
	return New(store, c.now, func() string { n++; return fmt.Sprintf("%s%d", name, n) })
}

func one(t *testing.T) (*Memory, *Shelf) {
	t.Helper()
	m := &Memory{}
	return m, newTab(m, "a", &clock{})
}

func halfMoon(t *testing.T) engine.Pattern {
	t.Helper()
	p, err := presets.First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// edit does one random edit.
func edit(s *session.Session, r *rand.Rand) {
	n := len(s.Pattern().Lanes[0].Pieces)
	s.Select(session.Select{Piece: r.IntN(n)})
	s.Seek(r.Float64() * s.Round())
	switch k := r.IntN(8); {
	case n > 6:
		_ = s.Delete()
	case k == 0:
		_ = s.Cut()
	case k == 1:
		_ = s.ThereAndBack()
	case k == 2:
		_ = s.Flip()
	case k == 3:
		_ = s.Delete()
	case k == 4:
		_ = s.Rename(fmt.Sprintf("Edit %d", r.IntN(1000)), "line\nline é\nline")
	default:
		_ = s.Try("prop", func(p engine.Piece) engine.Piece {
			p.Prop = frac.New(int64(r.IntN(100)-50), 10)
			return p
		})
	}
}

// dial does one edit that certainly changes something.
func dial(t *testing.T, s *session.Session, prop int64) {
	t.Helper()
	if err := s.Try("prop", func(p engine.Piece) engine.Piece { p.Prop = frac.Int(prop); return p }); err != nil {
		t.Fatal(err)
	}
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

func open(t *testing.T, s *Shelf, id string) Opened {
	t.Helper()
	o, err := s.Open(id)
	must(t, err)
	return o
}

func titles(t *testing.T, s *Shelf) string {
	t.Helper()
	entries, problems := s.List()
	if len(problems) > 0 {
		t.Fatalf("List() gives %v, want no problems", problems)
	}
	var out []string
	for _, e := range entries {
		out = append(out, e.Title)
	}
	return strings.Join(out, ", ")
}

func wantError(t *testing.T, what string, got, want error) {
	t.Helper()
	if !errors.Is(got, want) {
		t.Errorf("%s: %v, want %v", what, got, want)
	}
}
