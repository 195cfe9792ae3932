package main

import (
	"io"
	"os"
	"sync"
	"time"

	"github.com/schollz/progressbar/v3"

	"whorlbench/sandbox/capture"
)

// bar shows a person at a terminal how far things are. Anywhere else it is
// nothing.
type bar struct {
	sync.Mutex
	shown      *progressbar.ProgressBar
	done, most int
}

// newBar returns a bar on standard error for so many files.
func newBar(std streams, files int) *bar {
	b := &bar{}
	if !onScreen(std.err) || files == 0 {
		return b
	}
	b.shown = progressbar.NewOptions(1,
		progressbar.OptionSetWriter(std.err), progressbar.OptionSetDescription(say.Render.Working),
		progressbar.OptionThrottle(100*time.Millisecond), progressbar.OptionClearOnFinish(), progressbar.OptionSetPredictTime(false),
		progressbar.OptionSetWidth(40))
	return b
}

// onScreen reports whether w is a terminal.
func onScreen(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// of returns what one file tells of itself; all add up.
func (b *bar) of() capture.Progress {
	if b.shown == nil {
		return nil
	}
	was := 0
	return func(done, of int) {
		b.Lock()
		defer b.Unlock()
		if was == 0 {
			b.most += of
			b.shown.ChangeMax(b.most)
		}
		b.done += done - was
		was = done
		_ = b.shown.Set(b.done)
	}
}

// clear makes room for a line.
func (b *bar) clear() {
	b.Lock()
	defer b.Unlock()
	if b.shown != nil {
		_ = b.shown.Clear()
	}
}
