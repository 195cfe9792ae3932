package words

// Preset holds the words with which a pattern file, or a pattern that cannot
// be written to one, is refused. Each refusal is one line.
type Preset struct {
	At      string // %s:%d:%d: file, line, column
	Key     string // %s: a quoted key
	InHand  string // %d: hand
	InPiece string // %d, %d: hand, piece
	More    string // %d: how many problems are not listed

	// What is wrong with one key.
	FoundAllowed string // %s, %s: what was found, what is allowed
	Missing      string // %s: what is allowed
	Unknown      string // %s: the keys allowed in this table
	Twice        string // %d: line of the first
	Redefined    string // %d: line of the first

	// What is wrong with a whole file.
	TooLarge string // %d, %d: bytes, bytes allowed
	Empty    string
	NotUTF8  string // %02X: the byte
	ZeroByte string
	NotTOML  string // %s: the parser's words

	// What was found.
	Text        string // %s: quoted
	TextLength  string // %d: characters
	BadText     string
	Date        string // %s: as written
	List        string // %d: how many
	Table       string
	Place       string // %s, %s: two numbers
	Again       string // %s, %d: a quoted side, the hand that has it
	Count       string // %d
	TooSmall    string // %s: a number
	KeptTime    string
	TooLong     string // %s, %d: a number's beginning, its characters
	NotWritable string // %s: a fraction
	Nameless    string // %d: a choice that has no name
	Rest        string // stands for the rest of something long

	// What is allowed.
	Between       string // %s, %s: least, greatest
	Above         string // %s, %s: not allowed itself, greatest
	ANumber       string // %s: a range
	AFraction     string // %d, %s: greatest denominator, a range
	APair         string // %s: a range
	APlace        string // %s: metres
	APart         string
	Characters    string // %d, %d: least, most
	OneOf         string // %s, %s: names before the last, the last
	Comma         string // between names
	TrueFalse     string
	AFormat       string // %d: the format
	OneTable      string
	Hands         string // %d, %d: least, most
	Pieces        string // %d, %d: least, most
	SideOnce      string
	NoRadius      string
	OneRadius     string
	OneLength     string
	SwingBackOnly string
	LongerTime    string
	Digits        string // %d: most
	Writable      string // %d, %d: most characters, greatest denominator
}

var englishPreset = Preset{
	At:      "%s:%d:%d: ",
	Key:     "key %s",
	InHand:  " in hand %d",
	InPiece: " in hand %d, piece %d",
	More:    "and %d more from here on",

	FoundAllowed: "found %s, allowed %s",
	Missing:      "found nothing, required %s",
	Unknown:      "found an unknown key, allowed %s",
	Twice:        "found a second time, first in line %d, allowed once",
	Redefined:    "found with another meaning in line %d, allowed one",

	TooLarge: "the file has %d bytes, allowed at most %d",
	Empty:    "the file is empty",
	NotUTF8:  "not a text file: byte 0x%02X is not UTF-8",
	ZeroByte: "not a text file: a zero byte",
	NotTOML:  "not TOML: %s",

	Text:        "the text %s",
	TextLength:  "%d characters",
	BadText:     "a text that is not UTF-8",
	Date:        "the date or time %s",
	List:        "a list of %d",
	Table:       "a table",
	Place:       "[%s, %s]",
	Again:       "%s as in hand %d",
	Count:       "%d",
	TooSmall:    "%s, which cannot be told from 0",
	KeptTime:    "a kept time",
	TooLong:     "%s, a number of %d characters",
	NotWritable: "%s, which has no exact form short enough",
	Nameless:    "number %d",
	Rest:        "…",

	Between:       "%s to %s",
	Above:         "more than %s up to %s",
	ANumber:       "a number, %s",
	AFraction:     `a number or a fraction such as "1/3" with a denominator up to %d, %s`,
	APair:         "two numbers [A, B], each %s",
	APlace:        "two numbers [x, y], at most %s m from the origin",
	APart:         "[from, to] with 0 ≤ from < to ≤ 1",
	Characters:    "a text of %d to %d characters",
	OneOf:         "%s or %s",
	Comma:         ", ",
	TrueFalse:     "true or false",
	AFormat:       "%d, the only format that is read",
	OneTable:      "a table",
	Hands:         "%d or %d tables [[hand]]",
	Pieces:        "%d to %d tables [[hand.piece]]",
	SideOnce:      "each side once",
	NoRadius:      "no radius, as the path is a point",
	OneRadius:     "one radius, as the path is a circle",
	OneLength:     "one half length, as the path is a line",
	SwingBackOnly: "true only where swing is not 0",
	LongerTime:    "a longer one",
	Digits:        "at most %d",
	Writable:      "a finite decimal of at most %d characters or a denominator up to %d",
}
