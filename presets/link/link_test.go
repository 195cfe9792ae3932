package link_test

import (
	"bytes"
	"compress/flate"
	"encoding/base64"
	"encoding/binary"
	"errors"
	"hash/crc32"
	"math/rand/v2"
	"strings"
	"testing"
	"time"

	"whorlbench/engine"
	"whorlbench/engine/frac"
	"whorlbench/presets"
	"whorlbench/presets/dice"
	"whorlbench/presets/link"
)

func encode(t *testing.T, p engine.Pattern) string {
	t.Helper()
	f, err := link.Encode(p)
	if err != nil {
		t.Fatalf("Encode() gives %v, want no error", err)
	}
	return f
}

// halfMoon is the first pattern of the library without its notes.
func halfMoon(t *testing.T) engine.Pattern {
	t.Helper()
	p, err := presets.First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	p.Notes = ""
	return p
}

// Links that were given away are read for ever: these were made by the first
// bench that had links, and no later one may read them otherwise.
func TestOldLinks(t *testing.T) {
	p := halfMoon(t)
	const old = "#w1.uHATx8IW8B6JOWm6ufn5eUooAYsz1OjuaEAAAAD__w"
	got, err := link.Decode(old)
	if err != nil || !got.Equal(p) {
		t.Errorf("Decode(%q) = %+v, %v, want %+v", old, got, err, p)
	}
}

func TestLibraryRoundTrip(t *testing.T) {
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		f := encode(t, p)
		if !strings.HasPrefix(f, "#w1.") || strings.Trim(f[4:], "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_") != "" {
			t.Errorf("%s: fragment %q, want #w1. and letters of base64url (RFC 4648, section 5)", e.ID, f)
		}
		for _, form := range []string{f, f[1:]} {
			if got, err := link.Decode(form); err != nil || !got.Equal(p) {
				t.Errorf("%s: Decode(Encode()) = %+v, %v, want %+v", e.ID, got, err, p)
			}
		}
	}
}

// A pattern of two pieces stays so short that its code has few dots, and its
// notes are what makes it longer.
func TestLength(t *testing.T) {
	const shortest, most = 60, 520
	if got := len(encode(t, halfMoon(t))); got > shortest {
		t.Errorf("two pieces take %d characters, want at most %d", got, shortest)
	}
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			t.Fatal(err)
		}
		if got := len(encode(t, p)); got > most {
			t.Errorf("%s takes %d characters, want at most %d", e.ID, got, most)
		}
	}
}

func TestRandomRoundTrip(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	d := dice.New(seed)
	for i := range 300 {
		p := d.Pattern()
		f := encode(t, p)
		if got, err := link.Decode(f); err != nil || !got.Equal(p) {
			t.Fatalf("pattern %d: Decode(Encode()) = %+v, %v, want %+v", i, got, err, p)
		}
		if again := encode(t, p); again != f {
			t.Fatalf("pattern %d: Encode() = %q the second time, want %q", i, again, f)
		}
	}
}

// Every byte of a link is changed to every other one, taken out, and doubled:
// all of it is refused.
func TestDamage(t *testing.T) {
	f := encode(t, halfMoon(t))
	refused := func(text string) {
		t.Helper()
		if p, err := link.Decode(text); err == nil {
			t.Errorf("Decode(%q) = %+v, want a refusal; whole it is %q", text, p, f)
		} else if err.Error() == "" || strings.Contains(err.Error(), "\n") {
			t.Errorf("Decode(%q) says %q, want one line", text, err)
		}
	}
	for i := 1; i < len(f); i++ { // the # may be left out
		for b := range 256 {
			if byte(b) != f[i] {
				refused(f[:i] + string([]byte{byte(b)}) + f[i+1:])
			}
		}
		refused(f[:i] + f[i+1:])
		refused(f[:i])
		refused(f[:i] + f[i:i+1] + f[i:])
	}
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	r := rand.New(rand.NewPCG(seed, 0))
	d := dice.New(seed)
	for range 50 {
		f = encode(t, d.Pattern())
		for range 50 {
			i, b := 1+r.IntN(len(f)-1), byte(r.IntN(256))
			if b != f[i] {
				refused(f[:i] + string([]byte{b}) + f[i+1:])
			}
		}
	}
}

// pack makes a link of any file, as RFC 1951 and RFC 4648 have it.
func pack(t *testing.T, file []byte) string {
	t.Helper()
	var stream bytes.Buffer
	w, err := flate.NewWriter(&stream, flate.BestCompression) // no dictionary is one that is not used
	if err != nil {
		t.Fatal(err)
	}
	w.Write(file)
	w.Close()
	return sealed(stream.Bytes())
}

// sealed makes a link of any stream.
func sealed(stream []byte) string {
	raw := binary.BigEndian.AppendUint32(nil, crc32.ChecksumIEEE(stream))
	return "#w1." + base64.RawURLEncoding.EncodeToString(append(raw, stream...))
}

func TestRefusals(t *testing.T) {
	f := encode(t, halfMoon(t))
	for _, tt := range []struct {
		name, link string
		cause      error
		says       string
	}{
		{"nothing", "", link.ErrEmpty, "no pattern"},
		{"nothing but the mark", "#", link.ErrEmpty, "no pattern"},
		{"no body", "#w1.", link.ErrDamaged, "damaged"},
		{"a heading", "#more", link.ErrForeign, `character 1: found "more", allowed a link that begins with w1.`},
		{"something long", "#" + strings.Repeat("é", 100), link.ErrForeign, `found "éééééééééééé", allowed`},
		{"newer", "#w2." + f[4:], link.ErrNewer, "made by a newer bench"},
		{"much newer", "#w104.***", link.ErrNewer, "(its kind is w104)"},
		{"a full stop after it", f + ".", link.ErrDamaged, `found ".", allowed letters, digits, - and _`},
		{"a line break in it", f[:9] + "\n" + f[9:], link.ErrDamaged, `character 9: found "\n", allowed`},
		{"padded", f + "==", link.ErrDamaged, `found "=", allowed`},
		{"cut short", f[:len(f)-5], link.ErrDamaged, "copy it again, whole"},
		{"only a sum", sealed(nil), link.ErrDamaged, "damaged"},
		{"no stream", sealed([]byte("\xff\xff\xff")), link.ErrDamaged, "damaged"},
		{"an endless stream", sealed([]byte{0}), link.ErrDamaged, "damaged"},
		{"too long", "#w1." + strings.Repeat("A", link.MaxChars), link.ErrTooLong, "allowed at most 32000"},
		{"a bomb", pack(t, make([]byte, link.MaxFile+1)), link.ErrTooMuch, "more than 1048576 bytes"},
		{"a large bomb", pack(t, make([]byte, 20<<20)), link.ErrTooMuch, "more than 1048576 bytes"},
	} {
		if _, err := link.Decode(tt.link); !errors.Is(err, tt.cause) || !strings.Contains(err.Error(), tt.says) {
			t.Errorf("%s: Decode() gives %v, want %q in it", tt.name, err, tt.says)
		}
	}
	// What is whole but no pattern is refused as a file is.
	_, err := link.Decode(pack(t, []byte("format = 1\ntitle = \"x\"\ntempo = 5\n")))
	if errs := (presets.Errors)(nil); !errors.As(err, &errs) || !strings.Contains(err.Error(), "pattern in the link:3:9: key \"tempo\"") {
		t.Errorf("Decode() of a file that cannot be used gives %v, want its problems with their places", err)
	}
}

// A stream followed by more is refused, though its sum is right.
func TestNothingAfterTheEnd(t *testing.T) {
	raw, err := base64.RawURLEncoding.DecodeString(encode(t, halfMoon(t))[4:])
	if err != nil {
		t.Fatal(err)
	}
	if _, err := link.Decode(sealed(append(raw[4:], 0))); !errors.Is(err, link.ErrDamaged) {
		t.Errorf("Decode() of a stream with a byte after it gives %v, want %v", err, link.ErrDamaged)
	}
}

func TestEncodeRefusals(t *testing.T) {
	p := halfMoon(t)
	p.Tempo = 1
	if _, err := link.Encode(p); err == nil || !strings.Contains(err.Error(), `key "tempo"`) {
		t.Errorf("Encode() of a pattern that no file holds gives %v, want its key", err)
	}
	p = halfMoon(t)
	r := rand.New(rand.NewPCG(1, 1))
	for range 8000 { // of pieces that have nothing in common
		piece := p.Lanes[0].Pieces[0]
		piece.Prop = frac.New(1+r.Int64N(1000), 1+r.Int64N(999_999))
		p.Lanes[0].Pieces = append(p.Lanes[0].Pieces, piece)
	}
	if f, err := link.Encode(p); !errors.Is(err, link.ErrTooLong) {
		t.Errorf("Encode() of 8000 pieces gives %d characters, %v, want %v", len(f), err, link.ErrTooLong)
	}
}

func TestHolds(t *testing.T) {
	for text, want := range map[string]bool{
		"": false, "#": false, "#more": false, "#w": false, "#w.": false, "#wx.a": false, "#w1": false,
		"#w1.abc": true, "w1.abc": true, "#w2.": true, "#w1234567.": false,
	} {
		if got := link.Holds(text); got != want {
			t.Errorf("Holds(%q) = %v, want %v", text, got, want)
		}
	}
}

// FuzzDecode opens links of any text at all. What is read is written again
// and read back equal.
func FuzzDecode(f *testing.F) {
	for _, e := range presets.Library() {
		p, err := e.Pattern()
		if err != nil {
			f.Fatal(err)
		}
		text, err := link.Encode(p)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(text)
	}
	f.Add("#w1.")
	f.Add("#w99.AAAA")
	f.Add(sealed([]byte{3, 0}))
	f.Fuzz(func(t *testing.T, text string) {
		// Sealed, the same bytes come past the sum and to the unpacking.
		for _, text := range []string{text, sealed([]byte(text))} {
			p, err := link.Decode(text)
			if err != nil {
				if err.Error() == "" {
					t.Errorf("Decode(%q) refuses without a word", text)
				}
				continue
			}
			again, err := link.Encode(p)
			if err != nil {
				t.Fatalf("Encode() of what Decode() read gives %v", err)
			}
			if back, err := link.Decode(again); err != nil || !back.Equal(p) {
				t.Fatalf("Decode(Encode()) = %+v, %v, want %+v", back, err, p)
			}
		}
	})
}
