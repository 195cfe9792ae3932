package presets

import (
	"testing"

	"whorlbench/engine"
)

func TestBorrowed(t *testing.T) {
	first, err := First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	for _, tt := range []struct {
		name   string
		change func(p *engine.Pattern)
		want   bool
	}{
		{"as it is", func(*engine.Pattern) {}, false},
		{"other notes", func(p *engine.Pattern) { p.Notes = "mine" }, false},
		{"another tempo", func(p *engine.Pattern) { p.Tempo++ }, true},
		{"another tempo and title", func(p *engine.Pattern) { p.Tempo++; p.Title = "Mine" }, false},
	} {
		p := first
		if tt.change(&p); Borrowed(p) != tt.want {
			t.Errorf("%s: Borrowed() = %v, want %v", tt.name, !tt.want, tt.want)
		}
	}
}

func TestOwnNotes(t *testing.T) {
	for _, tt := range []struct {
		name   string
		change func(p *engine.Pattern)
		own    bool
	}{
		{"as built in", func(*engine.Pattern) {}, true},
		{"called something else", func(p *engine.Pattern) { p.Title = "Mine" }, true},
		{"changed", func(p *engine.Pattern) { p.Tempo++ }, false},
		{"changed and called something else", func(p *engine.Pattern) { p.Title = "Mine"; p.Tempo++ }, false},
		{"changed, with notes of its own", func(p *engine.Pattern) { p.Notes = "mine"; p.Tempo++ }, true},
		{"changed, with no notes", func(p *engine.Pattern) { p.Notes = ""; p.Tempo++ }, true},
	} {
		p, err := Library()[0].Pattern()
		if err != nil {
			t.Fatal(err)
		}
		tt.change(&p)
		if got := OwnNotes(p); (got == p.Notes) != tt.own || !tt.own && got != "" {
			t.Errorf("%s: OwnNotes() = %q, want the pattern's: %v", tt.name, got, tt.own)
		}
	}
}
