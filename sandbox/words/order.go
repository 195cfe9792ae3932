package words

// Order holds the words of the page's running order: patterns to be shown one
// after another in the big view.
type Order struct {
	Open, Head, Intro      string
	None                   string
	Add, Pick, PickOpen    string
	PickHead, PickIntro    string // of the list to add from
	AddFiles, AddFolder    string
	List                   string
	Start, Save, Clear     string
	UpShort, DownShort     string
	OpenShort, RemoveShort string
	Wrong                  string // over what could not be taken
	Hands                  string
	Keys                   []KeyHelp
	FileName               string // of the ZIP
	Said                   OrderSaid
}

// OrderSaid are the texts that the page's script fills in: {…} are the places.
type OrderSaid struct {
	Place   string   `json:"place"`  // {n}, {of}, {title}
	Start   string   `json:"start"`  // {title}
	Up      string   `json:"up"`     // {title}
	Down    string   `json:"down"`   // {title}
	Open    string   `json:"open"`   // {title}
	Remove  string   `json:"remove"` // {title}
	Removed string   `json:"removed"`
	Cleared string   `json:"cleared"`
	Undo    string   `json:"undo"`
	Back    string   `json:"back"`
	Taken   []string `json:"taken"` // one, {n}
	Left    string   `json:"left"`  // {n}: files that are no patterns
	Nothing string   `json:"nothing"`
	Unkept  string   `json:"unkept"`
	TooMany string   `json:"tooMany"` // {found}, {allowed}
	Last    string   `json:"last"`
	Added   string   `json:"added"` // {n}: its place, {title}
	Unread  string   `json:"unread"`
}

var englishOrder = Order{
	Open:  "Running order…",
	Head:  "Running order",
	Intro: "Line up the patterns of a lesson, then show them one after another in the big view. Tap one to start there. Your own work stays as it is.",
	None:  "Nothing is lined up yet. Add patterns below, or drop files or a folder here.",
	Add:   "Add to the end", Pick: "Choose patterns…", PickOpen: "The pattern that is open",
	PickHead:  "Add to the running order",
	PickIntro: "Tap one after another: each goes to the end of the running order, and this list stays.",
	AddFiles:  "Files or a ZIP…", AddFolder: "A whole folder…",
	List:  "The patterns in their order",
	Start: "Start", Save: "Save as a ZIP", Clear: "Empty the list",
	UpShort: "Up", DownShort: "Down", OpenShort: "Open", RemoveShort: "Remove",
	Wrong: "These could not be taken; all others were",
	Hands: "While it is shown",
	Keys: []KeyHelp{
		{"Page down, page up", "the next pattern, the one before: a clicker's two keys; by finger, swipe"},
		{"Space, or a tap", "play or pause"},
		{"← →", "a beat back or on; while you point, a piece"},
		{"T", "steps go from beat to beat, or from petal to petal"},
		{"H", "hold, and point at one piece; then a tap on a curve points at that one"},
		{"− +", "slower, faster"},
		{"B, or full stop", "a dark screen, until the next key"},
		{"Escape", "leave pointing; then leave the big view"},
	},
	FileName: "running-order",
	Said: OrderSaid{
		Place:   "{n} of {of}: {title}",
		Start:   "Start with {title}",
		Up:      "Move {title} up",
		Down:    "Move {title} down",
		Open:    "Open {title} in the bench",
		Remove:  "Remove {title} from the running order",
		Removed: "{title} is removed from the running order.",
		Cleared: "The running order is empty.",
		Undo:    "Undo",
		Back:    "The running order is as it was.",
		Taken:   []string{"One pattern added.", "{n} patterns added."},
		Left:    "Files that are no patterns, left out: {n}.",
		Nothing: "There is no pattern file in it.",
		Unkept:  "This browser has no room to keep the running order. It is here until you close the page; save it as a ZIP to have it again.",
		TooMany: "A running order holds {allowed} patterns; {found} would be too many. The rest was left out.",
		Last:    "you stopped here",
		Added:   "{title} is number {n} now",
		Unread:  "This one cannot be read any more, and is left out.",
	},
}
