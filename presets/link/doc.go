// Package link puts a whole pattern into the fragment of a link, and takes it
// out again. A fragment never leaves the browser that opens the link, so
// nothing is sent anywhere.
//
// # The fragment
//
//	#w1.BODY
//
// w is for the bench, 1 the version of all that follows. BODY is base64url
// without padding (RFC 4648, section 5) of four bytes and a stream: the CRC-32
// (IEEE) of the stream, big-endian, and the stream itself, which is DEFLATE
// (RFC 1951) of the pattern's file, with the words of a file as the preset
// dictionary. The sum is taken over the packed bytes, so that any change of
// fewer than five neighbouring characters is noticed for certain, and before
// anything is unpacked.
package link

import "whorlbench/presets"

const (
	// MaxChars is how long a fragment may be, its mark included. Browsers
	// take far longer ones; chats and mail do not.
	MaxChars = 32_000
	// MaxFile (bytes) is how large the file in a link may be, unpacked. What
	// packs to MaxChars is far smaller unless it was made to harm.
	MaxFile = 1 << 20
	// sumSize is how many bytes the checksum has.
	sumSize = 4
)

// A link holds no more than a file may.
var _ [presets.MaxFileSize - MaxFile]struct{}
