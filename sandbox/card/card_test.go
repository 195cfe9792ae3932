package card_test

import (
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/card"
	"whorlbench/sandbox/words"
)

const halfMoon = `format = 1
title = "Half-moon"
tempo = 120
[[hand]]
side = "right"
[[hand.piece]]
arm = 1
prop = 1
cycles = 0.5
beats = 2
[[hand.piece]]
arm = -1
prop = 3
cycles = 0.5
beats = 2
`

func pattern(t *testing.T, toml string) engine.Pattern {
	t.Helper()
	p, err := presets.Decode("test", []byte(toml))
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// document returns the card of a pattern, which must be well-formed.
func document(t *testing.T, p engine.Pattern, o card.Options) string {
	t.Helper()
	c, err := card.New(p, o, &words.English)
	if err != nil {
		t.Fatal(err)
	}
	html, err := c.HTML()
	if err != nil {
		t.Fatal(err)
	}
	d := xml.NewDecoder(strings.NewReader(string(html)))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return string(html)
		}
		if err != nil {
			t.Fatalf("%s: not well-formed: %v", p.Title, err)
		}
		if e, ok := token.(xml.StartElement); ok {
			for _, a := range e.Attr {
				if e.Name.Local == "script" || a.Name.Local == "src" || a.Name.Local == "style" || strings.HasPrefix(a.Name.Local, "on") {
					t.Errorf("%s: <%s %s> on a card", p.Title, e.Name.Local, a.Name.Local)
				}
			}
		}
	}
}

// TestStances: the C-cap of extension and four-petal antispin, worked out by
// hand. Down the left: the arm goes from 90° by a quarter turn a beat, the prop
// with it. Back up: the arm −90° a beat from 270°, the prop +270° a beat from
// 270°: at beat 3 the arm is at 180° and the prop at 540°, which is 180°.
func TestStances(t *testing.T) {
	text := document(t, pattern(t, halfMoon), card.Options{})
	at := 0
	for i, want := range []string{"R: hand top, prop up", "R: hand left, prop left", "R: hand bottom, prop down", "R: hand left, prop left"} {
		k := strings.Index(text[at:], "<span>"+want+"</span>")
		if k < 0 {
			t.Fatalf("beat %d: no %q after %d", i, want, at)
		}
		at += k + 1
	}
	if n := strings.Count(text, "<li><figure>"); n != 4 {
		t.Errorf("%d pictures of 4 beats", n)
	}
	mirrored := document(t, pattern(t, halfMoon), card.Options{Mirror: true})
	if !strings.Contains(mirrored, "R: hand right, prop right") || strings.Contains(mirrored, "R: hand left") {
		t.Error("in a mirror the hand does not go down the right side")
	}
}

// TestEscaped: what a file says is text and nothing else.
func TestEscaped(t *testing.T) {
	p := pattern(t, halfMoon)
	p.Title, p.Notes = `<script>"A" & 'B'</script>`, "one\x01two\n<img src=x onerror=y>"
	text := document(t, p, card.Options{})
	if strings.Contains(text, "<script") || strings.Contains(text, "<img") || !strings.Contains(text, "&lt;img src=x onerror=y&gt;") {
		t.Error("title or notes are not escaped")
	}
}

// TestLink: with a public address the card has link and code, without one the
// file instead, and never a link that only this device could open.
func TestLink(t *testing.T) {
	p := pattern(t, halfMoon)
	const public = "https://spin.example/bench/"
	if text := document(t, p, card.Options{Public: public}); !strings.Contains(text, `href="`+public+`#w1.`) || !strings.Contains(text, `class="code"`) {
		t.Error("no link or no code with a public address")
	}
	for _, page := range []string{"", "http://127.0.0.1:8377/"} {
		text := document(t, p, card.Options{Page: page})
		if strings.Contains(text, "href=") || strings.Contains(text, `class="code"`) || !strings.Contains(text, "[[hand.piece]]") {
			t.Errorf("opened at %q: a link or a code, or no file", page)
		}
	}
}

// TestLibrary: every built-in pattern has a card, well-formed, whose own words
// are those of the file.
func TestLibrary(t *testing.T) {
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		text := document(t, p, card.Options{Public: "https://spin.example/"})
		if n := strings.Count(text, "<li><figure>"); n < 1 || n > 24 {
			t.Errorf("%s: %d pictures, want 1 to 24", e.ID, n)
		}
		if strings.Contains(text, "url(") || strings.Contains(text, "%!") {
			t.Errorf("%s: a mask or a foreign address, or a place without its value", e.ID)
		}
	}
}

// TestPages: the second page begins with the title, before the steps where the
// table has room on the first, else before the table; never between the steps.
func TestPages(t *testing.T) {
	const title, made, steps = `class="running"`, `class="made"`, `class="steps"`
	for id, want := range map[string]string{"half-moon": steps, "swan": made, "gangway-and-bell": steps} {
		for _, e := range presets.Library() {
			if e.ID != id {
				continue
			}
			p, err := e.Pattern()
			if err != nil {
				t.Fatal(err)
			}
			text := document(t, p, card.Options{})
			if n := strings.Count(text, title); n != 1 {
				t.Fatalf("%s: %d second pages", id, n)
			}
			_, rest, _ := strings.Cut(text, title)
			if _, class, _ := strings.Cut(rest, "<section "); !strings.HasPrefix(class, want) {
				t.Errorf("%s: the second page begins with %.20q, want %q", id, class, want)
			}
		}
	}
}

// TestFileText: the file on the card leaves out the notes, which stand there
// already, and keeps each of its tables whole.
func TestFileText(t *testing.T) {
	p := pattern(t, halfMoon)
	p.Notes = "Soft props first."
	text := document(t, p, card.Options{})
	if n := strings.Count(text, p.Notes); n != 1 {
		t.Errorf("the notes stand there %d times", n)
	}
	if n := strings.Count(text, "<pre>[[hand.piece]]\narm = "); n != 2 {
		t.Errorf("%d pieces stand whole, want 2", n)
	}
}

// TestLong: a pattern with too many beats has fewer pictures, and says so.
func TestLong(t *testing.T) {
	p := pattern(t, halfMoon)
	for range 4 {
		p.Lanes[0].Pieces = append(p.Lanes[0].Pieces, p.Lanes[0].Pieces...)
	}
	text := document(t, p, card.Options{})
	if n := strings.Count(text, "<li><figure>"); n != 12 {
		t.Errorf("%d pictures, want 12", n)
	}
	if !strings.Contains(text, "There is room for 12 pictures") {
		t.Error("it is not said why")
	}
}
