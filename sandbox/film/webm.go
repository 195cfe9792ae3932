package film

import (
	"io"
	"math"

	"github.com/at-wat/ebml-go"
	"github.com/at-wat/ebml-go/webm"
)

// The parts of a WebM file (RFC 9559) that the library has no types for.
type (
	webmFile struct {
		Header  webm.EBMLHeader `ebml:"EBML"`
		Segment webmSegment     `ebml:"Segment"`
	}
	webmSegment struct {
		Info    webm.Info     `ebml:"Info"`
		Tracks  webmTracks    `ebml:"Tracks"`
		Cluster []webmCluster `ebml:"Cluster"`
	}
	webmTracks struct {
		TrackEntry []webmTrack `ebml:"TrackEntry"`
	}
	webmTrack struct {
		TrackNumber        uint64     `ebml:"TrackNumber"`
		TrackUID           uint64     `ebml:"TrackUID"`
		TrackType          uint64     `ebml:"TrackType"`
		CodecID            string     `ebml:"CodecID"`
		CodecPrivate       []byte     `ebml:"CodecPrivate,omitempty"`
		CodecDelay         uint64     `ebml:"CodecDelay,omitempty"`
		SeekPreRoll        uint64     `ebml:"SeekPreRoll,omitempty"`
		MaxBlockAdditionID uint64     `ebml:"MaxBlockAdditionID,omitempty"`
		DefaultDuration    uint64     `ebml:"DefaultDuration,omitempty"`
		Video              *webmVideo `ebml:"Video"`
		Audio              *webmAudio `ebml:"Audio"`
	}
	webmAudio struct {
		SamplingFrequency float64 `ebml:"SamplingFrequency"`
		Channels          uint64  `ebml:"Channels"`
	}
	webmVideo struct {
		PixelWidth  uint64     `ebml:"PixelWidth"`
		PixelHeight uint64     `ebml:"PixelHeight"`
		AlphaMode   uint64     `ebml:"AlphaMode,omitempty"`
		Colour      webmColour `ebml:"Colour"`
	}
	webmColour struct {
		MatrixCoefficients      uint64 `ebml:"MatrixCoefficients"`
		Range                   uint64 `ebml:"Range"`
		TransferCharacteristics uint64 `ebml:"TransferCharacteristics"`
		Primaries               uint64 `ebml:"Primaries"`
	}
	webmCluster struct {
		Timecode   uint64      `ebml:"Timecode"`
		BlockGroup []webmGroup `ebml:"BlockGroup"`
	}
	webmGroup struct {
		Block          ebml.Block     `ebml:"Block"`
		BlockAdditions *webmAdditions `ebml:"BlockAdditions"`
		BlockDuration  uint64         `ebml:"BlockDuration,omitempty"`
		ReferenceBlock int64          `ebml:"ReferenceBlock,omitempty"`
		DiscardPadding int64          `ebml:"DiscardPadding,omitempty"`
	}
	webmAdditions struct {
		BlockMore webmMore `ebml:"BlockMore"`
	}
	webmMore struct {
		BlockAddID      uint64 `ebml:"BlockAddID"`
		BlockAdditional []byte `ebml:"BlockAdditional"`
	}
)

const (
	webmScale    = 1_000_000 // ns a tick: milliseconds
	webmPerSec   = 1000
	clusterTicks = 5000 // a cluster's blocks count from its start, with 15 bits
	opacityID    = 1    // of what is added to a block
	writerName   = "Whorlbench"
)

// WriteWebM writes VP9 frames as a WebM file, with their opacity where they
// have it.
func (t *Track) WriteWebM(w io.Writer) error {
	at := t.clock(webmPerSec)
	clear := len(t.Samples) > 0 && t.Samples[0].Alpha != nil
	track := webmTrack{
		TrackNumber: 1, TrackUID: 1, TrackType: 1, CodecID: "V_VP9",
		DefaultDuration: uint64(1e9 / t.Timeline.Rate().Float()),
		Video: &webmVideo{PixelWidth: uint64(t.Width), PixelHeight: uint64(t.Height),
			Colour: webmColour{MatrixCoefficients: 1, Range: 1, TransferCharacteristics: 13, Primaries: 1}}, // BT.709, limited, the curve of sRGB
	}
	if clear {
		track.MaxBlockAdditionID, track.Video.AlphaMode = opacityID, 1
	}
	tracks := webmTracks{[]webmTrack{track}}
	var heard []webmGroup // those that are still to come; their clusters are found by the time
	if t.Sound != nil {
		entry, groups := t.Sound.webm()
		tracks.TrackEntry, heard = append(tracks.TrackEntry, entry), groups
	}
	packet := 0
	var clusters []webmCluster
	// hear adds the sound before a time to the last cluster.
	hear := func(before int64) {
		for c := &clusters[len(clusters)-1]; packet < len(heard); packet++ {
			now := packetTicks(packet)
			if now >= before {
				return
			}
			g := heard[packet]
			g.Block.Timecode = int16(now - int64(c.Timecode))
			c.BlockGroup = append(c.BlockGroup, g)
		}
	}
	for k, s := range t.Samples {
		now := at(k)
		if k > 0 {
			hear(now)
		}
		if n := len(clusters); n == 0 || s.Key && now > int64(clusters[n-1].Timecode) || now-int64(clusters[n-1].Timecode) >= clusterTicks {
			clusters = append(clusters, webmCluster{Timecode: uint64(now)})
		}
		c := &clusters[len(clusters)-1]
		g := webmGroup{
			Block:         ebml.Block{TrackNumber: 1, Timecode: int16(now - int64(c.Timecode)), Data: [][]byte{s.Data}},
			BlockDuration: uint64(at(k+1) - now),
		}
		if !s.Key {
			g.ReferenceBlock = at(k-1) - now
		}
		if s.Alpha != nil {
			g.BlockAdditions = &webmAdditions{webmMore{opacityID, s.Alpha}}
		}
		c.BlockGroup = append(c.BlockGroup, g)
	}
	if len(clusters) > 0 {
		hear(math.MaxInt64)
	}
	return ebml.Marshal(&webmFile{
		Header:  webm.EBMLHeader{EBMLVersion: 1, EBMLReadVersion: 1, EBMLMaxIDLength: 4, EBMLMaxSizeLength: 8, DocType: "webm", DocTypeVersion: 4, DocTypeReadVersion: 2},
		Segment: webmSegment{Info: webm.Info{TimecodeScale: webmScale, MuxingApp: writerName, WritingApp: writerName, Duration: float64(at(len(t.Samples)))}, Tracks: tracks, Cluster: clusters},
	}, w)
}

// packetTicks returns when a packet of sound begins.
func packetTicks(k int) int64 { return int64(k) * opusPacket * webmPerSec / opusRate }

// webm returns the sound's track and its blocks, whose times are still open.
func (s *Sound) webm() (webmTrack, []webmGroup) {
	packets, over := s.packets()
	entry := webmTrack{
		TrackNumber: 2, TrackUID: 2, TrackType: 2, CodecID: "A_OPUS", CodecPrivate: s.head(),
		CodecDelay: uint64(nanoseconds(s.skip())), SeekPreRoll: opusRoll,
		Audio: &webmAudio{SamplingFrequency: opusRate, Channels: 1},
	}
	groups := make([]webmGroup, len(packets))
	for k, p := range packets {
		groups[k].Block = ebml.Block{TrackNumber: 2, Data: [][]byte{p}}
	}
	if n := len(groups); n > 0 {
		groups[n-1].DiscardPadding = nanoseconds(over)
	}
	return entry, groups
}
