package words

// Fault returns an error that is known by itself and whose text is looked up
// when it is read, in the language then in use.
func Fault(say func() string) error { return &fault{say} }

type fault struct{ say func() string }

func (f *fault) Error() string { return f.say() }
