package main

import (
	"context"
	"flag"
	"fmt"
	"io"
	"slices"
	"strings"

	"whorlbench/engine"
	"whorlbench/presets/link"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/card"
	"whorlbench/sandbox/words"
)

// cardFormat is the format that is a lesson card.
const cardFormat = "card"

// cardFlags are the flags of render that a card takes; the last one belongs to
// it alone.
var cardFlags = []string{"o", "force", "format", "per", "mirror", publicFlag}

const publicFlag = "public-url"

// unfit returns a line for each flag that was given and does not go with the
// format, and for an address that others cannot reach.
func (req *request) unfit(flags *flag.FlagSet) (wrong []string) {
	flags.Visit(func(f *flag.Flag) {
		switch isCard := req.format == cardFormat; {
		case !isCard && f.Name == publicFlag:
			wrong = append(wrong, fmt.Sprintf(say.Render.CardOnly, f.Name))
		case isCard && !slices.Contains(cardFlags, f.Name):
			wrong = append(wrong, fmt.Sprintf(say.Render.NotOfCard, f.Name, "--"+strings.Join(cardFlags[3:], ", --")))
		}
	})
	if req.public != "" {
		if _, err := link.PublicURL(req.public); err != nil {
			wrong = append(wrong, fmt.Sprintf(say.Render.BadPublic, err))
		}
	}
	return wrong
}

// cardMaker makes lesson cards.
func cardMaker(req request) maker {
	return maker{
		ready: func(p engine.Pattern) (*capture.Take, error) {
			l, err := capture.NewLesson(p, req.Per, req.Mirror, words.Said)
			if err != nil {
				return nil, err
			}
			return l.Take, nil
		},
		name: func(t *capture.Take) string { return card.FileName(t.Title()) },
		write: func(ctx context.Context, w io.Writer, _ string, t *capture.Take, _ capture.Progress) error {
			if err := context.Cause(ctx); err != nil {
				return err
			}
			c, err := card.New(t.Pattern(), card.Options{Per: req.Per, Mirror: req.Mirror, Public: req.public}, words.Said)
			if err != nil {
				return err
			}
			html, err := c.HTML()
			if err != nil {
				return err
			}
			_, err = w.Write(html)
			return err
		},
	}
}
