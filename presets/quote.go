package presets

import (
	"fmt"
	"strings"
)

// quote writes s as a basic TOML string on one line.
func quote(s string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range s {
		if r == '"' {
			b.WriteString(`\"`)
			continue
		}
		escape(&b, r)
	}
	b.WriteByte('"')
	return b.String()
}

// quoteLines writes s as a TOML string over several lines if it has some.
func quoteLines(s string) string {
	if !strings.Contains(s, "\n") {
		return quote(s)
	}
	var b strings.Builder
	b.WriteString("\"\"\"\n") // this line break is not part of the string
	row := 0                  // quotation marks in a row
	for i, r := range s {
		switch {
		case r == '\n':
			b.WriteByte('\n')
		case r == '"' && (row == 2 || i == len(s)-1):
			// A third one in a row, and one before the closing three,
			// would be taken for the end.
			b.WriteString(`\"`)
			row = 0
			continue
		case r == '"':
			b.WriteByte('"')
			row++
			continue
		default:
			escape(&b, r)
		}
		row = 0
	}
	b.WriteString(`"""`)
	return b.String()
}

// escape writes any character but a quotation mark so that it survives in a
// basic string, and controls so that they can be seen.
func escape(b *strings.Builder, r rune) {
	switch {
	case r == '\\':
		b.WriteString(`\\`)
	case r == '\b':
		b.WriteString(`\b`)
	case r == '\t':
		b.WriteString(`\t`)
	case r == '\n':
		b.WriteString(`\n`)
	case r == '\f':
		b.WriteString(`\f`)
	case r == '\r':
		b.WriteString(`\r`)
	case r < 0x20 || r >= 0x7F && r < 0xA0:
		fmt.Fprintf(b, `\u%04X`, r)
	default:
		b.WriteRune(r)
	}
}
