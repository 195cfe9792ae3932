package capture

import (
	"bytes"
	"context"
	"image"
	"sync"

	"whorlbench/sandbox/display"
	"whorlbench/sandbox/paint"
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

// Frame is one of a loop, its opacity multiplied in.
type Frame struct {
	*image.RGBA
	Changed *paint.Cells // where it may differ from the frame before; of the first, all
}

// clone returns a copy of the picture, to keep.
func (f Frame) clone() *image.RGBA {
	return &image.RGBA{Pix: bytes.Clone(f.Pix), Stride: f.Stride, Rect: f.Rect}
}

// eachRun hands use where in Pix the runs of what may have changed begin and end.
func (f Frame) eachRun(use func(from, to int)) {
	for y := range f.Rect.Dy() {
		f.Changed.Runs(y, 1, func(from, to int) { use(y*f.Stride+4*from, y*f.Stride+4*to) })
	}
}

// EachFrame paints the frames of a loop and hands them to use, one after the
// other, in order; a frame is only to be read, and only until use returns. An
// end of ctx ends it with ctx's error.
func (t *Take) EachFrame(ctx context.Context, l Timeline, tell Progress, use func(k int, frame Frame) error) error {
	ctx, stop := context.WithCancelCause(ctx)
	var working sync.WaitGroup
	defer working.Wait()
	defer stop(nil)
	workers := min(max(t.Workers, 1), l.N)
	painted, free := make([]chan *paint.Layer, workers), make([]chan *paint.Layer, workers)
	var ground *image.RGBA
	for w := range workers {
		a, err := t.artist()
		if err != nil {
			return err
		}
		if ground == nil {
			ground = a.paintGround()
		}
		painted[w], free[w] = make(chan *paint.Layer, ahead), make(chan *paint.Layer, ahead)
		for range ahead {
			free[w] <- paint.NewLayer(ground)
		}
		working.Go(func() {
			var list display.List
			for k := w; k < l.N; k += workers {
				select {
				case <-ctx.Done():
					return
				case dst := <-free[w]:
					a.paint(dst, ground, &list, l.Beat(k))
					painted[w] <- dst // which has room for all that are free
				}
			}
		})
	}
	was, changed := paint.NewCells(ground.Rect.Size()), paint.NewCells(ground.Rect.Size())
	was.Fill()
	for k := range l.N {
		w := k % workers
		select {
		case <-ctx.Done():
			return context.Cause(ctx)
		case frame := <-painted[w]:
			changed.Union(was, frame.Painted)
			was.Copy(frame.Painted)
			if err := use(k, Frame{frame.RGBA, changed}); err != nil {
				return err
			}
			tell.tell(k+1, l.N)
			free[w] <- frame
		}
	}
	return nil
}
