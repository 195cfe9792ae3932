package words

// Command holds the words of the command line.
type Command struct{}

var englishCommand = Command{}
