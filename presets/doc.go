// Package presets reads and writes pattern files, and holds the built-in
// library.
//
// A file is one pattern in TOML 1.0. Decode refuses what it does not know or
// cannot take, every problem at once and each with its place; Encode leaves
// defaults out and keeps one order, so that what it writes reads back equal
// and is written again byte for byte.
//
// # Numbers
//
// The keys arm, prop, cycles, beats and part are exact: a decimal means its
// own digits, exactly, however many there are, and not the nearest binary
// number. For every decimal that a program writes for a float64, shortest
// form, both readings are the same. A text "1/3" is a fraction, of a
// denominator up to MaxDenominator as it is written. All other numbers are
// float64.
package presets

import "whorlbench/engine/frac"

// Limits of a file.
const (
	// Format is the one value of the key format that is read and written.
	Format = 1
	// MaxFileSize (bytes) is the size beyond which a file is refused before
	// it is looked at. A full file, two hands of MaxPieces pieces with every
	// key written, has about five million.
	MaxFileSize = 8 << 20
	// MaxHands is how many hands a pattern may have.
	MaxHands = 2
	// MaxPieces is how many pieces a hand may have.
	MaxPieces = 10_000
	// MaxTitle and MaxNotes count characters, not bytes.
	MaxTitle = 200
	MaxNotes = 10_000
	// MaxDenominator bounds the denominator of a fraction written "p/q".
	MaxDenominator = 1_000_000
	// MaxDigits bounds the length of an exact decimal in characters.
	MaxDigits = frac.MaxDecimals
)
