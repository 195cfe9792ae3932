package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"io"
	"io/fs"
	"os"
	"strings"
	"unicode"

	"whorlbench/engine"
	"whorlbench/presets"
)

func check(args []string, std streams) int {
	flags := flag.NewFlagSet(program+" check", flag.ContinueOnError)
	if status, done := parse(flags, args, say.Check.Usage, std); done {
		return status
	}
	if flags.NArg() == 0 {
		complain(std, "%s", say.Check.NoFile)
		return unusable
	}
	status, answered := fine, false
	for _, file := range flags.Args() {
		name, pattern, err := load(file, std.in)
		if err != nil {
			complain(std, "%v", err)
			status = unusable
			continue
		}
		var answer bytes.Buffer
		if answered {
			answer.WriteByte('\n')
		}
		answered = true
		writeReport(&answer, name, pattern)
		if _, err := std.out.Write(answer.Bytes()); err != nil {
			complain(std, say.Check.CannotWrite, err)
			return unusable
		}
	}
	if answered {
		fmt.Fprint(std.out, "\n"+say.Check.Caution)
	}
	return status
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
