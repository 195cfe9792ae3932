package presets

import (
	"bytes"
	"fmt"
	"strings"
	"unicode/utf8"

	"whorlbench/sandbox/words"
)

// byteOrderMark may stand at the beginning of a text and is passed over.
const byteOrderMark = "\uFEFF"

// source is a file's text. Offsets are in bytes of the text, which has no
// byte order mark.
type source struct {
	name string
	text string
}

// newSource takes a file's bytes as text. What is no text at all, or too
// much, is refused here, before any parsing.
func newSource(name string, data []byte) (*source, error) {
	w := &words.Said.Preset
	s := &source{name: name}
	if len(data) > MaxFileSize {
		return nil, s.refuse(0, fmt.Sprintf(w.TooLarge, len(data), MaxFileSize))
	}
	data = bytes.TrimPrefix(data, []byte(byteOrderMark))
	if len(data) == 0 {
		return nil, s.refuse(0, w.Empty)
	}
	s.text = string(data)
	bad, zero := notUTF8(s.text), strings.IndexByte(s.text, 0)
	switch {
	case zero >= 0 && (bad < 0 || zero < bad):
		return nil, s.refuse(zero, w.ZeroByte)
	case bad >= 0:
		return nil, s.refuse(bad, fmt.Sprintf(w.NotUTF8, s.text[bad]))
	}
	return s, nil
}

// notUTF8 returns the offset of the first byte that is not UTF-8, or −1.
func notUTF8(s string) int {
	if utf8.ValidString(s) {
		return -1
	}
	for i, r := range s {
		if r != utf8.RuneError {
			continue
		}
		if _, n := utf8.DecodeRuneInString(s[i:]); n == 1 {
			return i
		}
	}
	return -1
}

// line returns the line, from 1, of an offset.
func (s *source) line(off int) int { return strings.Count(s.text[:off], "\n") + 1 }

// position returns line and column, in characters from 1, of an offset.
func (s *source) position(off int) (line, col int) {
	off = min(off, len(s.text))
	start := strings.LastIndexByte(s.text[:off], '\n') + 1
	return s.line(off), utf8.RuneCountInString(s.text[start:off]) + 1
}

// refuse returns the one problem of a file that is refused as a whole.
func (s *source) refuse(off int, what string) error {
	line, col := s.position(off)
	return Errors{{File: s.name, Line: line, Col: col, What: what}}
}
