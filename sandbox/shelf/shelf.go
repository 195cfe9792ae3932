package shelf

import (
	"errors"
	"fmt"
	"slices"
	"sort"
	"strings"
	"time"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/sandbox/session"
	"whorlbench/sandbox/words"
)

// The keys under which things are kept. Those of works, of deleted works and
// of what was put aside end in an ID.
const (
	ownPrefix   = "whorlbench.own."
	binPrefix   = "whorlbench.bin."
	asidePrefix = "whorlbench.aside." // texts that could not be read, as they were
	openName    = "whorlbench.open"   // the ID that was open last
	oldName     = "whorlbench.pattern.1"
	oldAside    = "whorlbench.aside"
)

func ownKey(id string) string { return ownPrefix + id }

// Errors about works; their text is for the person.
var (
	ErrChangedElsewhere = words.Fault(func() string { return words.Said.Share.Shelf.ChangedElsewhere })
	ErrGoneElsewhere    = words.Fault(func() string { return words.Said.Share.Shelf.GoneElsewhere })
	ErrUnknown          = words.Fault(func() string { return words.Said.Share.Shelf.Unknown })
	ErrDamaged          = words.Fault(func() string { return words.Said.Share.Shelf.Damaged })
	ErrNewer            = words.Fault(func() string { return words.Said.Share.Shelf.Newer })
	// ErrTrailLost comes beside a work that is whole.
	ErrTrailLost = words.Fault(func() string { return words.Said.Share.Shelf.TrailLost })
)

// Shelf is what one tab sees of the person's own patterns.
type Shelf struct {
	store Store
	now   func() time.Time
	token func() string
	tab   string
	bin   map[string]string // deleted here: ID to record
}

// New returns the shelf of one tab. token returns a short random text of
// letters and digits, another one at every call.
func New(store Store, now func() time.Time, token func() string) *Shelf {
	return &Shelf{store: store, now: now, token: token, tab: token(), bin: map[string]string{}}
}

// Entry is one work of the list.
type Entry struct {
	ID     string
	Title  string
	Edited time.Time
}

// List returns the works that are kept, the one edited last first. A record
// that cannot be read is put aside, and the problems say which.
func (s *Shelf) List() (entries []Entry, problems []error) {
	keys, err := s.keys(ownPrefix)
	if err != nil {
		return nil, []error{err}
	}
	for _, key := range keys {
		id := strings.TrimPrefix(key, ownPrefix)
		r, err := s.read(key)
		switch {
		case errors.Is(err, ErrUnknown): // deleted by another tab just now
			continue
		case errors.Is(err, ErrDamaged):
			s.putAside(key)
			problems = append(problems, Problem{r.Title, err})
			continue
		case err != nil && !errors.Is(err, ErrTrailLost):
			problems = append(problems, Problem{r.Title, err})
			continue
		}
		entries = append(entries, entry(id, r))
	}
	sortEntries(entries)
	return entries, problems
}

// sortEntries puts the one edited last first. The older way to sort is one that the
// program has anyway, and so costs no room.
func sortEntries(entries []Entry) {
	sort.Slice(entries, func(i, k int) bool {
		if c := entries[i].Edited.Compare(entries[k].Edited); c != 0 {
			return c > 0
		}
		return entries[i].ID < entries[k].ID
	})
}

func entry(id string, r record) Entry {
	return Entry{ID: id, Title: r.Title, Edited: time.UnixMilli(r.Edited)}
}

// keys returns the keys with a prefix, in order.
func (s *Shelf) keys(prefix string) ([]string, error) {
	all, err := s.store.Keys()
	if err != nil {
		return nil, ErrBlocked
	}
	var keys []string
	for _, k := range all {
		if strings.HasPrefix(k, prefix) && len(k) > len(prefix) {
			keys = append(keys, k)
		}
	}
	slices.Sort(keys)
	return keys, nil
}

// read returns the record of a key. With ErrTrailLost the work in it is whole.
func (s *Shelf) read(key string) (record, error) {
	text, ok, err := s.store.Get(key)
	if err != nil {
		return record{}, ErrBlocked
	}
	if !ok {
		return record{}, ErrUnknown
	}
	r, err := parse(text)
	switch {
	case err == nil:
		return r, nil
	case errors.Is(err, errNewer):
		return r, ErrNewer
	case r.work != "":
		return r, ErrTrailLost
	default:
		return r, ErrDamaged
	}
}

// Problem is what is wrong with one of several works.
type Problem struct {
	Title string // empty if it cannot be read
	Cause error
}

// Error returns the problem as one line.
func (p Problem) Error() string {
	w := &words.Said.Share.Shelf
	title := p.Title
	if title == "" {
		title = w.Nameless
	}
	return fmt.Sprintf(w.Record, title, p.Cause)
}

// Unwrap returns the cause.
func (p Problem) Unwrap() error { return p.Cause }

// write keeps a record with as much of its trail as there is room for. What
// was deleted makes room first.
func (s *Shelf) write(key string, r record, t trail) error {
	full := false
	for _, room := range []int{MaxTrail, MaxTrail / 8, 0} {
		r.trail = t.within(room)
		text := r.String()
		err := s.store.Set(key, text)
		if errors.Is(err, ErrFull) && !full {
			full = true
			s.emptyBin()
			err = s.store.Set(key, text)
		}
		if err == nil {
			return nil
		}
		if !errors.Is(err, ErrFull) {
			return ErrBlocked
		}
	}
	return ErrFull
}

// freshID returns an ID that no work has.
func (s *Shelf) freshID() (string, error) {
	for {
		id := s.token()
		_, taken, err := s.store.Get(ownKey(id))
		if err != nil {
			return "", ErrBlocked
		}
		if !taken {
			return id, nil
		}
	}
}

// remember notes which work is to be opened at the next start; where there is
// no room, the one edited last is.
func (s *Shelf) remember(id string) {
	if last, _, _ := s.store.Get(openName); last != id {
		_ = s.store.Set(openName, id)
	}
}

// Begin returns work that is not kept until its first Keep.
func (s *Shelf) Begin() *Work { return &Work{shelf: s} }

// Opened is work that was taken from the shelf.
type Opened struct {
	Work   *Work
	States []session.State
	At     int   // of the present
	Note   error // what was lost beside the work, nil if nothing
}

// Session returns the session that goes on with the work.
func (o Opened) Session() *session.Session { return session.Resume(o.States, o.At) }

// Open takes a work from the shelf and remembers it for the next start. A
// trail that cannot be read in full is put aside, and the Note says so.
func (s *Shelf) Open(id string) (Opened, error) { return s.openAfter(id, 0) }

// openAfter is Open with states whose IDs are more than a number.
func (s *Shelf) openAfter(id string, last int) (Opened, error) {
	o, err := s.load(id, last)
	if err == nil {
		s.remember(id)
	}
	return o, err
}

func (s *Shelf) load(id string, last int) (Opened, error) {
	key := ownKey(id)
	r, err := s.read(key)
	if err != nil && !errors.Is(err, ErrTrailLost) {
		if errors.Is(err, ErrDamaged) {
			s.putAside(key)
			err = Problem{r.Title, err}
		}
		return Opened{}, err
	}
	var t trail
	lost := err != nil || !readTrail(r.trail, &t)
	p, err := presets.Decode("", []byte(r.work))
	if err != nil {
		s.putAside(key)
		return Opened{}, Problem{r.Title, ErrDamaged}
	}
	o := Opened{Work: &Work{shelf: s, id: id, stamp: r.Stamp}}
	var files []string
	var broken bool
	o.States, o.At, files, broken = t.states(p, r.work, last)
	o.Work.know(o.States, o.At, files)
	if lost || broken {
		if !s.copyAside(key) {
			o.Work.id = "" // the record stays as it is, and the next Keep makes another
		}
		o.Note = Problem{r.Title, ErrTrailLost}
	}
	return o, nil
}

// Rename gives a work that is not open another title, which can be undone once
// it is open. The errors are those of Open, Work.Keep and presets.Encode.
func (s *Shelf) Rename(id, title string) error {
	o, err := s.load(id, 0)
	if err != nil {
		return err
	}
	work := o.Session()
	if err := work.Rename(title, work.Pattern().Notes); err != nil {
		return err
	}
	states, at := work.Trail(MaxSteps)
	return o.Work.keep(states, at)
}

// Pattern returns the pattern of a work, for a picture of it.
func (s *Shelf) Pattern(id string) (engine.Pattern, error) {
	r, err := s.read(ownKey(id))
	if err != nil && !errors.Is(err, ErrTrailLost) {
		return engine.Pattern{}, err
	}
	p, err := presets.Decode(r.Title, []byte(r.work))
	if err != nil {
		return engine.Pattern{}, Problem{r.Title, ErrDamaged}
	}
	return p, nil
}
