package capture

import (
	"context"
	"image"
	"sync"

	"whorlbench/sandbox/display"
)

// Progress is told how many frames or pictures of how many are done. It may be
// nil.
type Progress func(done, of int)

func (p Progress) tell(done, of int) {
	if p != nil {
		p(done, of)
	}
}

// ahead is how many frames each worker may be ahead of what uses them, which
// bounds the memory that a loop of any length takes.
const ahead = 2

// EachFrame paints the frames of a loop and hands them to use, one after the
// other, in order; the picture, its opacity multiplied in, belongs to use only
// until it returns. An end of ctx ends it with ctx's error.
func (t *Take) EachFrame(ctx context.Context, l Timeline, tell Progress, use func(k int, frame *image.RGBA) error) error {
	ctx, stop := context.WithCancelCause(ctx)
	var working sync.WaitGroup
	defer working.Wait()
	defer stop(nil)
	workers := min(max(t.Workers, 1), l.N)
	painted, free := make([]chan *image.RGBA, workers), make([]chan *image.RGBA, workers)
	for w := range workers {
		painted[w], free[w] = make(chan *image.RGBA, ahead), make(chan *image.RGBA, ahead)
		for range ahead {
			free[w] <- image.NewRGBA(image.Rect(0, 0, t.Width, t.Height))
		}
		a, err := t.artist()
		if err != nil {
			return err
		}
		working.Go(func() {
			var list display.List
			for k := w; k < l.N; k += workers {
				select {
				case <-ctx.Done():
					return
				case dst := <-free[w]:
					a.paint(dst, &list, l.Beat(k))
					painted[w] <- dst // which has room for all that are free
				}
			}
		})
	}
	for k := range l.N {
		w := k % workers
		select {
		case <-ctx.Done():
			return context.Cause(ctx)
		case frame := <-painted[w]:
			if err := use(k, frame); err != nil {
				return err
			}
			tell.tell(k+1, l.N)
			free[w] <- frame
		}
	}
	return nil
}
