package bench

import (
	"fmt"
	"strconv"
	"strings"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/words"
)

// ask opens the question that belongs to a dial.
func (b *Bench) ask(d *dial) {
	w := &b.Words.Bench
	q := Question{
		ID:    d.id,
		Label: d.name.Label,
		Hint:  fmt.Sprintf(w.AskNumber, fmt.Sprintf(d.name.Reads, ""), words.Value(d.min), words.Value(d.max)),
		Value: plain(d.get(b.Session)),
	}
	if d.id == idTempo {
		q.Note = w.TempoCaution
	}
	b.host.Ask(q)
}

// plain writes an exact number so that it can be typed again.
func plain(f frac.Frac) string {
	if f.IsDecimal(6) {
		return words.Decimals(f.Decimal(6))
	}
	return f.String()
}

// Answer takes what was typed for a dial. It returns why the text was not
// taken, empty if it was.
func (b *Bench) Answer(id, text string, now float64) (refused string) {
	w := &b.Words.Bench
	d := b.dial(id)
	lane, later := strings.CutPrefix(id, laterPrefix)
	if d == nil && !later {
		return ""
	}
	v, err := typed(text)
	if err != nil {
		return fmt.Sprintf(w.NotNumber, shorten(text, 40))
	}
	if later {
		i, err := strconv.Atoi(lane)
		if err != nil {
			return ""
		}
		if err := b.answerLater(i, v, now); err != nil {
			refused = b.reason(err)
		}
		b.settle()
		return refused
	}
	if v.Less(d.min) || d.max.Less(v) {
		return fmt.Sprintf(w.OutOfRange, words.Value(v), words.Value(d.min), words.Value(d.max))
	}
	if err := b.turn(d, v); err != nil {
		refused = b.reason(err)
	}
	b.settle()
	return refused
}

// typed reads a number as people type it.
func typed(text string) (frac.Frac, error) {
	return frac.Parse(strings.TrimSpace(words.TakenDecimals(strings.NewReplacer("−", "-", " ", "").Replace(text))))
}

func shorten(s string, most int) string {
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}
