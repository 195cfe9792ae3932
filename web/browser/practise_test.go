//go:build browser

package browser

import (
	"encoding/json"
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/chromedp/chromedp/kb"

	"whorlbench/sandbox/words"
)

// listen notes when each source is to sound, and where the playhead and the
// counter are for what is heard in each frame.
const listen = `{
	window.sounds = [];
	window.frames = [];
	window.stall = 0;
	let before = performance.now();
	setInterval(() => { const now = performance.now(); stall = Math.max(stall, now - before); before = now; }, 20);
	const Real = AudioContext;
	window.AudioContext = class extends Real { constructor(o) { super(o); window.ear = this; } };
	for (const proto of [AudioScheduledSourceNode.prototype, AudioBufferSourceNode.prototype]) {
		const start = proto.start;
		proto.start = function (at) {
			sounds.push({ at, noise: this instanceof AudioBufferSourceNode, now: this.context.currentTime });
			return start.apply(this, arguments);
		};
	}
	window.attend = () => {
		const { heard } = whorlbenchPage;
		let at = 0;
		whorlbenchPage.heard = () => {
			const seconds = heard();
			const { contextTime, performanceTime } = ear.getOutputTimestamp();
			at = contextTime + (performance.now() - performanceTime) / 1000;
			return seconds;
		};
		const tick = () => {
			if (at) frames.push({ at, beat: whorlbenchProgram.value("playhead"), number: document.getElementById("practise-number").textContent,
				tempo: document.getElementById("practise-bpm").textContent,
				countIn: document.getElementById("practise-view").classList.contains("count-in"), held: document.getElementById("practise-view").classList.contains("held") });
			at = 0;
			requestAnimationFrame(tick);
		};
		tick();
		return true;
	};
}`

type sounded struct {
	At, Now float64
	Noise   bool
}

type followed struct {
	At, Beat      float64
	Number, Tempo string
	CountIn, Held bool
}

// openPractice opens the practice sheet as a person does.
func (v *visit) openPractice() {
	v.t.Helper()
	v.click("show-more")
	v.click("show-practise")
	v.wait(`document.getElementById("practise").open`)
}

// practising types what is wanted into the practice sheet.
func (v *visit) practising(values map[string]any) {
	v.t.Helper()
	text, err := json.Marshal(values)
	must(v.t, err)
	eval[bool](v, fmt.Sprintf(`(() => {
		for (const [name, value] of Object.entries(%s)) {
			const el = document.querySelector("[data-practise=" + name + "]");
			if (el.type === "checkbox") el.checked = value; else el.value = value;
			el.dispatchEvent(new Event("input"));
		}
		return true;
	})()`, text))
}

// fingerOn touches the middle of an element of the page.
func (v *visit) fingerOn(selector string) {
	v.t.Helper()
	at := eval[[2]float64](v, fmt.Sprintf(`(() => {
		const el = document.querySelector(%q);
		el.scrollIntoView({ block: "nearest" });
		const r = el.getBoundingClientRect();
		return [r.x + r.width / 2, r.y + r.height / 2];
	})()`, selector))
	v.touch(at)
}

func (v *visit) textOf(id string) string {
	v.t.Helper()
	return eval[string](v, fmt.Sprintf(`document.getElementById(%q).textContent`, id))
}

// ladder is a practice by common arithmetic: a beat takes 60 s / tempo.
type ladder struct {
	origin  float64 // s: when the count-in begins
	countIn int
	steps   []struct{ beat, tempo float64 }
}

func (l ladder) secondsAt(beat float64) float64 {
	at := l.origin + (math.Min(beat, l.steps[0].beat)+float64(l.countIn))*60/l.steps[0].tempo
	for i, s := range l.steps {
		end := math.Inf(1)
		if i+1 < len(l.steps) {
			end = l.steps[i+1].beat
		}
		at += math.Max(math.Min(beat, end)-s.beat, 0) * 60 / s.tempo
	}
	return at
}

// tempoOn returns the tempo at which a beat is played.
func (l ladder) tempoOn(beat float64) (tempo float64) {
	for _, s := range l.steps {
		if beat >= s.beat || tempo == 0 {
			tempo = s.tempo
		}
	}
	return tempo
}

// beatAt finds the beat of a second by halving.
func (l ladder) beatAt(seconds float64) float64 {
	low, high := -float64(l.countIn)-1, 1000.0
	for range 60 {
		if mid := (low + high) / 2; l.secondsAt(mid) < seconds {
			low = mid
		} else {
			high = mid
		}
	}
	return low
}

// TestPractiseLadder: a learner on a phone climbs a ladder of tempos, as the README
// says it is done. The C-cap has rounds of four beats of two pieces and is taut
// from 109.2 beats a minute.
func TestPractiseLadder(t *testing.T) {
	v := newVisit(t, phone)
	v.before(listen)
	v.load()
	v.pause()
	before, beat := v.pattern(), eval[float64](v, `whorlbenchProgram.value("playhead")`)

	v.openPractice()
	v.shot("practise-1-sheet")
	if got := eval[string](v, `document.querySelector("[data-practise=tempo]").value`); got != "120" {
		t.Errorf("the tempo to begin with is %q, want the pattern's 120", got)
	}
	v.practising(map[string]any{"tempo": "9"})
	if got := v.textOf("practise-refused"); got != "Starting tempo: found “9”, allowed 10 to 400." || !eval[bool](v, `document.getElementById("practise-start").disabled`) {
		t.Errorf("of 9 beats a minute it says %q, want what was found and is allowed, and no start", got)
	}
	v.practising(map[string]any{"tempo": "100", "countIn": "4", "ladder": true, "up": "20", "rounds": "2", "ceiling": "140", "seams": true, "beats": true})
	if got := v.textOf("practise-plan"); got != "From 100 beats a minute, 20 more after every two rounds, up to 140." {
		t.Errorf("the plan reads %q", got)
	}
	if got := v.textOf("practise-cautions"); !strings.Contains(got, "until you reach 109.2 beats a minute") {
		t.Errorf("of a tempo below the taut ones it says %q", got)
	}
	if got := v.textOf("practise"); !strings.Contains(got, words.English.Practice.Cautions[0]) {
		t.Error("the usual cautions are missing")
	}
	v.shot("practise-2-plan")
	eval[bool](v, "(stall = 0, attend())")
	v.fingerOn("#practise-start")
	v.wait(`document.getElementById("practise-view").classList.contains("count-in") && frames.length > 2`)
	v.shot("practise-3-count-in")
	v.wait(`frames.some((f) => !f.countIn && f.beat > 1)`)
	v.shot("practise-4-going")
	v.wait(`document.getElementById("practise-bpm").textContent === "140" && Number(document.getElementById("practise-round").textContent.replace(/\D/g, "")) >= 6`)
	v.shot("practise-5-top")
	if got := v.textOf("practise-next"); got != words.English.Practice.Screen.TopTempo {
		t.Errorf("at the top it says %q", got)
	}

	v.fingerOn("#practise-hold")
	v.wait(`document.getElementById("practise-view").classList.contains("held")`)
	v.still()
	v.shot("practise-6-paused")
	sounds, frames := eval[[]sounded](v, "sounds.splice(0)"), eval[[]followed](v, "frames.splice(0)")
	l := ladder{origin: sounds[0].At, countIn: 4, steps: []struct{ beat, tempo float64 }{{0, 100}, {8, 120}, {16, 140}}}
	v.onTheBeat(l, sounds)
	v.inStep(l, frames)

	round := v.textOf("practise-round")
	v.fingerOn("#practise-hold")
	v.wait(fmt.Sprintf(`document.getElementById("practise-view").classList.contains("count-in") && document.getElementById("practise-round").textContent === %q`, round))
	v.wait(`frames.some((f) => !f.countIn && f.beat > 1)`)
	v.fingerOn(`[data-faster="2"]`)
	v.wait(`document.getElementById("practise-bpm").textContent === "142"`)
	v.fingerOn("#practise-hold")
	v.wait(`document.getElementById("practise-view").classList.contains("held")`)
	sounds = eval[[]sounded](v, "sounds.splice(0)")
	again := ladder{origin: sounds[0].At, countIn: 4, steps: []struct{ beat, tempo float64 }{{0, 140}}}
	for i, s := range sounds[:5] {
		if off := s.At - again.secondsAt(again.beatAt(s.At)); math.Abs(off) > 0.001 || i == 0 && s.Now == 0 {
			t.Errorf("after going on, sound %d is %v s off", i, off)
		}
	}

	v.keys(kb.Escape, 0)
	v.wait(`!document.getElementById("practise-view").open && !!` + twin("button", "Cut at the playhead"))
	if got := v.pattern(); got != before {
		t.Errorf("the pattern is\n%s\nwas\n%s", got, before)
	}
	if got := eval[float64](v, `whorlbenchProgram.value("playhead")`); got != beat || !eval[bool](v, "!!"+twin("button", "Play")) {
		t.Errorf("the playhead is at %v, was at %v, and it is to stand still", got, beat)
	}
	v.clean()
}

// onTheBeat holds that sounds come within a millisecond of the beats, none left
// out unless the machine kept the whole page from its work for longer than sounds
// are put ahead, and others where pieces join, at every second beat.
func (v *visit) onTheBeat(l ladder, sounds []sounded) {
	v.t.Helper()
	const ahead = 0.25 // s, at the least
	stalled := eval[float64](v, "stall / 1000")
	v.t.Logf("the page stood still for %.3f s at most", stalled)
	beats, seams := map[int]bool{}, map[int]bool{}
	for _, s := range sounds {
		beat := int(math.Round(l.beatAt(s.At)))
		if off := s.At - l.secondsAt(float64(beat)); math.Abs(off) > 0.001 {
			v.t.Errorf("a sound at %.4f s is %.4f s off beat %d", s.At-l.origin, off, beat)
		}
		if s.At < s.Now {
			v.t.Errorf("the sound of beat %d was put on the clock %.4f s late", beat, s.Now-s.At)
		}
		if s.Noise {
			seams[beat] = true
		} else {
			beats[beat] = true
		}
	}
	for beat := -l.countIn; beat <= 20; beat++ {
		if !beats[beat] {
			if v.t.Logf("beat %d makes no sound", beat); stalled < ahead {
				v.t.Fail()
			}
			continue
		}
		if want := beat >= 0 && beat%2 == 0; seams[beat] != want {
			v.t.Errorf("beat %d sounds as a join: %v, want %v", beat, seams[beat], want)
		}
	}
}

// inStep holds that each frame's playhead is where the sound is within 20 ms, and
// that counter and tempo read what the playhead stands at.
func (v *visit) inStep(l ladder, frames []followed) {
	v.t.Helper()
	worst, n := 0.0, 0
	for _, f := range frames {
		if f.Held || f.At < l.origin {
			continue
		}
		want := l.beatAt(f.At)
		if f.CountIn {
			if f.Beat != 0 || math.Abs(want+mustNumber(v, f.Number)-0.5) > 0.5+0.02*2 {
				v.t.Errorf("in the count-in, at beat %.3f, the playhead is at %v and the counter says %s", want, f.Beat, f.Number)
			}
			continue
		}
		got := f.Beat + 4*math.Round((want-f.Beat)/4)
		off := l.secondsAt(got) - f.At
		worst, n = math.Max(worst, math.Abs(off)), n+1
		if math.Abs(off) > 0.020 {
			v.t.Errorf("the playhead is at beat %.3f when %.3f is heard: %.1f ms off", got, want, off*1000)
		}
		if mustNumber(v, f.Number) != math.Floor(f.Beat+1e-9)+1 {
			v.t.Errorf("the counter says %s at beat %v of the round", f.Number, f.Beat)
		}
		if tempo := l.tempoOn(got + 1e-6); mustNumber(v, f.Tempo) != tempo {
			v.t.Errorf("the tempo reads %s at beat %.3f, want %v", f.Tempo, got, tempo)
		}
	}
	if v.t.Logf("%d frames, at most %.1f ms from what is heard", n, worst*1000); n < 20 {
		v.t.Errorf("only %d frames were seen", n)
	}
}

func mustNumber(v *visit, text string) (n float64) {
	v.t.Helper()
	_, err := fmt.Sscan(text, &n)
	must(v.t, err)
	return n
}

// startPractice begins by the keyboard, which a browser takes for a person's wish to
// hear something.
func (v *visit) startPractice() {
	v.t.Helper()
	eval[bool](v, `(document.getElementById("practise-start").focus(), true)`)
	v.keys(kb.Enter, 0)
	v.wait(`document.getElementById("practise-view").open`)
}

// TestPractiseKeys: at a desk the keyboard is enough, and settings are there again
// after a reload, but for the tempo, which is the pattern's.
func TestPractiseKeys(t *testing.T) {
	v := newVisit(t, desk)
	v.before(listen)
	v.load()
	v.pause()
	v.keys("k", 0)
	v.wait(`document.getElementById("practise").open`)
	v.practising(map[string]any{"tempo": "90", "countIn": "0", "seams": false, "volume": 30})
	v.startPractice()
	bpm := func(want string) {
		t.Helper()
		v.wait(fmt.Sprintf(`document.getElementById("practise-bpm").textContent === %q`, want))
	}
	bpm("90")
	for _, x := range []struct{ key, want string }{{kb.ArrowRight, "92"}, {kb.ArrowLeft, "90"}, {kb.PageUp, "95"}, {kb.ArrowDown, "93"}, {kb.PageDown, "88"}} {
		v.keys(x.key, 0)
		bpm(x.want)
	}
	v.keys(" ", 0)
	v.wait(`document.getElementById("practise-hold").textContent === "Go on"`)
	v.keys(" ", 0)
	v.wait(`document.getElementById("practise-hold").textContent === "Pause"`)
	v.keys("m", 0)
	v.wait(`document.getElementById("practise-mirror").getAttribute("aria-pressed") === "true"`)
	v.wait("sounds.length > 8")
	if eval[bool](v, "sounds.some((s) => s.noise)") {
		t.Error("joins are heard, which was not wanted")
	}
	v.keys(" ", 0)
	v.wait(`!document.getElementById("practise-held").hidden`)
	v.click("practise-keep")
	if got := v.textOf("practise-said"); !strings.Contains(got, "88") {
		t.Errorf("keeping the tempo says %q", got)
	}
	v.keys(kb.Escape, 0)
	v.wait(`!document.getElementById("practise-view").open`)
	if got := v.pattern(); !strings.Contains(got, "tempo = 88") {
		t.Errorf("the tempo that was kept is missing:\n%s", got)
	}
	v.wait("!!" + twin("button", "Mirror the view") + ` && ` + twin("button", "Mirror the view") + `.getAttribute("aria-pressed") === "false"`)
	v.load()
	v.openPractice()
	if got := eval[string](v, `["tempo", "countIn", "seams", "volume"].map((n) => document.querySelector("[data-practise=" + n + "]")).map((el) => el.type === "checkbox" ? el.checked : el.value).join()`); got != "88,0,false,30" {
		t.Errorf("after a reload the sheet has %q, want 88,0,false,30", got)
	}
	v.clean()
}

// TestPractiseInterrupted: another program takes the sound, and the page is hidden.
func TestPractiseInterrupted(t *testing.T) {
	v := newVisit(t, desk)
	v.before(listen)
	v.load()
	v.openPractice()
	v.practising(map[string]any{"tempo": "120", "countIn": "0"})
	v.startPractice()
	v.wait("sounds.length > 4")
	if furthest := eval[float64](v, "Math.max(...sounds.slice(2).map((s) => s.at - s.now))"); furthest > 1.5 {
		t.Errorf("sounds are put %v s ahead while the page is seen, want them soon changed", furthest)
	}
	eval[bool](v, `(Object.defineProperty(document, "hidden", { get: () => window.away, configurable: true }), window.away = true, document.dispatchEvent(new Event("visibilitychange")), true)`)
	if furthest := eval[float64](v, "Math.max(...sounds.map((s) => s.at - s.now))"); furthest < 1.5 {
		t.Errorf("hidden, where a timer comes once a second, sounds are put %v s ahead, want 1.5 at least", furthest)
	}
	eval[bool](v, `(window.away = false, document.dispatchEvent(new Event("visibilitychange")), true)`)
	eval[bool](v, "(ear.suspend(), true)")
	v.wait(`document.getElementById("practise-view").classList.contains("held")`)
	if got := v.textOf("practise-said"); got != words.English.Practice.Screen.Interrupted {
		t.Errorf("after an interruption it says %q", got)
	}
	v.keys(" ", 0)
	v.wait(`!document.getElementById("practise-view").classList.contains("held") && ear.state === "running"`)
	n := eval[int](v, "sounds.length")
	v.wait(fmt.Sprintf("sounds.length > %d", n))
	v.clean()
}

// TestPractiseWithout: a browser that makes no sounds and lets the screen go dark
// says so, and counts on the screen.
func TestPractiseWithout(t *testing.T) {
	v := newVisit(t, phone)
	v.before(`delete window.AudioContext; delete Navigator.prototype.wakeLock; delete Navigator.prototype.vibrate;`)
	v.load()
	v.openPractice()
	w := &words.English.Practice.Screen
	if got := v.textOf("practise-awake"); got != w.NotAwake {
		t.Errorf("of the screen it says %q", got)
	}
	if !eval[bool](v, `document.getElementById("practise-silent").checkVisibility() && !document.getElementById("practise-vibrate").checkVisibility()`) {
		t.Error("it does not say that there is no sound, or offers to vibrate")
	}
	v.practising(map[string]any{"tempo": "120", "countIn": "2"})
	v.startPractice()
	v.wait(`document.getElementById("practise-round").textContent === "Round 2"`)
	v.clean()
}

// TestPractiseLooks: at each of the four screens, by day and by night and in large
// text, what can be pressed while practising is wide enough for a finger, all of
// it is on the screen, nothing lies over anything else and the stage has room.
func TestPractiseLooks(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			for i, night := range []bool{false, true} {
				v.pick([]string{"half-moon", "pier-end"}[i])
				eval[bool](v, fmt.Sprintf(`(document.getElementById("theme").value = %q, document.getElementById("theme").dispatchEvent(new Event("change")), true)`, []string{"day", "night"}[i]))
				v.openPractice()
				v.practising(map[string]any{"tempo": "60", "countIn": "2", "ladder": true, "mirror": night})
				v.shot(fmt.Sprintf("practise-looks-%d-sheet", i))
				v.fingerOn("#practise-start")
				v.wait(`document.getElementById("practise-view").classList.contains("count-in")`)
				v.frames(2)
				v.shot(fmt.Sprintf("practise-looks-%d-count-in", i))
				v.wait(`!document.getElementById("practise-view").classList.contains("count-in") && document.getElementById("practise-number").textContent === "1"`)
				v.shot(fmt.Sprintf("practise-looks-%d-going", i))
				v.holdsTogether("going")
				v.fingerOn("#practise-hold")
				v.wait(`document.getElementById("practise-view").classList.contains("held")`)
				v.refreshes(5)
				v.shot(fmt.Sprintf("practise-looks-%d-paused", i))
				v.holdsTogether("paused")
				eval[bool](v, `(document.documentElement.style.fontSize = "200%", true)`)
				v.refreshes(5)
				v.shot(fmt.Sprintf("practise-looks-%d-large", i))
				v.holdsTogether("in large text")
				eval[bool](v, `(document.documentElement.style.fontSize = "", true)`)
				v.keys(kb.Escape, 0)
				v.wait(`!document.getElementById("practise-view").open`)
			}
			v.clean()
		})
	}
}

// holdsTogether fails for what of the practice view is cut off, too small for a
// finger or under something else.
func (v *visit) holdsTogether(when string) {
	v.t.Helper()
	for _, what := range eval[[]string](v, `(() => {
		const wrong = [];
		const shown = [...document.querySelectorAll("#practise-view :is(button, p, b)")].filter((el) => el.checkVisibility({ visibilityProperty: true }) && el.textContent);
		const name = (el) => el.id || el.textContent;
		for (const el of shown) {
			const r = el.getBoundingClientRect();
			if (r.left < 0 || r.top < -1 || r.right > innerWidth || r.bottom > innerHeight + 1) wrong.push(name(el) + " is off the screen");
			if (el.tagName === "BUTTON" && (r.width < 44 || r.height < 44)) wrong.push(name(el) + " is " + r.width + " by " + r.height);
			if (el.scrollWidth > el.clientWidth + 1 && el.clientWidth) wrong.push(name(el) + " is cut off");
			for (const other of shown) {
				const o = other.getBoundingClientRect();
				if (el !== other && !el.contains(other) && !other.contains(el) && r.left < o.right - 1 && o.left < r.right - 1 && r.top < o.bottom - 1 && o.top < r.bottom - 1) wrong.push(name(el) + " lies over " + name(other));
			}
		}
		const stage = document.getElementById("practise-stage").getBoundingClientRect();
		if (Math.min(stage.width, stage.height) < 150) wrong.push("the stage is " + stage.width + " by " + stage.height);
		return wrong;
	})()`) {
		v.t.Errorf("%s: %s", when, what)
	}
}
