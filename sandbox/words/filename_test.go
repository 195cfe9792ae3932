package words

import (
	"strings"
	"testing"
	"unicode/utf8"
)

func TestFileName(t *testing.T) {
	for _, tt := range []struct{ title, want string }{
		{"Half-moon", "half-moon"},
		{"Harbour square at dusk", "harbour-square-at-dusk"},
		{"  two   words  ", "two-words"},
		{"<b>Bold</b> & \"quoted\"", "b-bold-b-quoted"},
		{"../../etc/passwd", "etc-passwd"},
		{`C:\lamps\*.toml?`, "c-lamps-toml"},
		{".hidden", "hidden"},
		{"3 lamps, 2½ beats", "3-lamps-2-beats"},
		{"line\nbreak\x00zero\x7f", "line-break-zero"},
		{"Laternenzug Übung", "laternenzug-übung"},
		{"re\u0301pe\u0301tition", "re\u0301pe\u0301tition"}, // marks on their own
		{"\u0301a", "a"},
		{"हिन्दी दीपक", "हिन्दी-दीपक"},
		{"灯りの行列", "灯りの行列"},
		{"🏮 lantern 🏮️ walk", "lantern-walk"},
		{"", "pattern"},
		{"???", "pattern"},
		{"🏮", "pattern"},
		{"\xff\xfe", "pattern"}, // not UTF-8
		// Names that Windows gives to devices, with any extension
		// (Microsoft, "Naming Files, Paths, and Namespaces").
		{"CON", "con-pattern"},
		{"aux.", "aux-pattern"},
		{"Com1", "com1-pattern"},
		{"LPT 9", "lpt-9"},
		{"lpt9", "lpt9-pattern"},
		{"com10", "com10"},
		{"com", "com"},
		{"console", "console"},
		{"COM¹", "com"}, // ¹, which counts as 1 there, is no digit here
	} {
		if got := FileName(tt.title); got != tt.want {
			t.Errorf("FileName(%q) = %q, want %q", tt.title, got, tt.want)
		}
	}
}

// TestFileNameLong: names stay well below the 255 bytes that file systems
// take, whole letters at the end.
func TestFileNameLong(t *testing.T) {
	for _, title := range []string{
		strings.Repeat("a", 10_000), strings.Repeat("lantern ", 200), strings.Repeat("灯", 200),
		strings.Repeat("a ", 200), strings.Repeat("ü", 200), "e" + strings.Repeat("\u0301", 500),
	} {
		got := FileName(title)
		if n := len(got); n < 50 || n > 80 {
			t.Errorf("FileName(%.10q…) has %d bytes, want 50 to 80", title, n)
		}
		if !utf8.ValidString(got) || strings.HasSuffix(got, "-") {
			t.Errorf("FileName(%.10q…) = %q, want whole letters at its end", title, got)
		}
	}
}

// TestFileNameKeeps: a file's name, read as a title, gives itself again.
func TestFileNameKeeps(t *testing.T) {
	for _, title := range []string{"Half-moon", "<b>../../x</b>", "Laternenzug Übung", "CON", "हिन्दी दीपक", ""} {
		once := FileName(title)
		if got := FileName(once); got != once {
			t.Errorf("FileName(%q) = %q, want it unchanged", once, got)
		}
	}
}
