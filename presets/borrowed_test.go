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
	p, err := First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	if got := OwnNotes(p); got != "" {
		t.Errorf("the built-in pattern's notes are taken for one's own: %q", got)
	}
	if p.Notes = "mine"; OwnNotes(p) != "mine" {
		t.Errorf("OwnNotes() = %q, want mine", OwnNotes(p))
	}
}
