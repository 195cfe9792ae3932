package card

import (
	"html"
	"strings"
	"unicode/utf8"
)

// writer writes HTML that is XML too. What comes from outside goes through
// escaped.
type writer struct {
	strings.Builder
	err error
}

func (h *writer) raw(text string) { h.WriteString(text) }

// escaped writes a text of any characters; those that have no place in a
// document are written as blanks.
func (h *writer) escaped(text string) {
	h.raw(html.EscapeString(strings.Map(func(r rune) rune {
		if r < ' ' && r != '\n' || r == utf8.RuneError || r == 0xfffe || r == 0xffff {
			return ' '
		}
		return r
	}, text)))
}

func (h *writer) attr(name, value string) {
	h.raw(" " + name + `="`)
	h.escaped(value)
	h.raw(`"`)
}

// text writes an element that holds a text, of a class if there is one.
func (h *writer) text(element, class, text string) {
	h.raw("<" + element)
	if class != "" {
		h.attr("class", class)
	}
	h.raw(">")
	h.escaped(text)
	h.raw("</" + element + ">")
}

// svg writes what a painter writes.
func (h *writer) svg(paint func(b *strings.Builder) error) {
	if err := paint(&h.Builder); err != nil && h.err == nil {
		h.err = err
	}
}
