package presets

import (
	"embed"
	"fmt"

	"whorlbench/engine"
)

//go:embed library/*.toml
var library embed.FS

// order is the library from the first visit's pattern on to what takes more
// practice.
var order = []string{
	"half-moon",      // C-cap of extension and four-petal antispin
	"three-sails",    // triquetra
	"harbour-square", // four-petal antispin, box mode
	"twin-lanterns",  // two-petal in-spin, left hand
	"tide-ring",      // isolation
	"pier-end",       // two hands on one C, props opposite
}

// Entry is one built-in pattern.
type Entry struct {
	ID   string // stable, such as half-moon
	File string // the name under which it is saved
	Data []byte // the file, as Encode writes it
}

// Pattern decodes the entry.
func (e Entry) Pattern() (engine.Pattern, error) { return Decode(e.File, e.Data) }

// Library returns the built-in patterns in the order in which they are shown.
func Library() []Entry {
	entries := make([]Entry, len(order))
	for i, id := range order {
		file := id + ".toml"
		data, err := library.ReadFile("library/" + file)
		if err != nil {
			// The files are part of the program; a test opens every one.
			panic(fmt.Sprintf("presets: library: %v", err))
		}
		entries[i] = Entry{ID: id, File: file, Data: data}
	}
	return entries
}

// First returns the pattern that is open at the first visit: the C-cap.
func First() Entry { return Library()[0] }
