package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"whorlbench/engine"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/words"
)

// maker makes one sort of file.
type maker struct {
	// ready makes a pattern ready to be drawn.
	ready func(p engine.Pattern) (*capture.Take, error)
	name  func(t *capture.Take) string
	loops bool
	// write writes the file to w, which has the name file, or none for
	// standard output.
	write func(ctx context.Context, w io.Writer, file string, t *capture.Take, tell capture.Progress) error
}

// makerOf returns what makes the format that is asked for.
func makerOf(req request) (maker, error) {
	if v, ok := videos[req.format]; ok {
		return v.maker(req)
	}
	if req.format == cardFormat {
		return cardMaker(req), nil
	}
	f, ok := capture.Named(req.format)
	if !ok {
		return maker{}, fmt.Errorf(say.Render.Format, req.format, strings.Join(append(append(capture.Names(), videoNames...), cardFormat), ", "))
	}
	if req.clicks {
		return maker{}, fmt.Errorf(say.Render.Silent, req.format)
	}
	return maker{
		ready: req.take,
		name:  func(t *capture.Take) string { return t.FileName(f) },
		loops: f.Loops(),
		write: func(ctx context.Context, w io.Writer, _ string, t *capture.Take, tell capture.Progress) error {
			return t.Write(ctx, w, f, tell)
		},
	}, nil
}

// take makes a pattern ready to be captured as it is asked for.
func (req *request) take(p engine.Pattern) (*capture.Take, error) {
	return capture.New(p, req.Options, words.Said)
}

// outPlace returns where files go: the one place that is named for a single
// one, else a folder, with its separator.
func outPlace(out string, files int) (folder string, single bool) {
	if out == "" {
		return "", false
	}
	if out == "-" {
		return "", true
	}
	info, err := os.Stat(out)
	isFolder := err == nil && info.IsDir() || os.IsPathSeparator(out[len(out)-1]) || files > 1
	if !isFolder {
		return "", true
	}
	return strings.TrimRight(filepath.Clean(out), string(filepath.Separator)) + string(filepath.Separator), false
}

// place makes a job's file: under another name first, so that whoever sees
// its own name sees all of it.
func (mk maker) place(ctx context.Context, j job, force bool, std streams, tell capture.Progress) error {
	if j.to == "-" {
		return fault(j, say.Render.Stdout, mk.write(ctx, std.out, "", j.take, tell))
	}
	if dir := filepath.Dir(j.to); dir != "." {
		if err := os.MkdirAll(dir, 0o777); err != nil {
			return fault(j, j.to, err)
		}
	}
	f, err := besides(j.to)
	if err != nil {
		return fault(j, j.to, err)
	}
	err = mk.write(ctx, f, f.Name(), j.take, tell)
	if e := f.Close(); err == nil {
		err = e
	}
	if err == nil {
		err = rename(f.Name(), j.to, force)
	}
	if err != nil {
		os.Remove(f.Name()) // which may be gone
		return fault(j, j.to, err)
	}
	return nil
}

// free tells what keeps a name from being given to a file: that it has one
// already, unless that is to be replaced, or that it belongs to something else,
// such as a folder or a device.
func free(to string, force bool) error {
	if to == "-" {
		return nil
	}
	switch info, err := os.Stat(to); {
	case err != nil: // nothing is there, or what is wrong is told when it is written
		return nil
	case !info.Mode().IsRegular():
		return fmt.Errorf(say.Render.NoFileThere, to)
	case !force:
		return fmt.Errorf(say.Render.There, to)
	}
	return nil
}

// errThere says that a file has come into being meanwhile.
var errThere = errors.New("already there")

// rename gives a finished file its name; unless forced, only one that is free,
// which a link decides in one step where the file system has them.
func rename(from, to string, force bool) error {
	if force {
		return os.Rename(from, to)
	}
	switch err := os.Link(from, to); {
	case err == nil:
		return os.Remove(from)
	case errors.Is(err, fs.ErrExist):
		return errThere
	}
	if _, err := os.Lstat(to); err == nil {
		return errThere
	}
	return os.Rename(from, to)
}

// besides opens a new file beside the one it will be.
func besides(to string) (*os.File, error) {
	const most = 1000
	dir, base := filepath.Split(to)
	for n := 0; ; n++ {
		f, err := os.OpenFile(fmt.Sprintf("%s.%s.part%d", dir, base, n), os.O_RDWR|os.O_CREATE|os.O_EXCL, 0o666)
		if !errors.Is(err, fs.ErrExist) || n == most {
			return f, err
		}
	}
}

// fault says in one line what kept a file from being made.
func fault(j job, to string, err error) error {
	path, link := (*fs.PathError)(nil), (*os.LinkError)(nil)
	switch {
	case err == nil:
		return nil
	case errors.Is(err, context.Canceled):
		return err
	case errors.Is(err, errThere):
		return fmt.Errorf(say.Render.There, to)
	case errors.As(err, &path):
		return fmt.Errorf(say.Render.CannotWrite, to, path.Err)
	case errors.As(err, &link):
		return fmt.Errorf(say.Render.CannotWrite, to, link.Err)
	case errors.Is(err, io.ErrShortWrite), errors.Is(err, io.ErrClosedPipe):
		return fmt.Errorf(say.Render.CannotWrite, to, err)
	}
	return fmt.Errorf(say.Render.Of, j.from, err)
}
