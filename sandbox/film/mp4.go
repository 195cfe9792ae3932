package film

import (
	"encoding/binary"
	"io"
	"math"
)

// mp4Scale is how many ticks a second an MP4's frames are timed by: a multiple
// of the usual rates, 24, 25, 30, 50 and 60.
const mp4Scale = 90_000

// box returns an MP4 box (ISO/IEC 14496-12, 4.2) of parts.
func box(kind string, parts ...[]byte) []byte {
	n := 8
	for _, p := range parts {
		n += len(p)
	}
	b := append(binary.BigEndian.AppendUint32(make([]byte, 0, n), uint32(n)), kind...)
	for _, p := range parts {
		b = append(b, p...)
	}
	return b
}

// words32 returns numbers of 32 bits, one after the other.
func words32(list ...uint32) []byte {
	var b []byte
	for _, x := range list {
		b = binary.BigEndian.AppendUint32(b, x)
	}
	return b
}

// unity is the matrix that leaves a picture as it is (6.2.2).
var unity = words32(0x10000, 0, 0, 0, 0x10000, 0, 0, 0, 0x40000000)

// WriteMP4 writes H.264 frames as an MP4 whose index comes first, so that it
// plays while it is loaded. All frames are shown in the order in which they
// are packed.
func (t *Track) WriteMP4(w io.Writer) error {
	head := box("ftyp", []byte("isom"), words32(0x200), []byte("isomiso2avc1mp41"))
	size := 8
	pictures := 0
	for _, s := range t.Samples {
		pictures += len(s.Data)
	}
	size += pictures
	var sound [][]byte
	if t.Sound != nil {
		sound, _ = t.Sound.packets()
	}
	for _, p := range sound {
		size += len(p)
	}
	// The index says where the data lie, which its own length decides.
	moov := t.moov(0, 0)
	first := len(head) + len(moov) + 8
	moov = t.moov(uint32(first), uint32(first+pictures))
	for _, b := range [][]byte{head, moov, words32(uint32(size)), []byte("mdat")} {
		if _, err := w.Write(b); err != nil {
			return err
		}
	}
	for _, s := range t.Samples {
		if _, err := w.Write(s.Data); err != nil {
			return err
		}
	}
	for _, p := range sound {
		if _, err := w.Write(p); err != nil {
			return err
		}
	}
	return nil
}

// moov returns the index of pictures and sound that begin at these bytes.
func (t *Track) moov(data, sound uint32) []byte {
	at := t.clock(mp4Scale)
	n := len(t.Samples)
	long := uint32(min(at(n), math.MaxUint32))
	wide, high := uint32(t.Width), uint32(t.Height)

	// stts: runs of frames that last alike; stss: which ones stand alone.
	var runs, keys, sizes []uint32
	for k, s := range t.Samples {
		d := uint32(at(k+1) - at(k))
		if i := len(runs); i > 0 && runs[i-1] == d {
			runs[i-2]++
		} else {
			runs = append(runs, 1, d)
		}
		if s.Key {
			keys = append(keys, uint32(k+1))
		}
		sizes = append(sizes, uint32(len(s.Data)))
	}
	const (
		bt709      = 1
		srgb       = 13
		inches72   = 72 << 16
		depth24    = 24
		noLanguage = 0x55c4 << 16 // und
	)
	entry := box("avc1", make([]byte, 6), []byte{0, 1}, make([]byte, 16),
		[]byte{byte(wide >> 8), byte(wide), byte(high >> 8), byte(high)}, words32(inches72, inches72, 0), []byte{0, 1}, make([]byte, 32), []byte{0, depth24, 0xff, 0xff},
		box("avcC", t.Config),
		box("colr", []byte("nclx"), []byte{0, bt709, 0, srgb, 0, bt709, 0}))
	stbl := box("stbl",
		box("stsd", words32(0, 1), entry),
		box("stts", words32(0, uint32(len(runs)/2)), words32(runs...)),
		box("stss", words32(0, uint32(len(keys))), words32(keys...)),
		box("stsc", words32(0, 1, 1, uint32(n), 1)),
		box("stsz", words32(0, 0, uint32(n)), words32(sizes...)),
		box("stco", words32(0, 1, data)))
	minf := box("minf",
		box("vmhd", words32(1, 0, 0)),
		box("dinf", box("dref", words32(0, 1), box("url ", words32(1)))),
		stbl)
	mdia := box("mdia",
		box("mdhd", words32(0, 0, 0, mp4Scale, long, noLanguage)),
		box("hdlr", words32(0, 0), []byte("vide"), words32(0, 0, 0), []byte("pictures\x00")),
		minf)
	const enabledInMovie = 3
	trak := box("trak",
		box("tkhd", words32(enabledInMovie, 0, 0, 1, 0, long, 0, 0, 0, 0), unity, words32(wide<<16, high<<16)),
		mdia)
	const none = 0xffffffff // the next track's number
	tracks := trak
	if t.Sound != nil {
		tracks = append(tracks, t.Sound.trak(sound, long)...)
	}
	return box("moov",
		box("mvhd", words32(0, 0, 0, mp4Scale, long, 0x10000, 0x0100<<16, 0, 0), unity, make([]byte, 24), words32(none)),
		tracks)
}

// trak returns the sound's track (Encapsulation of Opus in ISO Base Media File
// Format, 4.3): its list of edits leaves out what comes before the sound and
// after it.
func (s *Sound) trak(data, long uint32) []byte {
	packets, _ := s.packets()
	head := s.head()
	n := uint32(len(packets))
	var sizes []uint32
	for _, p := range packets {
		sizes = append(sizes, uint32(len(p)))
	}
	const (
		enabledInMovie = 3
		bits16         = 16
		noLanguage     = 0x55c4 << 16 // und
		loud           = 0x0100_0000
		unityRate      = 0x10000
		rollPackets    = 4 // of 20 ms, which are 80
	)
	opus := box("dOps", []byte{0, head[9]}, binary.BigEndian.AppendUint16(nil, uint16(s.skip())),
		words32(binary.LittleEndian.Uint32(head[12:])), []byte{head[17], head[16], 0})
	entry := box("Opus", make([]byte, 6), []byte{0, 1}, make([]byte, 8), []byte{0, 1, 0, bits16}, make([]byte, 4), words32(opusRate<<16), opus)
	roll := int16(-rollPackets)
	stbl := box("stbl",
		box("stsd", words32(0, 1), entry),
		box("stts", words32(0, 1, n, opusPacket)),
		box("stsc", words32(0, 1, 1, n, 1)),
		box("stsz", words32(0, 0, n), words32(sizes...)),
		box("stco", words32(0, 1, data)),
		box("sgpd", words32(1<<24), []byte("roll"), words32(2, 1), []byte{byte(uint16(roll) >> 8), byte(uint16(roll))}),
		box("sbgp", words32(0), []byte("roll"), words32(1, n, 1)))
	minf := box("minf", box("smhd", words32(0, 0)), box("dinf", box("dref", words32(0, 1), box("url ", words32(1)))), stbl)
	mdia := box("mdia",
		box("mdhd", words32(0, 0, 0, opusRate, n*opusPacket, noLanguage)),
		box("hdlr", words32(0, 0), []byte("soun"), words32(0, 0, 0), []byte("clicks\x00")),
		minf)
	return box("trak",
		box("tkhd", words32(enabledInMovie, 0, 0, 2, 0, long, 0, 0, 0, loud), unity, words32(0, 0)),
		box("edts", box("elst", words32(0, 1, long, uint32(s.skip()), unityRate))),
		mdia)
}
