package shelf

import (
	"errors"

	"whorlbench/engine"
	"whorlbench/sandbox/session"
)

// Desk keeps what one tab's session has open: it knows which work of the shelf
// each state belongs to, also when undo goes back behind an opening.
type Desk struct {
	*Shelf
	Session *session.Session

	works map[int]*Work // by the state that each began with, session.Origin
	taken map[int]bool  // those that are kept though nothing was changed
	gone  map[*Work]gone
}

// gone is work that was deleted while it was open here.
type gone struct {
	id      string
	origins []int
}

// NewDesk returns a desk with the work to begin with: what was open last, or
// first where nothing is kept yet; kept says which. The problem is that of
// Shelf.Start, with what was lost beside the work.
func NewDesk(s *Shelf, first engine.Pattern) (d *Desk, kept bool, problem error) {
	d = &Desk{Shelf: s, works: map[int]*Work{}, taken: map[int]bool{}, gone: map[*Work]gone{}}
	o, kept, problem := s.Start()
	if !kept {
		d.Session = session.New(first)
		return d, false, problem
	}
	d.Session = o.Session()
	d.works[d.Session.Origin()] = o.Work
	return d, true, errors.Join(problem, o.Note)
}

// work is what the present state belongs to.
func (d *Desk) work() *Work {
	origin := d.Session.Origin()
	if d.works[origin] == nil {
		d.works[origin] = d.Begin()
	}
	return d.works[origin]
}

// ID returns under which ID the present work is kept, empty if it is not.
func (d *Desk) ID() string { return d.work().ID() }

// untouched reports whether what is open is only looked at so far: it was
// opened from elsewhere and nothing was changed.
func (d *Desk) untouched() bool {
	origin := d.Session.Origin()
	return d.work().ID() == "" && d.Session.State() == origin && !d.taken[origin]
}

// Keep keeps the present work, after each complete edit, undo and redo; what is
// untouched makes no work. The errors are those of Work.Keep.
func (d *Desk) Keep() error {
	if d.untouched() {
		return nil
	}
	return d.work().Keep(d.Session)
}

// Kept reports whether the shelf has the present work as it is.
func (d *Desk) Kept() bool {
	w := d.work()
	states, at := since(d.Session.Trail(MaxSteps))
	return w.ID() != "" && len(w.last) > 0 && w.last[0] == states[at].ID && !w.Stale()
}

// Take opens a pattern that came from outside, with undo, as work of its own
// from the first: the next Keep keeps it.
func (d *Desk) Take(p engine.Pattern) error {
	if err := d.Session.Open(p); err != nil {
		return err
	}
	d.taken[d.Session.Origin()] = true
	return nil
}

// Enter opens a work of the shelf; undo goes through its own edits and from
// there back to what was open. The note says what was lost beside it.
func (d *Desk) Enter(id string) (note, err error) {
	o, err := d.openAfter(id, d.Session.LastID())
	if err != nil {
		return nil, err
	}
	d.Session.Enter(o.States, o.At)
	// Work that is open further back in this tab is the same work, not another tab's.
	for _, w := range d.works {
		if o.Work.id != "" && w.id == id {
			*w = *o.Work
			o.Work = w
			break
		}
	}
	d.works[d.Session.Origin()] = o.Work
	return o.Note, nil
}

// Stale reports whether another tab has changed or deleted the present work.
func (d *Desk) Stale() bool { return d.work().Stale() }

// Delete is Shelf.Delete. If the work is open it stays to be seen, and is kept
// again only when it is changed.
func (d *Desk) Delete(id string) error {
	if err := d.Shelf.Delete(id); err != nil {
		return err
	}
	for origin, w := range d.works {
		if w.id != id {
			continue
		}
		g := d.gone[w]
		d.gone[w] = gone{id, append(g.origins, origin)}
		d.works[origin] = d.Begin()
	}
	return nil
}

// Undelete is Shelf.Undelete. What has stayed open unchanged is that work
// again.
func (d *Desk) Undelete(id string) error {
	if err := d.Shelf.Undelete(id); err != nil {
		return err
	}
	for w, g := range d.gone {
		if g.id != id {
			continue
		}
		for _, origin := range g.origins {
			if d.works[origin].ID() == "" {
				d.works[origin] = w
			}
		}
		delete(d.gone, w)
	}
	return nil
}

// Rename is Shelf.Rename, of work that is open further back in this tab, too.
func (d *Desk) Rename(id, title string) error {
	err := d.Shelf.Rename(id, title)
	if err != nil {
		return err
	}
	for _, w := range d.works {
		if w.id == id {
			if r, err := d.read(ownKey(id)); err == nil {
				w.stamp = r.Stamp
			}
		}
	}
	return nil
}
