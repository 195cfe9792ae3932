package bundle

import (
	"context"
	"encoding/json"
	"os"
	"testing"
)

// An unchanged file is not packed again: what the earlier build holds is
// taken over, recognised here by bytes that no coder makes.
func TestUnchangedIsTakenOver(t *testing.T) {
	o := project(t)
	build(t, o)
	mark(t, "style.css", "kept from before")

	build(t, o)
	if got := string(read(t, "web/dist/style.css.br")); got != "kept from before" {
		t.Errorf("an unchanged file was packed again")
	}
	o.Brotli = 0 // takes over what there is, too
	build(t, o)
	if got := string(read(t, "web/dist/style.css.br")); got != "kept from before" {
		t.Errorf("without brotli, an unchanged file was not taken over")
	}
	write(t, "web/style.css", string(read(t, "web/style.css"))+"a { color: red }\n")
	m := build(t, o)
	if _, err := os.Stat("web/dist/style.css.br"); err == nil || m.Files["style.css"].Brotli != nil {
		t.Errorf("without brotli, a changed file still has the old brotli")
	}
	if m.Files["style.css"].Gzip == nil {
		t.Errorf("without brotli, a changed file has no gzip")
	}
}

func TestDamagedIsPackedAgain(t *testing.T) {
	o := project(t)
	m := build(t, o)
	want := string(read(t, "web/dist/page.js.br"))
	write(t, "web/dist/page.js.br", "damaged")
	build(t, o)
	if got := string(read(t, "web/dist/page.js.br")); got != want {
		t.Errorf("a damaged file was taken over")
	}
	// Another quality than is wanted is no substitute.
	mark(t, "page.js", "kept from before")
	f := m.Files["page.js"]
	f.Brotli = &Packed{Size: 16, SHA256: hash([]byte("kept from before")), Quality: testQuality + 1}
	m.Files["page.js"] = f
	if err := m.write("web/dist/build.json"); err != nil {
		t.Fatal(err)
	}
	build(t, o)
	if got := string(read(t, "web/dist/page.js.br")); got != want {
		t.Errorf("a file of another quality was taken over")
	}
}

// mark puts text in the place of a packed file and has the manifest agree.
func mark(t *testing.T, name, text string) {
	t.Helper()
	var m Manifest
	if err := json.Unmarshal(read(t, "web/dist/build.json"), &m); err != nil {
		t.Fatal(err)
	}
	write(t, "web/dist/"+name+".br", text)
	f := m.Files[name]
	f.Brotli = &Packed{Size: int64(len(text)), SHA256: hash([]byte(text)), Quality: testQuality}
	m.Files[name] = f
	if err := m.write("web/dist/build.json"); err != nil {
		t.Fatal(err)
	}
}

func TestPackingStopsWhenInterrupted(t *testing.T) {
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	for _, pack := range []func(context.Context, []byte, int) ([]byte, error){Brotli, Gzip} {
		if _, err := pack(ctx, []byte("anything"), 5); err != context.Canceled {
			t.Errorf("error %v, want %v", err, context.Canceled)
		}
	}
}
