package main

import (
	"bufio"
	"errors"
	"flag"
	"fmt"

	"whorlbench/presets/link"
)

// links prints a link for each file.
func links(args []string, std streams) int {
	flags := flag.NewFlagSet(program+" link", flag.ContinueOnError)
	public := flags.String("public-url", "", "")
	files, status, done := parse(flags, args, say.Link.Usage, std)
	if done {
		return status
	}
	if len(files) == 0 {
		complain(std, "%s", say.Link.NoFile)
		return unusable
	}
	address, err := link.Address("http://"+defaultAddr+"/", *public)
	switch {
	case errors.Is(err, link.ErrOnlyHere):
		complain(std, say.Link.OnlyHere, address)
	case err != nil:
		complain(std, say.Link.BadAddress, err)
		return unusable
	}
	out := bufio.NewWriter(std.out)
	for _, file := range files {
		name, pattern, err := load(file, std.in)
		if err != nil {
			complain(std, "%v", err)
			status = unusable
			continue
		}
		fragment, err := link.Encode(pattern)
		if err != nil {
			complain(std, say.Link.Refused, name, err)
			status = unusable
			continue
		}
		fmt.Fprintln(out, address+fragment)
	}
	if err := out.Flush(); err != nil {
		complain(std, say.Link.CannotWrite, err)
		return unusable
	}
	return status
}
