// Package film turns what the capture sheet of the page asks for into a capture:
// it reads the wish, says what will come of it, and makes the file.
package film

import (
	"encoding/json"
	"errors"
	"fmt"
	"strings"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/words"
)

// Wish is what the sheet's controls say. Numbers that may be fractions are
// texts, as they were typed.
type Wish struct {
	Format  string `json:"format"` // as capture.Names has it, or a film: mp4, webm
	Width   int    `json:"width"`  // pixels
	Height  int    `json:"height"`
	FPS     string `json:"fps"`
	Rounds  int    `json:"rounds"` // 0: whole rounds to the closing
	Slow    string `json:"slow"`
	At      string `json:"at"`  // beat of a still, counted from 1
	Per     int    `json:"per"` // as capture.Per counts
	Moments int    `json:"moments"`
	Night   bool   `json:"night"`
	Ground  string `json:"ground"` // theme, clear, or a colour as #rrggbb
	Mirror  bool   `json:"mirror"`
	Clicks  bool   `json:"clicks"` // of a film
	Trail   int    `json:"trail"`  // as scene.TrailLength counts
	Show    Shown  `json:"show"`
	Caption string `json:"caption"`
}

// Shown is what of the pattern is seen, and what is written.
type Shown struct {
	Arms    bool `json:"arms"`
	Path    bool `json:"path"`
	Grid    bool `json:"grid"`
	Letters bool `json:"letters"`
	Kinds   bool `json:"kinds"`
	Pieces  bool `json:"pieces"`
	Title   bool `json:"title"`
	Beats   bool `json:"beats"`
	Names   bool `json:"names"`
	Timing  bool `json:"timing"`
	Slack   bool `json:"slack"`
	Taken   bool `json:"taken"`
}

// Film is a film's container.
type Film uint8

// The films; a Job that is none has a capture.Format.
const (
	NoFilm Film = iota
	MP4
	WebM
)

var films = map[string]Film{"mp4": MP4, "webm": WebM}

// Job is a wish that can be fulfilled.
type Job struct {
	*capture.Take
	Format capture.Format // of a Job whose Film is NoFilm
	Film   Film
	Clicks bool   // a film has a click track
	name   string // of the format
}

// Read reads a wish for a pattern as a TOML file. The error says, line by line,
// what was found and what is allowed.
func Read(toml, wish []byte, w *words.Table) (Job, error) {
	pattern, err := presets.Decode(w.Film.Pattern, toml)
	if err != nil {
		return Job{}, err
	}
	var in Wish
	if err := json.Unmarshal(wish, &in); err != nil {
		return Job{}, fmt.Errorf("failed to read the wish: %w", err)
	}
	return in.job(pattern, w)
}

func (in *Wish) job(p engine.Pattern, w *words.Table) (j Job, err error) {
	ok := false
	j.name, j.Film = in.Format, films[in.Format]
	if j.Film == NoFilm {
		if j.Format, ok = capture.Named(in.Format); !ok {
			return Job{}, fmt.Errorf(w.Film.Unknown, in.Format)
		}
	}
	o, err := in.options(w)
	if err != nil {
		return Job{}, err
	}
	if j.Take, err = capture.New(p, o, w); err != nil {
		return Job{}, err
	}
	switch {
	case j.Film == MP4 && o.Ground == capture.Clear:
		return Job{}, errors.New(w.Film.Opaque)
	case j.Film != NoFilm && (o.Width%2 == 1 || o.Height%2 == 1):
		return Job{}, fmt.Errorf(w.Capture.Even, o.Width, o.Height, strings.ToUpper(in.Format))
	}
	j.Clicks = in.Clicks && j.Film != NoFilm
	if j.Loops() {
		_, err = j.Timeline()
	} else {
		_, err = j.SizeOf(j.Format)
	}
	return j, err
}

func (in *Wish) options(w *words.Table) (capture.Options, error) {
	o := capture.Defaults()
	var wrong []error
	number := func(label, text string) frac.Frac {
		f, err := frac.Parse(words.TakenDecimals(strings.TrimSpace(text)))
		if err != nil {
			wrong = append(wrong, fmt.Errorf(w.Film.Number, label, text))
		}
		return f
	}
	o.Width, o.Height, o.Rounds, o.Moments = in.Width, in.Height, in.Rounds, in.Moments
	o.FPS, o.Slow, o.At = number(w.Film.FPS, in.FPS), number(w.Film.Slow, in.Slow), number(w.Film.At, in.At)
	if o.At.Less(frac.Int(1)) && len(wrong) == 0 {
		wrong = append(wrong, fmt.Errorf(w.Film.BadAt, w.Film.At, in.At))
	}
	o.At = o.At.Sub(frac.Int(1))
	o.Per = capture.Per(min(max(in.Per, 0), int(capture.PerPetal)))
	o.Night, o.Mirror = in.Night, in.Mirror
	if !o.SetGround(in.Ground) {
		wrong = append(wrong, fmt.Errorf(w.Film.BadColour, in.Ground))
	}
	s, shown := &o.Show, in.Show
	s.Trail = scene.TrailLength(min(max(in.Trail, 0), int(scene.NoTrail)))
	s.HideArms, s.HideHandPath, s.HideGrid, s.HideLetters, s.PlainInk = !shown.Arms, !shown.Path, !shown.Grid, !shown.Letters, !shown.Kinds
	s.HideSlack, s.Taken = !shown.Slack, shown.Taken
	s.ByPiece, s.Title, s.Beats, s.Names = shown.Pieces, shown.Title, shown.Beats, shown.Names
	s.Timing, s.Caption = shown.Timing, strings.TrimSpace(in.Caption)
	return o, errors.Join(wrong...)
}

// Loops reports whether the file has several frames, one after the other.
func (j Job) Loops() bool { return j.Film != NoFilm || j.Format.Loops() }

// Timeline returns the frames that the file will have.
func (j Job) Timeline() (capture.Timeline, error) {
	if j.Film != NoFilm {
		return j.Take.Timeline(), nil
	}
	return j.TimelineOf(j.Format)
}

// FileName returns a name for the file: title, size and, of a loop, frames a
// second.
func (j Job) FileName() string {
	if j.Film != NoFilm {
		return j.FilmName() + "." + j.name
	}
	return j.Take.FileName(j.Format)
}

// Type returns the file's media type.
func (j Job) Type() string {
	switch {
	case j.Film == MP4:
		return "video/mp4"
	case j.Film == WebM:
		return "video/webm"
	case j.Format == capture.SVG, j.Format == capture.SheetSVG, j.Format == capture.StrobeSVG:
		return "image/svg+xml"
	case j.Format == capture.GIF:
		return "image/gif"
	case j.Format == capture.Frames:
		return "application/zip"
	}
	return "image/png"
}

// About says, for the sheet, what will be made, and whether a loop joins.
func (j Job) About(w *words.Table) (text, note string) {
	if !j.Loops() {
		return fmt.Sprintf(w.Film.Still, j.FileName()), ""
	}
	l, _ := j.Timeline() // which was tried when it was read
	return fmt.Sprintf(w.Film.Loop, j.FileName(), l.N, l.Seconds.Decimal(2)), j.Note()
}

// previewSide is the shorter side of the sheet's preview (pixels), large enough
// for letters and lines to keep their share of it; previewMost bounds the other.
const (
	previewSide = 480
	previewMost = 960
)

// Preview returns the wish as the sheet shows it before it is made: one small
// picture.
func Preview(toml, wish []byte, w *words.Table) (Job, error) {
	var in Wish
	if err := json.Unmarshal(wish, &in); err != nil {
		return Job{}, fmt.Errorf("failed to read the wish: %w", err)
	}
	switch in.Format = strings.TrimSuffix(in.Format, "-svg"); in.Format {
	case "strobe", "sheet":
	default:
		in.Format = "png"
	}
	short, long := float64(max(min(in.Width, in.Height), 1)), float64(max(in.Width, in.Height, 1))
	by := min(previewSide/short, previewMost/long, 1)
	side := func(n int) int { return max(int(float64(n)*by+0.5), min(n, capture.LeastSide)) }
	in.Width, in.Height = side(in.Width), side(in.Height)
	pattern, err := presets.Decode(w.Film.Pattern, toml)
	if err != nil {
		return Job{}, err
	}
	return in.job(pattern, w)
}
