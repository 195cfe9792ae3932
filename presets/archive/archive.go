// Package archive puts many patterns into one ZIP file and takes them out of
// one, however it was made.
package archive

import (
	"archive/zip"
	"bytes"
	"compress/flate"
	"errors"
	"fmt"
	"io"
	"path"
	"strings"
	"time"
	"unicode/utf8"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
)

const (
	// MaxFile (bytes) is how large a ZIP file may be that is taken in.
	MaxFile = 16 << 20
	// MaxPatterns is how many patterns are taken from one.
	MaxPatterns = 1000
	// MaxEntries is how many entries of one are looked at.
	MaxEntries = 4000
	// MaxUnpacked (bytes) bounds what all entries together unpack to, whatever
	// they say of themselves.
	MaxUnpacked = 64 << 20
	// maxFault is how many characters of a pattern's problems are passed on.
	maxFault = 400
)

const ending = ".toml"

// Item is one pattern of an archive.
type Item struct {
	Name    string // of its file
	Pattern engine.Pattern
}

// ErrNothing says that there are no patterns to pack.
var ErrNothing = words.Fault(func() string { return words.Said.Share.Archive.Nothing })

// Pack returns a ZIP file of patterns, each under a name made of its title. The
// same patterns give the same bytes. A pattern that presets.Encode refuses is
// left out, and its problems are returned beside the ZIP file of the others.
func Pack(patterns []engine.Pattern) (data []byte, problems []error) {
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	z.RegisterCompressor(zip.Deflate, func(w io.Writer) (io.WriteCloser, error) {
		return flate.NewWriter(w, flate.BestCompression)
	})
	names := namer{}
	for _, p := range patterns {
		file, err := presets.Encode(p)
		if err != nil {
			problems = append(problems, problem(p.Title, brief(err)))
			continue
		}
		// ZIP cannot say "no time"; the earliest it can is 1980, and the same
		// one for all makes the same bytes.
		header := &zip.FileHeader{Name: names.name(p.Title), Method: zip.Deflate, Modified: time.Date(1980, 1, 1, 0, 0, 0, 0, time.UTC)}
		w, err := z.CreateHeader(header)
		if err == nil {
			_, err = w.Write(file)
		}
		if err != nil {
			problems = append(problems, problem(p.Title, err.Error()))
		}
	}
	if len(names) == 0 {
		return nil, append(problems, ErrNothing)
	}
	if err := z.Close(); err != nil {
		return nil, append(problems, fmt.Errorf("failed to pack: %w", err))
	}
	return out.Bytes(), problems
}

// namer gives out file names, each once; a file system that knows no capitals
// tells them apart too, as FileName makes none.
type namer map[string]bool

func (n namer) name(title string) string {
	base := words.FileName(title)
	name := base
	for i := 2; n[name]; i++ {
		name = fmt.Sprintf("%s-%d", base, i)
	}
	n[name] = true
	return name + ending
}

// Unpack takes the patterns out of a ZIP file, in its order, and says of
// everything that it leaves why. Nothing is written anywhere by the names in
// it. If nothing at all can be taken, the problems say so.
func Unpack(data []byte) (items []Item, problems []error) {
	w := &words.Said.Share.Archive
	if len(data) > MaxFile {
		return nil, []error{fmt.Errorf(w.TooLarge, len(data), MaxFile)}
	}
	// An error beside a reader is about names, which each entry is asked for.
	z, err := zip.NewReader(bytes.NewReader(data), int64(len(data)))
	if z == nil || err != nil && !errors.Is(err, zip.ErrInsecurePath) {
		return nil, []error{errors.New(w.NotZIP)}
	}
	u := unpacking{left: MaxUnpacked, seen: map[string]bool{}}
	for i, f := range z.File {
		if i == MaxEntries {
			problems = append(problems, fmt.Errorf(w.MoreLeft, len(z.File)-i))
			break
		}
		if isFolder(f) { // what lies in it is said to
			continue
		}
		p, err := u.take(f)
		if err == nil && len(items) == MaxPatterns {
			problems = append(problems, fmt.Errorf(w.TooMany, MaxPatterns), fmt.Errorf(w.MoreLeft, len(z.File)-i))
			break
		}
		if err != nil {
			problems = append(problems, problem(f.Name, err.Error()))
			continue
		}
		items = append(items, Item{f.Name, p})
	}
	if len(items) == 0 && len(problems) == 0 {
		problems = []error{errors.New(w.Empty)}
	}
	return items, problems
}

// isFolder reports whether an entry is a folder and nothing else.
func isFolder(f *zip.File) bool {
	return strings.HasSuffix(f.Name, "/") && f.UncompressedSize64 == 0
}

// unpacking is what is known of one ZIP file on the way through it.
type unpacking struct {
	left int64 // bytes that may still be unpacked
	seen map[string]bool
}

// take returns the pattern of one entry, or why it is left out.
func (u *unpacking) take(f *zip.File) (engine.Pattern, error) {
	w := &words.Said.Share.Archive
	if why := unfit(f); why != "" {
		return engine.Pattern{}, errors.New(why)
	}
	key := strings.ToLower(f.Name)
	if u.seen[key] {
		return engine.Pattern{}, errors.New(w.Twice)
	}
	if u.left <= 0 {
		return engine.Pattern{}, fmt.Errorf(w.AllTooMuch, MaxUnpacked)
	}
	file, err := u.read(f)
	if err != nil {
		return engine.Pattern{}, err
	}
	p, err := presets.Decode(f.Name, file)
	if err != nil {
		return engine.Pattern{}, errors.New(brief(err))
	}
	u.seen[key] = true
	return p, nil
}

// unfit says why an entry is not even unpacked, or nothing.
func unfit(f *zip.File) string {
	w := &words.Said.Share.Archive
	const locked = 1 // the flag of APPNOTE.TXT, section 4.4.4
	name := f.Name
	switch {
	case !utf8.ValidString(name):
		return w.NotUTF8
	case strings.ContainsAny(name, "\\:\x00") || strings.HasPrefix(name, "/") || leadsUp(name):
		return w.Path
	case strings.Contains(name, "/"):
		return w.Folder
	case !f.Mode().IsRegular():
		return w.NotPlain
	case !strings.EqualFold(path.Ext(name), ending) || strings.HasPrefix(name, "."):
		return w.NotPattern
	case f.Flags&locked != 0:
		return w.Locked
	case f.Method != zip.Store && f.Method != zip.Deflate:
		return w.Packing
	default:
		return ""
	}
}

func leadsUp(name string) bool {
	for part := range strings.SplitSeq(name, "/") {
		if part == ".." {
			return true
		}
	}
	return false
}

// read unpacks one entry and stops when it has become too much. What an entry
// says of its size is not believed.
func (u *unpacking) read(f *zip.File) ([]byte, error) {
	w := &words.Said.Share.Archive
	r, err := f.Open()
	if err != nil {
		return nil, errors.New(w.Damaged)
	}
	defer r.Close()
	most := min(presets.MaxFileSize, u.left)
	file, err := io.ReadAll(io.LimitReader(r, most+1))
	u.left -= int64(len(file))
	switch {
	case int64(len(file)) > most && most < presets.MaxFileSize:
		return nil, fmt.Errorf(w.AllTooMuch, MaxUnpacked)
	case int64(len(file)) > most:
		return nil, fmt.Errorf(w.EntryLarge, presets.MaxFileSize)
	case err != nil:
		return nil, errors.New(w.Damaged)
	}
	return file, nil
}

// problem is what is wrong with one entry, on one line.
func problem(name, what string) error {
	const most = 60 // characters
	if r := []rune(name); len(r) > most {
		name = string(r[:most]) + words.Said.Preset.Rest
	}
	return fmt.Errorf(words.Said.Share.Archive.Entry, name, what)
}

// brief returns the first of a pattern's problems.
func brief(err error) string {
	first, _, _ := strings.Cut(err.Error(), "\n")
	if r := []rune(first); len(r) > maxFault {
		first = string(r[:maxFault]) + words.Said.Preset.Rest
	}
	return first
}
