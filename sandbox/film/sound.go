package film

import (
	"encoding/binary"

	"whorlbench/sandbox/capture"
)

// Opus counts in samples of 48 kHz whatever it is made of (RFC 7845, 4.2), a
// packet is 20 ms unless it is asked for another, and it needs 80 ms before a
// place to play from there (4.6).
const (
	opusRate   = capture.ClickRate
	opusPacket = opusRate / 50
	opusRoll   = 80_000_000 // nanoseconds
)

// Sound is a film's click track as Opus has packed it.
type Sound struct {
	Head    []byte // RFC 7845, 5.1; made up where the encoder tells none
	Packets [][]byte
	Samples int // that are to be heard
}

// usualSkip is how many samples libopus puts before the sound.
const usualSkip = 312

// head returns the head of one channel.
func (s *Sound) head() []byte {
	const least = 19
	if len(s.Head) >= least {
		return s.Head
	}
	h := append([]byte("OpusHead"), 1, 1)
	h = binary.LittleEndian.AppendUint16(h, usualSkip)
	h = binary.LittleEndian.AppendUint32(h, opusRate)
	return append(h, 0, 0, 0)
}

// skip returns how many samples come before what is to be heard.
func (s *Sound) skip() int { return int(binary.LittleEndian.Uint16(s.head()[10:])) }

// needed returns how many packets hold all that is to be heard.
func (s *Sound) needed() int { return (s.skip() + s.Samples + opusPacket - 1) / opusPacket }

// packets returns those that are needed, and how many samples the last has too
// many.
func (s *Sound) packets() (list [][]byte, over int) {
	n := min(s.needed(), len(s.Packets))
	return s.Packets[:n], max(n*opusPacket-s.skip()-s.Samples, 0)
}

// Complete reports whether enough has been packed.
func (s *Sound) Complete() bool { return len(s.Packets) >= s.needed() }

// nanoseconds returns how long so many samples last.
func nanoseconds(samples int) int64 { return int64(samples) * 1_000_000_000 / opusRate }
