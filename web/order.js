// The running order: patterns of a lesson, lined up here and shown one after
// another in the big view. The page holds them as the texts of pattern files.

import { $, announce, button, element, give, listPatterns, picture, program, read, setBig, show, tool, write, openFile } from "./page.js";

const words = JSON.parse($("order-words").textContent);
const key = "whorlbench.order";
const most = 100; // patterns

const fill = (text, places) => text.replace(/\{(\w+)\}/g, (_, name) => places[name]);

let items = []; // { title, text }, and how the list shows them once they were read
let unkept = false; // there was no room: what is here is all there is
let shown = null; // the item that was shown last
let before = null; // the list before the last removal

// ---- kept in this browser ----

// recall takes what is kept, if another tab has changed it, or this is the first
// look.
let lastKept = "";
function recall() {
  const text = read(key);
  if (unkept || text === lastKept) return;
  lastKept = text;
  let kept = [];
  try { kept = JSON.parse(text) ?? []; } catch { /* nothing that can be read */ }
  items = (Array.isArray(kept) ? kept : []).filter((x) => typeof x?.text === "string").map(readItem);
}
function readItem({ title, text }) {
  return program().orderFile(String(title), new TextEncoder().encode(text)).items[0] ?? { title: String(title), text, unread: true };
}
function keep() {
  const text = JSON.stringify(items.map(({ title, text }) => ({ title, text })));
  unkept = !write(key, text);
  if (!unkept) lastKept = text;
  $("order-unkept").textContent = unkept ? words.unkept : "";
}

// change is every change of the list: kept, seen, told.
function change(next, said, undo = null) {
  items = next;
  before = undo;
  keep();
  list();
  say(said);
}
function say(text) {
  $("order-said").textContent = text;
  if (text) announce(text);
}

// ---- the list ----

function list() {
  $("order-list").replaceChildren(...items.map(row));
  $("order-none").hidden = items.length > 0;
  $("order-undo").hidden = !before;
  const none = !items.some((x) => !x.unread);
  for (const id of ["order-start", "order-save"]) $(id).disabled = none;
  $("order-whole").hidden = items.length === 0;
}

function row(x, i) {
  const { title } = x, { dataset } = $("order-list");
  const small = x.unread ? words.unread : x.trade + (x === shown ? ` · ${words.last}` : "");
  const from = button("", ...(x.heads ? [picture(x.heads)] : []), element("span", "", element("b", title), element("small", small)));
  from.setAttribute("aria-label", `${fill(words.place, { n: i + 1, of: items.length, title })}. ${small}. ${fill(words.start, { title })}`);
  from.classList.toggle("shown", x === shown);
  from.addEventListener("click", () => start(i));
  const move = (text, label, by) => {
    const b = tool(text, fill(label, { title }), () => {
      if (b.ariaDisabled === "true") return;
      const next = items.toSpliced(i, 1).toSpliced(i + by, 0, x);
      change(next, fill(words.place, { n: i + by + 1, of: items.length, title }));
      tools(i + by)[by < 0 ? 0 : 1].focus();
    });
    if (!items[i + by]) b.ariaDisabled = "true";
    return b;
  };
  const li = element("li", "", from, element("div", "",
    move(dataset.up, words.up, -1), move(dataset.down, words.down, 1),
    tool(dataset.open, fill(words.open, { title }), () => openFile(new File([x.text], `${title}.toml`))),
    tool(dataset.remove, fill(words.remove, { title }), () => {
      change(items.toSpliced(i, 1), fill(words.removed, { title }), items);
      $("order-undo").focus();
    })));
  li.classList.toggle("unread", x.unread === true);
  return li;
}
const tools = (i) => $("order-list").children[i].querySelectorAll(".tool");

$("order-undo").textContent = words.undo;
$("order-undo").addEventListener("click", () => {
  change(before, words.back);
  $("order-head").focus();
});
$("order-clear").addEventListener("click", () => {
  change([], words.cleared, items);
  $("order-undo").focus();
});

// ---- what is added ----

// add takes what the program has read, names what it could not, and says how
// much was left out.
function add(found, problems, left = 0) {
  const room = Math.max(most - items.length, 0);
  if (found.length > room) problems.push(fill(words.tooMany, { allowed: most, found: items.length + found.length }));
  const taken = found.slice(0, room);
  $("order-wrong").hidden = problems.length === 0;
  $("order-wrong").querySelector("pre").textContent = problems.join("\n");
  const said = [taken.length ? fill(words.taken[taken.length > 1 ? 1 : 0], { n: taken.length }) : ""];
  if (!found.length && !problems.length) said.push(words.nothing);
  if (left) said.push(fill(words.left, { n: left }));
  change([...items, ...taken], said.filter(Boolean).join(" "));
}

// addFiles takes pattern files and ZIP files of them, in the order of their
// paths; all else is left out.
const byPath = new Intl.Collator(document.documentElement.lang, { numeric: true });
async function addFiles(files) {
  const path = (f) => f.path ?? (f.webkitRelativePath || f.name);
  const good = [...files].filter((f) => /^[^.].*\.(toml|zip)$/i.test(f.name)).sort((a, b) => byPath.compare(path(a), path(b)));
  const found = [], problems = [];
  for (const f of good) {
    try {
      const r = program().orderFile(path(f), new Uint8Array(await f.arrayBuffer()));
      found.push(...r.items);
      if (r.problems) problems.push(r.problems);
    } catch (err) {
      problems.push(`${path(f)}: ${err.message}`);
    }
  }
  add(found, problems, files.length - good.length);
}
for (const [opener, input] of [["order-add-files", "order-files"], ["order-add-folder", "order-folder"]]) {
  $(opener).addEventListener("click", () => $(input).click());
  $(input).addEventListener("change", () => {
    const files = [...$(input).files];
    $(input).value = "";
    addFiles(files);
  });
}
$("order-add-folder").hidden = !("webkitdirectory" in $("order-folder"));

// What is dropped on the open list is for it, and so are several files or a
// folder, wherever they are dropped.
addEventListener("drop", (e) => {
  const entries = [...e.dataTransfer.items].map((x) => x.webkitGetAsEntry?.()).filter(Boolean);
  const open = $("order").open;
  if (!program() || !entries.length || !(open || entries.length > 1 || entries[0].isDirectory)) return;
  e.preventDefault();
  e.stopImmediatePropagation();
  $("drop").hidden = true;
  if (!open) showOrder();
  Promise.all(entries.map(within)).then((files) => addFiles(files.flat()));
}, true);

// within returns a dropped file, or the files in a dropped folder, with their
// paths.
async function within(entry) {
  if (entry.isFile) {
    const file = await new Promise((done, failed) => entry.file(done, failed));
    file.path = entry.fullPath.slice(1);
    return [file];
  }
  const reader = entry.createReader(), all = [];
  for (;;) { // it gives a hundred at a time
    const some = await new Promise((done, failed) => reader.readEntries(done, failed));
    if (!some.length) break;
    all.push(...some);
  }
  return (await Promise.all(all.map(within))).flat();
}

// What this browser has is picked from the list of patterns, which stays for more;
// what was added last is said there.
function addPicked(kind, id) {
  const r = program().orderPick(kind, id), n = items.length;
  add(r.items, r.problems ? [r.problems] : []);
  return items.length > n ? fill(words.added, { n: items.length, title: items.at(-1).title }) : $("order-wrong").querySelector("pre").textContent;
}
$("order-pick").addEventListener("click", () => {
  const { head, intro } = $("order-pick").dataset;
  listPatterns({ head, intro, stays: true, take: (from, id) => addPicked(from === "own" ? "own" : "built-in", id) });
});
$("order-add-open").addEventListener("click", () => addPicked("open", ""));

// ---- out of the list ----

$("order-save").addEventListener("click", () => {
  const { name, data, problems } = program().orderPack(items.filter((x) => !x.unread).map((x) => x.text));
  if (data.length) give(name, data, "application/zip");
  if (problems) say(problems);
});

let running = []; // what the big view goes through
function start(i) {
  running = items.filter((x) => !x.unread);
  const at = Math.max(running.indexOf(items[i]), 0);
  $("order").close();
  setBig(true);
  const problems = program().orderShow(running.map((x) => x.text), at);
  if (problems) { setBig(false); showOrder(); say(problems); }
}
$("order-start").addEventListener("click", () => start(items.findIndex((x) => !x.unread)));

function showOrder() {
  $("more").close();
  recall();
  shown = running[program().orderAt()] ?? null;
  before = null;
  $("order-wrong").hidden = true;
  $("order-said").textContent = "";
  list();
  show("order");
}
$("show-order").addEventListener("click", showOrder);
addEventListener("storage", (e) => {
  if (e.key !== key || !$("order").open || !program()) return;
  recall();
  list();
});
