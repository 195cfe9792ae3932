package words

// Film holds the words of the page's capture sheet.
type Film struct {
	Open, Head, Intro                          string
	Format                                     string
	Formats                                    []FilmChoice
	Size, Width, Height                        string
	Sizes                                      []FilmChoice // by width and height
	FPS, Slow, At                              string
	Rounds, RoundsWhole, RoundsOne, RoundsOwn  string
	RoundsMany                                 string // how many
	Per, Moments                               string
	Pers                                       [2]string // as capture.Per counts
	Colours, Ground, GroundTheme, GroundColour string
	GroundClear, Colour, Mirror, Shown, Names  string
	Title, Beats, Arms, Kinds, Timing, Caption string
	Preview, Make, Stop, Background            string
	Still                                      string // %s: file name
	Loop                                       string // %s: file name, %d: frames, %s: seconds
	Unknown                                    string // %q: format
	Number                                     string // %s: label, %q: found
	BadColour                                  string // %q: found
	BadAt                                      string // %s: label, %q: found
	Pattern                                    string // the open pattern, as a file that is read
	Opaque, NoEncoder, ClearNote               string
	Clicks, ClicksNote, NoClicks               string
	Said                                       FilmSaid
}

// FilmChoice is a value to pick and what it is called.
type FilmChoice struct{ Value, Label string }

// FilmSaid are the texts that the sheet's script fills in: {…} are the places.
type FilmSaid struct {
	Loading  string `json:"loading"`
	Working  string `json:"working"`  // {done}, {of}
	Left     string `json:"left"`     // {seconds}
	LeftLong string `json:"leftLong"` // {minutes}
	Made     string `json:"made"`     // {name}, {size}
	Stopped  string `json:"stopped"`
	Failed   string `json:"failed"` // {why}
}

var englishFilm = Film{
	Open:   "Picture or film…",
	Head:   "Make a picture or a film",
	Intro:  "Frames are worked out from the beats, so a loop's last frame is followed by its first.",
	Format: "What to make",
	Formats: []FilmChoice{
		{"gif", "GIF: a loop that plays anywhere"},
		{"apng", "APNG: a loop, exact, see-through"},
		{"mp4", "MP4: a film for phones"},
		{"webm", "WebM: a film for web pages"},
		{"png", "PNG: one beat"},
		{"svg", "SVG: one beat, as a drawing"},
		{"sheet", "Contact sheet: beat by beat or petal by petal"},
		{"sheet-svg", "Contact sheet, as a drawing (SVG)"},
		{"strobe", "Strobe: moments in one picture"},
		{"strobe-svg", "Strobe, as a drawing (SVG)"},
		{"frames", "Frames: a PNG for each, in a ZIP"},
	},
	Size: "Size", Width: "Width in pixels", Height: "Height in pixels",
	Sizes: []FilmChoice{
		{"1080x1080", "Square, 1080 by 1080"},
		{"1080x1920", "Upright, 1080 by 1920"},
		{"1920x1080", "Wide, 1920 by 1080"},
		{"480x480", "Small square, 480 by 480"},
		{"own", "My own…"},
	},
	FPS: "Frames a second", Slow: "Slow motion (2: half as fast)", At: "Beat shown (1 is the first)",
	Rounds: "How long", RoundsWhole: "A whole loop, until all is as it was", RoundsOne: "One round", RoundsOwn: "So many rounds…", RoundsMany: "Rounds",
	Per: "A picture for each", Pers: [2]string{"beat", "petal"}, Moments: "How many moments",
	Colours: "Colours", Ground: "Behind the pattern", GroundTheme: "As on the bench", GroundColour: "One colour…", GroundClear: "Nothing (see-through)",
	Colour: "Colour behind it", Mirror: "As in a mirror", Shown: "What is shown", Names: "What each piece is called",
	Title: "Title", Beats: "Beat counter", Arms: "Arms and shoulders", Kinds: "Strokes by kind",
	Timing: "How the props stand to each other (two hands)", Caption: "Caption",
	Preview: "Preview", Make: "Make the file", Stop: "Stop",
	Background: "You can close this and go on; the file comes when it is ready.",
	Still:      "%s",
	Loop:       "%s, %d frames in %s seconds",
	Unknown:    "format: found %q, which is not one of those on the list",
	Number:     "%s: found %q, allowed a number such as 25, 0.5 or 1/3",
	BadColour:  "colour: found %q, allowed one such as #ffffff",
	Pattern:    "open pattern",
	Opaque:     "MP4 cannot be see-through. Choose a colour, or make a WebM, an APNG or the frames.",
	NoEncoder:  "This browser cannot make this sort of film at this size. Make a GIF, an APNG or the frames, or try the other sort of film.",
	BadAt:      "%s: found %q, allowed 1 or more",
	ClearNote:  "For a dark slide choose the night colours.",
	Clicks:     "Clicks on the beat",
	ClicksNote: "Joins and the beginning of a round sound higher. Some older players show an MP4 made here without its sound.",
	NoClicks:   "This browser cannot put clicks into a film. Leave them out, or use whorlbench render --clicks.",
	Said: FilmSaid{
		Loading:  "Getting ready",
		Working:  "Picture {done} of {of}",
		Left:     "about {seconds} s left",
		LeftLong: "about {minutes} min left",
		Made:     "{name} is made, {size}.",
		Stopped:  "Stopped. Nothing was kept.",
		Failed:   "It could not be made: {why}",
	},
}
