package study_test

import (
	"strings"
	"testing"

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
	if len(k.Wholes) != 2 || !k.Hybrid.Yes {
		t.Errorf("wholes %d, hybrid %v, want 2 and yes", len(k.Wholes), k.Hybrid.Yes)
	}
}
