//go:build browser

package browser

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/input"
	"github.com/chromedp/chromedp"
	"github.com/chromedp/chromedp/kb"

	"whorlbench/engine"
	"whorlbench/presets"
	"whorlbench/presets/archive"
)

// lesson are the built-in patterns that a teacher lines up here.
var lesson = []string{"half-moon", "pier-end", "net-mender", "half-moon", "pier-end"}

// lessonFiles writes them as numbered files, each with a title of its own; the
// file at broken, if there is one, has a mistake.
func lessonFiles(t *testing.T, broken int) (paths, titles []string) {
	t.Helper()
	dir := t.TempDir()
	for i, id := range lesson {
		for _, e := range presets.Library() {
			if e.ID != id {
				continue
			}
			p, err := e.Pattern()
			must(t, err)
			p.Title = fmt.Sprintf("Lantern walk, part %d", i+1)
			data, err := presets.Encode(p)
			must(t, err)
			if i == broken {
				data = []byte(strings.Replace(string(data), "format = 1", "format = 1\ntempi = 120", 1))
			}
			path := filepath.Join(dir, fmt.Sprintf("%d.toml", i+1))
			must(t, os.WriteFile(path, data, 0o644))
			paths, titles = append(paths, path), append(titles, p.Title)
		}
	}
	return paths, titles
}

// orderTitles returns the titles in the running order's list.
func (v *visit) orderTitles() string {
	v.t.Helper()
	return eval[string](v, `[...document.querySelectorAll("#order-list b")].map((b) => b.textContent).join("|")`)
}

// orderFiles gives the list files, as the browser's own dialog would.
func (v *visit) orderFiles(paths []string) {
	v.t.Helper()
	eval[string](v, `document.getElementById("order-said").textContent = ""`)
	must(v.t, chromedp.Do(v.ctx, chromedp.SetUploadFiles(chromedp.ID("order-files"), paths)))
	v.wait(`document.getElementById("order-said").textContent !== ""`)
}

// orderTool presses a button of the list by its full name.
func (v *visit) orderTool(label string) {
	v.t.Helper()
	eval[bool](v, fmt.Sprintf(`(document.querySelector('#order-list [aria-label=%q]').click(), true)`, label))
}

func (v *visit) openOrder() {
	v.t.Helper()
	v.click("show-more")
	v.click("show-order")
	v.wait(`document.getElementById("order").open`)
}

// TestWorkshop is a lesson: a teacher lines five files up, of which one is
// broken at first, shows them with a clicker or by finger, points at a piece,
// slows down, and has the bench as it was.
func TestWorkshop(t *testing.T) {
	for _, s := range []screen{projector, phone, desk, phoneSide} {
		t.Run(s.name, func(t *testing.T) { workshop(t, newVisit(t, s)) })
	}
}

func workshop(t *testing.T, v *visit) {
	v.pause()
	v.press("button", "Flip arm", " ")
	v.drawing(func() { eval[bool](v, `(whorlbenchProgram.act("playhead", "set", 1.25), true)`) })
	mine, records := v.pattern(), v.records()
	eval[bool](v, `(document.activeElement?.blur(), true)`)

	v.openOrder()
	v.shot("workshop-0-empty")
	paths, titles := lessonFiles(t, 2)
	v.orderFiles(paths)
	if got, want := v.orderTitles(), strings.Join([]string{titles[0], titles[1], titles[3], titles[4]}, "|"); got != want {
		t.Fatalf("lined up are %s, want %s", got, want)
	}
	if got := eval[string](v, `document.getElementById("order-wrong").textContent`); !strings.Contains(got, "3.toml:2:1") || !strings.Contains(got, "tempi") {
		t.Errorf("of the broken file %q is said, want its name, line and column, and what was found", got)
	}
	v.shot("workshop-1-broken")
	eval[bool](v, `(document.getElementById("order-clear").click(), true)`)
	paths, titles = lessonFiles(t, -1)
	v.orderFiles(paths)
	v.orderTool("Move " + titles[4] + " up")
	v.orderTool("Move " + titles[0] + " down")
	titles[3], titles[4] = titles[4], titles[3]
	titles[0], titles[1] = titles[1], titles[0]
	if got, want := v.orderTitles(), strings.Join(titles, "|"); got != want {
		t.Fatalf("lined up are %s, want %s", got, want)
	}
	v.orderTool("Remove " + titles[2] + " from the running order")
	eval[bool](v, `(document.getElementById("order-undo").click(), true)`)
	eval[bool](v, `(document.getElementById("order").scrollTop = 0, true)`)
	v.shot("workshop-2-list")

	// A reload keeps the list, and a ZIP file holds it in its order.
	v.load()
	v.pause()
	v.openOrder()
	if got, want := v.orderTitles(), strings.Join(titles, "|"); got != want {
		t.Fatalf("after a reload %s are lined up, want %s", got, want)
	}
	v.click("order-save")
	items, problems := archive.Unpack(v.download("running-order.zip"))
	var packed []string
	for _, x := range items {
		packed = append(packed, x.Pattern.Title)
	}
	if got, want := strings.Join(packed, "|"), strings.Join(titles, "|"); got != want || len(problems) > 0 {
		t.Errorf("the ZIP file has %s (%v), want %s", got, problems, want)
	}

	v.drawing(func() { v.click("order-start") })
	shows := func(i int) {
		t.Helper()
		v.wait(fmt.Sprintf(`document.title === %q`, titles[i]))
	}
	on := func(by int) {
		key, name, far := kb.PageDown, "Next pattern of the running order", -160.0
		if by < 0 {
			key, name, far = kb.PageUp, "Previous pattern of the running order", 160
		}
		switch {
		case !v.screen.touch:
			v.drawing(func() { v.keys(key, 0) })
		case by < 0:
			v.drawing(func() { v.touch([2]float64{200, 150}, [2]float64{200 + far/2, 152}, [2]float64{200 + far, 154}) })
		default:
			v.tap(name)
		}
	}
	shows(0)
	for i := 1; i < len(titles); i++ {
		v.shot(fmt.Sprintf("workshop-3-show-%d", i))
		on(1)
		shows(i)
	}
	on(-1)
	shows(3)
	on(-1)
	shows(2)

	// Hold, and point at the second piece; then slower.
	if v.screen.touch {
		v.tap("Hold and point at one piece")
		v.tap("Point at the next piece")
		v.tap("Playing speed")
	} else {
		v.drawing(func() { v.keys("h", 0) })
		v.drawing(func() { v.keys(kb.ArrowRight, 0) })
		v.drawing(func() { v.keys("-", 0) })
	}
	v.wait(`document.querySelector("#bench [data-id=point]").getAttribute("aria-pressed") === "true"`)
	v.shot("workshop-4-point")
	if v.screen.touch {
		v.tap("Go on")
	} else {
		v.drawing(func() { v.keys(kb.Escape, 0) })
	}
	v.wait(`document.querySelector("#bench [data-id=point]").getAttribute("aria-pressed") === "false"`)
	on(-1)
	shows(1)
	if v.screen.touch {
		v.tap("Hold and point at one piece")
	} else {
		v.drawing(func() { v.keys("h", 0) })
	}
	v.drawing(func() {
		eval[bool](v, `(document.getElementById("theme").value = "night", document.getElementById("theme").dispatchEvent(new Event("change")), true)`)
	})
	v.shot("workshop-5-night")
	if !v.screen.touch {
		v.drawing(func() { v.keys(".", 0) })
		v.wait(`!!` + twin("button", "Bring the picture back"))
		v.black()
		v.drawing(func() { v.keys(kb.PageDown, 0) })
		v.wait(`!!` + twin("button", "Go on"))
		v.drawing(func() { v.keys(kb.Escape, 0) })
		v.drawing(func() { v.keys(kb.Escape, 0) })
	} else {
		v.tap("Go on")
		v.tap("Leave the big view")
	}

	v.wait(`!document.documentElement.classList.contains("big") && !!` + twin("button", "Cut at the playhead"))
	v.shot("workshop-7-back")
	if got := v.pattern(); got != mine {
		t.Errorf("the bench has\n%s\nwant\n%s", got, mine)
	}
	if got := v.records(); got != records {
		t.Errorf("the shelf has %d patterns, want %d", got, records)
	}
	v.drawing(func() { eval[bool](v, `(whorlbenchProgram.act("undo", "press", 0), true)`) })
	if v.pattern() == mine {
		t.Error("what was done before cannot be undone")
	}
	v.openOrder()
	if got := eval[string](v, `document.querySelector("#order-list .shown b").textContent`); got != titles[1] {
		t.Errorf("%q is marked as shown last, want %q", got, titles[1])
	}
	v.shot("workshop-8-order-night")
	v.clean()
}

// A folder is taken whole, by the button or dropped: patterns in the order of
// their names, a ZIP file's among them, and what is none is counted. Where the
// browser has no room the list says so and goes on.
func TestWorkshopFolder(t *testing.T) {
	v := newVisit(t, desk)
	v.pause()
	paths, titles := lessonFiles(t, -1)
	dir := filepath.Dir(paths[0])
	must(t, os.WriteFile(filepath.Join(dir, "notes.txt"), []byte("bring the lanterns"), 0o644))
	p, err := presets.First().Pattern()
	must(t, err)
	zip, _ := archive.Pack([]engine.Pattern{p})
	must(t, os.WriteFile(filepath.Join(dir, "10.zip"), zip, 0o644))
	want := strings.Join(append(titles, p.Title), "|")

	v.openOrder()
	must(t, chromedp.Do(v.ctx, chromedp.SetUploadFiles(chromedp.ID("order-folder"), []string{dir})))
	v.wait(`document.getElementById("order-said").textContent.endsWith("left out: 1.")`)
	if got := v.orderTitles(); got != want {
		t.Errorf("of the folder %s are lined up, want %s", got, want)
	}
	v.click("order-clear")
	eval[bool](v, `(document.getElementById("order").close(), true)`)
	drag := func(kind input.DispatchDragEventType) {
		t.Helper()
		_, err := chromedp.Call(v.ctx, input.DispatchDragEvent, input.DispatchDragEventParams{Type: kind, X: 300, Y: 300,
			Data: &input.DragData{Items: []*input.DragDataItem{}, Files: []string{dir}, DragOperationsMask: 1}})
		must(t, err)
	}
	drag("dragEnter")
	drag("dragOver")
	drag("drop")
	v.wait(`document.getElementById("order").open && document.getElementById("order-said").textContent.endsWith("left out: 1.")`)
	if got := v.orderTitles(); got != want {
		t.Errorf("of the dropped folder %s are lined up, want %s", got, want)
	}

	eval[bool](v, `(Storage.prototype.kept = Storage.prototype.setItem, Storage.prototype.setItem = () => { throw new DOMException("full", "QuotaExceededError") }, true)`)
	v.orderTool("Move " + titles[1] + " up")
	if got := eval[string](v, `document.getElementById("order-unkept").textContent`); !strings.Contains(got, "no room") {
		t.Errorf("a full browser says %q", got)
	}
	eval[bool](v, `(document.getElementById("order").close(), true)`)
	v.openOrder()
	titles[0], titles[1] = titles[1], titles[0]
	if got, want := v.orderTitles(), strings.Join(append(titles, p.Title), "|"); got != want {
		t.Errorf("where nothing can be kept %s are lined up, want %s", got, want)
	}
	eval[bool](v, `(Storage.prototype.setItem = Storage.prototype.kept, true)`)
	v.orderTool("Remove " + titles[0] + " from the running order")
	if got := eval[string](v, `document.getElementById("order-unkept").textContent`); got != "" {
		t.Errorf("with room again it says %q", got)
	}

	// Patterns of this browser are picked from the list of patterns, by what they are
	// called; it stays for more, where it is, and is whole again when it opens anew.
	before := v.orderTitles()
	for range 2 {
		v.click("order-pick")
		v.wait(`document.getElementById("patterns").open`)
		if eval[string](v, `document.getElementById("patterns-search").value`) != "" {
			t.Error("what was looked for last time is still looked for")
		}
		eval[bool](v, `((s) => { s.value = "box mode"; s.dispatchEvent(new Event("input")); return true; })(document.getElementById("patterns-search"))`)
		found := `[...document.querySelectorAll("#patterns-list section:not(#own) li:not([hidden]) > button:first-child")]`
		if n := eval[int](v, found+".length"); n == 0 {
			t.Fatal("no pattern in box mode is found")
		}
		eval[bool](v, "("+found+"[0].click(), true)")
		if !eval[bool](v, `document.getElementById("patterns").open`) {
			t.Fatal("the list is gone after one pattern")
		}
		v.shot("workshop-9-pick")
		eval[bool](v, `(document.getElementById("patterns").close(), true)`)
	}
	if got, want := v.orderTitles(), before+strings.Repeat("|Harbour square at dusk", 2); got != want {
		t.Errorf("lined up are %s, want %s", got, want)
	}
	v.shot("workshop-9-picked")

	// A pattern of the list is opened in the bench, with undo.
	v.drawing(func() { v.orderTool("Open " + titles[2] + " in the bench") })
	v.wait(fmt.Sprintf(`document.title === %q && !document.querySelector("dialog[open]")`, titles[2]))
	v.clean()
}
