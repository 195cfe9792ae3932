package engine_test

import (
	"testing"

	"whorlbench/engine"
)

// TestEqual changes one thing at a time.
func TestEqual(t *testing.T) {
	base := func() engine.Pattern { return pattern(lane(0.6, 90, stroke(circle(0.6), "1", "-3", "1", "4"))) }
	for name, change := range map[string]func(p *engine.Pattern){
		"title":      func(p *engine.Pattern) { p.Title = "Half-moon" },
		"notes":      func(p *engine.Pattern) { p.Notes = "slowly" },
		"tempo":      func(p *engine.Pattern) { p.Tempo = 91 },
		"performer":  func(p *engine.Pattern) { p.Performer.Rigid = true },
		"lanes":      func(p *engine.Pattern) { p.Lanes = append(p.Lanes, p.Lanes[0]) },
		"side":       func(p *engine.Pattern) { p.Lanes[0].Side = engine.Left },
		"plane":      func(p *engine.Pattern) { p.Lanes[0].Plane = engine.Floor },
		"offset":     func(p *engine.Pattern) { p.Lanes[0].Offset = 0.1 },
		"centre":     func(p *engine.Pattern) { p.Lanes[0].Centre = 0.1 },
		"tether":     func(p *engine.Pattern) { p.Lanes[0].Tether = 0.61 },
		"lane arm":   func(p *engine.Pattern) { p.Lanes[0].ArmAt = 91 },
		"lane prop":  func(p *engine.Pattern) { p.Lanes[0].PropAt = 91 },
		"pieces":     func(p *engine.Pattern) { p.Lanes[0].Pieces = append(p.Lanes[0].Pieces, named("1")) },
		"path":       func(p *engine.Pattern) { p.Lanes[0].Pieces[0].Path.Kind = engine.OnEllipse },
		"arm":        func(p *engine.Pattern) { p.Lanes[0].Pieces[0].Arm = fr("1.000000000000000000001") },
		"prop":       func(p *engine.Pattern) { p.Lanes[0].Pieces[0].Prop = fr("3") },
		"cycles":     func(p *engine.Pattern) { p.Lanes[0].Pieces[0].Cycles = fr("2") },
		"beats":      func(p *engine.Pattern) { p.Lanes[0].Pieces[0].Beats = fr("5") },
		"from":       func(p *engine.Pattern) { p.Lanes[0].Pieces[0].From = fr("1/3") },
		"to":         func(p *engine.Pattern) { p.Lanes[0].Pieces[0].To = fr("1/3") },
		"placed arm": func(p *engine.Pattern) { p.Lanes[0].Pieces[0].ArmAt = engine.Some(0) },
		"placed prop": func(p *engine.Pattern) {
			p.Lanes[0].Pieces[0].PropAt = engine.Some(0)
		},
		"law":        func(p *engine.Pattern) { p.Lanes[0].Pieces[0].Law = engine.EaseEnd },
		"swing":      func(p *engine.Pattern) { p.Lanes[0].Pieces[0].Swing = 10 },
		"swing back": func(p *engine.Pattern) { p.Lanes[0].Pieces[0].SwingBack = true },
	} {
		p, q := base(), base()
		if !p.Equal(q) || !q.Equal(p) {
			t.Fatalf("Equal = false for two alike")
		}
		change(&q)
		if p.Equal(q) || q.Equal(p) {
			t.Errorf("%s changed: Equal = true, want false", name)
		}
	}
}

func TestPinned(t *testing.T) {
	for _, test := range []struct {
		name   string
		change func(p *engine.Piece)
		want   bool
	}{
		{"as it is", func(*engine.Piece) {}, false},
		{"placed by its arm", func(p *engine.Piece) { p.ArmAt = engine.Some(90) }, false},
		{"placed by its prop, where it is anyway", func(p *engine.Piece) { p.PropAt = engine.Some(90) }, true},
		{"swinging", func(p *engine.Piece) { p.Swing = 1 }, true},
		{"from the other end, but not swinging", func(p *engine.Piece) { p.SwingBack = true }, false},
	} {
		l := lane(0.6, 90, named("1"), named("2"))
		test.change(&l.Pieces[1])
		if got := l.Pinned(); got != test.want {
			t.Errorf("%s: Pinned() = %v, want %v", test.name, got, test.want)
		}
		if got := engine.NewTrack(l).Pinned; got != test.want {
			t.Errorf("%s: NewTrack().Pinned = %v, want %v", test.name, got, test.want)
		}
	}
}

func TestLengths(t *testing.T) {
	part := stroke(circle(0.6), "1", "3", "2", "6")
	part.From, part.To = fr("1/4"), fr("2/3")
	l := lane(0.6, 90, named("1/3"), part, named("0.1"))
	for i, want := range []string{"0", "1/3", "17/6", "44/15"} {
		if got := l.Starts()[i]; !got.Equal(fr(want)) {
			t.Errorf("Starts()[%d] = %v, want %s", i, got, want)
		}
	}
	if got, want := l.Beats(), fr("44/15"); !got.Equal(want) {
		t.Errorf("Beats() = %v, want %v", got, want)
	}
	if got, want := part.PropTurns(), fr("5/2"); !got.Equal(want) {
		t.Errorf("PropTurns() = %v, want %v", got, want)
	}
	if got, want := part.Kept(), fr("5/12"); !got.Equal(want) {
		t.Errorf("Kept() = %v, want %v", got, want)
	}
}
