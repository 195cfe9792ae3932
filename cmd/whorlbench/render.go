package main

import (
	"context"
	"errors"
	"fmt"
	"os/signal"
	"path/filepath"
	"runtime"
	"strings"
	"syscall"

	"whorlbench/sandbox/capture"
)

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
		take, err := mk.ready(pattern)
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
