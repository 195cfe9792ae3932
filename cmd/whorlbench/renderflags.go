package main

import (
	"flag"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/words"
)

// request is what the flags of render ask for.
type request struct {
	out       string
	force     bool
	format    string
	sameFrame bool
	clicks    bool
	public    string
	capture.Options
}

// texts are flags as they were written.
type texts struct {
	size, fps, rounds, slow, at, per, moments, theme, background, trail, show, hide string
}

// askedFor reads the flags.
func askedFor(args []string, std streams) (files []string, req request, status int, done bool) {
	var in texts
	req.Options = capture.Defaults()
	flags := flag.NewFlagSet(program+" render", flag.ContinueOnError)
	flags.StringVar(&req.out, "o", "", "")
	flags.BoolVar(&req.force, "force", false, "")
	flags.BoolVar(&req.sameFrame, "same-frame", false, "")
	flags.BoolVar(&req.clicks, "clicks", false, "")
	flags.BoolVar(&req.Mirror, "mirror", false, "")
	flags.StringVar(&req.format, "format", "gif", "")
	flags.StringVar(&in.size, "size", "360x360", "")
	flags.StringVar(&in.fps, "fps", "25", "")
	flags.StringVar(&in.rounds, "rounds", say.Render.Whole, "")
	flags.StringVar(&in.slow, "slow", "1", "")
	flags.StringVar(&in.at, "at", "0", "")
	flags.StringVar(&in.per, "per", "beat", "")
	flags.StringVar(&in.moments, "moments", "8", "")
	flags.StringVar(&in.theme, "theme", "", "")
	flags.StringVar(&in.background, "background", "theme", "")
	flags.StringVar(&in.trail, "trail", "round", "")
	flags.StringVar(&in.show, "show", "", "")
	flags.StringVar(&in.hide, "hide", "", "")
	flags.StringVar(&req.Show.Caption, "caption", "", "")
	flags.StringVar(&req.public, "public-url", "", "")
	if files, status, done = parse(flags, args, say.Render.Usage, std); done {
		return nil, req, status, true
	}
	wrong := append(in.read(&req.Options), req.byEnding(flags, len(files))...)
	wrong = append(wrong, req.unfit(flags)...)
	if len(wrong) == 0 {
		if err := req.Check(words.Said); err != nil {
			for line := range strings.SplitSeq(err.Error(), "\n") {
				wrong = append(wrong, fmt.Sprintf(say.Render.Fault, line))
			}
		}
	}
	if len(wrong) == 0 {
		return files, req, fine, false
	}
	for _, line := range wrong {
		complain(std, "%s", line)
	}
	complain(std, say.TryHelp, flags.Name())
	return nil, req, unusable, true
}

// read turns the texts into options, and returns a line for each that cannot
// be read.
func (in *texts) read(o *capture.Options) []string {
	r := &refusals{}
	w, h, _ := strings.Cut(in.size, "x")
	var err, err2 error
	o.Width, err = strconv.Atoi(w)
	o.Height, err2 = strconv.Atoi(h)
	if err != nil || err2 != nil {
		r.add(say.Render.Size, in.size)
	}
	o.FPS, o.Slow, o.At = r.number("fps", in.fps), r.number("slow", in.slow), r.number("at", in.at)
	if in.rounds != say.Render.Whole {
		o.Rounds = r.count("rounds", in.rounds)
	}
	o.Moments = r.count("moments", in.moments)
	o.Per = capture.Per(r.choice("per", in.per, "beat", "petal"))
	s := &o.Show
	s.Trail = scene.TrailLength(r.choice("trail", in.trail, "round", "half", "all", "none"))
	for _, i := range r.several("show", in.show, "grid", "slack", "pieces", "title", "names", "beats", "taken", "timing") {
		*[]*bool{&s.HideGrid, &s.HideSlack, &s.ByPiece, &s.Title, &s.Names, &s.Beats, &s.Taken, &s.Timing}[i] = i > 1 // the first two are not hidden then
	}
	for _, i := range r.several("hide", in.hide, "path", "arms", "letters", "kinds") {
		*[]*bool{&s.HideHandPath, &s.HideArms, &s.HideLetters, &s.PlainInk}[i] = true
	}
	if !o.SetGround(in.background) {
		r.add(say.Render.Background, in.background)
	}
	if in.theme != "" {
		o.Night = r.choice("theme", in.theme, "day", "night") == 1
	}
	return r.lines
}

// refusals collects what is wrong with flags, a line each.
type refusals struct{ lines []string }

func (r *refusals) add(format string, args ...any) {
	r.lines = append(r.lines, fmt.Sprintf(format, args...))
}

// number reads a decimal or a fraction.
func (r *refusals) number(name, text string) frac.Frac {
	f, err := frac.Parse(words.TakenDecimals(text))
	if err != nil {
		r.add(say.Render.Number, name, text, say.Render.AnyNumber)
	}
	return f
}

// count reads a whole number from 1.
func (r *refusals) count(name, text string) int {
	n, err := strconv.Atoi(text)
	if err != nil || n < 1 {
		r.add(say.Render.Number, name, text, say.Render.WholeNumber)
	}
	return n
}

// choice returns which one of several it is.
func (r *refusals) choice(name, text string, among ...string) int {
	i := slices.Index(among, text)
	if i < 0 {
		r.add(say.Render.Choice, name, text, strings.Join(among, ", "))
	}
	return max(i, 0)
}

// several returns which of several stand in a list with commas.
func (r *refusals) several(name, list string, among ...string) (which []int) {
	for s := range strings.SplitSeq(list, ",") {
		if s = strings.TrimSpace(s); s != "" {
			which = append(which, r.choice(name, s, among...))
		}
	}
	return which
}
