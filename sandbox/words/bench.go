package words

// Bench holds the words of the instrument.
type Bench struct{}

var englishBench = Bench{}
