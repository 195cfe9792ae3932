package bundle

import (
	"bytes"
	"compress/gzip"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"sync"

	"github.com/andybalholm/brotli"

	"whorlbench/cmd/whorlbench/site"
)

const (
	gzipQuality = gzip.BestCompression
	// brotliWindow is the greatest window (2^24 bytes) that a browser takes.
	brotliWindow = 24
	// step is how much is packed between two looks at the context (bytes).
	step = 1 << 20
)

// packable are the endings of files that packing makes smaller.
var packable = []string{".wasm", ".js", ".css", ".svg", ".html", ".webmanifest", ".json"}

// coding is one way of packing.
type coding struct {
	suffix  string
	quality int // 0: take over what an earlier build made, make none
	pack    func(ctx context.Context, data []byte, quality int) ([]byte, error)
	known   func(f *File) **Packed
}

// pack writes each file of dir in each coding beside it, taking over from
// the earlier build in old what has not changed, and notes it in m.
func pack(ctx context.Context, dir, old string, m *Manifest, brotliQuality int) error {
	codings := []coding{
		{".br", brotliQuality, Brotli, func(f *File) **Packed { return &f.Brotli }},
		{".gz", gzipQuality, Gzip, func(f *File) **Packed { return &f.Gzip }},
	}
	earlier := readManifest(old)
	var jobs []packing
	for _, name := range m.Names() {
		if !slices.Contains(packable, filepath.Ext(name)) || name == site.PublicFile { // which a host may edit
			continue
		}
		for _, c := range codings {
			jobs = append(jobs, packing{c, dir, old, name, m.Files[name].SHA256, earlier.Files[name]})
		}
	}
	var (
		wg   sync.WaitGroup
		lock sync.Mutex // guards errs and m
		errs []error
	)
	for _, job := range jobs {
		wg.Go(func() {
			p, err := job.run(ctx)
			lock.Lock()
			defer lock.Unlock()
			if err != nil {
				errs = append(errs, fmt.Errorf("failed to pack %s: %w", job.name, err))
			}
			f := m.Files[job.name]
			*job.known(&f) = p
			m.Files[job.name] = f
		})
	}
	wg.Wait()
	return errors.Join(errs...)
}

// packing is the work of packing one file in one coding.
type packing struct {
	coding
	dir, old, name string
	sha256         string // of the file
	earlier        File   // as it was in the earlier build
}

// run returns nil where the file is not packed: it may not be, or would not
// become smaller.
func (j packing) run(ctx context.Context) (*Packed, error) {
	to := filepath.Join(j.dir, j.name+j.suffix)
	if p := *j.known(&j.earlier); p != nil && j.earlier.SHA256 == j.sha256 && (j.quality == 0 || j.quality == p.Quality) {
		data, err := os.ReadFile(filepath.Join(j.old, j.name+j.suffix))
		if err == nil && hash(data) == p.SHA256 {
			return p, os.WriteFile(to, data, 0o644)
		}
	}
	if j.quality == 0 {
		return nil, nil
	}
	data, err := os.ReadFile(filepath.Join(j.dir, j.name))
	if err != nil {
		return nil, err
	}
	packed, err := j.pack(ctx, data, j.quality)
	if err != nil || len(packed) >= len(data) {
		return nil, err
	}
	return &Packed{int64(len(packed)), hash(packed), j.quality}, os.WriteFile(to, packed, 0o644)
}

// Brotli packs data at a quality of 0 to 11.
func Brotli(ctx context.Context, data []byte, quality int) ([]byte, error) {
	var out bytes.Buffer
	w := brotli.NewWriterOptions(&out, brotli.WriterOptions{Quality: quality, LGWin: brotliWindow})
	return finish(ctx, data, w, &out)
}

// Gzip packs data at a quality of 1 to 9.
func Gzip(ctx context.Context, data []byte, quality int) ([]byte, error) {
	var out bytes.Buffer
	w, err := gzip.NewWriterLevel(&out, quality)
	if err != nil {
		return nil, err
	}
	return finish(ctx, data, w, &out)
}

func finish(ctx context.Context, data []byte, w io.WriteCloser, out *bytes.Buffer) ([]byte, error) {
	for part := range slices.Chunk(data, step) {
		if err := ctx.Err(); err != nil {
			return nil, err
		}
		if _, err := w.Write(part); err != nil {
			return nil, err
		}
	}
	if err := w.Close(); err != nil {
		return nil, err
	}
	return out.Bytes(), nil
}
