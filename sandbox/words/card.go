package words

import (
	"fmt"
	"math/cmplx"

	"whorlbench/engine"
	"whorlbench/engine/step"
)

// Card holds the words of the lesson card: those on it, and those of the page's
// sheet that shows it.
type Card struct {
	Open, Head          string
	Print, Save, Share  string
	Making              string
	Failed              string // {why}
	Sub                 string // %s, %s: the tempo, when all is back
	Tempo               string // %s: beats a minute
	Round               string // what the large picture shows
	Beats, Tips, Joins  string // heads over the pictures
	Reading, TwoHands   string // how a picture is read; how hands are told apart
	OneRound            string
	TooMany             string // %d: pictures there is room for
	First               string // %d, %d: of how many pictures
	Stance              string // %s, %s, %s: letter, where the hand is, where the prop points
	StanceStay          string // %s, %s: letter, where the prop points
	Middle              string
	Made                string // head
	Piece, Name, Length string // heads of columns
	Join, At            string
	Rest                string // %d: pieces
	Props               string // %s, %s: direction, timing
	Counted             string // how the beats in what follows are counted
	Room                string // head
	Tether              string // %s: centimetres
	File                string // head
	NoLink, NoLinkFile  string // %s: a file's name
}

var englishCard = Card{
	Open: "Lesson card…", Head: "Lesson card",
	Print: "Print", Save: "Save as HTML", Share: "Share…",
	Making: "The card is being made.", Failed: "The card could not be made: {why}",
	Sub: "%s. %s.", Tempo: "%s beats a minute",
	Round: "The whole round, as it stands at beat 1. Letters stand where pieces are joined.",
	Beats: "Beat by beat", Tips: "Petal by petal", Joins: "Join by join",
	Reading:  "The line with the arrow is the way to the next picture.",
	TwoHands: "The right hand and its head are discs with a thick line, the left ones rings with a thin one.",
	OneRound: "One round is shown; prop and hand are back together only after more.",
	TooMany:  "There is room for %d pictures, which is not one for every beat.",
	First:    "These are the first %d of %d.",
	Stance:   "%s: hand %s, prop %s", StanceStay: "%s: prop %s", Middle: "in the middle",
	Made: "Cut and joined", Piece: "Piece", Name: "Is part of", Length: "Beats", Join: "Goes over", At: "Mark",
	Rest:    "%d more pieces follow. The file has them all.",
	Props:   "Props: %s, %s",
	Counted: "Beats in these sentences are counted from 0, where a round begins.",
	Room:    "Tempo and room", Tether: "The prop is %s cm from hand to head.",
	File:       "The pattern’s file",
	NoLink:     "Others cannot reach this bench by an address, so there is no link here. Hand out the file %s with the card.",
	NoLinkFile: "Others cannot reach this bench by an address, so there is no link here. This is %s, without notes, to be typed in or kept:",
}

// Stance says where a hand is and where its prop points at a beat; of a hand
// that stays at a point, the prop alone. In a mirror left and right are as they
// are seen there.
func (t *Table) Stance(track *engine.Track, beat float64, mirror bool) string {
	k := stepper{Table: t, track: track, mirror: mirror}
	return k.stance(beat, t.Card.Stance, t.Card.StanceStay, t.Letter(track.Lane.Side))
}

// stance fills in a name, where the hand is and where the prop points at a beat;
// of a hand that stays at a point, the name and the prop alone.
func (k *stepper) stance(beat float64, format, stays, name string) string {
	const near = 0.1 // of a path's size: nobody sees a side there
	_, piece, _ := k.track.Locate(beat)
	path, at := k.track.Legs[piece].Path(), k.track.At(beat)
	pointing := k.pointing(step.TowardOf(at.Prop))
	if path.IsPoint() {
		return fmt.Sprintf(stays, name, pointing)
	}
	place, out := k.Table.Card.Middle, at.Hand-path.Centre
	if cmplx.Abs(out) > near*max(path.A, path.B) {
		place = k.place(step.TowardOf(cmplx.Phase(out)))
	}
	return fmt.Sprintf(format, name, place, pointing)
}
