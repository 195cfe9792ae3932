package words

import (
	"fmt"
	"math"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/follow"
	"whorlbench/engine/seam"
)

// Follow holds the words of what can follow a piece and of where two patterns
// meet.
type Follow struct {
	Ask, AskMeet TitledText // choices of a piece
	Half         TitledText // to keep half of a whole circle first
	Halved       string
	Title        string // of the list; %s side, %d piece
	Intro, None  string
	Groups       [6]TitledText // as follow.Kind counts: what each is headed with
	Does         [6]string     // as follow.Kind counts: what the hand does, in a label
	Label        string        // %s figure, %s what the hand does
	WithVerdict  string        // %s label, %s verdict, where it is not smooth
	KinkOf       string        // %s m/s
	SamePath     string        // where the hand goes
	OnCircle     string        // %s m
	OnStroke     string        // %s m
	Even         string
	Quicker      string
	Slower       string
	Closes       string
	ClosesSmooth string
	ClosesLater  string // %s rounds
	Fits         string
	Loose        string
	Added        string // %s figure
	Meet         Meet
}

// Meet holds the words of where two patterns meet.
type Meet struct {
	Title                string    // %s, %s: the patterns' names
	One, Some            string    // %d places
	Stretch              string    // they meet all along it
	Relations            [6]string // as follow.Relation counts; the first is not said by itself
	Turned               string    // %s degrees, %s sense, %s what then
	Anticlockwise        string
	Clockwise            string
	ThenOne, ThenSome    string // %d places
	ThenSame             string
	Place                string // %s arm, %s prop, in degrees
	Best, Never          string // %s verdict
	There, Back, Turning string // first into second, second into first, the hand turning back
}

var englishFollow = Follow{
	Ask:     TitledText{"What can follow here?", "The patterns that join on from where this piece ends, smooth ones first."},
	AskMeet: TitledText{"Where do they meet?", "The places where hand and prop of two patterns agree, so that you can change from one to the other."},
	Half:    TitledText{"Keep half of the circle first", "From the end of a half circle the hand can turn back, which makes a C."},
	Halved:  "Half of the circle is kept",
	Title:   "%s hand: what can follow piece %d",
	Intro:   "Each of these begins where the piece ends, hand and prop. The smooth ones ask nothing sudden of you; take one to add it.",
	None:    "Nothing that is tried here joins on.",
	Groups: [6]TitledText{
		{"The same again", "The pattern goes on as it is."},
		{"Straight on", "The hand goes on as it was going; what changes is how fast the prop turns, or how wide the hand’s path is."},
		{"To the other side", "The hand goes straight on into a circle that bends the other way. This is the middle of an S."},
		{"Turning back", "The hand goes back the way it came while the prop keeps its sense. This is the end of a C."},
		{"Round a corner", "The hand leaves at an angle, on a straight stroke or a circle."},
		{"Setting off", "The hand has been staying and starts to move."},
	},
	Does:         [6]string{"the same again", "straight on", "to the other side", "turning back", "round a corner", "setting off"},
	Label:        "%s, %s",
	WithVerdict:  "%s – %s",
	KinkOf:       "kink of %s m/s",
	SamePath:     "on the same path",
	OnCircle:     "on a circle of %s m",
	OnStroke:     "on a stroke of %s m to either side",
	Even:         "at the pace you have",
	Quicker:      "at a quicker pace",
	Slower:       "at a slower pace",
	Closes:       "closes the round",
	ClosesSmooth: "closes the round, smooth",
	ClosesLater:  "closes after %s",
	Fits:         "joins what follows",
	Loose:        "leaves a gap after it",
	Added:        "Added: %s",
	Meet: Meet{
		Title: "%s and %s",
		One:   "They meet at one place.", Some: "They meet at %d places.",
		Stretch: "They meet all along the part of the stroke that they share, from one end of it to the other.",
		Relations: [6]string{
			"They meet.",
			"They are one and the same pattern, so they meet everywhere.",
			"The hands share places, but the props never point the same way there.",
			"The hands share no place, so one of the two has to move, or be made larger or smaller.",
			"The tethers have different lengths, so hand and head cannot both agree.",
			"Where a pendulum is, or a star of very many turns, there is no short answer.",
		},
		Turned:        "Turn the second prop by %s° %s and %s.",
		Anticlockwise: "anticlockwise", Clockwise: "clockwise",
		ThenOne: "they meet at one place", ThenSome: "they meet at %d places", ThenSame: "they are one and the same pattern",
		Place: "arm at %s°, prop at %s°",
		Best:  "at best: %s", Never: "no way for a prop on a tether",
		There: "from the first to the second", Back: "from the second to the first", Turning: "the hand turning back",
	},
}

// FollowTitle heads the list of what can follow piece i.
func (t *Table) FollowTitle(side engine.Side, i int) string {
	return capital(fmt.Sprintf(t.Follow.Title, t.Side(side), i+1))
}

// FollowLabel is a candidate in one line: what it is, what the hand does, how
// they join if that is not smoothly.
func (t *Table) FollowLabel(c *follow.Candidate) string {
	w := &t.Follow
	label := capital(fmt.Sprintf(w.Label, t.Name(c.Figure), w.Does[c.Kind]))
	if c.Join.Verdict == seam.Smooth {
		return label
	}
	return fmt.Sprintf(w.WithVerdict, label, t.joinWord(c.Join))
}

// joinWord says what a join is, a kink with its size.
func (t *Table) joinWord(s seam.Seam) string {
	if s.Verdict == seam.Kink {
		return fmt.Sprintf(t.Follow.KinkOf, number(math.Abs(s.JumpAcross), 2))
	}
	return t.Verdict(s.Verdict)
}

// FollowDetail says where the hand goes, in how many beats, and how the round
// stands with the candidate in it.
func (t *Table) FollowDetail(c *follow.Candidate) string {
	w := &t.Follow
	pace := w.Even
	switch {
	case c.KeepsUp():
	case c.Pace > 1:
		pace = w.Quicker
	default:
		pace = w.Slower
	}
	return capital(strings.Join([]string{t.followWhere(c), t.CountBeats(c.Piece.Length()), pace, t.followEnd(c)}, ", "))
}

func (t *Table) followWhere(c *follow.Candidate) string {
	size := Metres(max(c.Piece.Path.A, c.Piece.Path.B))
	switch {
	case c.SamePath:
		return t.Follow.SamePath
	case c.Piece.Path.IsLine():
		return fmt.Sprintf(t.Follow.OnStroke, size)
	}
	return fmt.Sprintf(t.Follow.OnCircle, size)
}

func (t *Table) followEnd(c *follow.Candidate) string {
	w := &t.Follow
	switch {
	case c.Closes() && !(c.Rounds.IsInt64() && c.Rounds.Int64() == 1):
		return fmt.Sprintf(w.ClosesLater, t.CountRounds(c.Rounds))
	case c.Closes() && c.Join.Verdict == seam.Smooth && c.Next.Verdict == seam.Smooth:
		return w.ClosesSmooth
	case c.Closes():
		return w.Closes
	case c.Fits:
		return w.Fits
	}
	return w.Loose
}

// MeetTitle heads where two patterns meet.
func (t *Table) MeetTitle(first, second string) string {
	return capital(fmt.Sprintf(t.Follow.Meet.Title, first, second))
}

// MeetText says in a sentence or two whether and where two patterns meet.
func (t *Table) MeetText(m follow.Meetings) string {
	w := &t.Follow.Meet
	switch {
	case m.Relation != follow.Meet && m.Then == nil:
		return w.Relations[m.Relation]
	case m.Relation != follow.Meet:
		sense := w.Anticlockwise
		if m.Turn < 0 {
			sense = w.Clockwise
		}
		by := number(math.Abs(float64(m.Turn)), 1)
		return w.Relations[m.Relation] + " " + fmt.Sprintf(w.Turned, by, sense, w.then(*m.Then))
	case m.Stretch:
		return w.Stretch
	case len(m.At) == 1:
		return w.One
	}
	return fmt.Sprintf(w.Some, len(m.At))
}

func (w *Meet) then(m follow.Meetings) string {
	switch {
	case m.Relation == follow.One:
		return w.ThenSame
	case len(m.At) == 1:
		return w.ThenOne
	}
	return fmt.Sprintf(w.ThenSome, len(m.At))
}

// MeetLines tells the meetings one by one: where, and the best way to change
// over there.
func (t *Table) MeetLines(m follow.Meetings) []Line {
	w := &t.Follow.Meet
	lines := make([]Line, len(m.At))
	for k := range m.At {
		at := &m.At[k]
		lines[k].Name = capital(fmt.Sprintf(w.Place, number(float64(at.A.Arm), 1), number(float64(at.Prop), 1)))
		if len(at.Ways) == 0 {
			lines[k].Text = capital(w.Never)
			continue
		}
		best := at.Ways[0]
		way := w.There
		if best.FromB {
			way = w.Back
		}
		text := []string{fmt.Sprintf(w.Best, t.joinWord(best.Seam)), way}
		if best.Seam.HandTurnsBack {
			text = append(text, w.Turning)
		}
		lines[k].Text = capital(strings.Join(text, ", "))
	}
	return lines
}
