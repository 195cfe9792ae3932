// The words of the trade: where they stand in the page's texts they become
// links, and a dialog explains each with a pattern that shows it.

import { finder } from "./mention.js";
import { button, element, motion, moves, pick, program, setMoving } from "./page.js";

const part = (id) => document.getElementById(id);
const put = (text, value) => text.replace("%s", () => value);

// ---- the words, fetched once when a dialog first opens ----

let words = null; // the glossary, by key, and its finder
let coming = null;
function load() {
  coming ??= fetch(`glossary.${document.documentElement.lang}.json`).then(async (answer) => {
    if (!answer.ok) throw new Error(answer.statusText);
    const said = await answer.json();
    words = { ...said, by: new Map(said.terms.map((t) => [t.key, t])), find: finder(said) };
    for (const el of marked) mark(el);
    for (const el of using) use(el);
  }).catch((err) => { coming = null; throw err; });
  return coming;
}

// ---- links ----

const marked = document.querySelectorAll("[data-words]"); // texts whose words become links
const using = document.querySelectorAll("[data-used]"); // where links to the words in buttons stand

function link(text, key) {
  const b = button(text);
  b.className = "word";
  b.setAttribute("aria-haspopup", "dialog");
  b.dataset.key = key;
  b.addEventListener("click", () => {
    if (!part("glossary").contains(b)) [from, within] = [b, b.closest("dialog")];
    open(key);
  });
  return b;
}

// The keyboard goes back to the link, or to the one that has taken its place.
let from = null, within = null;
part("glossary").addEventListener("close", () => {
  const link = from?.isConnected ? from : [...within?.querySelectorAll(".word") ?? []].find((b) => b.dataset.key === from.dataset.key);
  link?.focus();
  from = within = null;
});

// mark makes links of an element's words, once in each paragraph, but for a word
// that needs none.
function mark(el, but) {
  const walker = document.createTreeWalker(el, NodeFilter.SHOW_TEXT);
  const texts = [];
  while (walker.nextNode()) if (!walker.currentNode.parentElement.closest("button, label, select, [data-unlinked]")) texts.push(walker.currentNode);
  const linked = new Map(); // paragraph -> keys
  for (const text of texts) {
    const block = text.parentElement;
    if (!linked.has(block)) linked.set(block, new Set([but, ...[...block.querySelectorAll(".word")].map((b) => b.dataset.key)]));
    const keys = linked.get(block);
    const said = text.data, parts = [];
    let end = 0;
    for (const { from, to, key } of words.find(said)) {
      if (keys.has(key)) continue;
      keys.add(key);
      parts.push(said.slice(end, from), link(said.slice(from, to), key));
      end = to;
    }
    if (end) text.replaceWith(...parts, said.slice(end));
  }
}

// use lists the words that stand in buttons, or where a person writes: a link
// there would be in the way.
function use(el) {
  const from = part(el.dataset.used);
  const texts = from.matches("textarea") ? [from.value] : [...from.querySelectorAll("button b, button small")].map((e) => e.textContent);
  const keys = new Set(texts.flatMap((t) => words.find(t).map((m) => m.key)));
  el.replaceChildren(el.dataset.text, ...[...keys].flatMap((key) => [" ", link(words.by.get(key).word, key)]));
  el.hidden = !keys.size;
}

// What is said anew is marked anew; the marking itself is no news.
function watch(el, from, again) {
  const news = new MutationObserver(() => { if (words) { again(el); news.takeRecords(); } });
  news.observe(from, { childList: true, characterData: true, subtree: true });
}
for (const el of marked) watch(el, el, mark);
for (const el of using) {
  watch(el, part(el.dataset.used), use);
  part(el.dataset.used).addEventListener("input", () => words && use(el));
}
const opened = new MutationObserver((all) => {
  if (!all.some((m) => m.target.open)) return;
  load().then(() => { for (const el of using) use(el); }, () => { /* the texts can do without links */ });
});
for (const d of document.querySelectorAll("dialog")) opened.observe(d, { attributeFilter: ["open"] });

// ---- the dialog: a list, and beside it, or where there is little room in its
// place, one word ----

const roomy = matchMedia("(min-width: 900px)");
let at = ""; // the word that is shown
let before = []; // those it was come by

async function open(key) {
  const dialog = part("glossary");
  part("glossary-failed").textContent = "";
  const anew = !dialog.open;
  if (anew) dialog.showModal();
  try {
    await load();
  } catch {
    part("glossary-failed").textContent = part("glossary-failed").dataset.text;
    return;
  }
  if (!part("glossary-words").firstChild) list();
  if (anew) {
    before = [];
    at = "";
    current("");
    part("glossary-search").value = "";
    filter();
  }
  const wanted = key || (roomy.matches && fitting());
  if (!wanted) { all(); return; }
  if (at) before.push(at);
  show(wanted);
  if (key) return;
  // What is typed is searched for; under a finger that would only raise a keyboard.
  part(fingers.matches ? "glossary-head" : "glossary-search").focus({ preventScroll: true });
}
const fingers = matchMedia("(pointer: coarse)");

// fitting is the word that says most of the pattern on the bench, else the first.
function fitting() {
  const said = words.find(program()?.about().trade ?? "").map((m) => m.key);
  const judging = said.filter((key) => JSON.parse(program().judged(key)).parts);
  // A cateye or a triquetra is antispin too, which stands first.
  const known = judging[0] === "antispin" && judging.find((key) => key === "cateye" || key === "triquetra");
  return known || judging[0] || said[0] || part("glossary-words").querySelector("button").dataset.key;
}

function list() {
  const { lang } = document.documentElement;
  const sorted = [...words.terms].sort((a, b) => a.word.localeCompare(b.word, lang));
  const letters = Map.groupBy ? Map.groupBy(sorted, first) : sorted.reduce((m, t) => m.set(first(t), [...(m.get(first(t)) ?? []), t]), new Map());
  const sections = [...letters].map(([letter, terms]) => {
    const head = element("h3", letter);
    head.tabIndex = -1;
    return element("section", "", head, element("ul", "", ...terms.map(listed)));
  });
  part("glossary-words").replaceChildren(...sections);
  part("glossary-letters").replaceChildren(...sections.map((s) => {
    const head = s.firstChild, jump = button(head.textContent);
    jump.addEventListener("click", () => { s.scrollIntoView(); head.focus({ preventScroll: true }); });
    return jump;
  }));
}
const first = (t) => t.word[0].toUpperCase();
function listed(t) {
  const b = button("", element("b", t.word), ...(t.others ? [element("small", t.others.join(words.comma))] : []));
  b.dataset.key = t.key;
  b.addEventListener("click", () => { before = []; show(t.key); });
  return element("li", "", b);
}

// filter leaves the words in which all that is searched for stands.
function filter() {
  const wanted = part("glossary-search").value.toLowerCase().split(/\s+/).filter(Boolean);
  let some = false;
  for (const s of part("glossary-words").children) {
    let any = false;
    for (const li of s.querySelectorAll("li")) {
      const t = words.by.get(li.firstChild.dataset.key);
      const text = [t.word, ...(t.others ?? []), ...(wanted.length ? t.says : [])].join(" ").toLowerCase();
      li.hidden = !wanted.every((w) => text.includes(w));
      any ||= !li.hidden;
    }
    s.hidden = !any;
    some ||= any;
  }
  part("glossary-letters").hidden = wanted.length > 0;
  part("glossary-none").textContent = some ? "" : part("glossary-none").dataset.text;
}
// found are the words that are left.
const found = () => [...part("glossary-words").querySelectorAll("section:not([hidden]) li:not([hidden]) button")];
part("glossary-search").addEventListener("input", () => {
  if (!words) return;
  filter();
  const left = found(); // a single one is shown beside the list at once; in its place, with Enter
  if (roomy.matches && left.length === 1 && left[0].dataset.key !== at) show(left[0].dataset.key, true);
});
part("glossary-search").addEventListener("keydown", (e) => {
  if (e.key !== "Enter" || e.isComposing || !words) return;
  e.preventDefault();
  found()[0]?.click();
});

// all goes back to the list, to the word that was last shown.
function all() {
  before = [];
  part("glossary").classList.remove("at-word");
  const last = [...part("glossary-words").querySelectorAll("button")].find((b) => b.dataset.key === at);
  at = "";
  if (last) last.focus();
}
part("glossary-all").addEventListener("click", all);
part("glossary-back").addEventListener("click", () => show(before.pop()));

// current marks a word of the list, or none.
function current(key) {
  for (const b of part("glossary-words").querySelectorAll("button")) {
    if (b.dataset.key !== key) { b.removeAttribute("aria-current"); continue; }
    b.setAttribute("aria-current", "true");
    if (roomy.matches) b.scrollIntoView({ block: "nearest" });
  }
}

function show(key, searching) {
  const t = words.by.get(key);
  at = key;
  part("glossary").classList.add("at-word");
  current(key);
  const back = part("glossary-back"), last = words.by.get(before.at(-1));
  back.hidden = !last;
  back.textContent = last ? put(back.dataset.text, last.word) : "";
  part("glossary-word").textContent = t.word;
  part("glossary-others").textContent = t.others ? put(words.others, t.others.join(words.comma)) : "";
  part("glossary-says").replaceChildren(...t.says.map((s) => element("p", s)));
  mark(part("glossary-says"), key);
  part("glossary-related").replaceChildren(...t.related.map((k) => {
    const b = button(words.by.get(k).word);
    b.dataset.key = k;
    b.addEventListener("click", () => open(k));
    return element("li", "", b);
  }));
  shows(t.shows);
  judged(key);
  part("glossary").scrollTop = 0;
  part("glossary-term").scrollTop = 0;
  if (!searching) part("glossary-word").focus({ preventScroll: true });
}

// ---- the pattern that shows it ----

const pictures = new Map(); // id -> what the program says
let picture = null;
function shows(id) {
  if (!pictures.has(id)) pictures.set(id, JSON.parse(program()?.shown(id) ?? "null"));
  const p = pictures.get(id);
  part("glossary-shows").hidden = !p;
  if (!p) return;
  picture = motion(p.hands);
  picture.setAttribute("viewBox", framed(p.hands));
  part("glossary-picture").replaceChildren(picture);
  part("glossary-caption").textContent = put(words.shows, p.title);
  part("glossary-open").onclick = () => pick(id);
  playing();
}
// framed lets what moves fill its picture, a small one not quite.
function framed(hands) {
  const [[x, w], [y, h]] = [0, 1].map((axis) => {
    const all = hands.flatMap((hand) => hand.points.filter((_, i) => i % 2 === axis));
    const low = Math.min(...all), high = Math.max(...all);
    return [(low + high) / 2, high - low];
  });
  const half = Math.max(30, Math.max(w, h) / 2 + 6);
  return `${x - half} ${y - half} ${2 * half} ${2 * half}`;
}
function playing() {
  const b = part("glossary-play");
  b.textContent = moves(picture) ? b.dataset.pause : b.dataset.play;
}
part("glossary-play").addEventListener("click", () => { setMoving(picture, !moves(picture)); playing(); });

// ---- what it says of the pattern on the bench ----

function judged(key) {
  const { head, parts } = JSON.parse(program()?.judged(key) ?? "{}");
  const section = part("glossary-judged");
  section.hidden = !parts;
  section.replaceChildren();
  if (!parts) return;
  const title = element("h4", head);
  title.id = "glossary-judged-head";
  section.append(title, ...parts.flatMap((p) => [
    ...(p.head ? [element("h5", p.head)] : []),
    ...(p.text ? [element("p", p.text)] : []),
    ...(p.lines ?? []).some((l) => l.name)
      ? [element("dl", "", ...p.lines.map((l) => element("div", "", element("dt", l.name), element("dd", l.text))))]
      : (p.lines ?? []).map((l) => element("p", l.text)),
  ]));
  mark(section, key);
}

part("show-glossary").addEventListener("click", () => { part("more").close(); open(); });
