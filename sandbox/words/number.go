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
	return Minus(Decimals(plainNumber(x, places)))
}

// plainNumber writes x as number does, but for another program.
func plainNumber(x float64, places int) string {
	s := strconv.FormatFloat(x, 'f', places, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		s = "0"
	}
	return s
}

// Decimals puts the sign of the language in use between the whole of a number
// that is written with a point and its decimals.
func Decimals(s string) string { return strings.Replace(s, ".", Said.Quantity.Point, 1) }

// TakenDecimals is the reverse, for a number that a person has typed: it takes comma
// and point alike, whatever the language.
func TakenDecimals(s string) string { return strings.Replace(s, ",", ".", 1) }

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
