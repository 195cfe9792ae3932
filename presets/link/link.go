package link

import (
	"bytes"
	"compress/flate"
	"encoding/base64"
	"encoding/binary"
	"errors"
	"fmt"
	"hash/crc32"
	"io"
	"strings"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

// Mark is how a fragment of this version begins, after the # of the link.
const Mark = "w1."

// Errors that Encode and Decode give; what they say to a person is their text.
var (
	ErrEmpty   = words.Fault(func() string { return words.Said.Share.Link.Empty })
	ErrDamaged = words.Fault(func() string { return words.Said.Share.Link.Damaged })
	ErrForeign = errors.New("no link of the bench")
	ErrNewer   = errors.New("a newer link")
	ErrTooLong = errors.New("too long a link")
	ErrTooMuch = errors.New("too large a pattern in a link")
)

// Error is what is wrong with a link.
type Error struct {
	Cause error  // one of the errors above
	At    int    // the character of the fragment, from 1 and without its #; 0 for the whole
	What  string // what was found and what is allowed
}

// Error returns the problem as one line.
func (e Error) Error() string {
	if e.At > 0 {
		return fmt.Sprintf(words.Said.Share.Link.At, e.At, e.What)
	}
	return e.What
}

// Unwrap returns the cause.
func (e Error) Unwrap() error { return e.Cause }

// coding takes no stray bits at the end: one text for one stream.
var coding = base64.RawURLEncoding.Strict()

// Encode returns the fragment, # included, that holds p. Decode gives an
// equal pattern. What presets.Encode refuses is refused, and with ErrTooLong
// what takes more than MaxChars.
func Encode(p engine.Pattern) (fragment string, err error) {
	file, err := presets.Encode(p)
	if err != nil {
		return "", err
	}
	if len(file) > MaxFile {
		return "", tooMuch()
	}
	body := bytes.NewBuffer(make([]byte, sumSize))
	w, err := flate.NewWriterDict(body, flate.BestCompression, []byte(dictionary))
	if err != nil {
		return "", fmt.Errorf("failed to pack a link: %w", err)
	}
	w.Write(file) // the buffer takes all
	if err := w.Close(); err != nil {
		return "", fmt.Errorf("failed to pack a link: %w", err)
	}
	raw := body.Bytes()
	binary.BigEndian.PutUint32(raw, crc32.ChecksumIEEE(raw[sumSize:]))
	text := Mark + coding.EncodeToString(raw)
	if len(text) > MaxChars {
		return "", tooLong(len(text))
	}
	return "#" + text, nil
}

// Decode returns the pattern in a fragment, with or without its #. It refuses
// with an Error, or with the errors of presets.Decode what is in the link but
// is no pattern that can be used.
func Decode(fragment string) (engine.Pattern, error) {
	file, err := unpack(strings.TrimPrefix(fragment, "#"))
	if err != nil {
		return engine.Pattern{}, err
	}
	return presets.Decode(words.Said.Share.Link.Unreadable, file)
}

// Holds reports whether a fragment is meant to hold a pattern, in this or
// another version; an empty one or a heading's name is not.
func Holds(fragment string) bool {
	_, _, ok := version(strings.TrimPrefix(fragment, "#"))
	return ok
}

// version divides a text "w12.…" into its number and the rest.
func version(text string) (number, body string, ok bool) {
	rest, found := strings.CutPrefix(text, "w")
	number, body, dot := strings.Cut(rest, ".")
	const most = 6 // digits
	if !found || !dot || number == "" || len(number) > most || strings.Trim(number, "0123456789") != "" {
		return "", "", false
	}
	return number, body, true
}

// unpack returns the file in a fragment.
func unpack(text string) ([]byte, error) {
	w := &words.Said.Share.Link
	if text == "" {
		return nil, ErrEmpty
	}
	if len(text) > MaxChars {
		return nil, tooLong(len(text))
	}
	number, body, ok := version(text)
	switch {
	case !ok:
		return nil, Error{ErrForeign, 1, fmt.Sprintf(w.FoundAllowed, fmt.Sprintf(w.Found, beginning(text)), fmt.Sprintf(w.Allowed, Mark))}
	case "w"+number+"." != Mark:
		return nil, Error{ErrNewer, 0, fmt.Sprintf(w.Newer, "w"+number)}
	}
	raw, err := coding.DecodeString(body)
	if at := strings.IndexFunc(body, notLetter); at >= 0 {
		found := []rune(body[at:])[:1]
		return nil, Error{ErrDamaged, len(Mark) + at + 1,
			fmt.Sprintf(w.FoundAllowed, fmt.Sprintf(w.Found, string(found)), w.Letters)}
	}
	if err != nil || len(raw) <= sumSize || binary.BigEndian.Uint32(raw) != crc32.ChecksumIEEE(raw[sumSize:]) {
		return nil, ErrDamaged
	}
	return inflate(raw[sumSize:])
}

// inflate unpacks a stream and stops when it has become too much.
func inflate(stream []byte) ([]byte, error) {
	in := bytes.NewReader(stream)
	file, err := io.ReadAll(io.LimitReader(flate.NewReaderDict(in, []byte(dictionary)), MaxFile+1))
	switch {
	case len(file) > MaxFile:
		return nil, tooMuch()
	case err != nil || in.Len() > 0: // something after the end is no link of ours
		return nil, ErrDamaged
	}
	return file, nil
}

// notLetter reports whether base64url has no such character.
func notLetter(r rune) bool {
	return (r < 'a' || r > 'z') && (r < 'A' || r > 'Z') && (r < '0' || r > '9') && r != '-' && r != '_'
}

// beginning cuts a text for showing.
func beginning(s string) string {
	const most = 12 // characters
	if r := []rune(s); len(r) > most {
		return string(r[:most])
	}
	return s
}

func tooLong(n int) error {
	return Error{ErrTooLong, 0, fmt.Sprintf(words.Said.Share.Link.TooLong, n, MaxChars)}
}

func tooMuch() error {
	return Error{ErrTooMuch, 0, fmt.Sprintf(words.Said.Share.Link.Large, MaxFile)}
}
