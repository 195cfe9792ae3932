package words

import (
	"strings"
	"unicode"
)

// FileName turns a title into a name, without an extension, that any file
// system takes: letters and digits of any script with their marks, the rest as
// single hyphens.
func FileName(title string) string {
	const most, nameless = 60, "pattern"
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(title) {
		if b.Len() >= most {
			break
		}
		if unicode.IsMark(r) { // belongs to the letter before, if that is kept
			if b.Len() > 0 && !gap {
				b.WriteRune(r)
			}
			continue
		}
		if !unicode.IsLetter(r) && !unicode.IsDigit(r) {
			gap = b.Len() > 0
			continue
		}
		if gap {
			b.WriteByte('-')
			gap = false
		}
		b.WriteRune(r)
	}
	switch name := b.String(); {
	case isDevice(name):
		return name + "-" + nameless
	case name == "":
		return nameless
	default:
		return name
	}
}

// isDevice reports whether a lower-case name is one that Windows gives to a
// device, whatever its extension.
func isDevice(name string) bool {
	switch name {
	case "con", "prn", "aux", "nul":
		return true
	}
	port, found := strings.CutPrefix(name, "com")
	if !found {
		port, found = strings.CutPrefix(name, "lpt")
	}
	return found && len(port) == 1 && port[0] >= '0' && port[0] <= '9'
}
