package card

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"whorlbench/engine/duet"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

const smooth = seam.Smooth

// mostFile is how many lines of a file a card has room for.
const mostFile = 30

// most returns how many pieces and how many steps of a hand a card has room
// for: fewer of a long pattern, whose pictures are many too. The file has the
// rest.
func (c *Card) most() int {
	switch hands := len(c.session.Tracks()); {
	case c.lesson.Moments == capture.EachBeat:
		return 12
	case hands > 1:
		return 6
	}
	return 8
}

// pictures has one for each beat, or petal, or join.
func (c *Card) pictures(h *writer) {
	w, l := &c.words.Card, c.lesson
	h.raw(`<section class="pictures">`)
	h.text("h2", "", [...]string{w.Beats, w.Tips, w.Joins}[l.Moments])
	said := []string{w.Reading}
	if len(c.session.Tracks()) > 1 {
		said = append(said, w.TwoHands)
	}
	if l.OneRound {
		said = append(said, w.OneRound)
	}
	if l.Moments != capture.EachBeat && c.options.Per == capture.PerBeat {
		said = append(said, fmt.Sprintf(w.TooMany, len(l.Beats)))
	}
	if len(l.Beats) < l.All {
		said = append(said, fmt.Sprintf(w.First, len(l.Beats), l.All))
	}
	h.text("p", "small", strings.Join(said, " "))
	h.raw(fmt.Sprintf(`<ol class="grid of-%d">`, columns(len(l.Beats))))
	for i, beat := range l.Beats {
		h.raw(`<li><figure>`)
		h.svg(func(b *strings.Builder) error { return l.WriteStep(b, i) })
		h.raw("<figcaption><b>")
		if l.Moments != capture.EachBeat { // a beat is a number itself
			h.text("span", "number", strconv.Itoa(i+1))
			h.raw(" ")
		}
		h.escaped(l.BeatText(i))
		h.raw("</b>")
		for _, line := range c.stances(beat) {
			h.text("span", "", line)
		}
		h.raw("</figcaption></figure></li>\n")
	}
	h.raw("</ol></section>\n")
}

// columns returns how many pictures of n stand in a row: large ones where they
// are few, else about as many in each row.
func columns(n int) int {
	switch {
	case n <= 4 || n == 7 || n == 8:
		return 4
	case n == 5 || n == 9 || n == 10:
		return 5
	}
	return 6
}

// stances says where hands and props are at a beat, and how two props go
// together there.
func (c *Card) stances(beat float64) []string {
	var said []string
	for _, t := range c.session.Tracks() {
		said = append(said, c.words.Stance(t, beat, c.options.Mirror))
	}
	if d := c.study.Duet; d != nil {
		const hair = 1e-9 // beats
		i := slices.IndexFunc(d.Props, func(s duet.Span) bool { return beat >= s.From-hair && beat < s.To-hair })
		if i >= 0 {
			s := d.Props[i]
			said = append(said, fmt.Sprintf(c.words.Card.Props, c.words.Direction(s.Direction), c.words.Timing(s.Timing)))
		}
	}
	return said
}

// made lists the pieces with what they are slices of, and how each goes over
// into the next.
func (c *Card) made(h *writer) {
	w := &c.words.Card
	labels := &c.words.Strip.JoinLabels
	c.turnPage(h, beforeMade)
	h.raw(`<section class="made">`)
	h.text("h2", "", w.Made)
	letters := c.joins()
	var verdicts [4]bool
	h.raw("<table><thead><tr>")
	for _, head := range []string{w.Piece, w.Name, w.Length, w.At, w.Join, labels.Turn, labels.Prop} {
		h.raw(`<th scope="col">`)
		h.escaped(head)
		h.raw("</th>")
	}
	h.raw("</tr></thead>")
	for lane, t := range c.session.Tracks() {
		h.raw(`<tbody><tr><th scope="rowgroup" colspan="7">`)
		h.escaped(c.words.HandName(t.Lane.Side))
		h.raw("</th></tr>")
		seams := c.session.Seams()[lane]
		for i, s := range seams[:min(len(seams), c.most())] {
			letter := c.words.Duet.NoSpan
			for _, j := range letters {
				if j.Lane == lane && j.Piece == i {
					letter = j.Letter
				}
			}
			verdicts[s.Verdict] = true
			lines := c.words.JoinLines(s)
			turn, prop := lines[3].Text, lines[5].Text
			h.raw("<tr>")
			for _, cell := range []string{
				strconv.Itoa(i + 1), c.words.Name(c.session.Figure(session.Select{Lane: lane, Piece: i})),
				words.Mixed(t.Legs[i].Piece.Length()), letter, c.words.Strip.Verdicts[s.Verdict], turn, prop,
			} {
				h.text("td", "", cell)
			}
			h.raw("</tr>")
		}
		if more := len(seams) - c.most(); more > 0 {
			h.raw(`<tr><td colspan="7">`)
			h.escaped(fmt.Sprintf(w.Rest, more))
			h.raw("</td></tr>")
		}
		h.raw("</tbody>")
	}
	h.raw("</table>")
	h.raw("<dl>")
	for i, there := range verdicts {
		if there {
			h.raw("<div>")
			h.text("dt", "", c.words.Strip.Verdicts[i])
			h.text("dd", "", c.words.Strip.Meanings[i])
			h.raw("</div>")
		}
	}
	h.raw("</dl></section>\n")
}

// stepByStep tells what to do in plain sentences.
func (c *Card) stepByStep(h *writer) {
	s := &c.steps
	c.turnPage(h, beforeSteps)
	h.raw(`<section class="steps">`)
	h.text("h2", "", c.words.Steps.Title)
	h.text("p", "", s.View)
	h.raw(fmt.Sprintf(`<div class="of-%d">`, len(s.Hands)))
	for _, hand := range s.Hands {
		h.raw(`<div class="hand">`)
		h.text("p", "which", hand.Head)
		h.text("p", "", hand.Start)
		steps := hand.Steps
		if most := c.most(); len(steps) > most {
			steps = append(slices.Clone(steps[:most]), c.words.Steps.NotAll)
		}
		for _, step := range steps {
			h.text("p", "step", step)
		}
		h.text("p", "", hand.Close)
		h.raw("</div>")
	}
	h.raw("</div>")
	h.text("p", "", strings.Join(append(slices.Clone(s.Together), s.Tempo, s.Care), " "))
	h.raw("</section>\n")
}

// hands tells how two hands go together.
func (c *Card) hands(h *writer) {
	d, w := c.study.Duet, c.words
	if d == nil {
		return
	}
	h.raw("<section>")
	h.text("h2", "", w.Told.Hands)
	for _, line := range []string{w.SpansSaid(w.Duet.Props, d.Props), w.SpansSaid(w.Duet.Hands, d.Hands), w.TangleSaid(d)} {
		h.text("p", "", line)
	}
	if cautions := w.DuetCautions(d); len(cautions) > 0 {
		h.text("p", "care", strings.Join(append(cautions, w.Card.Counted), " "))
	}
	h.raw("</section>\n")
}

// tempo tells at which tempos a tether stays taut and the room that is needed.
func (c *Card) tempo(h *writer) {
	w, p := c.words, c.pattern()
	h.raw("<section>")
	h.text("h2", "", w.Card.Room)
	var said [][]words.Line
	for i, t := range c.session.Tracks() {
		labels := &w.Tether.Labels
		var lines []words.Line
		for _, l := range w.TetherLines(t, &c.study.Tethers[i], p.Tempo) {
			if l.Name == labels.Tether || l.Name == labels.Speed || l.Name == labels.Room {
				lines = append(lines, l)
			}
		}
		lines[0].Text += " " + fmt.Sprintf(w.Card.Tether, words.Number(t.Legs[0].Tether()*100, 1))
		said = append(said, lines)
	}
	c.perHand(h, said)
	h.raw("</section>")
}

// care has the cautions.
func (c *Card) care(h *writer) {
	w := c.words
	h.raw(`<section class="care">`)
	h.text("h2", "", w.Page.SafetyTitle)
	h.raw("<ul>")
	for _, line := range w.Page.Safety {
		h.text("li", "", line)
	}
	h.raw("</ul></section>")
}

// tempoOfTwo has tempo and room of two hands, for which there is no room beside
// the large picture.
func (c *Card) tempoOfTwo(h *writer) {
	if len(c.session.Tracks()) < 2 {
		return
	}
	h.raw(`<div class="tempo-of-two">`)
	c.tempo(h)
	h.raw("</div>\n")
}

// notes has the notes of the file, paragraph by paragraph.
func (c *Card) notes(h *writer) {
	notes := strings.TrimSpace(c.pattern().Notes)
	if notes == "" {
		return
	}
	h.raw("<section>")
	h.text("h2", "", c.words.Page.Notes)
	for para := range strings.SplitSeq(notes, "\n") {
		if para = strings.TrimSpace(para); para != "" {
			h.text("p", "", para)
		}
	}
	h.raw("</section>\n")
}

// fileText has the link or, where others could not open it, the file.
func (c *Card) fileText(h *writer) {
	w := &c.words.Card
	name := words.FileName(c.pattern().Title) + ".toml"
	h.raw(`<section class="file">`)
	if c.url == "" {
		h.text("h2", "", w.File)
	}
	switch {
	case c.url != "":
		h.text("h2", "", c.words.Share.Dialog.Link)
		h.raw("<p class=\"link\"><a")
		h.attr("href", c.url)
		h.raw(">")
		h.escaped(c.url)
		h.raw("</a></p>")
	case strings.Count(c.file, "\n") > mostFile:
		h.text("p", "", fmt.Sprintf(w.NoLink, name))
	default:
		h.text("p", "", fmt.Sprintf(w.NoLinkFile, name))
		h.raw(`<div class="columns">`)
		for block := range strings.SplitSeq(strings.TrimSpace(c.file), "\n\n") { // each table of the file stays whole
			h.text("pre", "", block)
		}
		h.raw("</div>")
	}
	h.raw("</section>\n")
}
