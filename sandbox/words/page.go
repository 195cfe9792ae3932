package words

// Page holds the words of the page round the instrument.
type Page struct{}

var englishPage = Page{}
