// The page round the bench: it loads the program, hands it the pointers, holds
// the controls' accessible twins and the paperwork (dialogs, files, storage).

const $ = (id) => document.getElementById(id);
const bench = $("bench");
const program = () => window.whorlbenchProgram;
const themeKey = "whorlbench.theme";
const askedKey = "whorlbench.persist"; // the browser was asked to clear nothing away
// Within another page: the stage alone, which keeps nothing.
const stageOnly = location.search === "?view=stage";
document.documentElement.classList.toggle("stage-only", stageOnly);

// ---- storage: a page may be forbidden to keep anything ----

function read(key) {
  try { return localStorage.getItem(key) ?? ""; } catch { return ""; }
}
function write(key, text) {
  if (stageOnly) return false;
  try { localStorage.setItem(key, text); return true; } catch { return false; }
}
function canKeep() {
  const trial = "whorlbench.trial";
  const can = write(trial, "1");
  if (can) localStorage.removeItem(trial);
  return can;
}
// note keeps something in this tab's history: it outlives a reload, even where
// storage is forbidden.
function note(more) {
  try { history.replaceState({ ...history.state, ...more }, ""); } catch { /* too large, or too often */ }
}

// ---- pointers: every event with its own time, coalesced moves too ----

let queue = [];
const phases = { pointerdown: 0, pointermove: 1, pointerup: 2, pointercancel: 3 };
const held = new Set();

function push(e, phase) {
  queue.push(e.pointerId, phase, e.clientX, e.clientY, e.timeStamp);
}
function pointer(e) {
  const phase = phases[e.type];
  if (phase === 0) {
    if (e.button !== 0) return;
    const piece = e.shiftKey && pieceUnder(e);
    if (piece) { program().act(piece, "extend", 0); return; }
    held.add(e.pointerId);
    bench.setPointerCapture(e.pointerId);
    document.activeElement?.blur();
  } else if (!held.has(e.pointerId)) {
    return;
  } else if (phase > 1) {
    held.delete(e.pointerId);
  }
  const parts = phase === 1 && e.getCoalescedEvents ? e.getCoalescedEvents() : [];
  if (parts.length) parts.forEach((p) => push(p, phase));
  else push(e, phase);
  program()?.wake();
}
for (const type of Object.keys(phases)) bench.addEventListener(type, pointer);
// A touch on the bench makes no mouse of itself: the click after it would fall
// on whatever the touch has opened.
if (!stageOnly) bench.addEventListener("touchstart", (e) => e.preventDefault(), { passive: false });
// A wheel over the stage looks closer; elsewhere it is the browser's.
const wheelUnits = [1, 16, 400]; // pixels a unit: of pixels, lines, pages
bench.addEventListener("wheel", (e) => {
  const pinch = e.ctrlKey ? 4 : 1; // two fingers on a pad: small steps
  if (program()?.wheel(e.clientX, e.clientY, e.deltaY * wheelUnits[e.deltaMode] * pinch)) e.preventDefault();
}, { passive: false });
// The mouse is told what it rests on; twins let it through, so they are asked.
bench.addEventListener("pointermove", (e) => {
  if (e.pointerType !== "mouse" || held.size) return;
  let name = "";
  for (const el of twins.values()) {
    const r = el.getBoundingClientRect();
    if (e.clientX >= r.left && e.clientX < r.right && e.clientY >= r.top && e.clientY < r.bottom) {
      name = el.getAttribute("aria-label");
      const key = el.getAttribute("aria-keyshortcuts");
      if (key?.length === 1) name += ` (${key})`;
    }
  }
  if (inTheDark()) name = "";
  attribute(bench, "title", name);
});
// A right click on a piece asks what to do with it, as a long press does.
bench.addEventListener("contextmenu", (e) => {
  e.preventDefault();
  if (e.pointerType === "touch" || e.button !== 2) return;
  const piece = pieceUnder(e);
  if (piece) program().act(piece, "menu", 0);
});
function pieceUnder(e) {
  for (const [id, el] of twins) {
    const r = el.getBoundingClientRect();
    if (id.startsWith("piece-") && e.clientX >= r.left && e.clientX < r.right && e.clientY >= r.top && e.clientY < r.bottom) return id;
  }
  return "";
}

// ---- twins: one real element a control, kept in the program's order ----

const twins = new Map();
const groups = new Map();
let twinsHold = null; // the twin whose own key has moved the focus

function makeTwin(t) {
  const el = document.createElement(t.kind === "slider" ? "input" : "button");
  if (t.kind === "slider") {
    el.type = "range";
    el.addEventListener("input", () => program().act(t.id, "set", el.valueAsNumber));
  } else {
    el.type = "button";
    el.addEventListener("click", () => el.ariaDisabled !== "true" && program().act(t.id, "press", 0));
  }
  el.dataset.id = t.id;
  el.addEventListener("focus", () => program().focus(el.matches(":focus-visible") ? t.id : ""));
  el.addEventListener("blur", () => program().focus(""));
  return el;
}

function groupFor(name) {
  if (!name) return bench;
  let g = groups.get(name);
  if (!g) {
    g = document.createElement("div");
    g.setAttribute("role", "group");
    g.setAttribute("aria-label", name);
    groups.set(name, g);
  }
  return g;
}

function attribute(el, name, value) {
  if (value === null || value === "") el.removeAttribute(name);
  else if (el.getAttribute(name) !== String(value)) el.setAttribute(name, value);
}

function showTwins(json) {
  const list = JSON.parse(json);
  const seen = new Set();
  const next = new Map(); // container -> where the next twin belongs
  const place = (parent, el) => {
    const before = next.has(parent) ? next.get(parent) : parent.firstElementChild;
    if (before === el) next.set(parent, el.nextElementSibling);
    else { parent.insertBefore(el, before); next.set(parent, before); }
  };
  const focused = document.activeElement;
  for (const t of list) {
    let el = twins.get(t.id);
    if (!el) twins.set(t.id, (el = makeTwin(t)));
    seen.add(t.id);
    attribute(el, "aria-label", t.label);
    attribute(el, "aria-keyshortcuts", t.keys ?? "");
    attribute(el, "aria-disabled", t.disabled ? "true" : null);
    el.tabIndex = t.disabled ? -1 : 0;
    if (t.kind === "slider") {
      attribute(el, "min", t.min);
      attribute(el, "max", t.max);
      attribute(el, "step", "any");
      el.dataset.step = t.step;
      el.dataset.keyStep = t.keyStep ?? keyStep;
      if (el.valueAsNumber !== t.value) el.value = t.value;
      attribute(el, "aria-valuetext", t.text);
    }
    if (t.kind === "toggle" || t.kind === "piece") attribute(el, "aria-pressed", t.on);
    if (t.kind === "piece") { el.dataset.index = t.index; attribute(el, "aria-haspopup", "dialog"); }
    if (t.kind === "seam") attribute(el, "aria-haspopup", "dialog");
    const [x, y, w, h] = t.rect;
    el.style.left = x + "px"; el.style.top = y + "px"; el.style.width = w + "px"; el.style.height = h + "px";
    const parent = groupFor(t.group);
    if (parent !== bench && !seen.has(parent)) { seen.add(parent); place(bench, parent); }
    place(parent, el);
  }
  for (const [id, el] of twins) if (!seen.has(id)) { el.remove(); twins.delete(id); }
  for (const [name, g] of groups) if (!seen.has(g)) { g.remove(); groups.delete(name); }
  bench.classList.toggle("dark", inTheDark());
  if (inTheDark()) bench.removeAttribute("title");
  if (twinsHold && twins.get(twinsHold)) twins.get(twinsHold).focus();
  else if (focused?.dataset?.id && focused !== document.activeElement && focused.isConnected) focused.focus();
  twinsHold = null;
}

// ---- keys ----

const stepKeys = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 4, PageDown: -4 };
const keyStep = 0.25; // of a beat, for the playhead

function sliderKey(e, el) {
  const id = el.dataset.id;
  const low = Number(el.min), high = Number(el.max);
  let v = program().value(id); // not the element's, which may lag
  if (e.key === "Home") v = low;
  else if (e.key === "End") v = high;
  else if (e.key in stepKeys) {
    const step = Number(e.shiftKey ? el.dataset.step : el.dataset.keyStep);
    v = Math.round((v + stepKeys[e.key] * step) / step) * step;
  } else return false;
  program().act(id, "set", Math.min(Math.max(v, low), high));
  return true;
}

// pieceKey goes from piece to piece and carries one; Enter on the piece in hand,
// or the menu key, asks what to do with it.
function pieceKey(e, el) {
  const again = e.key === "Enter" && el.getAttribute("aria-pressed") === "true";
  if (again || e.key === "ContextMenu" || (e.key === "F10" && e.shiftKey)) {
    program().act(el.dataset.id, "menu", 0);
    return true;
  }
  const by = { ArrowLeft: -1, ArrowRight: 1 }[e.key];
  if (!by) return false;
  const [lane, index] = el.dataset.id.split("-").slice(1).map(Number);
  const other = `piece-${lane}-${index + by}`;
  if (!twins.has(other)) return true;
  twinsHold = other;
  if (e.shiftKey) program().act(other, "extend", 0);
  else program().act(e.altKey ? el.dataset.id : other, e.altKey ? "set" : "press", index + by);
  return true;
}

// seamKey changes the length of the piece before a join, a quarter beat a time.
function seamKey(e, el) {
  const by = { ArrowLeft: -1, ArrowRight: 1 }[e.key];
  if (!by) return false;
  program().act(el.dataset.id, "set", Math.max(program().value(el.dataset.id) + by * keyStep, keyStep));
  return true;
}

const controlKeys = { c: "copy", x: "cut-out", v: "paste" };
const zoomKeys = { "+": "strip-zoom-in", "=": "strip-zoom-in", "-": "strip-zoom-out" };

const stageZoom = 1.5; // how much closer a key looks at the stage
const shortcuts = {
  c: "cut", j: "rejoin", b: "there-and-back", f: "flip", r: "repeat", m: "mirror", Delete: "delete",
  ",": "step-back", ".": "step-on", s: "speed", i: "told", n: "follow",
  0: "fit",
};

// The big view, for a projector: the stage and words. A clicker's page keys go
// through the running order; without one they step.
let big = false;
const inTheDark = () => big && twins.size === 1; // all is one control, which leads back
function setBig(on) {
  big = on;
  document.documentElement.classList.toggle("big", on);
  program().resize();
}
const bigKeys = {
  " ": "play", PageDown: "next", PageUp: "previous", ArrowRight: "step-on", ArrowLeft: "step-back", ".": "step-on", ",": "step-back",
  m: "mirror", s: "speed", h: "point", "+": "faster", "=": "faster", "-": "slower", t: "steps", b: "blank", Escape: "small",
};
function bigKey(e) {
  const key = e.key.length === 1 ? e.key.toLowerCase() : e.key;
  if (key === "p") { setBig(false); return true; }
  // A clicker's key for the dark is the full stop.
  const id = key === "." && twins.has("next") ? "blank" : bigKeys[key];
  if (id) program().act(id, "press", 0);
  return !!id;
}

// Two patterns on one playhead want the whole page. Keys that play are the bench's.
let comparing = false;
function setComparing(on) {
  comparing = on;
  document.documentElement.classList.toggle("comparing", on);
  program().resize();
  bench.focus({ preventScroll: true });
}
const compareKeys = {
  " ": "play", ".": "step-on", ",": "step-back", s: "speed",
  o: "compare-over", x: "compare-swap", d: "compare-differs", Escape: "compare-leave",
};
function compareKey(e) {
  const playhead = twins.get("playhead"); // it has the arrows and Home, whatever is in focus
  if ((e.key.startsWith("Arrow") || e.key === "Home") && playhead) return sliderKey(e, playhead);
  const id = compareKeys[e.key.length === 1 ? e.key.toLowerCase() : e.key];
  // The first key may come before the comparison's twins have.
  if (id && twins.get(id)?.ariaDisabled !== "true") program().act(id, "press", 0);
  return true;
}

function benchKey(e) {
  const ctrl = e.ctrlKey || e.metaKey;
  if (stageOnly) return !ctrl && !e.altKey && e.key === " " && press("play");
  if (comparing) return !ctrl && !e.altKey && compareKey(e);
  if (big) return !ctrl && !e.altKey && bigKey(e);
  if (ctrl && e.key.toLowerCase() === "z") return press(e.shiftKey ? "redo" : "undo");
  if (ctrl && e.key.toLowerCase() === "y") return press("redo");
  if (ctrl && e.key.toLowerCase() === "s") { save(true); return true; }
  const edit = ctrl && !e.shiftKey && controlKeys[e.key.toLowerCase()];
  if (edit) { program().act(edit, "press", 0); return true; }
  if (ctrl || e.altKey) return false;
  if (zoomKeys[e.key]) { program().act(zoomKeys[e.key], "press", 0); return true; }
  if (e.key === " ") return press("play");
  if (e.key.toLowerCase() === "z") { program().zoom(e.shiftKey ? 1 / stageZoom : stageZoom); return true; }
  if (e.key === "?") { showMore(); return true; }
  if (e.key.toLowerCase() === "g") { $("show-glossary").click(); return true; }
  if (twins.has("take")) {
    const id = { Escape: "leave", Enter: "take", w: "next-way" }[e.key];
    if (id) return press(id);
  }
  if (e.key.toLowerCase() === "p") { setBig(true); return true; }
  if (e.key.toLowerCase() === "d") { chooseOther(); return true; }
  if (e.key.toLowerCase() === "k") { $("show-practise").click(); return true; }
  if (e.key === "l") { program().loop(); return true; }
  if (e.key === "Home") { program().act("playhead", "set", 0); return true; }
  const id = shortcuts[e.key.length === 1 ? e.key.toLowerCase() : e.key];
  if (id) return press(id);
  if (e.key === "ArrowLeft" || e.key === "ArrowRight") {
    const el = twins.get("playhead");
    return el ? sliderKey(e, el) : false;
  }
  return false;
}
function press(id) {
  const el = twins.get(id);
  if (el && el.ariaDisabled !== "true") program().act(id, "press", 0);
  return true;
}

document.addEventListener("keydown", (e) => {
  if (!program() || document.querySelector("dialog[open]")) return;
  const el = e.target;
  let done = false;
  if (el.dataset?.id) {
    if (el.type === "range") done = sliderKey(e, el);
    else if (el.dataset.id.startsWith("piece-")) done = pieceKey(e, el);
    else if (el.dataset.id.startsWith("seam-")) done = seamKey(e, el);
    if (!done && (e.key === " " || e.key === "Enter") && el.type !== "range") return; // the button's own
  } else if (el.closest?.("input, select, textarea") || (el.closest?.("button") && (e.key === " " || e.key === "Enter"))) {
    return; // the page's own: what is typed, or pressed
  }
  if (done || benchKey(e)) e.preventDefault();
});

// ---- dialogs ----

function show(id) {
  const d = $(id);
  if (!d.open) d.showModal();
}
for (const b of document.querySelectorAll("[data-close]")) b.addEventListener("click", () => b.closest("dialog").close());
for (const d of document.querySelectorAll("dialog")) {
  // A tap beside it closes it, unless something may have been typed. It is beside
  // it where it begins and ends outside of its box: what lies between its parts is
  // the dialog's own. The touch that opened it may still send a click after it,
  // which is none.
  if (d.querySelector("form")) continue;
  const beside = (e) => {
    const r = d.getBoundingClientRect();
    return e.target === d && (e.clientX < r.left || e.clientX > r.right || e.clientY < r.top || e.clientY > r.bottom);
  };
  let down = false;
  d.addEventListener("pointerdown", (e) => { down = beside(e); });
  d.addEventListener("click", (e) => { if (down && beside(e)) d.close(); down = false; });
}

// askNames asks for title and notes; what is saved with them is saved then.
let saving = false;
function askNames(about, toSave) {
  saving = toSave;
  for (const el of [$("names-head"), $("names-done")]) el.textContent = toSave ? el.dataset.saving : el.dataset.plain;
  $("names-saving").hidden = !toSave && !about.old;
  $("names-title").value = about.title;
  $("names-notes").value = about.notes;
  $("names-old").hidden = !about.old;
  $("names-old").onclick = () => {
    $("names-notes").value = about.old;
    $("names-notes").focus();
    $("names-old").hidden = true;
  };
  $("names-refused").textContent = "";
  show("names");
  if (toSave) $("names-title").select();
}
$("title").addEventListener("click", () => askNames(program().about(), false));
$("names").querySelector("form").addEventListener("submit", (e) => {
  const refused = program().rename($("names-title").value, $("names-notes").value);
  if (refused) { e.preventDefault(); $("names-refused").textContent = refused; }
  else if (saving) save(false);
});

const svgSpace = "http://www.w3.org/2000/svg";

// picture draws the heads' courses of a built-in pattern.
function picture(heads) {
  return svg("svg", { viewBox: "-50 -50 100 100", "aria-hidden": "true" },
    ...heads.map((h) => svg("path", { d: h.path, class: h.left ? "left" : "right" })));
}

function element(tag, text, ...children) {
  const e = document.createElement(tag);
  e.textContent = text;
  e.append(...children);
  return e;
}

function button(text, ...children) {
  const b = element("button", text, ...children);
  b.type = "button";
  return b;
}

// tool is a small button whose full name says what it belongs to. What is written
// on it stands in the name, so that it can be called by voice.
function tool(text, label, press) {
  const b = button(text);
  b.className = "tool";
  b.setAttribute("aria-label", label.toLowerCase().includes(text.toLowerCase()) ? label : `${text}: ${label}`);
  b.addEventListener("click", press);
  return b;
}

function patternButton(p) {
  const b = button("", picture(p.heads), element("span", "", element("b", p.trade), element("small", p.title)));
  b.addEventListener("click", () => {
    if (takesMore("library", p.id)) return;
    $("patterns").close();
    problem(other ? other.take("library", p.id) : program().pick(p.id));
  });
  const after = tool(p.insert, p.insertLabel, () => { $("patterns").close(); program().insert(p.id); });
  const li = element("li", "", b, after);
  li.dataset.notes = p.notes;
  return li;
}

// pick opens a built-in pattern, whatever is open over the bench.
function pick(id) {
  for (const d of document.querySelectorAll("dialog[open]")) d.close();
  problem(program().pick(id));
}

let patternsAt = 0; // how far down the list was looked through

$("show-patterns").addEventListener("click", () => listPatterns());

// listPatterns shows the list: to open one or, for a purpose { head, intro, take },
// to choose one; where the purpose has more than one in mind, the list stays, and
// says what take returns.
let other = null; // the purpose
function takesMore(from, id) {
  if (other?.stays) $("patterns-said").textContent = other.take(from, id);
  return !!other?.stays;
}
function listPatterns(purpose = null) {
  other = purpose;
  $("patterns").classList.toggle("choosing", !!other);
  $("patterns").classList.toggle("stays", !!other?.stays);
  $("patterns-said").textContent = "";
  if ($("patterns-search").value) { // it was for what was looked for then
    $("patterns-search").value = "";
    patternsAt = 0;
  }
  $("patterns-head").textContent = other?.head ?? $("patterns-head").dataset.plain;
  $("patterns-intro").textContent = other?.intro ?? $("patterns-intro").dataset.plain;
  const families = new Map();
  for (const p of program().library()) families.set(p.family, [...(families.get(p.family) ?? []), p]);
  const parts = [$("own")];
  for (const [family, list] of families) {
    const head = element("h3", family);
    head.tabIndex = -1;
    parts.push(element("section", "", head, element("ul", "", ...list.map(patternButton))));
  }
  $("patterns-list").replaceChildren(...parts);
  $("patterns-jump").replaceChildren(...parts.map((part) => {
    const head = part.querySelector("h3"), jump = button(head.textContent);
    jump.addEventListener("click", () => { part.scrollIntoView(); head.focus({ preventScroll: true }); });
    return jump;
  }));
  const trouble = listOwn();
  show("patterns");
  $("patterns").scrollTop = patternsAt;
  if (trouble) problem({ head: $("own").dataset.trouble, lines: trouble });
}
$("patterns").addEventListener("close", () => { patternsAt = $("patterns").scrollTop; });

// ---- the person's own patterns ----

// chooseOther asks which pattern the open one is to be compared with.
function chooseOther() {
  $("more").close();
  const { head, intro } = $("show-compare").dataset;
  listPatterns({ head, intro, take: (from, which, bytes) => program().compare(from, which, bytes) });
}
$("show-compare").addEventListener("click", chooseOther);

// Dates are written in the page's language as the person's own region has them.
const { lang } = document.documentElement;
const whenFormat = new Intl.DateTimeFormat(navigator.languages.find((l) => l.startsWith(lang)) ?? lang, { dateStyle: "medium", timeStyle: "short" });
const put = (text, value) => text.replace("%s", () => value);

// listOwn fills their list, and returns what of them could not be read.
function listOwn() {
  const { list, problems } = program().own();
  $("own-list").replaceChildren(...list.map(ownItem));
  $("own-none").hidden = list.length > 0;
  $("own-keep-all").hidden = list.length === 0;
  filterPatterns();
  return problems;
}

function ownItem(p) {
  const { dataset } = $("own");
  const when = put(dataset.changed, whenFormat.format(p.edited)) + (p.open ? ` · ${dataset.open}` : "");
  const open = button("", picture(p.heads), element("span", "", element("b", p.title), element("small", p.trade), element("small", when)));
  open.addEventListener("click", () => {
    if (takesMore("own", p.id)) return;
    $("patterns").close();
    if (other) problem(other.take("own", p.id));
    else if (!p.open) problem(program().openOwn(p.id));
  });
  if (p.open) open.setAttribute("aria-current", "true");
  const after = tool(p.insert, p.insertLabel, () => { $("patterns").close(); problem(program().insertOwn(p.id)); });
  const rename = tool(dataset.rename, p.renameLabel, () => askFor({ label: p.renameLabel, hint: dataset.newTitle, value: p.title }, (title) => {
    const refused = program().renameOwn(p.id, title);
    if (!refused) { listOwn(); ownButton(p.id)?.focus(); }
    return refused;
  }));
  const li = element("li", "", open, element("div", "", after, rename, tool(dataset.delete, p.deleteLabel, () => deleteOwn(p, li))));
  li.dataset.notes = p.notes;
  li.dataset.own = p.id;
  return li;
}
const ownButton = (id) => [...$("own-list").children].find((li) => li.dataset.own === id)?.querySelector("button");

// deleteOwn leaves in the pattern's place the way to have it back.
function deleteOwn(p, li) {
  const refused = program().delete(p.id);
  if (refused) { problem({ head: p.deleteLabel, lines: refused }); return; }
  const undo = tool($("own").dataset.undo, p.undoLabel, () => {
    const refused = program().undelete(p.id);
    if (refused) { problem({ head: p.undoLabel, lines: refused }); return; }
    listOwn();
    announce(put($("own").dataset.back, p.title));
    ownButton(p.id)?.focus();
  });
  li.className = "gone";
  li.replaceChildren(element("span", p.deleted), undo);
  announce(p.deleted);
  undo.focus();
}

$("own-keep-all").addEventListener("click", () => {
  const { name, data, problems } = program().pack();
  if (data.length) give(name, data, "application/zip");
  if (problems) problem({ head: $("own").dataset.trouble, lines: problems });
});

// What another tab keeps is seen here too.
addEventListener("storage", () => {
  program()?.stored();
  if ($("patterns").open && program()) listOwn();
});

// filterPatterns leaves what has all the words that are searched for.
function filterPatterns() {
  const wanted = $("patterns-search").value.toLowerCase().split(/\s+/).filter(Boolean);
  let some = false;
  for (const part of $("patterns-list").children) {
    let any = false;
    for (const li of part.querySelectorAll("li")) {
      const text = `${part.querySelector("h3").textContent} ${li.textContent} ${li.dataset.notes}`.toLowerCase();
      li.hidden = !wanted.every((w) => text.includes(w));
      any ||= !li.hidden;
    }
    part.hidden = !any && (part.id !== "own" || wanted.length > 0);
    some ||= any;
  }
  $("patterns-jump").hidden = wanted.length > 0;
  $("patterns-none").textContent = some ? "" : $("patterns-none").dataset.text;
}
$("patterns-search").addEventListener("input", filterPatterns);

// ---- what is seen and how it plays: kept here, as it is the person's ----

const viewKey = "whorlbench.view";
const viewParts = document.querySelectorAll("[data-view]");

function showMore() {
  const now = JSON.parse(program().settings());
  for (const el of viewParts) {
    if (el.type === "checkbox") el.checked = now[el.dataset.view];
    else el.value = now[el.dataset.view];
  }
  showKept();
  show("more");
}
for (const el of viewParts) {
  el.addEventListener("change", () => {
    const now = JSON.parse(program().settings());
    now[el.dataset.view] = el.type === "checkbox" ? el.checked : Number(el.value);
    program().setSettings(JSON.stringify(now));
    write(viewKey, program().settings());
  });
}
$("show-more").addEventListener("click", showMore);

function showKept() {
  const can = canKeep();
  for (const p of document.querySelectorAll("[data-kept]")) p.hidden = (p.dataset.kept === "here") !== can;
  $("aside").hidden = program().asides().length === 0;
  const promise = $("kept-promise");
  promise.hidden = !can;
  promise.textContent = promise.dataset.notPromised;
  navigator.storage?.persisted?.().then((yes) => { if (yes) promise.textContent = promise.dataset.promised; });
}
$("show-big").addEventListener("click", () => { $("more").close(); setBig(true); });
$("hint-again").addEventListener("click", () => { $("more").close(); program().hint(); });

// Tapping the beat: the mean of the last few gaps.
let taps = [];
$("ask-tap").addEventListener("pointerdown", (e) => {
  const longest = 2500, most = 8; // ms, taps
  if (taps.length && e.timeStamp - taps.at(-1) > longest) taps = [];
  taps = [...taps, e.timeStamp].slice(-most);
  if (taps.length > 1) $("ask-value").value = Math.round((60000 * (taps.length - 1)) / (taps.at(-1) - taps[0]));
});

// askFor asks for a value; done returns what is wrong with it.
let answered = () => "";
function askFor(q, done) {
  answered = done;
  $("ask-label").textContent = q.label;
  $("ask-hint").textContent = q.hint;
  $("ask-note").textContent = q.note ?? "";
  $("ask-value").value = q.value;
  $("ask-refused").textContent = "";
  $("ask-tap").hidden = q.id !== "tempo";
  taps = [];
  show("ask");
  $("ask-value").select();
}
$("ask").querySelector("form").addEventListener("submit", (e) => {
  const refused = answered($("ask-value").value);
  if (refused) { e.preventDefault(); $("ask-refused").textContent = refused; $("ask-value").select(); }
});

function choose(json) {
  const c = JSON.parse(json);
  $("choose-label").textContent = c.label;
  $("choose-text").textContent = c.text;
  $("choose-list").replaceChildren(...optionLists(c.id, c.options, "choose"));
  show("choose");
  $("choose").scrollTop = 0;
}

// optionLists are things to pick, a list for each head.
function optionLists(id, options, within) {
  const parts = [];
  let list = null;
  for (const o of options) {
    if (!list || o.head) {
      if (o.head) parts.push(element("h3", o.head));
      list = element("ul", "");
      parts.push(list);
    }
    list.append(element("li", "", optionButton(id, o, within)));
  }
  return parts;
}

// optionButton is a thing to pick, which closes the dialog that it stands in.
function optionButton(list, o, within) {
  const b = button("", ...(o.picture ? [motion([o.picture])] : []), element("span", "", element("b", o.label), element("small", o.detail)));
  if (o.on) b.setAttribute("aria-current", "true");
  b.addEventListener("click", () => { $(within).close(); program().chosen(list, o.id); });
  return b;
}

function svg(tag, attributes, ...children) {
  const e = document.createElementNS(svgSpace, tag);
  for (const [name, value] of Object.entries(attributes)) e.setAttribute(name, value);
  e.append(...children);
  return e;
}

// motion is a small picture of hands that move while its dialog is open: of a piece
// in its elementary pattern, or of a whole pattern.
const motions = new WeakMap(); // the picture -> its hands and its time
const moving = new Set();
function motion(hands) {
  const out = svg("svg", { viewBox: "-50 -50 100 100", "aria-hidden": "true", class: "motion" });
  const parts = hands.map((p) => {
    const hand = svg("circle", { r: 4, class: "hand" }), head = svg("circle", { r: 6, class: "head" }), tether = svg("path", { class: "tether" });
    out.append(svg("g", { class: p.left ? "left" : "right" },
      svg("path", { d: p.whole, class: "whole" }), svg("path", { d: p.slice, class: "slice" }), svg("path", { d: way(p.points), class: "way" }), tether, hand, head));
    return { p, hand, head, tether };
  });
  const { seconds, rest } = hands[0];
  motions.set(out, { parts, seconds, rest, time: 0.3 * seconds, last: NaN });
  for (const part of parts) pose(part, 0.3);
  if (!still.matches) setMoving(out, true);
  return out;
}
// way is where the hand goes.
function way(points) {
  const places = points.map((x, i) => (i % 4 === 0 ? `${x} ${points[i + 1]}` : "")).filter(Boolean);
  return `M${places.join("L")}`;
}
function pose({ p, hand, head, tether }, share) {
  const last = p.points.length / 4 - 1;
  const at = Math.min(share, 1) * last, k = Math.min(Math.floor(at), last - 1), f = at - k;
  const [hx, hy, x, y] = [0, 1, 2, 3].map((i) => p.points[4 * k + i] * (1 - f) + p.points[4 * k + 4 + i] * f);
  hand.setAttribute("cx", hx); hand.setAttribute("cy", hy);
  head.setAttribute("cx", x); head.setAttribute("cy", y);
  tether.setAttribute("d", `M${hx} ${hy}L${x} ${y}`);
}
const moves = (out) => moving.has(out);
function setMoving(out, on) {
  if (!on) { moving.delete(out); return; }
  motions.get(out).last = NaN;
  if (!moving.size) requestAnimationFrame(moveAll);
  moving.add(out);
}
function moveAll(now) {
  for (const out of moving) {
    if (!out.isConnected || !out.closest("dialog[open]")) { moving.delete(out); continue; }
    const m = motions.get(out);
    m.time = (m.time + (now - m.last || 0) / 1000) % (m.seconds + m.rest);
    m.last = now;
    for (const part of m.parts) pose(part, m.time / m.seconds);
  }
  if (moving.size) requestAnimationFrame(moveAll);
}

let sheet = ""; // which one is shown
function showSheet(json) {
  const s = JSON.parse(json);
  if (s.id === besideID && beside()) return fillIn("differs", s);
  const anew = !sheetOpen(s.id);
  fill(s);
  show("sheet");
  if (anew) $("sheet").scrollTop = 0;
}
const besideID = "compare-differs"; // the sheet that may stand beside the stages
const beside = () => $("differs").offsetWidth > 0;
function sheetOpen(id) { return ($("sheet").open && sheet === id) || (id === besideID && beside()); }
function fill(s) {
  sheet = $("sheet").dataset.sheet = s.id;
  fillIn("sheet", s);
  $("sheet-actions").replaceChildren(...optionLists(s.id, s.actions ?? [], "sheet"));
}
function fillIn(place, s) {
  $(`${place}-title`).textContent = s.title;
  $(`${place}-lead`).textContent = s.lead;
  $(`${place}-text`).textContent = s.text;
  $(`${place}-sections`).replaceChildren(...(s.sections ?? []).flatMap((part) => [
    ...(part.head ? [element("h3", part.head)] : []),
    ...(part.text ? [element("p", part.text)] : []),
    ...(part.plot ? [plot(part.plot)] : []),
    element("dl", "", ...(part.lines ?? []).map((l) => element("div", "", element("dt", l.name), element("dd", l.text)))),
  ]));
}
function plot(p) {
  return element("figure", "",
    svg("svg", { viewBox: p.box, "aria-hidden": "true", class: "plot" }, ...p.paths.map((x) => svg("path", { d: x.d, class: x.class }))),
    element("figcaption", p.label));
}

// problem says what is wrong, { head, lines }, if something is.
function problem(wrong) {
  if (!wrong?.lines) return;
  $("problem-head").textContent = wrong.head ?? $("problem-head").dataset.plain;
  $("problem-lines").textContent = wrong.lines;
  show("problem");
}

// ---- files ----

async function openFile(file, purpose) {
  if (big) setBig(false);
  for (const d of document.querySelectorAll("dialog[open]")) d.close();
  try {
    const bytes = new Uint8Array(await file.arrayBuffer());
    problem(purpose ? purpose.take("file", file.name, bytes) : program().open(file.name, bytes));
  } catch (err) {
    problem({ lines: `${file.name}: ${err.message}` });
  }
}
let fileFor = null; // the purpose that a file is chosen for
for (const b of document.querySelectorAll(".choose-file")) {
  b.addEventListener("click", () => { fileFor = b.closest("#patterns") ? other : null; $("file").click(); });
}
$("file").addEventListener("change", () => {
  const file = $("file").files[0];
  $("file").value = "";
  if (file) openFile(file, fileFor);
});
addEventListener("dragover", (e) => { e.preventDefault(); $("drop").hidden = false; });
addEventListener("dragleave", (e) => { if (!e.relatedTarget) $("drop").hidden = true; });
addEventListener("drop", (e) => {
  e.preventDefault();
  $("drop").hidden = true;
  if (program() && e.dataTransfer.files[0]) openFile(e.dataTransfer.files[0]);
});

function save(first) {
  const file = program().file(first);
  if (file.error) { problem({ lines: file.error }); return; }
  if (file.propose) { askNames({ ...file, title: file.propose }, true); return; }
  give(file.name, file.text);
}
// give gives a file out. Where the device is all touch and its browser may lose
// what is downloaded, as one does that was put on the home screen, the device's own
// sheet takes the file.
const touchOnly = matchMedia("(hover: none) and (pointer: coarse)");
function give(name, data, type = "application/toml") {
  const file = new File([data], name, { type });
  if ("standalone" in navigator && touchOnly.matches && navigator.canShare?.({ files: [file] })) {
    navigator.share({ files: [file] }).then(() => program()?.saved(name), (err) => {
      if (err.name !== "AbortError") download(file); // else the person has thought better of it
    });
    return;
  }
  download(file);
}
function download(file) {
  const a = document.createElement("a");
  a.href = URL.createObjectURL(file);
  a.download = file.name;
  a.click();
  program().saved(file.name);
  setTimeout(() => URL.revokeObjectURL(a.href), 60_000); // a browser may first ask whether to save it
}
$("save-aside").addEventListener("click", (e) => {
  program().asides().forEach((text, i) => give(`${e.target.dataset.name}${i ? `-${i + 1}` : ""}.toml`, text));
});
$("save").addEventListener("click", () => save(true));

// ---- sharing ----

// publicAddress is where others reach this bench, if its host says so.
async function publicAddress() {
  try {
    return (await (await fetch("public.json")).json()).url ?? "";
  } catch {
    return ""; // the page's own
  }
}

const home = new URL("./", location.href).href; // every language's page is there
async function showShare() {
  const shared = program().share(home, await publicAddress());
  $("more").close();
  $("share-link").hidden = !shared.url;
  $("share-refused").textContent = shared.refused ?? "";
  $("share-no-code").textContent = shared.noCode ?? "";
  $("share-said").textContent = "";
  $("share-url").value = shared.url ?? "";
  $("share-system").hidden = !navigator.share;
  $("share-system").onclick = () => navigator.share({ title: shared.title, url: shared.url }).catch(() => {}); // put away again
  $("share-code").hidden = !shared.code;
  $("share-code").querySelector("svg")?.remove();
  if (shared.code) {
    const box = `0 0 ${shared.width} ${shared.width}`;
    $("share-code").prepend(svg("svg", { viewBox: box, role: "img", "aria-label": shared.label },
      svg("path", { class: "ground", d: `M0 0h${shared.width}v${shared.width}H0z` }), svg("path", { d: shared.code })));
  }
  show("share-dialog");
}
for (const b of document.querySelectorAll(".show-share")) b.addEventListener("click", showShare);
$("share-copy").addEventListener("click", async () => {
  const { copied, byHand } = $("share-said").dataset;
  $("share-said").textContent = await copy($("share-url")) ? copied : byHand;
});
// copy copies what a field of the page holds, and reports whether it could. It
// is called by a tap or a key, as browsers want it; where the newer way is
// forbidden, or the page is not served securely, the older one may do. If none
// does, the text is marked, from its beginning, to be copied by hand.
async function copy(field) {
  try {
    await navigator.clipboard.writeText(field.value);
    return true;
  } catch { /* the older way */ }
  const hidden = field.hidden, before = document.activeElement;
  field.hidden = false;
  field.focus({ preventScroll: true });
  field.setSelectionRange(0, field.value.length, "backward");
  field.scrollTop = 0;
  if (!document.execCommand("copy")) return false;
  field.hidden = hidden;
  before?.focus({ preventScroll: true });
  return true;
}
$("share-file").addEventListener("click", () => { $("share-dialog").close(); save(true); });

// openLink opens the pattern in the address's fragment. It is kept from then on,
// so the address need not hold it longer; a stage within another page keeps nothing.
function openLink() {
  if (big) setBig(false);
  const opened = program()?.openLink(location.hash);
  if (!opened) return;
  if (!stageOnly) history.replaceState(history.state, "", location.pathname + location.search);
  if (opened.lines) {
    for (const d of document.querySelectorAll("dialog[open]")) d.close();
    problem(opened);
  }
}
addEventListener("hashchange", openLink);

// ---- notices: what can be done about something, or later ----

const doAbout = { unkept: () => save(true), stale: () => program().loadOther() };
for (const [name, act] of Object.entries(doAbout)) {
  const n = $(`notice-${name}`);
  n.querySelector(".main").addEventListener("click", () => { n.hidden = true; act(); });
  n.querySelector("[data-hide]").addEventListener("click", () => { n.hidden = true; });
}
function notify(name, text) {
  const n = $(`notice-${name}`);
  n.hidden = !text;
  if (!text) return;
  n.querySelector("p").textContent = text;
  announce(text);
}

// ---- language ----

$("language").value = document.documentElement.lang;
$("language").addEventListener("change", () => window.whorlbenchLanguage.choose($("language").value));

// ---- colours and room ----

const dark = matchMedia("(prefers-color-scheme: dark)");
const still = matchMedia("(prefers-reduced-motion: reduce)");

function isNight() {
  const chosen = read(themeKey);
  return chosen === "night" || (chosen !== "day" && dark.matches);
}
function applyTheme() {
  document.documentElement.classList.toggle("night", isNight());
  program()?.resize();
}
$("theme").value = read(themeKey) || "auto";
$("theme").addEventListener("change", () => { write(themeKey, $("theme").value); applyTheme(); });
dark.addEventListener("change", applyTheme);
addEventListener("resize", () => program()?.resize());

// Safe areas are told by CSS alone, so an element measures them.
const probe = document.createElement("div");
probe.className = "probe";
document.body.append(probe);
const sizes = new ResizeObserver(() => program()?.resize()); // the person's text size
sizes.observe(probe);
sizes.observe($("head"));

// textSize is how much larger than usual the person wants text, 1 to 2.
function textSize() {
  return Math.min(Math.max(parseFloat(getComputedStyle(document.documentElement).fontSize) / 16, 1), 2);
}

let edges = null; // of a stage that something else surrounds
function stageIn(within) { // null brings the bench back
  edges = within;
  program()?.resize();
}
function frame() {
  const s = getComputedStyle(probe);
  return JSON.stringify({
    W: document.body.clientWidth, H: document.body.clientHeight,
    Top: $("head").offsetHeight, Right: beside() ? $("differs").offsetWidth : parseFloat(s.paddingRight) || 0,
    Bottom: parseFloat(s.paddingBottom) || 0, Left: parseFloat(s.paddingLeft) || 0,
    Night: isNight(), Still: still.matches, Text: textSize(), StageOnly: stageOnly || big, Line: big, Beside: beside(),
    ...(edges && { ...edges, StageOnly: true, Practice: true }),
  });
}

// ---- what the program asks of the page ----

let waking = 0;
const said = []; // since the last turn: what is said together is heard together
function announce(text) {
  said.push(text);
  if (said.length === 1) setTimeout(() => $("live").replaceChildren(...said.splice(0).map((t) => element("p", t))));
}
window.whorlbenchPage = {
  takePointers() {
    const out = new Uint8Array(new Float64Array(queue).buffer);
    queue = [];
    return out;
  },
  showTwins,
  moveTwin(id, value, text) {
    const el = twins.get(id);
    if (!el) return;
    if (el.valueAsNumber !== value) el.value = value;
    attribute(el, "aria-valuetext", text);
  },
  showTitle(text) {
    $("title-text").textContent = text;
    document.title = text;
    if (stageOnly) attribute(bench, "aria-label", text);
  },
  words: "", // the language, for the program, which has English itself
  announce,
  ask: (q) => askFor(q, (value) => program().answer(q.id, value)),
  leaveBig: () => setBig(false),
  comparing: setComparing,
  problem,
  choose,
  showSheet,
  sheetOpen,
  settled: () => write(viewKey, program().settings()),
  noted: () => history.state?.kept ?? "",
  noteWork(text) { if (!stageOnly && (history.state?.kept ?? "") !== text) note({ kept: text || undefined }); },
  notify,
  // The browser is asked once to clear nothing away by itself.
  firstKept() {
    if (stageOnly || read(askedKey)) return;
    write(askedKey, "1");
    navigator.storage?.persist?.().catch(() => {});
  },
  wakeAfter(ms) { clearTimeout(waking); waking = setTimeout(() => program().wake(), ms); },
  frame,
  ready() {
    const canvas = document.querySelector("canvas");
    canvas.tabIndex = -1; // the bench above it has the keyboard
    canvas.setAttribute("aria-hidden", "true");
    program().setSettings(read(viewKey));
    $("head").inert = false;
    $("loading").hidden = true;
    document.documentElement.dataset.state = "ready";
    if (history.state?.returning) {
      note({ returning: false });
      program().returned();
    }
    openLink();
  },
  fail: (text) => trouble("stopped", text),
};

// ---- loading ----

function trouble(when, detail) {
  if (when === "stopped" && !canKeep()) when = "stopped-unkept";
  window.whorlbenchProgram = undefined; // it answers no more
  for (const d of document.querySelectorAll("dialog[open]")) d.close();
  $("head").inert = bench.inert = true;
  $("loading").hidden = true;
  $("trouble").hidden = false;
  for (const p of document.querySelectorAll("#trouble [data-when]")) p.hidden = p.dataset.when !== when;
  $("trouble-detail").textContent = detail ?? "";
  document.documentElement.dataset.state = "trouble";
  $("retry").focus();
}
$("retry").addEventListener("click", () => location.reload());

// A browser may take the graphics away. The engine then loads the page anew,
// and the work comes back with it; where that does not last, the page says so.
const lostOften = 3, lostWithin = 60_000; // ms
document.addEventListener("webglcontextlost", (e) => {
  const now = Date.now();
  const times = [...(history.state?.lost ?? []), now].filter((t) => now - t < lostWithin);
  note({ lost: times, returning: true });
  if (times.length < lostOften) return;
  e.stopPropagation();
  note({ lost: [] });
  trouble("lost");
}, true);

// The engine asks for a surface that is see-through and whose edges the graphics
// smooths. What is painted on it is opaque and has soft edges of its own, so both
// would cost time and memory for nothing.
const getContext = HTMLCanvasElement.prototype.getContext;
HTMLCanvasElement.prototype.getContext = function (kind, wish) {
  return getContext.call(this, kind, kind === "webgl2" ? { ...wish, alpha: false, antialias: false, depth: false, stencil: false } : wish);
};

// fetchCounting passes the program's bytes on and shows how many have come;
// what is counted is what has been unpacked.
async function fetchCounting(url, total) {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  let got = 0;
  const counted = answer.body.pipeThrough(new TransformStream({
    transform(chunk, out) {
      got += chunk.byteLength;
      $("loading-bar").value = total ? Math.min(got / total, 1) : 0;
      out.enqueue(chunk);
    },
  }));
  return new Response(counted, { headers: { "Content-Type": "application/wasm" } });
}

async function fetchText(url) {
  const answer = await fetch(url);
  if (!answer.ok) throw new Error(`${url}: ${answer.status}`);
  return answer.text();
}

async function load() {
  if (window.whorlbenchLanguage.leaving) return; // for another language's page
  applyTheme();
  if (typeof WebAssembly !== "object") return trouble("wasm");
  if (!document.createElement("canvas").getContext("webgl2")) return trouble("webgl");
  let instance;
  const go = new Go();
  try {
    const { wasm, wasmSize, table } = document.body.dataset;
    const words = table ? fetchText(table) : "";
    const answer = await fetchCounting(wasm, Number(wasmSize));
    ({ instance } = await WebAssembly.instantiateStreaming(answer, go.importObject));
    window.whorlbenchPage.words = await words;
  } catch (err) {
    return trouble("load", err.message);
  }
  try {
    await go.run(instance);
    if (document.documentElement.dataset.state !== "trouble") trouble("stopped");
  } catch (err) {
    trouble("stopped", err.message);
  }
}
load();

// What the other scripts use.
export {
  $, announce, button, copy, element, give, listPatterns, motion, moves, openFile, pick, picture, program, read, setBig, setMoving, show, stageIn, tool, write,
};
