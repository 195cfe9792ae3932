// Practising to a click: the sheet of what is wanted, the view that is read from
// afar, the sounds, and the clock that they and the picture go by.

import { program, stageIn } from "./page.js";

const part = (id) => document.getElementById(`practise-${id}`);
const sheet = document.getElementById("practise"), view = part("view");
const controls = [...document.querySelectorAll("[data-practise]")];
const key = "whorlbench.practise";
const ofPattern = ["tempo", "ceiling"]; // not remembered from one pattern to another

// ---- what is wanted ----

function wanted() {
  return Object.fromEntries(controls.map((el) => [el.dataset.practise, el.type === "checkbox" ? el.checked : el.value]));
}
const control = (name) => controls.find((el) => el.dataset.practise === name);

function recall() {
  let last = {};
  try { last = JSON.parse(localStorage.getItem(key)) ?? {}; } catch { /* nothing is kept, or nothing that can be read */ }
  for (const el of controls) {
    const value = last[el.dataset.practise];
    if (value === undefined) continue;
    if (el.type === "checkbox") el.checked = value === true;
    else el.value = value;
  }
}
function remember(now) {
  const mine = Object.fromEntries(Object.entries(now).filter(([name]) => !ofPattern.includes(name)));
  try { localStorage.setItem(key, JSON.stringify(mine)); } catch { /* storage is forbidden */ }
}

// preset fills in the pattern's tempo, and a ladder's last one, unless others were
// typed for it: those stay, whatever is edited, until another pattern is opened.
let presetFor = null, presetTempo = "";
const typed = new Set();
const further = 20; // beats a minute, from the first tempo to a ladder's last
function preset() {
  const tempo = program().practiseTempo(), { opening } = program().about();
  if (opening !== presetFor) typed.clear();
  if (tempo !== presetTempo) typed.delete("tempo"); // the pattern has another now
  [presetFor, presetTempo] = [opening, tempo];
  if (!typed.has("tempo")) control("tempo").value = tempo;
  if (!typed.has("ceiling")) control("ceiling").value = Math.min(Math.ceil(Number(tempo) || 0) + further, 400);
}
for (const name of ofPattern) control(name).addEventListener("input", () => typed.add(name));

// consider says what is to be known of what is wanted, before anything starts.
function consider() {
  const now = wanted();
  part("ladder").hidden = !now.ladder;
  const { tempo, cautions, refused } = program().practiseBefore(JSON.stringify(now));
  part("plan").textContent = tempo;
  part("cautions").replaceChildren(...cautions.map((text) => {
    const li = document.createElement("li");
    li.textContent = text;
    return li;
  }));
  part("refused").textContent = refused;
  part("start").disabled = refused !== "";
}

for (const el of controls) {
  el.addEventListener("input", () => { remember(wanted()); consider(); });
}
document.getElementById("show-practise").addEventListener("click", () => {
  document.getElementById("more").close();
  preset();
  consider();
  sheet.showModal();
  sheet.scrollTop = 0;
});

part("vibrate").hidden = !navigator.vibrate || !matchMedia("(any-pointer: coarse)").matches;
const vibrates = () => wanted().vibrate && !part("vibrate").hidden;
part("awake").textContent = part("awake").dataset[navigator.wakeLock ? "can" : "cannot"];
part("silent").hidden = "AudioContext" in window;

// ---- the clock ----

// What is heard is behind what has been given out to be heard: by how much, the
// browser says in one of two ways, or not at all. A picture that is begun now is
// seen when the screen is next refreshed.
const toEye = 1 / 60; // s
const mostBehind = 1; // s; more is no answer

let sound = null; // the AudioContext, while anything goes on
let silent = false; // there is none, or it stands still
let origin = 0; // s on the clock: where the practice's second 0 is
let going = false;

// written is how far (s) the clock is that sounds are put on.
const written = () => (silent ? performance.now() / 1000 : sound.currentTime);

// heardNow is how far (s) the same clock is in the ear.
function heardNow() {
  if (silent) return written();
  const { contextTime, performanceTime } = sound.getOutputTimestamp?.() ?? {};
  if (performanceTime > 0 && sound.state === "running") {
    const at = contextTime + (performance.now() - performanceTime) / 1000;
    if (at <= sound.currentTime + 0.05 && at >= sound.currentTime - mostBehind) return at;
  }
  return sound.currentTime - (sound.outputLatency || sound.baseLatency || 0);
}

let last = 0; // s; the playhead does not go back
function heard() {
  if (going) last = Math.max(last, heardNow() + toEye - origin);
  return last;
}

// ---- the sounds ----

const kinds = { beat: 1, round: 2, left: 4, right: 8, countIn: 16, faster: 32 }; // as practice.Kind counts
const sources = new Set(); // that have not ended
let master = null, noise = null;

function open() {
  if (navigator.audioSession) navigator.audioSession.type = "playback"; // heard though the phone does not ring
  sound = new AudioContext({ latencyHint: "interactive" });
  master = sound.createGain();
  master.gain.value = (wanted().volume / 100) ** 2; // as loudness is felt
  master.connect(sound.destination);
  noise = sound.createBuffer(1, Math.ceil(sound.sampleRate * 0.06), sound.sampleRate);
  const data = noise.getChannelData(0);
  for (let i = 0; i < data.length; i++) data[i] = Math.random() * 2 - 1;
}

// play lets a source sound from a time on, loud at once and fading within
// seconds.
function play(source, at, level, seconds, through = []) {
  const envelope = sound.createGain();
  envelope.gain.setValueAtTime(0, at);
  envelope.gain.linearRampToValueAtTime(level, at + 0.001);
  envelope.gain.exponentialRampToValueAtTime(0.001, at + seconds);
  [source, ...through, envelope, master].reduce((from, to) => from.connect(to));
  sources.add(source);
  source.onended = () => { sources.delete(source); envelope.disconnect(); };
  source.start(at);
  source.stop(at + seconds);
}
function tone(at, type, hertz, level, seconds) {
  const o = sound.createOscillator();
  o.type = type;
  o.frequency.value = hertz;
  play(o, at, level, seconds);
}
function rustle(at, side) {
  const s = sound.createBufferSource();
  s.buffer = noise;
  const band = sound.createBiquadFilter();
  band.type = "bandpass";
  band.frequency.value = 3200;
  const pan = sound.createStereoPanner();
  pan.pan.value = side;
  play(s, at, 0.8, 0.055, [band, pan]);
}

// click lets an event be heard: the count-in always, the rest as wanted.
function click(at, kind, { beats, seams }) {
  if (kind & kinds.countIn) tone(at, "triangle", 520, 0.9, 0.12);
  else if (beats && kind & kinds.faster) [1320, 1760].forEach((hertz) => tone(at, "triangle", hertz, 0.5, 0.2));
  else if (beats && kind & kinds.round) tone(at, "triangle", 1320, 1, 0.09);
  else if (beats && kind & kinds.beat) tone(at, "triangle", 880, 0.7, 0.06);
  if (seams && kind & (kinds.left | kinds.right)) rustle(at, (kind & kinds.right ? 0.4 : 0) - (kind & kinds.left ? 0.4 : 0));
}

// Sounds are put on the clock ahead of time, a little at a time, so that a change
// of tempo is soon heard; further ahead where the timer comes late, as in a
// page that is not seen.
const every = 25; // ms
const near = 0.25, far = 2.5; // s
let timer = 0, ticked = 0, late = 0; // late: s between two ticks, not long ago

function tick() {
  if (!going) return;
  const now = written();
  late = Math.max(now - ticked, late * 0.998);
  ticked = now;
  const ahead = document.hidden ? far : Math.min(Math.max(near, 3 * late), far);
  const list = program()?.practiseClicks(now - origin + ahead) ?? [];
  if (silent) return;
  const what = wanted();
  for (let i = 0; i < list.length; i += 2) {
    const at = origin + list[i];
    if (at >= sound.currentTime) click(at, list[i + 1], what); // what is over is not made up for
  }
}

function hush() {
  for (const s of sources) { s.onended = null; s.stop(); s.disconnect(); }
  sources.clear();
}

// A sample of both sounds, while the volume is being set.
control("volume").addEventListener("change", () => {
  if (!("AudioContext" in window) || sound) return;
  open();
  const mine = sound;
  click(sound.currentTime + 0.05, kinds.round | kinds.beat, { beats: true });
  click(sound.currentTime + 0.35, kinds.left | kinds.right, { seams: true });
  sound = null;
  sources.clear();
  setTimeout(() => mine.close(), 1000);
});

// ---- going on and holding ----

const lead = 0.15; // s, from the tap to the first sound
const patience = 1500; // ms until a clock that stands still is given up

async function go() {
  const mine = sound;
  const begun = Promise.race([mine?.resume(), new Promise((done) => setTimeout(done, patience))]);
  await begun.catch(() => {});
  if (!view.open || sound !== mine || going) return; // left, or held, meanwhile
  silent = !mine || mine.state !== "running";
  begin();
  if (!silent) watch(mine);
}
function begin() {
  origin = written() + lead;
  last = 0;
  late = 0.2; // until it is known how the timer keeps time
  ticked = written();
  going = true;
  held(false);
  note();
  clearInterval(timer);
  timer = setInterval(tick, every);
  tick();
  program().wake();
}
// watch goes on without sound where the device's clock stands still.
function watch(mine) {
  const at = mine.currentTime;
  setTimeout(() => {
    if (!going || sound !== mine || mine.currentTime !== at) return;
    hold("");
    silent = true;
    resume();
    begin();
  }, patience);
}

// hold pauses; why is said.
function hold(why) {
  if (!going) return;
  program()?.practisePause();
  going = false;
  clearInterval(timer);
  hush();
  sound?.suspend().catch(() => {});
  held(true);
  say(why);
}
function held(on) {
  part("hold").textContent = part("hold").dataset[on ? "resume" : "pause"];
  part("held").hidden = !on;
  view.classList.toggle("held", on);
}
function toggle() {
  if (going) { hold("paused"); return; }
  resume();
  go();
}
function resume() {
  last = 0;
  program().practiseResume();
}
function say(what) {
  part("said").textContent = part("said").dataset[what] ?? "";
}
// note says what holds whether it goes on or is paused.
function note() {
  const { dataset } = part("note");
  const mirrored = part("mirror").getAttribute("aria-pressed") === "true";
  part("note").textContent = silent && sound ? dataset.silent : mirrored ? dataset.mirror : "";
}

// ---- the view ----

let shown = null;
const stillWanted = matchMedia("(prefers-reduced-motion: reduce)");

// count shows where practice is; the program calls it when that has changed.
function count(c) {
  const beaten = c.beat !== shown?.beat;
  shown = c;
  view.classList.toggle("count-in", c.countIn);
  part("over").textContent = part("over").dataset[c.countIn ? "countIn" : "beat"];
  part("number").textContent = c.number;
  part("number").style.setProperty("--digits", Math.max(c.number.length, 2));
  part("number").classList.toggle("first", c.first);
  part("round").textContent = c.round;
  part("bpm").textContent = c.tempo;
  part("next").textContent = c.next;
  part("slack").textContent = c.slack;
  if (!beaten || !going) return;
  if (!stillWanted.matches) part("number").animate?.([{ transform: "scale(0.86)" }, { transform: "none" }], 150);
  if (vibrates()) navigator.vibrate(c.first ? 60 : 25);
}
Object.assign(window.whorlbenchPage, { heard, count });

// The stage has the place that the view leaves it.
const place = new ResizeObserver(room);
function room() {
  if (!view.open) return;
  const r = part("stage").getBoundingClientRect(), { clientWidth, clientHeight } = document.body;
  stageIn({ Top: r.top, Left: r.left, Right: clientWidth - r.right, Bottom: clientHeight - r.bottom });
}

part("form").addEventListener("submit", (e) => {
  e.preventDefault();
  consider();
  if (part("start").disabled) return;
  const now = wanted();
  sheet.close();
  view.showModal();
  document.documentElement.classList.add("practising");
  part("mirror").setAttribute("aria-pressed", now.mirror);
  part("hold").focus();
  shown = null;
  last = 0;
  silent = false;
  if ("AudioContext" in window) {
    open();
    sound.onstatechange = (e) => { if (e.target === sound && going && !silent && sound.state !== "running") hold("interrupted"); };
  }
  program().practise(JSON.stringify(now));
  place.observe(part("stage"));
  room();
  stayAwake();
  go();
});

view.addEventListener("close", () => {
  going = false;
  clearInterval(timer);
  hush();
  const done = sound;
  sound = null;
  done?.close().catch(() => {});
  place.disconnect();
  lock?.release().catch(() => {});
  lock = null;
  if (vibrates()) navigator.vibrate(0);
  document.documentElement.classList.remove("practising");
  program()?.practiseStop();
  stageIn(null);
});
addEventListener("hashchange", () => view.close()); // another pattern may come

part("hold").addEventListener("click", toggle);
part("stage").addEventListener("click", toggle);
part("stop").addEventListener("click", () => view.close());
part("keep").addEventListener("click", () => { part("said").textContent = program().practiseKeep(); });
part("mirror").addEventListener("click", () => {
  const on = part("mirror").getAttribute("aria-pressed") !== "true";
  part("mirror").setAttribute("aria-pressed", on);
  program().practiseMirror(on);
  note();
});
for (const b of view.querySelectorAll("[data-faster]")) b.addEventListener("click", () => program().practiseFaster(Number(b.dataset.faster)));

// What is tapped leaves the keyboard where Space pauses.
view.addEventListener("click", (e) => { if (e.detail > 0) part("hold").focus({ preventScroll: true }); });

const faster = { ArrowLeft: -2, ArrowDown: -2, ArrowRight: 2, ArrowUp: 2, PageDown: -5, PageUp: 5 };
view.addEventListener("keydown", (e) => {
  if (e.ctrlKey || e.metaKey || e.altKey) return;
  if (e.key in faster) program().practiseFaster(faster[e.key]);
  else if (e.key === " " && e.target.tagName !== "BUTTON") { if (!e.repeat) toggle(); } // else the button's own
  else if (e.key.toLowerCase() === "m") part("mirror").click();
  else return;
  e.preventDefault();
});

// ---- the screen stays on ----

let lock = null;
async function stayAwake() {
  try {
    lock = await navigator.wakeLock?.request("screen");
    if (!view.open) lock?.release();
  } catch { /* not now, such as when the battery is low */ }
}
document.addEventListener("visibilitychange", () => {
  if (!view.open) return;
  tick(); // further ahead, as the timer will come less often
  if (!document.hidden) stayAwake();
});

recall();
