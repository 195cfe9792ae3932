// Command whorlbench serves the bench, answers questions about pattern files
// and makes pictures and loops of them.
package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"os"
	"strings"

	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
)

const program = "whorlbench"

// The exit statuses.
const (
	fine     = 0
	faulty   = 1 // check --strict found a fault
	unusable = 2 // the input could not be used
)

// streams are what a command reads and writes.
type streams struct {
	in       io.Reader
	out, err io.Writer
}

var say = &words.EnglishCommand

// language is the environment variable that names the language of the answers, as
// BCP 47 or a locale does.
const language = "WHORLBENCH_LANG"

// speak lets everything be said in the language of a tag, English where there
// is no other.
func speak(tag string) {
	say = &words.EnglishCommand
	words.Use(&words.English)
	if strings.HasPrefix(strings.ToLower(tag), german.German.Lang) {
		say = &german.Command
		words.Use(&german.German)
	}
	words.SaidCommand = say
}

func main() {
	speak(os.Getenv(language))
	os.Exit(run(context.Background(), os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// run does what args ask for and returns the exit status. A command that
// would go on for ever ends with ctx.
func run(ctx context.Context, args []string, in io.Reader, out, errs io.Writer) int {
	std := streams{in, out, errs}
	if len(args) == 0 {
		fmt.Fprint(errs, say.Usage)
		return unusable
	}
	switch name, rest := args[0], args[1:]; name {
	case "serve":
		return serve(ctx, rest, std)
	case "check":
		return check(rest, std)
	case "sample":
		return sample(rest, std)
	case "link":
		return links(rest, std)
	case "render":
		return render(ctx, rest, std)
	case "help", "-h", "-help", "--help":
		fmt.Fprint(out, say.Usage)
		return fine
	default:
		fmt.Fprintf(errs, say.Unknown+"\n\n", program, name)
		fmt.Fprint(errs, say.Usage)
		return unusable
	}
}

// parse reads a command's flags, which may stand before, between and after
// its files, and returns the files. done says that there is nothing left to
// do but to leave with status.
func parse(flags *flag.FlagSet, args []string, usage string, std streams) (files []string, status int, done bool) {
	flags.SetOutput(io.Discard) // its messages are not ours
	for {
		switch err := flags.Parse(args); err {
		case nil:
		case flag.ErrHelp:
			fmt.Fprint(std.out, usage)
			return nil, fine, true
		default:
			complain(std, say.BadFlag, flags.Name(), err)
			complain(std, say.TryHelp, flags.Name())
			return nil, unusable, true
		}
		rest := flags.Args()
		if len(rest) == 0 {
			return files, fine, false
		}
		if n := len(args) - len(rest); n > 0 && args[n-1] == "--" { // all that follows are files
			return append(files, rest...), fine, false
		}
		files = append(files, rest[0])
		args = rest[1:]
	}
}

// complain writes one line to standard error.
func complain(std streams, format string, args ...any) {
	fmt.Fprintf(std.err, format+"\n", args...)
}
