package bench

import "fmt"

// warning says the worst of what is wrong with the pattern, as far as that is
// known, empty if nothing is: a bad join, heads that meet, a slack tether, arms
// that wrap.
func (b *Bench) warning() string {
	k, w := &b.study, b.Words
	told := b.tell()
	if told.faulty {
		return w.SeamFault(told.worst)
	}
	k.Of(b.Session)
	if d := k.Duet; d != nil {
		if text := w.HeadsNearShort(d); text != "" {
			return text
		}
	}
	for i := range k.Tethers {
		if r := &k.Tethers[i]; r.Slack {
			return fmt.Sprintf(w.Told.Slack, w.TautWindow(r.Window))
		}
	}
	if d := k.Duet; d != nil && d.Tangle.Winding != nil && d.Tangle.Winding.Sign() != 0 {
		return w.Told.Tangles
	}
	return ""
}
