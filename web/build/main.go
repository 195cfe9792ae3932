// Command build makes the folder that the bench is served from: the program
// as WebAssembly, the page, and every file a second and third time packed for
// the network. It works from the project's top folder:
//
//	go run ./web/build [-o web/dist] [-no-brotli]
package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"os"
	"os/signal"
	"syscall"
	"text/tabwriter"

	"whorlbench/sandbox/card"
	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
	"whorlbench/web/build/bundle"
)

// brotliQuality is the best there is. It takes half a minute for the program,
// once for each change of it.
const brotliQuality = 11

func main() { os.Exit(run(os.Args[1:], os.Stdout, os.Stderr)) }

func run(args []string, out, errs io.Writer) int {
	flags := flag.NewFlagSet("build", flag.ContinueOnError)
	flags.SetOutput(errs)
	o := bundle.Options{
		Package: "./sandbox", Film: "./sandbox/film/worker", Pages: "web", Words: words.English, More: []words.Table{german.German},
		Glossaries: map[string]*words.Glossary{words.English.Lang: &words.EnglishGlossary, german.German.Lang: &german.Glossary},
		Files:      map[string]string{card.StyleName: card.Style},
	}
	flags.StringVar(&o.Out, "o", "web/dist", "the folder to make")
	noBrotli := flags.Bool("no-brotli", false, "spare the slow packing: a first start is quicker")
	if err := flags.Parse(args); err != nil {
		return 2
	}
	if flags.NArg() > 0 {
		fmt.Fprintf(errs, "build: unexpected argument %q\n", flags.Arg(0))
		return 2
	}
	if !*noBrotli {
		o.Brotli = brotliQuality
	}
	// An interrupted build takes its half-made folder away.
	ctx, stop := signal.NotifyContext(context.Background(), syscall.SIGINT, syscall.SIGTERM)
	defer stop()
	made, err := bundle.Build(ctx, o)
	if err != nil {
		fmt.Fprintf(errs, "build: %v\n", err)
		return 1
	}
	list(out, o.Out, made)
	return 0
}

// list says what was made and how large it is, in bytes.
func list(out io.Writer, dir string, m bundle.Manifest) {
	w := tabwriter.NewWriter(out, 0, 0, 2, ' ', tabwriter.AlignRight)
	fmt.Fprintf(w, "%s, version %s\tbytes\tbr\tgz\t\n", dir, m.Version)
	size := func(p *bundle.Packed) string {
		if p == nil {
			return "–"
		}
		return fmt.Sprint(p.Size)
	}
	for _, name := range m.Names() {
		f := m.Files[name]
		fmt.Fprintf(w, "%s\t%d\t%s\t%s\t\n", name, f.Size, size(f.Brotli), size(f.Gzip))
	}
	w.Flush()
}
