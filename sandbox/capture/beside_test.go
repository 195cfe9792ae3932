package capture

import (
	"slices"
	"strings"
	"testing"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/words"
)

// textsOf are the texts of a list.
func textsOf(l *display.List) (out []string) {
	for _, m := range l.Marks {
		if m.Kind == display.Text {
			out = append(out, m.Text)
		}
	}
	return out
}

// TestTiming: beat by beat a picture says how the two props stand to each
// other, in a frame and on a sheet, and with one hand nothing.
func TestTiming(t *testing.T) {
	timing := func(o *Options) { o.Width, o.Height, o.Show.Timing = 400, 400, true }
	for _, tt := range []struct {
		id   string
		beat float64
		want string // by the patterns' own figures: props that turn 1 and −1, 180° apart, are split and opposite
	}{
		{"two-bell-buoys", 0, "Props: same, split"},
		{"two-bell-buoys", 3.99, "Props: same, split"},
		{"two-bell-buoys", 4, "Props: same, split"}, // the next round
		{"pier-end", 0, "Props: opposite, together"},
		{"pier-end", 1.5, "Props: opposite, quarter"},
		{"half-moon", 1, ""},
	} {
		take := libraryTake(t, tt.id, timing)
		a, err := take.artist()
		if err != nil {
			t.Fatal(err)
		}
		var frame, cell display.List
		a.drawMoving(&frame, tt.beat)
		a.cellFigure(&cell, a.frame(), tt.beat)
		for _, l := range []*display.List{&frame, &cell} {
			if got := textsOf(l); slices.Contains(got, tt.want) != (tt.want != "") {
				t.Errorf("%s at beat %v: %q, want %q", tt.id, tt.beat, got, tt.want)
			}
		}
	}
}

// TestCaption: a caption is written below, as many lines as there is room for,
// of a frame, a strobe and a sheet, and takes its room from the figure.
func TestCaption(t *testing.T) {
	for _, tt := range []struct {
		caption string
		lines   int
		last    string
	}{
		{"", 0, ""},
		{"Turn the hand, not the prop", 1, "Turn the hand, not the prop"},
		{strings.Repeat("word ", 20), 3, ""},
		{strings.Repeat("word ", 60), mostLines, "…"},
	} {
		take := libraryTake(t, "half-moon", func(o *Options) { o.Show.Caption = strings.TrimSpace(tt.caption) })
		a, err := take.artist()
		if err != nil {
			t.Fatal(err)
		}
		lines := a.captionLines(360)
		if len(lines) != tt.lines || tt.last != "" && !strings.HasSuffix(lines[len(lines)-1], tt.last) {
			t.Errorf("%.30q: %q, want %d lines, the last ending in %q", tt.caption, lines, tt.lines, tt.last)
		}
		for _, line := range lines {
			if !strings.HasPrefix(tt.caption, "Turn") && a.faces.Width(line, 15, false) > 360 {
				t.Errorf("%q is too wide", line)
			}
		}
		sheet, err := a.sheet()
		if err != nil {
			t.Fatal(err)
		}
		for name, p := range map[string]*picture{"frame": a.still(), "strobe": a.strobe(), "sheet": sheet} {
			if got := textsOf(&p.list); tt.lines > 0 != slices.ContainsFunc(got, func(s string) bool {
				return s != "" && strings.HasPrefix(tt.caption, strings.TrimSuffix(s, " …")) && len(s) > 3
			}) {
				t.Errorf("%s with the caption %.30q says %q", name, tt.caption, got)
			}
		}
		if r := a.rows(); r.figure.H+captionHeight(lines) != 360 {
			t.Errorf("the figure is %v high beside %d lines", r.figure.H, tt.lines)
		}
	}
	o := Defaults()
	if o.Show.Caption = strings.Repeat("ä", 301); o.Check(&words.English) == nil || !strings.Contains(o.Check(&words.English).Error(), "caption: found 301 characters, allowed at most 300") {
		t.Errorf("301 characters: %v", o.Check(&words.English))
	}
}
