package words

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"
)

// number writes x with at most the given places, no trailing zeros and a true
// minus sign, as a person reads it.
func number(x float64, places int) string {
	s := strconv.FormatFloat(x, 'f', places, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		s = "0"
	}
	return Minus(s)
}

// Minus replaces a leading hyphen by a minus sign.
func Minus(s string) string {
	if strings.HasPrefix(s, "-") {
		return "−" + s[1:]
	}
	return s
}

// capital returns s with its first letter a capital.
func capital(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	return string(unicode.ToUpper(r)) + s[n:]
}
