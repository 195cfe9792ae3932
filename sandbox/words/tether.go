package words

import (
	"fmt"
	"math"
	"math/big"

	"whorlbench/engine"
	"whorlbench/engine/tether"
)

// Tether holds the words for what a real tether would do.
type Tether struct {
	Labels TetherLabels

	Any, From, UpTo, Between, Never string // %s: tempos
	Now                             string // %s: window, %s: tempo, %s: what happens
	StaysTaut, AllSlack             string
	Once, OnceAt                    string // %s: a time, %s: where
	Often                           string // %d: times, %s: a time, %s: rounds
	Rigid                           string
	ABeat, Beats                    string // %s: a number
	Moment                          string
	AtTop, AtBottom, AtSide         string

	Pull, Push string // %s, %s: least and greatest pull
	PullPlain  string // %s: greatest pull
	Speed      string // %s: m/s, %s: km/h
	Clear      string // %s: metres

	Hand, HandClose, NoHand       string // %s: centimetres
	Dies, Stays, Grows, RunsAway  string // %s: how many times
	NotFollowed, NoWobble, NoGive string

	Piece string // %s: left or right, %d: piece
	Slack string // %s: multiples of the head's weight
}

// TetherLabels name the lines about a tether.
type TetherLabels struct{ Tether, Pull, Speed, Room, Hand, Wobble string }

var englishTether = Tether{
	Labels: TetherLabels{"Tether", "Pull", "Speed", "Room", "Hand", "Wobble"},

	Any:       "Taut at any tempo",
	From:      "Taut from %s bpm",
	UpTo:      "Taut up to %s bpm",
	Between:   "Taut from %s to %s bpm",
	Never:     "Slack somewhere at every tempo",
	Now:       "%s; at %s it %s.",
	StaysTaut: "stays taut",
	AllSlack:  "is slack all the time",
	Once:      "goes slack for %s",
	OnceAt:    "goes slack for %s %s",
	Often:     "goes slack %d times in %s, for up to %s",
	Rigid:     "A rigid prop can push as well as pull: nothing goes slack.",
	ABeat:     "about %s beat",
	Beats:     "about %s beats",
	Moment:    "a moment",
	AtTop:     "at the top",
	AtBottom:  "at the bottom",
	AtSide:    "at the side",

	Pull:      "From %s to %s times the head's weight.",
	PullPlain: "Up to %s times the head's weight.",
	Push:      "From a push of %s to a pull of %s times the head's weight.",
	Speed:     "The head reaches %s m/s, which is %s km/h.",
	Clear:     "Keep everyone %s m away; a metre for them is in it.",

	Hand:        "It would really move up to %s cm off this path, as a tether pulls along itself only.",
	HandClose:   "It would really move along this path, to within a centimetre.",
	NoHand:      "Where the tether goes slack, no hand can lead the head this way.",
	Dies:        "A small wobble dies away by itself.",
	Stays:       "A small wobble stays small by itself.",
	Grows:       "A small wobble grows %s times each round if the hand does not answer it.",
	RunsAway:    "A small wobble grows more than a hundred times each round if the hand does not answer it.",
	NotFollowed: "The round is too long, or its pull too near nothing, to follow a wobble.",
	NoWobble:    "None to follow where the tether goes slack.",
	NoGive:      "A rigid prop is led by the hand: there is none to follow.",

	Piece: "%s, piece %d",
	Slack: "the tether would have to push with %s times the head's weight; it cannot, and goes slack",
}

// Where a wobble that is followed over a few rounds has surely died away or
// grown: one that keeps its size comes out within a sixth of it.
const (
	wobbleDies  = 0.8
	wobbleGrows = 1.2
)

// TautWindow says at which tempos a tether is nowhere slack, a tempo rounded
// to a tenth into the window.
func (t *Table) TautWindow(x tether.Window) string {
	w := &t.Tether
	from, to := number(upTenth(x.From), 1), number(-upTenth(-x.To), 1)
	switch {
	case !x.OK:
		return w.Never
	case x.From > 0 && x.Open:
		return fmt.Sprintf(w.From, from)
	case x.From > 0:
		return fmt.Sprintf(w.Between, from, to)
	case x.Open:
		return w.Any
	}
	return fmt.Sprintf(w.UpTo, to)
}

// upTenth rounds up to a tenth, but not what is a tenth already but for
// rounding.
func upTenth(x float64) float64 { return math.Ceil(x*10-1e-6) / 10 }

// TetherLine says in one line whether a tether stays taut, for a lane's result
// at a tempo in beats a minute.
func (t *Table) TetherLine(track *engine.Track, r *tether.Result, tempo float64) string {
	w := &t.Tether
	if r.Rigid {
		return w.Rigid
	}
	return fmt.Sprintf(w.Now, t.TautWindow(r.Window), number(tempo, 1), t.slackness(track, r))
}

func (t *Table) slackness(track *engine.Track, r *tether.Result) string {
	w := &t.Tether
	if !r.Slack {
		return w.StaysTaut
	}
	longest := 0.0
	for _, s := range r.Spans {
		longest = max(longest, s.Beats())
	}
	text := t.beats(longest)
	switch {
	case longest > float64(r.Rounds)*track.Beats*0.999:
		return w.AllSlack
	case len(r.Spans) > 1:
		return fmt.Sprintf(w.Often, len(r.Spans), t.CountRounds(big.NewInt(int64(r.Rounds))), text)
	case track.Lane.Plane == engine.Floor:
		return fmt.Sprintf(w.Once, text)
	}
	return fmt.Sprintf(w.OnceAt, text, t.whereabouts(r.Least.Prop))
}

// beats writes a length of time that no fraction stands for.
func (t *Table) beats(x float64) string {
	w := &t.Tether
	text := number(x, 2)
	switch text {
	case "0":
		return w.Moment
	case "1":
		return fmt.Sprintf(w.ABeat, text)
	}
	return fmt.Sprintf(w.Beats, text)
}

// whereabouts says where the head is, seen from the hand.
func (t *Table) whereabouts(prop engine.Degrees) string {
	switch up := math.Sin(prop.Radians()); {
	case up > math.Sqrt2/2:
		return t.Tether.AtTop
	case up < -math.Sqrt2/2:
		return t.Tether.AtBottom
	}
	return t.Tether.AtSide
}

// TetherLines says all there is to say of a lane's tether at a tempo in beats
// a minute. Where they stand, so must a caution.
func (t *Table) TetherLines(track *engine.Track, r *tether.Result, tempo float64) []Line {
	w := &t.Tether
	k := &w.Labels
	return []Line{
		{k.Tether, t.TetherLine(track, r, tempo)},
		{k.Pull, t.pull(r)},
		{k.Speed, fmt.Sprintf(w.Speed, number(r.TopSpeed.Value, 1), number(r.TopSpeed.Value*3.6, 0))},
		{k.Room, fmt.Sprintf(w.Clear, number(upTenth(r.Clear), 1))},
		{k.Hand, t.takenHand(r)},
		{k.Wobble, t.wobble(r)},
	}
}

func (t *Table) pull(r *tether.Result) string {
	w := &t.Tether
	least, greatest := number(r.Least.Value, 1), number(r.Greatest.Value, 1)
	switch {
	case r.Rigid && r.Least.Value < 0 && least != "0":
		return fmt.Sprintf(w.Push, number(-r.Least.Value, 1), greatest)
	case r.Slack || least == greatest:
		return fmt.Sprintf(w.PullPlain, greatest)
	}
	return fmt.Sprintf(w.Pull, least, greatest)
}

func (t *Table) takenHand(r *tether.Result) string {
	w := &t.Tether
	switch {
	case r.Rigid:
		return w.HandClose
	case !r.HasAstray:
		return w.NoHand
	case r.Astray.Value < 0.01:
		return w.HandClose
	}
	return fmt.Sprintf(w.Hand, number(r.Astray.Value*100, 0))
}

func (t *Table) wobble(r *tether.Result) string {
	w := &t.Tether
	switch g := r.Growth; {
	case r.Rigid:
		return w.NoGive
	case !r.HasAstray:
		return w.NoWobble
	case !r.HasGrowth:
		return w.NotFollowed
	case g < wobbleDies:
		return w.Dies
	case g <= wobbleGrows:
		return w.Stays
	case g <= 100:
		return fmt.Sprintf(w.Grows, number(g, 1))
	}
	return w.RunsAway
}

// SlackFault says what is wrong where the pull comes to less than nothing, in
// multiples of the head's weight.
func (t *Table) SlackFault(pull float64) string {
	return fmt.Sprintf(t.Tether.Slack, number(-pull, 3))
}
