package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"
	"slices"
	"strings"
	"unicode"

	"whorlbench/cmd/whorlbench/report"
	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

func check(args []string, std streams) int {
	flags := flag.NewFlagSet(program+" check", flag.ContinueOnError)
	asJSON := flags.Bool("json", false, "")
	strict := flags.String("strict", "", "")
	files, status, done := parse(flags, args, say.Check.Usage, std)
	if done {
		return status
	}
	if len(files) == 0 {
		complain(std, "%s", say.Check.NoFile)
		return unusable
	}
	if *strict != "" && !slices.Contains(report.Levels, *strict) {
		complain(std, say.Check.NoLevel, *strict, strings.Join(report.Levels, ", "))
		return unusable
	}
	if *asJSON { // other programs read one language
		defer words.Use(words.Said)
		words.Use(&words.English)
	}
	var reports []report.Report
	var answer bytes.Buffer
	for _, file := range files {
		name, pattern, err := load(file, std.in)
		if err != nil {
			complain(std, "%v", err)
			status = unusable
			continue
		}
		r := report.Of(name, pattern)
		if *strict != "" && r.AtLeast(*strict) && status == fine {
			status = faulty
		}
		reports = append(reports, r)
		if !*asJSON {
			writeReport(&answer, r, pattern.Tempo, isTerminal(std.out))
			answer.WriteByte('\n')
		}
	}
	if *asJSON {
		data, err := report.JSON(reports, len(files) > 1)
		if err != nil {
			complain(std, say.Check.CannotWrite, err)
			return unusable
		}
		if len(reports) > 0 || len(files) > 1 {
			answer.Write(data)
		}
	} else if len(reports) > 0 {
		answer.WriteString(say.Check.Caution)
	}
	if _, err := std.out.Write(answer.Bytes()); err != nil {
		complain(std, say.Check.CannotWrite, err)
		return unusable
	}
	return status
}

// isTerminal reports whether w is a terminal that a person would see colours
// on; NO_COLOR in the environment says not.
func isTerminal(w io.Writer) bool {
	f, ok := w.(*os.File)
	if !ok || os.Getenv("NO_COLOR") != "" {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}

// load reads and decodes one file, standard input for "-". Each line of an
// error stands by itself and begins with the file's name.
func load(file string, in io.Reader) (name string, p engine.Pattern, err error) {
	name = oneLine(file)
	var data []byte
	if file == "-" {
		name = say.Check.Stdin
		data, err = readAll(in)
	} else {
		data, err = readFile(file)
	}
	if errors.Is(err, errTooLong) {
		return name, p, fmt.Errorf(say.Check.TooLong, name, presets.MaxFileSize)
	}
	if err != nil {
		if path := (*fs.PathError)(nil); errors.As(err, &path) {
			err = path.Err // without the name twice
		}
		return name, p, fmt.Errorf(say.Check.CannotRead, name, err)
	}
	p, err = presets.Decode(name, data)
	return name, p, err
}

// errTooLong keeps an endless input from being read to its end.
var errTooLong = errors.New("too long")

func readFile(file string) ([]byte, error) {
	f, err := os.Open(file)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	return readAll(f)
}

func readAll(r io.Reader) ([]byte, error) {
	data, err := io.ReadAll(io.LimitReader(r, presets.MaxFileSize+1))
	if err == nil && len(data) > presets.MaxFileSize {
		err = errTooLong
	}
	return data, err
}

// oneLine keeps a title or a name from moving the cursor or colouring the
// terminal.
func oneLine(s string) string {
	return strings.Map(func(r rune) rune {
		if !unicode.IsPrint(r) {
			return ' '
		}
		return r
	}, s)
}
