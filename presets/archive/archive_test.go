package archive_test

import (
	"archive/zip"
	"bytes"
	"compress/flate"
	"errors"
	"fmt"
	"hash/crc32"
	"io"
	"io/fs"
	"strings"
	"testing"
	"time"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/presets/archive"
	"whorlbench/presets/dice"
)

func pattern(t *testing.T, title string) engine.Pattern {
	t.Helper()
	p, err := presets.First().Pattern()
	if err != nil {
		t.Fatal(err)
	}
	p.Title = title
	return p
}

// Names are safe and each is there once; what was packed is unpacked equal and
// in order.
func TestPackAndUnpack(t *testing.T) {
	titles := []string{"Half-moon", "half moon!", "HALF MOON", "../../etc/passwd", "con", "漢字", "…", "half-moon-2", "a/b\\c:d"}
	want := []string{"half-moon.toml", "half-moon-2.toml", "half-moon-3.toml", "etc-passwd.toml", "con-pattern.toml", "漢字.toml",
		"pattern.toml", "half-moon-2-2.toml", "a-b-c-d.toml"}
	var patterns []engine.Pattern
	for _, title := range titles {
		patterns = append(patterns, pattern(t, title))
	}
	data, problems := archive.Pack(patterns)
	if len(problems) > 0 {
		t.Fatalf("Pack() gives %v, want no problems", problems)
	}
	if again, _ := archive.Pack(patterns); !bytes.Equal(again, data) {
		t.Error("Pack() gives other bytes the second time")
	}
	items, problems := archive.Unpack(data)
	if len(problems) > 0 || len(items) != len(titles) {
		t.Fatalf("Unpack() gives %d items, %v, want %d", len(items), problems, len(titles))
	}
	for i, item := range items {
		if item.Name != want[i] || !item.Pattern.Equal(patterns[i]) {
			t.Errorf("item %d is %q with %+v, want %q with %+v", i, item.Name, item.Pattern, want[i], patterns[i])
		}
	}
	if _, problems := archive.Pack(nil); len(problems) != 1 || !errors.Is(problems[0], archive.ErrNothing) {
		t.Errorf("Pack() of nothing gives %v, want %v", problems, archive.ErrNothing)
	}
	bad := pattern(t, "Too slow")
	bad.Tempo = 1
	data, problems = archive.Pack([]engine.Pattern{bad, patterns[0]})
	if items, _ := archive.Unpack(data); len(items) != 1 || len(problems) != 1 || !strings.HasPrefix(problems[0].Error(), `"Too slow": key "tempo"`) {
		t.Errorf("Pack() of a bad and a good pattern gives %d items, %v, want the good one and the other's problem", len(items), problems)
	}
}

func TestRandomPatterns(t *testing.T) {
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	d := dice.New(seed)
	var patterns []engine.Pattern
	for range 60 {
		patterns = append(patterns, d.Pattern())
	}
	data, problems := archive.Pack(patterns)
	items, more := archive.Unpack(data)
	if len(problems)+len(more) > 0 || len(items) != len(patterns) {
		t.Fatalf("%d of %d patterns came back: %v, %v", len(items), len(patterns), problems, more)
	}
	for i, item := range items {
		if !item.Pattern.Equal(patterns[i]) {
			t.Errorf("pattern %d is %+v, want %+v", i, item.Pattern, patterns[i])
		}
	}
}

// entry is one entry of a ZIP file made by hand.
type entry struct {
	name   string
	data   []byte
	mode   fs.FileMode
	plain  bool // the name is not said to be UTF-8
	flags  uint16
	method uint16
}

func zipped(t *testing.T, entries ...entry) []byte {
	t.Helper()
	var out bytes.Buffer
	z := zip.NewWriter(&out)
	for _, e := range entries {
		var packed bytes.Buffer
		f, err := flate.NewWriter(&packed, flate.BestCompression)
		if err != nil {
			t.Fatal(err)
		}
		f.Write(e.data)
		f.Close()
		h := &zip.FileHeader{Name: e.name, Method: zip.Deflate, NonUTF8: e.plain, Flags: e.flags,
			CRC32: crc32.ChecksumIEEE(e.data), CompressedSize64: uint64(packed.Len()), UncompressedSize64: uint64(len(e.data))}
		if e.mode != 0 {
			h.SetMode(e.mode)
		}
		if e.method != 0 {
			h.Method = e.method
		}
		w, err := z.CreateRaw(h)
		if err != nil {
			t.Fatal(err)
		}
		w.Write(packed.Bytes())
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// One ZIP file with one of everything: the good ones are taken, and each of
// the others is told of.
func TestGoodOnesAreTaken(t *testing.T) {
	good := presets.First().Data
	const bzip2 = 12 // APPNOTE.TXT, section 4.4.5
	data := zipped(t,
		entry{name: "first.toml", data: good},
		entry{name: "folder/"},
		entry{name: "folder/inner.toml", data: good},
		entry{name: "../up.toml", data: good},
		entry{name: "/root.toml", data: good},
		entry{name: `..\up.toml`, data: good},
		entry{name: "C:drive.toml", data: good},
		entry{name: "caf\xe9.toml", data: good, plain: true},
		entry{name: "notes.txt", data: []byte("hello")},
		entry{name: ".hidden.toml", data: good},
		entry{name: "link.toml", data: []byte("first.toml"), mode: fs.ModeSymlink | 0o777},
		entry{name: "locked.toml", data: good, flags: 1},
		entry{name: "odd.toml", data: good, method: bzip2},
		entry{name: "empty.toml"},
		entry{name: "bad.toml", data: []byte("format = 1\ntitle = \"x\"\ntempo = 5\n[[hand]]\nside = \"left\"\n[[hand.piece]]\narm = 1\nprop = 1\ncycles = 1\n")},
		entry{name: "large.toml", data: make([]byte, presets.MaxFileSize+1)},
		entry{name: "FIRST.TOML", data: good},
		entry{name: "last.TOML", data: good},
	)
	items, problems := archive.Unpack(data)
	var names []string
	for _, item := range items {
		names = append(names, item.Name)
	}
	if got := strings.Join(names, " "); got != "first.toml last.TOML" {
		t.Errorf("taken %s, want first.toml last.TOML", got)
	}
	want := []string{
		`"folder/inner.toml": left out, as it lies in a folder`,
		`"../up.toml": left out, as its name leads out`,
		`"/root.toml": left out, as its name leads out`,
		`"..\\up.toml": left out, as its name leads out`,
		`"C:drive.toml": left out, as its name leads out`,
		`"caf\xe9.toml": left out, as its name is not UTF-8`,
		`"notes.txt": left out, as it is no pattern file`,
		`".hidden.toml": left out, as it is no pattern file`,
		`"link.toml": left out, as it is no plain file`,
		`"locked.toml": left out, as it is locked`,
		`"odd.toml": left out, as it is packed in a way`,
		`"empty.toml": empty.toml:1:1: the file is empty`,
		`"bad.toml": bad.toml:3:9: key "tempo": found 5`,
		`"large.toml": left out, as it unpacks to more than 8388608 bytes`,
		`"FIRST.TOML": left out, as another has the same name`,
	}
	if len(problems) != len(want) {
		t.Errorf("%d problems, want %d: %v", len(problems), len(want), problems)
	}
	for i := range min(len(problems), len(want)) {
		if got := problems[i].Error(); !strings.HasPrefix(got, want[i]) || strings.Contains(got, "\n") {
			t.Errorf("problem %d is %s, want one line that begins %s", i, got, want[i])
		}
	}
}

func TestRefusals(t *testing.T) {
	good := zipped(t, entry{name: "a.toml", data: presets.First().Data})
	changed := bytes.Clone(good)
	changed[60] ^= 0xFF // in the packed bytes
	for _, tt := range []struct {
		name string
		data []byte
		says string
	}{
		{"nothing", nil, "not a ZIP file"},
		{"a text", []byte("hello"), "not a ZIP file"},
		{"cut short", good[:len(good)-30], "not a ZIP file"},
		{"empty", zipped(t), "no pattern in this ZIP file"},
		{"only a folder", zipped(t, entry{name: "a/"}), "no pattern in this ZIP file"},
		{"changed", changed, "damaged"},
		{"large", make([]byte, archive.MaxFile+1), "allowed at most 16777216"},
	} {
		items, problems := archive.Unpack(tt.data)
		if len(items) != 0 || len(problems) != 1 || !strings.Contains(problems[0].Error(), tt.says) {
			t.Errorf("%s: Unpack() gives %d items, %v, want none and %q", tt.name, len(items), problems, tt.says)
		}
	}
}

// All together must not unpack to more than is allowed, whatever each says.
func TestBombOfManyEntries(t *testing.T) {
	var entries []entry
	zeros := make([]byte, presets.MaxFileSize)
	for i := range 12 {
		entries = append(entries, entry{name: fmt.Sprintf("%02d.toml", i), data: zeros})
	}
	entries = append(entries, entry{name: "good.toml", data: presets.First().Data})
	items, problems := archive.Unpack(zipped(t, entries...))
	if len(items) != 0 || len(problems) != len(entries) {
		t.Fatalf("Unpack() gives %d items, %d problems, want 0 and %d", len(items), len(problems), len(entries))
	}
	for i, p := range problems {
		if got, want := strings.Contains(p.Error(), "all together unpack to more"), i >= archive.MaxUnpacked/presets.MaxFileSize; got != want {
			t.Errorf("entry %d: %v; want the sum blamed: %v", i, p, want)
		}
	}
}

// An entry that says it is small and is not is stopped all the same.
func TestUntrueSize(t *testing.T) {
	data := zipped(t, entry{name: "a.toml", data: make([]byte, 1<<20)})
	at := bytes.Index(data, []byte("PK\x01\x02")) // APPNOTE.TXT, section 4.3.12: the size unpacked is at 24
	copy(data[at+24:], []byte{10, 0, 0, 0})
	if items, problems := archive.Unpack(data); len(items) != 0 || len(problems) != 1 {
		t.Errorf("Unpack() gives %d items, %v, want a problem", len(items), problems)
	}
}

func TestTooMany(t *testing.T) {
	var entries []entry
	for i := range archive.MaxPatterns + 5 {
		entries = append(entries, entry{name: fmt.Sprintf("%d.toml", i), data: presets.First().Data})
	}
	items, problems := archive.Unpack(zipped(t, entries...))
	if len(items) != archive.MaxPatterns || len(problems) != 2 || !strings.Contains(problems[1].Error(), "5 more") {
		t.Errorf("Unpack() gives %d items, %v, want %d and that 5 are left", len(items), problems, archive.MaxPatterns)
	}
	entries = nil
	for i := range archive.MaxEntries + 7 {
		entries = append(entries, entry{name: fmt.Sprintf("d%d/", i)})
	}
	if _, problems := archive.Unpack(zipped(t, entries...)); len(problems) != 1 || !strings.Contains(problems[0].Error(), "7 more") {
		t.Errorf("Unpack() of too many folders gives %v, want that 7 are left", problems)
	}
}

// FuzzUnpack takes patterns out of anything at all; what it takes is packed
// and comes back equal.
func FuzzUnpack(f *testing.F) {
	var patterns []engine.Pattern
	for _, e := range presets.Library()[:4] {
		p, err := e.Pattern()
		if err != nil {
			f.Fatal(err)
		}
		patterns = append(patterns, p)
	}
	data, problems := archive.Pack(patterns)
	if len(problems) > 0 {
		f.Fatal(problems)
	}
	f.Add(data)
	f.Add([]byte("PK\x05\x06" + strings.Repeat("\x00", 18)))
	var stored bytes.Buffer
	z := zip.NewWriter(&stored)
	for _, name := range []string{"a.toml", "b/../../c.toml", "d.toml"} {
		w, err := z.CreateHeader(&zip.FileHeader{Name: name})
		if err != nil {
			f.Fatal(err)
		}
		io.WriteString(w, string(presets.First().Data))
	}
	z.Close()
	f.Add(stored.Bytes())
	f.Fuzz(func(t *testing.T, data []byte) {
		items, problems := archive.Unpack(data)
		if len(items)+len(problems) == 0 {
			t.Error("Unpack() takes nothing and says nothing")
		}
		var patterns []engine.Pattern
		for _, item := range items {
			if strings.ContainsAny(item.Name, "/\\:") || strings.HasPrefix(item.Name, ".") {
				t.Errorf("taken under the name %q", item.Name)
			}
			patterns = append(patterns, item.Pattern)
		}
		for _, p := range problems {
			if strings.Contains(p.Error(), "\n") || p.Error() == "" {
				t.Errorf("a problem is %q, want one line", p)
			}
		}
		if len(items) == 0 {
			return
		}
		again, problems := archive.Pack(patterns)
		back, more := archive.Unpack(again)
		if len(problems)+len(more) > 0 || len(back) != len(items) {
			t.Fatalf("packed again, %d of %d come back: %v, %v", len(back), len(items), problems, more)
		}
		for i := range back {
			if !back[i].Pattern.Equal(items[i].Pattern) {
				t.Errorf("packed again, pattern %d differs", i)
			}
		}
	})
}
