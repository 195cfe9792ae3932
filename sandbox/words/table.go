// Package words is the one table of everything a person reads: on the bench,
// on the page, in the command line's answers. A language is one Table; its
// parts stand in one file each.
package words

// Table is one language.
type Table struct {
	Lang     string // BCP 47
	Endonym  string // what the language is called in itself
	Figure   Figure
	Whole    Whole
	Bench    Bench
	Dials    Dials
	View     View
	Strip    Strip
	Mend     Mend
	Follow   Follow
	Stage    Stage
	Tryout   Tryout
	Told     Told
	Page     Page
	State    State
	Capture  Capture
	Film     Film
	Order    Order
	Report   Report
	Duet     Duet
	Library  Library
	Quantity Quantity
	Preset   Preset
	Tether   Tether
	Share    Share
	Steps    Steps
	Compare  Compare
	Practice Practice
	Explain  Explain
	Why      Why
	Card     Card
}

// English is the complete first language.
var English = Table{
	Lang:     "en",
	Endonym:  "English",
	Figure:   englishFigure,
	Whole:    englishWhole,
	Bench:    englishBench,
	Dials:    englishDials,
	View:     englishView,
	Strip:    englishStrip,
	Mend:     englishMend,
	Follow:   englishFollow,
	Stage:    englishStage,
	Tryout:   englishTryout,
	Told:     englishTold,
	Page:     englishPage,
	State:    englishState,
	Capture:  englishCapture,
	Film:     englishFilm,
	Order:    englishOrder,
	Report:   englishReport,
	Duet:     englishDuet,
	Library:  englishLibrary,
	Quantity: englishQuantity,
	Preset:   englishPreset,
	Tether:   englishTether,
	Share:    englishShare,
	Steps:    englishSteps,
	Compare:  englishCompare,
	Practice: englishPractice,
	Explain:  englishExplain,
	Why:      englishWhy,
	Card:     englishCard,
}
