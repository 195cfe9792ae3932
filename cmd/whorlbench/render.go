package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"image/color"
	"os/signal"
	"path/filepath"
	"runtime"
	"strconv"
	"strings"
	"syscall"

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
	capture.Options
}

// render makes a file of each pattern.
func render(ctx context.Context, args []string, std streams) int {
	files, req, status, done := askedFor(args, std)
	if done {
		return status
	}
	if len(files) == 0 {
		complain(std, "%s", say.Render.NoFile)
		return unusable
	}
	mk, err := makerOf(req)
	if err != nil {
		complain(std, "%v", err)
		return unusable
	}
	if req.out == "-" && len(files) > 1 {
		complain(std, say.Render.OneOut, len(files))
		return unusable
	}
	ctx, stop := signal.NotifyContext(ctx, syscall.SIGINT, syscall.SIGTERM)
	defer stop()
	signal.Ignore(syscall.SIGPIPE) // a reader that leaves is told as any other fault
	defer signal.Reset(syscall.SIGPIPE)

	jobs, status := jobsOf(files, req, mk, std)
	if req.sameFrame && len(jobs) > 0 {
		takes := make([]*capture.Take, len(jobs))
		for i, j := range jobs {
			takes[i] = j.take
		}
		capture.FrameAlike(takes...)
	}
	if s := makeAll(ctx, jobs, mk, req, std); s != fine {
		status = s
	}
	return status
}

// job is one file to be made.
type job struct {
	from string // the pattern's file
	take *capture.Take
	to   string
}

// jobsOf reads the patterns. What cannot be made is told, and keeps no other
// from being made.
func jobsOf(files []string, req request, mk maker, std streams) (jobs []job, status int) {
	folder, single := outPlace(req.out, len(files))
	used := map[string]bool{}
	for _, file := range files {
		name, pattern, err := load(file, std.in)
		if err != nil {
			complain(std, "%v", err)
			status = unusable
			continue
		}
		take, err := capture.New(pattern, req.Options, &words.English)
		if err != nil {
			complain(std, say.Render.Of, name, err)
			status = unusable
			continue
		}
		to := req.out
		if !single {
			to = folder + freeName(mk.name(take), used)
		}
		if err := free(to, req.force); err != nil {
			complain(std, "%v", err)
			status = unusable
			continue
		}
		if note := take.Note(); note != "" && mk.loops {
			complain(std, "%s", oneLine(note))
		}
		jobs = append(jobs, job{name, take, to})
	}
	return jobs, status
}

// freeName returns a name that no file before has, numbered if need be.
func freeName(name string, used map[string]bool) string {
	ext := filepath.Ext(name)
	base := strings.TrimSuffix(name, ext)
	for n := 2; used[name]; n++ {
		name = fmt.Sprintf("%s-%d%s", base, n, ext)
	}
	used[name] = true
	return name
}

// makeAll makes the files, several at a time, and tells of each in order.
func makeAll(ctx context.Context, jobs []job, mk maker, req request, std streams) (status int) {
	cores := runtime.GOMAXPROCS(0)
	atOnce := max(min(cores, len(jobs)), 1)
	bar := newBar(std, len(jobs))
	made := make([]chan error, len(jobs))
	for i := range made {
		made[i] = make(chan error, 1)
	}
	next := make(chan int, len(jobs))
	for i := range jobs {
		next <- i
	}
	close(next)
	for range atOnce {
		go func() {
			for i := range next {
				jobs[i].take.Workers = max(cores/atOnce, 1)
				made[i] <- mk.place(ctx, jobs[i], req.force, std, bar.of())
			}
		}()
	}
	for i, j := range jobs {
		err := <-made[i]
		bar.clear()
		switch {
		case errors.Is(err, context.Canceled): // which is told once
			status = unusable
		case err != nil:
			complain(std, "%v", err)
			status = unusable
		case j.to != "-":
			fmt.Fprintln(std.out, j.to)
		}
	}
	if ctx.Err() != nil {
		complain(std, "%s", say.Render.Stopped)
		status = unusable
	}
	return status
}

// askedFor reads the flags.
func askedFor(args []string, std streams) (files []string, req request, status int, done bool) {
	w := &say.Render
	o := capture.Defaults()
	var wrong []error
	flags := flag.NewFlagSet(program+" render", flag.ContinueOnError)
	flags.StringVar(&req.out, "o", "", "")
	flags.BoolVar(&req.force, "force", false, "")
	flags.BoolVar(&req.sameFrame, "same-frame", false, "")
	flags.BoolVar(&o.Mirror, "mirror", false, "")
	flags.StringVar(&req.format, "format", "gif", "")
	size := flags.String("size", "", "")
	fps := flags.String("fps", "25", "")
	rounds := flags.String("rounds", w.Whole, "")
	slow := flags.String("slow", "1", "")
	at := flags.String("at", "0", "")
	per := flags.String("per", "beat", "")
	moments := flags.String("moments", strconv.Itoa(o.Moments), "")
	theme := flags.String("theme", "day", "")
	background := flags.String("background", "theme", "")
	trail := flags.String("trail", "round", "")
	show, hide := flags.String("show", "", ""), flags.String("hide", "", "")
	if files, status, done = parse(flags, args, w.Usage, std); done {
		return nil, req, status, true
	}
	refuse := func(format string, args ...any) { wrong = append(wrong, fmt.Errorf(format, args...)) }
	number := func(name, text string, dst *frac.Frac) {
		f, err := frac.Parse(text)
		if err != nil {
			refuse(w.Number, name, text, w.AnyNumber)
		}
		*dst = f
	}
	choice := func(name, text string, among ...string) int {
		for i, s := range among {
			if s == text {
				return i
			}
		}
		refuse(w.Choice, name, text, strings.Join(among, ", "))
		return 0
	}
	each := func(name, list string, what map[string]*bool, among []string, to bool) {
		for s := range strings.SplitSeq(list, ",") {
			if s = strings.TrimSpace(s); s == "" {
				continue
			}
			if b, ok := what[s]; ok {
				*b = to
			} else {
				refuse(w.Choice, name, s, strings.Join(among, ", "))
			}
		}
	}
	if *size != "" {
		if n, err := fmt.Sscanf(*size+"\n", "%dx%d\n", &o.Width, &o.Height); n != 2 || err != nil {
			refuse(w.Size, *size)
		}
	}
	number("fps", *fps, &o.FPS)
	number("slow", *slow, &o.Slow)
	number("at", *at, &o.At)
	count := func(name, text string, dst *int) {
		n, err := strconv.Atoi(text)
		if err != nil || n < 1 {
			refuse(w.Number, name, text, w.WholeNumber)
			return
		}
		*dst = n
	}
	if *rounds != w.Whole {
		count("rounds", *rounds, &o.Rounds)
	}
	count("moments", *moments, &o.Moments)
	o.Per = capture.Per(choice("per", *per, "beat", "petal"))
	o.Night = choice("theme", *theme, "day", "night") == 1
	o.Show.Trail = scene.TrailLength(choice("trail", *trail, "round", "half", "all", "none"))
	grid, pieces := false, false
	each("show", *show, map[string]*bool{"grid": &grid, "pieces": &pieces, "title": &o.Show.Title, "names": &o.Show.Names, "beats": &o.Show.Beats},
		[]string{"grid", "pieces", "title", "names", "beats"}, true)
	o.Show.HideGrid, o.Show.ByPiece = !grid, pieces
	each("hide", *hide, map[string]*bool{"path": &o.Show.HideHandPath, "arms": &o.Show.HideArms, "letters": &o.Show.HideLetters, "kinds": &o.Show.PlainInk},
		[]string{"path", "arms", "letters", "kinds"}, true)
	switch *background {
	case "theme":
	case "clear":
		o.Ground = capture.Clear
	default:
		o.Ground = capture.Coloured
		var ok bool
		if o.Colour, ok = colourOf(*background); !ok {
			refuse(w.Background, *background)
		}
	}
	if len(wrong) == 0 {
		if err := o.Check(&words.English); err != nil {
			for line := range strings.SplitSeq(err.Error(), "\n") {
				refuse(w.Fault, line)
			}
		}
	}
	for _, err := range wrong {
		complain(std, "%v", err)
	}
	req.Options = o
	if len(wrong) > 0 {
		complain(std, say.TryHelp, flags.Name())
		return nil, req, unusable, true
	}
	return files, req, fine, false
}

// colourOf reads #rrggbb.
func colourOf(text string) (c color.NRGBA, ok bool) {
	if len(text) != 7 || text[0] != '#' {
		return c, false
	}
	n, err := strconv.ParseUint(text[1:], 16, 32)
	return color.NRGBA{uint8(n >> 16), uint8(n >> 8), uint8(n), 255}, err == nil
}
