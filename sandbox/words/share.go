package words

// Share holds the words with which patterns are given away and taken in:
// links, their square codes, and many patterns in one ZIP file.
type Share struct {
	Link    Link
	Archive Archive
	Shelf   Shelf
	Offline Offline
	Dialog  ShareDialog
	Own     Own
}

// ShareDialog holds the words of the dialog that gives a pattern away.
type ShareDialog struct {
	Open, Title   string
	Intro         string
	Link          string
	Copy, Copied  string
	CopyByHand    string // the browser has refused
	System        string // opens the device's own ways of sharing
	File          string
	CodeIntro     string // beside the code
	Opened        string // %s: a title
	NotOpened     string // head of what is wrong with a link
	AlreadyOpen   string
	CannotBeGiven string // head of what stands in the way of a link
}

// Own holds the words for the list of the person's own patterns.
type Own struct {
	Title        string
	None         string
	Changed      string // %s: a date and time
	IsOpen       string
	Rename       string
	RenameLabel  string // %s: a title
	NewTitle     string
	Delete       string
	DeleteLabel  string // %s: a title
	Deleted      string // %s: a title
	Undo         string
	UndoLabel    string // %s: a title
	Back         string // %s: a title
	KeepAll      string
	AllName      string // of the ZIP file, without its ending
	TakenIn      string // %d: patterns
	TakenInOne   string
	SomeLeft     string // head of what was not taken
	LoadOther    string
	OtherChanged string
	OtherLoaded  string
	Trouble      string // head of what is wrong with the list
	Promised     string // by the browser, to clear nothing away
	NotPromised  string
	SaveFile     string
	Notices      string // names the region of notices
}

// Link holds the words for a pattern in a link.
type Link struct {
	At           string // %d, %s: character from 1, what is wrong there
	FoundAllowed string // %s, %s: what was found, what is allowed
	Found        string // %q: a piece of the link
	Allowed      string // %s: how a link begins
	Letters      string // the characters allowed
	Empty        string
	Newer        string // %s: the version found
	TooLong      string // %d, %d: characters, most characters
	Large        string // %d: most bytes
	Damaged      string
	Unreadable   string // what the pattern in a link is called in its problems

	OnlyHere   string // %s: an address
	NotPublic  string // %s: an address that cannot be shared
	BadAddress string // %q: what was given as the public address

	CodeTooLong string // %d, %d: characters, most characters
	CodeLabel   string // %s: a title
}

// Shelf holds the words for what is kept of the person's own patterns.
type Shelf struct {
	Full             string
	Blocked          string
	ChangedElsewhere string
	GoneElsewhere    string
	Unknown          string
	Copy             string // %s: a title
	Record           string // %q, %s: title, what is wrong
	Damaged          string
	Newer            string
	TrailLost        string
	OldUnreadable    string
	Nameless         string // stands for a title that cannot be read
}

// Offline holds the words about the page as a program of the device, which
// works without a network.
type Offline struct {
	Update      string // that a new version is there
	Take, Later string // buttons
}

// Archive holds the words for many patterns in one ZIP file.
type Archive struct {
	Entry      string // %q, %s: name in the ZIP, what is wrong with it
	NotZIP     string
	TooLarge   string // %d, %d: bytes, most bytes
	TooMany    string // %d: most patterns
	MoreLeft   string // %d: how many entries were not looked at
	AllTooMuch string // %d: most bytes unpacked
	EntryLarge string // %d: most bytes
	NotUTF8    string
	Path       string
	Folder     string
	NotPattern string
	NotPlain   string // a symbolic link or the like
	Locked     string
	Packing    string // packed in a way that is not read
	Damaged    string
	Twice      string
	Empty      string
	Nothing    string // nothing to put into a ZIP
}

var englishShare = Share{
	Link: Link{
		At:           "character %d: %s",
		FoundAllowed: "found %s, allowed %s",
		Found:        "%q",
		Allowed:      "a link that begins with %s",
		Letters:      "letters, digits, - and _",
		Empty:        "there is no pattern in this link",
		Newer:        "this link was made by a newer bench (its kind is %s); load this page again to get that one, or ask for the pattern as a file",
		TooLong:      "the link has %d characters, allowed at most %d; a pattern of this size is passed on as a file",
		Large:        "the pattern in this link is too large: more than %d bytes",
		Damaged:      "this link is damaged: a part of it is missing or changed; copy it again, whole",
		Unreadable:   "pattern in the link",

		OnlyHere: "%s leads only to this device, so a code of it would open nothing on another; start the bench with --public-url and the address that others reach it by",
		NotPublic: "%s is not an address on the web, so others cannot open it; put the bench on a web host, " +
			"or start it with --public-url and the address that others reach it by",
		BadAddress: "%q is not an address to share, allowed one such as https://spin.example/bench/",

		CodeTooLong: "the link has %d characters, and a code that a phone reads has at most %d; pass the link itself or the file on, or shorten the notes",
		CodeLabel:   "Code that opens %s",
	},
	Archive: Archive{
		Entry:      "%q: %s",
		NotZIP:     "this is not a ZIP file, or it is cut short",
		TooLarge:   "the ZIP file has %d bytes, allowed at most %d",
		TooMany:    "at most %d patterns are taken from one ZIP file",
		MoreLeft:   "%d more were not looked at",
		AllTooMuch: "left out, as all together unpack to more than %d bytes",
		EntryLarge: "left out, as it unpacks to more than %d bytes",
		NotUTF8:    "left out, as its name is not UTF-8",
		Path:       "left out, as its name leads out of the ZIP file",
		Folder:     "left out, as it lies in a folder; only patterns at the top are taken",
		NotPattern: "left out, as it is no pattern file (their names end in toml)",
		NotPlain:   "left out, as it is no plain file",
		Locked:     "left out, as it is locked with a password",
		Packing:    "left out, as it is packed in a way that is not read here",
		Damaged:    "left out, as it is damaged",
		Twice:      "left out, as another has the same name",
		Empty:      "there is no pattern in this ZIP file",
		Nothing:    "there are no patterns of your own yet",
	}, Shelf: Shelf{
		Full:             "This browser has no room left to keep your work. Save it as a file, or delete patterns that you no longer need.",
		Blocked:          "This browser keeps nothing for this page, so save your work as a file.",
		ChangedElsewhere: "This work was changed in another tab. What you have here is kept as a second one beside it.",
		GoneElsewhere:    "What was kept of this work is gone: another tab deleted it, or the browser cleared it away. What you have here is kept as a new one.",
		Unknown:          "This work is no longer here.",
		Copy:             "%s (copy)",
		Record:           "%q: %s",
		Damaged:          "could not be read; it has been put aside as it was",
		Newer:            "was kept by a newer bench; load this page again to open it",
		TrailLost:        "its earlier edits could not be read, so they cannot be undone; the work itself is whole",
		OldUnreadable:    "The work kept in this browser could not be read; it has been put aside as it was.",
		Nameless:         "Nameless work",
	}, Dialog: ShareDialog{
		Open:          "Share",
		Title:         "Share this pattern",
		Intro:         "The whole pattern, with its title and notes, is in the link itself. Nothing is stored anywhere else; whoever has the link has the pattern.",
		Link:          "Link",
		Copy:          "Copy the link",
		Copied:        "The link is copied.",
		CopyByHand:    "This browser does not let the page copy. The link is selected: copy it with the keyboard, or with a long press.",
		System:        "Share…",
		File:          "Save as a file",
		CodeIntro:     "A phone's camera opens the pattern from this code.",
		Opened:        "Opened from a link: %s. It is kept with your own patterns.",
		NotOpened:     "This link could not be opened",
		AlreadyOpen:   "The pattern of this link is the one that is open.",
		CannotBeGiven: "There is no link for this pattern",
	}, Own: Own{
		Title:        "Your own patterns",
		None:         "Nothing yet. What you make is kept here by itself, from the first change on.",
		Changed:      "Changed %s",
		IsOpen:       "Open now",
		Rename:       "Rename",
		RenameLabel:  "Rename %s",
		NewTitle:     "New title",
		Delete:       "Delete",
		DeleteLabel:  "Delete %s",
		Deleted:      "Deleted: %s",
		Undo:         "Undo",
		UndoLabel:    "Undo deleting %s",
		Back:         "Back again: %s",
		KeepAll:      "Keep all as a ZIP",
		AllName:      "my-patterns",
		TakenIn:      "%d patterns were taken in. They are with your own patterns.",
		TakenInOne:   "1 pattern was taken in. It is with your own patterns.",
		SomeLeft:     "Not everything was taken in",
		LoadOther:    "Load the other",
		OtherChanged: "This work was changed in another tab. If you go on here, both are kept.",
		OtherLoaded:  "Loaded as the other tab has it.",
		Trouble:      "Some kept work could not be read",
		Promised:     "This browser has promised not to clear it away by itself.",
		NotPromised:  "Some browsers clear such things away when a page is not visited for weeks, so keep what matters as a file too.",
		SaveFile:     "Save as a file",
		Notices:      "Notices",
	}, Offline: Offline{
		Update: "A new version of the bench is ready. Your work stays as it is.",
		Take:   "Load it now",
		Later:  "Later",
	},
}
