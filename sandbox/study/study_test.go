package study_test

import (
	"strings"
	"testing"
	"time"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/words"
)

func open(t *testing.T, id string) *session.Session {
	t.Helper()
	for _, e := range presets.Library() {
		if e.ID == id {
			p, err := e.Pattern()
			if err != nil {
				t.Fatal(err)
			}
			return session.New(p)
		}
	}
	t.Fatalf("no pattern %q", id)
	return nil
}

func finish(k *study.Study, s *session.Session) {
	for k.Of(s); !k.Done(); {
		k.Step(s)
	}
}

// An edit makes everything that was known of the pattern unknown again.
func TestAnEditIsStudiedAnew(t *testing.T) {
	s := open(t, "half-moon")
	var k study.Study
	finish(&k, s)
	if got := k.Line(&words.English, s); !strings.HasPrefix(got, "C-cap") {
		t.Errorf("Line() = %q, want a C-cap", got)
	}
	if err := s.Delete(); err != nil {
		t.Fatal(err)
	}
	if k.Of(s); k.Named() || k.Done() || k.Line(&words.English, s) != "" {
		t.Error("after an edit the study still knows what it knew before")
	}
	finish(&k, s)
	if got := k.Line(&words.English, s); strings.HasPrefix(got, "C-cap") {
		t.Errorf("Line() of half of it = %q", got)
	}
}

func TestTwoHandsAreReadTogether(t *testing.T) {
	s := open(t, "pier-end")
	var k study.Study
	finish(&k, s)
	if len(k.Tethers) != 2 || k.Duet == nil || !k.Duet.Whole {
		t.Errorf("tethers %d, hands read %v, want 2 and wholly", len(k.Tethers), k.Duet)
	}
	if len(k.Wholes) != 2 || !k.Hybrid.Yes {
		t.Errorf("wholes %d, hybrid %v, want 2 and yes", len(k.Wholes), k.Hybrid.Yes)
	}
}

// BenchmarkSlice tells how long a drag would wait for one step, next to
// all of them: fifty pieces, two hands.
func BenchmarkSlice(b *testing.B) {
	p, err := presets.First().Pattern()
	if err != nil {
		b.Fatal(err)
	}
	l := p.Lanes[0]
	for len(l.Pieces) < 50 {
		l.Pieces = append(l.Pieces, l.Pieces[:2]...)
	}
	p.Lanes = []engine.Lane{l, session.SecondHand(l, session.SplitOpposite)}
	s := session.New(p)
	s.Seams()
	b.Run("all", func(b *testing.B) {
		for b.Loop() {
			var k study.Study
			finish(&k, s)
		}
	})
	b.Run("longest step", func(b *testing.B) {
		var worst, steps float64
		for b.Loop() {
			var k study.Study
			for k.Of(s); !k.Done(); steps++ {
				from := time.Now()
				k.Step(s)
				worst = max(worst, time.Since(from).Seconds())
			}
		}
		b.ReportMetric(worst*1e3, "ms/longest")
		b.ReportMetric(steps/float64(b.N), "steps")
	})
}

// In a list no two single figures of the library bear one name.
func TestListedTellsModesApart(t *testing.T) {
	seen := map[string]string{}
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		if e.Family == "antispin" || e.Family == "in-spin" || e.Family == "stars" {
			name := study.Listed(words.Said, session.New(p))
			if other := seen[name]; other != "" {
				t.Errorf("%s and %s are both called %q", other, e.ID, name)
			}
			seen[name] = e.ID
		}
	}
	if seen["Four-petal antispin flower, box mode"] != "harbour-square" {
		t.Errorf("the names are %v", seen)
	}
}
