package words

import (
	"strings"
	"unicode"
)

// FileName turns a title into a name that any file system takes: letters and
// digits of any script, the rest as single hyphens.
func FileName(title string) string {
	const most = 60
	var b strings.Builder
	gap := false
	for _, r := range strings.ToLower(title) {
		if !unicode.IsLetter(r) && !unicode.IsDigit(r) {
			gap = b.Len() > 0
			continue
		}
		if gap {
			b.WriteByte('-')
			gap = false
		}
		if b.Len() >= most {
			break
		}
		b.WriteRune(r)
	}
	if b.Len() == 0 {
		return "pattern"
	}
	return strings.TrimSuffix(b.String(), "-")
}
