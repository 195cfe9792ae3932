package capture

import (
	"encoding/binary"
	"math"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/practice"
)

// ClickRate is how many samples a second a click track has.
const ClickRate = 48_000

// A click is a tone that dies away. Its pitch (Hz) says what it is for: a beat,
// a join of a hand, the beginning of a round. Clicks are in tune with each
// other and where small loudspeakers are loud.
const (
	clickSamples = ClickRate * 40 / 1000
	clickFade    = 0.008 // seconds to 1/e
	clickLoud    = 0.7
	beatTone     = 1000
	joinTone     = 1500
	roundTone    = 2000
)

// toneOf returns the pitch of what happens at a moment.
func toneOf(k practice.Kind) float64 {
	switch {
	case k.Has(practice.Round):
		return roundTone
	case k.Has(practice.LeftJoin | practice.RightJoin):
		return joinTone
	}
	return beatTone
}

// Clicks returns the loop's click track: one channel, 16 bits a sample, the low
// byte first. Each click begins on the sample nearest to its beat, and what is
// left of the last goes on at the beginning, so that the loop joins.
func (t *Take) Clicks() ([]byte, error) {
	s, err := practice.New(practice.Plan{Pattern: t.pattern, Tempo: t.pattern.Tempo})
	if err != nil {
		return nil, err
	}
	perBeat := t.seconds.Div(t.beats).Mul(frac.Int(ClickRate))
	sound := make([]float64, t.clickSamples())
	for _, e := range s.Between(0, s.SecondsAt(t.beats.Float())) {
		if !e.Beat.Less(t.beats) {
			continue // rounding alone has put it inside
		}
		at, tone := int(e.Beat.Mul(perBeat).Round(frac.Int(1)).Num().Int64()), toneOf(e.Kind)
		for i := range min(clickSamples, len(sound)) {
			x := float64(i) / ClickRate
			sound[(at+i)%len(sound)] += clickLoud * math.Exp(-x/clickFade) * math.Cos(2*math.Pi*tone*x)
		}
	}
	var out []byte
	for _, x := range sound {
		out = binary.LittleEndian.AppendUint16(out, uint16(int16(math.Round(math.MaxInt16*min(max(x, -1), 1)))))
	}
	return out, nil
}

// clickSamples returns how many samples the loop lasts.
func (t *Take) clickSamples() int {
	return max(int(t.seconds.Mul(frac.Int(ClickRate)).Round(frac.Int(1)).Num().Int64()), 1)
}
