// Command size holds the bench's download against that of the least program
// the same engine runs, both built and packed alike, and fails if the bench is
// more than the allowed multiple of it:
//
//	go run ./web/size [-max 1.6] [-quality 9]
package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"whorlbench/web/build/bundle"
)

const (
	bench = "./sandbox"
	empty = "./web/size/empty"
)

func main() { os.Exit(run(context.Background(), os.Args[1:], os.Stdout, os.Stderr)) }

func run(ctx context.Context, args []string, out, errs io.Writer) int {
	flags := flag.NewFlagSet("size", flag.ContinueOnError)
	flags.SetOutput(errs)
	limit := flags.Float64("max", 1.6, "the greatest multiple of the empty program's size allowed")
	quality := flags.Int("quality", 9, "brotli quality for both; 11 is what is shipped and takes a minute")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	var sizes [2]float64
	for i, pkg := range []string{bench, empty} {
		n, err := packedSize(ctx, pkg, *quality)
		if err != nil {
			fmt.Fprintf(errs, "size: %v\n", err)
			return 2
		}
		fmt.Fprintf(out, "%-18s %9d bytes as brotli %d\n", pkg, n, *quality)
		sizes[i] = float64(n)
	}
	ratio := sizes[0] / sizes[1]
	fmt.Fprintf(out, "ratio %.3f, allowed %.3g\n", ratio, *limit)
	if ratio > *limit {
		fmt.Fprintf(errs, "size: the bench has become too large to load\n")
		return 1
	}
	return 0
}

// packedSize returns the size in bytes of the program pkg, built and packed.
func packedSize(ctx context.Context, pkg string, quality int) (int, error) {
	dir, err := os.MkdirTemp("", "size-")
	if err != nil {
		return 0, err
	}
	defer os.RemoveAll(dir)
	file := filepath.Join(dir, "program.wasm")
	if err := bundle.Compile(ctx, pkg, file); err != nil {
		return 0, err
	}
	data, err := os.ReadFile(file)
	if err != nil {
		return 0, err
	}
	packed, err := bundle.Brotli(ctx, data, quality)
	return len(packed), err
}
