// Package card makes the lesson card of a pattern: one or two pages to print,
// as an HTML document that needs nothing else. It has pictures, steps, joins,
// timing, tempos, cautions, and the link with its code.
//
// It is made by the command line and by the page's second program; a lesson's
// paper is no business of the program on the screen.
package card

import (
	_ "embed"
	"fmt"
	"strings"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/presets/link"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/qr"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/study"
	"whorlbench/sandbox/words"
)

// Style is how a card looks, on paper and on a screen. The document has it
// within; a page that shows the article alone brings it along.
//
//go:embed card.css
var Style string

// StyleName is the file that a built page has Style in.
const StyleName = "lesson-card.css"

// Options say how a card is made.
type Options struct {
	Per    capture.Per // what has a picture each, where there is room for either
	Mirror bool        // as in a learner's mirror
	// Page is where the bench was opened, Public the address by which others
	// reach it; either may be empty.
	Page, Public string
}

// Card is a pattern with all that there is to say on its card.
type Card struct {
	words   *words.Table
	options Options
	session *session.Session
	study   study.Study
	lesson  *capture.Lesson
	steps   words.Instructions
	file    string // as TOML
	url     string // empty where others cannot open it
	code    qr.Code
	noCode  string // why a link has no code
}

// New works out a pattern's card. Its errors are those of presets.Encode and of
// capture.NewLesson.
func New(p engine.Pattern, o Options, w *words.Table) (*Card, error) {
	bare := p
	bare.Notes = "" // they stand on the card by themselves
	file, err := presets.Encode(bare)
	if err != nil {
		return nil, err
	}
	c := &Card{words: w, options: o, session: session.New(p), file: string(file), steps: w.StepByStep(p, o.Mirror)}
	if c.lesson, err = capture.NewLesson(p, o.Per, o.Mirror, w); err != nil {
		return nil, err
	}
	for c.study.Of(c.session); !c.study.Done(); {
		c.study.Step(c.session)
	}
	shared, err := link.Share(p, o.Page, o.Public)
	if err == nil && shared.NoCode == nil {
		c.url = shared.URL
		if c.code, err = qr.Of(shared); err != nil {
			c.noCode = err.Error()
		}
	}
	return c, nil
}

// FileName returns a name for the document.
func (c *Card) FileName() string { return FileName(c.pattern().Title) }

// FileName returns a name for the document of a pattern's card.
func FileName(title string) string { return words.FileName(title) + "-card.html" }

func (c *Card) pattern() engine.Pattern { return c.session.Pattern() }

// HTML returns the document, which is well-formed XML too.
func (c *Card) HTML() ([]byte, error) {
	var h writer
	h.raw("<!doctype html>\n<html")
	h.attr("lang", c.words.Lang)
	h.raw(` class="card-alone"><head><meta charset="utf-8"/><meta name="viewport" content="width=device-width, initial-scale=1"/>`)
	h.raw(`<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'"/>`)
	h.text("title", "", c.pattern().Title)
	h.raw("<style>\n" + Style + "</style></head><body>\n<article class=\"lesson-card\"")
	h.attr("lang", c.words.Lang)
	h.raw(">\n")
	for _, part := range []func(*writer){c.head, c.top, c.pictures, c.made, c.stepByStep, c.hands, c.tempoOfTwo, c.notes, c.fileText} {
		part(&h)
	}
	h.raw("</article></body></html>\n")
	return []byte(h.String()), h.err
}

// head has the title and what the whole is.
func (c *Card) head(h *writer) {
	w, p := &c.words.Card, c.pattern()
	h.raw("<header><div>")
	h.text("p", "kind", w.Head)
	h.text("h1", "", p.Title)
	h.text("p", "lead", c.study.Line(c.words, c.session)+".")
	h.text("p", "", fmt.Sprintf(w.Sub, fmt.Sprintf(w.Tempo, words.Number(p.Tempo, 1)), c.words.Closing(p.Tempo, c.session.Tracks()...)))
	h.raw("</div></header>\n")
}

// top has the large picture, and beside it by which clauses the whole is what it
// is, and cautions; where it is one hand's, tempo and room too.
func (c *Card) top(h *writer) {
	h.raw(fmt.Sprintf(`<div class="top hands-%d"><figure class="round">`, len(c.session.Tracks())))
	h.svg(func(b *strings.Builder) error { return c.lesson.WriteRound(b, c.joins()) })
	h.text("figcaption", "", c.words.Card.Round)
	h.raw("</figure><div><section>")
	c.codeFigure(h)
	h.text("h2", "", c.words.Told.Called)
	k := &c.study
	if len(k.Wholes) > 1 {
		c.lines(h, called(c.words.HybridDefinition(k.Hybrid)))
	}
	var said [][]words.Line
	for i := range k.Wholes {
		said = append(said, called(c.words.Definitions(&k.Wholes[i])...))
	}
	c.perHand(h, said)
	h.raw("</section>")
	if len(k.Wholes) == 1 {
		c.tempo(h)
	}
	c.care(h)
	h.raw("</div></div>\n")
}

// codeFigure has the code of the link, or why it has none.
func (c *Card) codeFigure(h *writer) {
	if c.url == "" {
		return
	}
	h.raw(`<figure class="code">`)
	if c.noCode == "" {
		side := c.code.Width()
		h.raw(fmt.Sprintf(`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %d %d" role="img"><title>`, side, side))
		h.escaped(fmt.Sprintf(c.words.Share.Link.CodeLabel, c.pattern().Title))
		h.raw(fmt.Sprintf(`</title><rect width="%d" height="%d" fill="#fff"/><path fill="#000" d="%s"/></svg>`, side, side, c.code.Path()))
		h.text("figcaption", "", c.words.Share.Dialog.CodeIntro)
	} else {
		h.text("figcaption", "", c.noCode)
	}
	h.raw("</figure>")
}

// called returns what the definitions that hold say, or those of the whole
// where none does.
func called(defs ...words.Definition) []words.Line {
	var yes, no []words.Line
	for i, d := range defs {
		line := words.Line{Name: d.Name, Text: d.Because}
		if d.Yes {
			yes = append(yes, line)
		} else if i <= words.DefBroad {
			no = append(no, line)
		}
	}
	if len(yes) > 0 {
		return yes
	}
	return no
}

// perHand writes what is said of each hand, once where it is the very same.
func (c *Card) perHand(h *writer, said [][]words.Line) {
	tracks := c.session.Tracks()
	switch {
	case len(said) == 1:
		c.lines(h, said[0])
	case fmt.Sprint(said[0]) == fmt.Sprint(said[1]):
		h.text("h3", "", c.words.Told.BothHands)
		c.lines(h, said[0])
	default:
		for i, s := range said {
			h.text("h3", "", c.words.HandName(tracks[i].Lane.Side))
			c.lines(h, s)
		}
	}
}

func (c *Card) lines(h *writer, lines []words.Line) {
	h.raw("<dl>")
	for _, l := range lines {
		h.raw("<div>")
		h.text("dt", "", l.Name)
		h.text("dd", "", l.Text)
		h.raw("</div>")
	}
	h.raw("</dl>")
}

// joins are the places that have a letter: those between a lane's pieces, and
// what does not go over smoothly.
func (c *Card) joins() []scene.Joined {
	var out []scene.Joined
	for lane, seams := range c.session.Seams() {
		for i, s := range seams {
			if i < c.most() && (len(seams) > 1 || s.Verdict != smooth) && len(out) < len(alphabet) {
				out = append(out, scene.Joined{Lane: lane, Piece: i, Letter: alphabet[len(out) : len(out)+1]})
			}
		}
	}
	return out
}

// alphabet has the letters for joins; those of the hands are not among them.
const alphabet = "ABCDEFGHJKMNPQSTUVWXYZ"
