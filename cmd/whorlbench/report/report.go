// Package report puts together everything that can be said of a pattern, in
// the form in which check --json prints it. It reads no file and knows no
// stream, so that it can run in a browser too.
package report

import (
	"math/big"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/sandbox/words"
)

// Report is what there is to say of one file. A pointer or a null stands
// where a thing has no answer.
type Report struct {
	File          string  `json:"file"`
	Title         string  `json:"title"`
	PeriodBeats   *Number `json:"period_beats"`
	PeriodSeconds *Number `json:"period_seconds"`
	Hands         []Hand  `json:"hands"`
	Duet          *Duet   `json:"duet"`
	Faults        []Fault `json:"faults"`

	// Period is PeriodBeats exactly; Closes says whether there is one.
	Period frac.Frac `json:"-"`
	Closes bool      `json:"-"`
	// Hybrid rules on two hands.
	Hybrid naming.Ruling `json:"-"`
}

// Hand is what there is to say of one lane.
type Hand struct {
	Side        string     `json:"side"`
	ClosesAfter *big.Int   `json:"closes_after"`
	Pieces      []Piece    `json:"pieces"`
	Seams       []Seam     `json:"seams"`
	Elementary  Elementary `json:"elementary"`
	Cap         Cap        `json:"cap"`
	Tether      Tether     `json:"tether"`

	Track *engine.Track `json:"-"`
	Whole naming.Whole  `json:"-"`
}

// Piece is what a piece is a slice of.
type Piece struct {
	Name     string  `json:"name"`
	Ratio    *string `json:"ratio"`
	Petals   *Number `json:"petals"`
	Mode     *string `json:"mode"`
	FirstTip *Number `json:"first_tip_deg"`
	Spin     string  `json:"spin"`
	Beats    Number  `json:"beats"`

	Figure naming.Figure `json:"-"`
}

// Seam is how a piece joins the next.
type Seam struct {
	After         int     `json:"after"` // from 1
	HandGap       Number  `json:"hand_gap"`
	HeadGap       Number  `json:"head_gap"`
	PropGap       Number  `json:"prop_gap_deg"`
	Turn          *Number `json:"turn_deg"`
	HandTurnsBack bool    `json:"hand_turns_back"`
	ArmReverses   bool    `json:"arm_reverses"`
	PropReverses  bool    `json:"prop_reverses"`
	JumpAlong     Number  `json:"jump_along"`
	JumpAcross    Number  `json:"jump_across"`
	Verdict       string  `json:"verdict"`

	Is seam.Verdict `json:"-"`
}

// Of reports on a pattern that was read from a file of a given name.
func Of(file string, p engine.Pattern) Report {
	r := Report{File: file, Title: p.Title, Faults: []Fault{}}
	var tracks []*engine.Track
	for _, lane := range p.Lanes {
		t := engine.NewTrack(lane)
		tracks = append(tracks, t)
		r.Hands = append(r.Hands, hand(t, p))
	}
	if r.Period, r.Closes = engine.ClosingTime(tracks...); r.Closes {
		beats := r.Period.Float()
		r.PeriodBeats = num(beats)
		r.PeriodSeconds = num(beats * 60 / p.Tempo)
	}
	if left, right, ok := r.LeftRight(); ok {
		r.Hybrid = naming.Hybrid(tracks[left], tracks[right])
	}
	r.findFaults()
	r.findSlack()
	r.together()
	return r
}

func hand(t *engine.Track, p engine.Pattern) Hand {
	w := words.Said
	h := Hand{Side: w.Side(t.Lane.Side), ClosesAfter: t.Closing().Rounds, Tether: tetherOf(t, p), Track: t}
	for i := range t.Legs {
		h.Pieces = append(h.Pieces, piece(&t.Legs[i]))
	}
	seams := seam.Of(t, p.Tempo, p.Performer.Rigid)
	h.judge(seams)
	for _, s := range seams {
		out := Seam{
			After: s.After + 1, HandGap: Number(s.HandGap), HeadGap: Number(s.HeadGap), PropGap: Number(s.PropGap),
			HandTurnsBack: s.HandTurnsBack, ArmReverses: s.ArmReverses, PropReverses: s.PropReverses,
			JumpAlong: Number(s.JumpAlong), JumpAcross: Number(s.JumpAcross), Verdict: w.Verdict(s.Verdict), Is: s.Verdict,
		}
		if s.HasTurn {
			out.Turn = num(float64(s.Turn))
		}
		h.Seams = append(h.Seams, out)
	}
	return h
}

func piece(g *engine.Leg) Piece {
	w := words.Said
	f := naming.Of(g)
	p := Piece{Name: w.PlainName(f), Spin: w.Spin(f.Spin), Beats: Number(g.Piece.Length().Float()), Figure: f}
	if f.HasRatio {
		p.Ratio = text(f.Ratio.String())
	}
	if f.HasPetals {
		p.Petals = num(f.Petals.Float())
	}
	if f.Mode != naming.NoMode {
		p.Mode = text(w.Mode(f.Mode))
	}
	if f.HasTip {
		p.FirstTip = num(float64(f.FirstTip))
	}
	return p
}

func text(s string) *string { return &s }
