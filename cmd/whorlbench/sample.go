package main

import (
	"bufio"
	"flag"
	"math/big"
	"slices"
	"strconv"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/room"
	"whorlbench/engine/tether"
	"whorlbench/sandbox/words"
)

const (
	defaultPerBeat = 24
	mostRows       = 1_000_000
)

// sample prints where hands and heads are, row by row, as CSV.
func sample(args []string, std streams) int {
	flags := flag.NewFlagSet(program+" sample", flag.ContinueOnError)
	perBeat := flags.Int("per-beat", defaultPerBeat, "")
	files, status, done := parse(flags, args, say.Sample.Usage, std)
	if done {
		return status
	}
	if len(files) != 1 {
		complain(std, say.Sample.OneFile, len(files))
		return unusable
	}
	if *perBeat < 1 {
		complain(std, say.Sample.PerBeat, *perBeat)
		return unusable
	}
	name, pattern, err := load(files[0], std.in)
	if err != nil {
		complain(std, "%v", err)
		return unusable
	}
	s := newSampler(pattern)
	if rows := s.rows(int64(*perBeat)); rows.Cmp(big.NewInt(mostRows)) > 0 {
		complain(std, say.Sample.TooMany, name, rows, mostRows)
		return unusable
	}
	out := bufio.NewWriter(std.out)
	s.write(out, int64(*perBeat))
	if err := out.Flush(); err != nil {
		complain(std, say.Sample.CannotWrite, err)
		return unusable
	}
	return fine
}

// sampler walks a pattern's lanes, left before right.
type sampler struct {
	tempo  float64
	tracks []*engine.Track
	end    frac.Frac // beats
}

// newSampler samples to the closing time or, where there is none, over one
// round of the longest lane.
func newSampler(p engine.Pattern) *sampler {
	s := &sampler{tempo: p.Tempo}
	for _, l := range p.Lanes {
		s.tracks = append(s.tracks, engine.NewTrack(l))
	}
	slices.SortStableFunc(s.tracks, func(a, b *engine.Track) int { return int(a.Lane.Side) - int(b.Lane.Side) })
	var ok bool
	if s.end, ok = engine.ClosingTime(s.tracks...); !ok {
		s.end = frac.Frac{}
		for _, t := range s.tracks {
			if b := t.Lane.Beats(); s.end.Less(b) {
				s.end = b
			}
		}
	}
	return s
}

// steps returns how many rows of one lane lie below the end: ⌈end·N⌉.
func (s *sampler) steps(perBeat int64) *big.Int {
	return s.end.Mul(frac.Int(perBeat)).Neg().Floor().Neg().Num()
}

// rows returns how many rows there are in all.
func (s *sampler) rows(perBeat int64) *big.Int {
	n := s.steps(perBeat)
	n.Add(n, big.NewInt(1))
	return n.Mul(n, big.NewInt(int64(len(s.tracks))))
}

func (s *sampler) write(out *bufio.Writer, perBeat int64) {
	out.WriteString("beat,seconds,side,hand_x,hand_y,hand_z,head_x,head_y,head_z,pull_g\n")
	for k := range s.steps(perBeat).Int64() {
		s.row(out, frac.New(k, perBeat))
	}
	s.row(out, s.end)
}

// row writes the lanes at one beat. A writer's fault is kept by it until it
// is flushed.
func (s *sampler) row(out *bufio.Writer, beat frac.Frac) {
	var line []byte
	for _, t := range s.tracks {
		at := t.AtExact(beat)
		hand, head := room.Place(t.Lane, at.Hand), room.Place(t.Lane, at.Head)
		b := beat.Float()
		line = appendFixed(line[:0], b)
		line = appendFixed(append(line, ','), b*60/s.tempo)
		line = append(append(line, ','), words.English.Side(t.Lane.Side)...)
		for _, x := range []float64{hand.X, hand.Y, hand.Z, head.X, head.Y, head.Z, tether.Pull(t.Lane, at, s.tempo)} {
			line = appendFixed(append(line, ','), x)
		}
		out.Write(append(line, '\n'))
	}
}

// appendFixed writes x with 9 decimals, never as −0.
func appendFixed(dst []byte, x float64) []byte {
	const places = 9
	from := len(dst)
	dst = strconv.AppendFloat(dst, x, 'f', places, 64)
	if string(dst[from:]) == "-0.000000000" {
		return append(dst[:from], "0.000000000"...)
	}
	return dst
}
