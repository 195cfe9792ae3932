package bench

import (
	"fmt"
	"strings"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/words"
)

// The ranges of what can be typed: those of the file.
var (
	mostSpeed  = frac.Int(64)
	leastTempo = frac.Int(10)
	mostTempo  = frac.Int(400)
	leastBeats = frac.New(1, 1_000_000)
	mostBeats  = frac.Int(10_000)
)

// ask opens the question that belongs to a value.
func (b *Bench) ask(id string) {
	w := &b.Words.Bench
	q := Question{ID: id}
	switch id {
	case idTempo:
		q.Label, q.Hint, q.Note = w.Tempo.Label, w.AskTempo, w.TempoCaution
		q.Value = frac.FromFloat(b.Session.Pattern().Tempo).Decimal(6)
	case idLength:
		q.Label, q.Hint, q.Value = w.Beats.Label, w.AskBeats, plain(b.Session.SelectedPiece().Length())
	default:
		base := strings.TrimSuffix(id, suffixType)
		q.Label = w.Arm.Label
		if base == idProp {
			q.Label = w.Prop.Label
		}
		q.Label += ", " + w.TurnsACycle
		q.Hint = fmt.Sprintf(w.AskNumber, words.Minus("-64"), "64")
		q.Value = plain(b.speed(base))
	}
	b.host.Ask(q)
}

// plain writes an exact number so that it can be typed again.
func plain(f frac.Frac) string {
	if f.IsDecimal(6) {
		return f.Decimal(6)
	}
	return f.String()
}

// Answer takes what was typed to a question. It returns why the text was not
// taken, empty if it was.
func (b *Bench) Answer(id, text string, now float64) (refused string) {
	w := &b.Words.Bench
	v, err := frac.Parse(strings.TrimSpace(strings.NewReplacer("−", "-", ",", ".", " ", "").Replace(text)))
	if err != nil {
		return fmt.Sprintf(w.NotNumber, shorten(text, 40))
	}
	within := func(lo, hi frac.Frac) string {
		if v.Less(lo) || hi.Less(v) {
			return fmt.Sprintf(w.OutOfRange, words.Value(v), words.Value(lo), words.Value(hi))
		}
		return ""
	}
	switch id {
	case idTempo:
		if refused = within(leastTempo, mostTempo); refused == "" {
			err = b.Session.SetTempo(v.Float())
		}
	case idLength:
		if refused = within(leastBeats, mostBeats); refused == "" {
			err = b.Session.SetBeats(v)
		}
	case idArm + suffixType, idProp + suffixType:
		if refused = within(mostSpeed.Neg(), mostSpeed); refused == "" {
			err = b.try(strings.TrimSuffix(id, suffixType), v)
		}
	}
	if err != nil {
		refused = b.reason(err)
	}
	b.settle()
	return refused
}

func shorten(s string, most int) string {
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + "…"
	}
	return s
}
