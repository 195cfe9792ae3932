package words

// Fault returns an error that is known by itself and whose text is looked up
// when it is read, in the table then in use.
func Fault(say func(t *Table) string) error { return &fault{say} }

type fault struct{ say func(t *Table) string }

func (f *fault) Error() string { return f.say(Said) }
