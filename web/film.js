// The capture sheet: what is to be made, a preview, and the making, which goes
// on in a worker while the bench is used.

import { announce, give } from "./page.js";

const part = (id) => document.getElementById(id);
const words = JSON.parse(part("film-words").textContent);
const controls = [...document.querySelectorAll("[data-film]")];
const key = "whorlbench.film";

const fill = (text, places) => text.replace(/\{(\w+)\}/g, (_, name) => places[name]);

// ---- the choices, and that they are remembered ----

function chosen() {
  return Object.fromEntries(controls.map((el) => [el.dataset.film, el.type === "checkbox" ? el.checked : el.value]));
}
function recall() {
  let last = {};
  try { last = JSON.parse(localStorage.getItem(key)) ?? {}; } catch { /* nothing is kept, or nothing that can be read */ }
  for (const el of controls) {
    const value = last[el.dataset.film];
    if (value === undefined) continue;
    const before = el.value;
    if (el.type === "checkbox") el.checked = value === true;
    else el.value = value;
    if (el.tagName === "SELECT" && el.selectedIndex < 0) el.value = before;
  }
}
function remember(now) {
  try { localStorage.setItem(key, JSON.stringify(now)); } catch { /* storage is forbidden */ }
}

// fit shows the controls that the choices make sense of.
function fit(now) {
  for (const el of document.querySelectorAll("#film [data-when]")) {
    const [name, values] = el.dataset.when.split("=");
    el.hidden = !values.split(",").includes(now[name]);
  }
  if (now.length === "own") {
    const rounds = document.querySelector("#film [data-when^='length=']");
    rounds.hidden = document.querySelector("#film [data-film=length]").parentElement.hidden;
  }
}

// wish is what the worker's program is told.
function wish(now) {
  const [width, height] = now.size === "own" ? [now.width, now.height] : now.size.split("x");
  const whole = (text) => Math.trunc(Number(text)) || 0;
  return JSON.stringify({
    format: now.format, width: whole(width), height: whole(height), fps: now.fps, slow: now.slow, at: now.at,
    rounds: now.length === "own" ? whole(now.rounds) || -1 : whole(now.length),
    per: whole(now.per), moments: whole(now.moments), night: now.theme === "night",
    ground: now.ground === "colour" ? now.colour : now.ground, mirror: now.mirror, clicks: now.clicks, trail: whole(now.trail),
    show: now, caption: now.caption,
  });
}

// ---- the worker ----

let worker = null, ready = false;
let making = null; // the parts that have come, and when it began
let fault = false; // what was made beside the bench has failed
let looking = false, again = false; // a preview is being painted; another is wanted

function start() {
  if (worker) return;
  worker = new Worker(document.body.dataset.worker);
  worker.onmessage = (e) => hear(e.data);
  worker.onerror = (e) => hear({ failed: e.message || "film-worker.js" });
}
function end() {
  if (worker) worker.onmessage = worker.onerror = null; // what it may still be loading is no fault
  worker?.terminate();
  worker = null;
  ready = looking = false;
}
function ask(what) {
  const now = chosen();
  const file = window.whorlbenchProgram.file();
  if (file.error) { part("film-refused").textContent = file.error; return false; }
  worker.postMessage({ what, toml: file.text, wish: wish(now) });
  return true;
}

function look() {
  start();
  if (!ready || looking || making) { again = true; return; }
  again = false;
  looking = ask("look");
}

function hear(m) {
  if (m.ready) { ready = true; if (making) ask("make"); else look(); }
  else if (m.look) seen(m);
  else if (m.part) making?.parts.push(m.part);
  else if (m.made) made(m);
  else if (m.failed) {
    end();
    if (making) settle(fill(words.failed, { why: m.failed }));
    else part("film-refused").textContent = fill(words.failed, { why: m.failed });
  } else if (m.of) progress(m);
}

let url = "";
function seen(m) {
  looking = false;
  part("film-about").textContent = m.about;
  part("film-note").textContent = m.note;
  part("film-refused").textContent = m.refused;
  part("film-make").disabled = m.refused !== "" || making !== null;
  if (m.look.length) {
    URL.revokeObjectURL(url);
    url = URL.createObjectURL(new Blob([m.look], { type: "image/png" }));
    part("film-look").src = url;
    part("film-look").hidden = false;
  } else part("film-look").hidden = true;
  if (again) look();
}

// ---- the making ----

function make() {
  if (making) return;
  start();
  making = { parts: [], began: performance.now() };
  show();
  part("film-said").textContent = "";
  part("film-left-text").textContent = part("film-going").textContent = words.loading;
  part("film-bar").removeAttribute("value");
  part("film-stop").focus();
  if (ready) ask("make");
}

function progress({ done, of }) {
  if (!making) return;
  part("film-bar").value = done / of;
  const now = performance.now();
  making.first ??= { now, done };
  const seconds = done > making.first.done ? ((now - making.first.now) / 1000 / (done - making.first.done)) * (of - done) : 0;
  const left = seconds > 90 ? fill(words.leftLong, { minutes: Math.ceil(seconds / 60) }) : seconds >= 1 ? fill(words.left, { seconds: Math.ceil(seconds) }) : "";
  const text = [fill(words.working, { done, of }), left].filter(Boolean).join(", ");
  part("film-left-text").textContent = text;
  part("film-going").textContent = text;
}

function made({ made: name, type }) {
  const file = new Blob(making.parts, { type });
  settle(fill(words.made, { name, size: size(file.size) }), true);
  give(name, file, type);
}
function size(bytes) {
  const megabytes = new Intl.NumberFormat(document.documentElement.lang, { minimumFractionDigits: 1, maximumFractionDigits: 1 });
  return bytes < 1e6 ? `${Math.ceil(bytes / 1e3)} kB` : `${megabytes.format(bytes / 1e6)} MB`;
}

// settle ends the making. What is said of a fault stays on the bench until it is
// looked at.
function settle(said, well = false) {
  const here = document.activeElement === part("film-stop");
  making = null;
  part("film-said").textContent = part("film-going").textContent = said;
  fault = !well && !part("film").open;
  show();
  if (!part("film").open) announce(said);
  else if (here) part("film-make").focus();
  if (part("film").open) look();
}

// show lets the sheet be what it is now: chosen from, or at work.
function show() {
  const busy = making !== null;
  part("film-making").hidden = part("film-background").hidden = part("film-stop").hidden = !busy;
  part("film-make").hidden = busy;
  part("film-make").disabled = false;
  part("film-right").inert = busy;
  part("film-going").hidden = part("film").open || !(busy || fault);
}

part("film-stop").addEventListener("click", () => { end(); settle(words.stopped); });
part("film-form").addEventListener("submit", (e) => { e.preventDefault(); make(); });
for (const el of controls) {
  el.addEventListener("input", () => {
    const now = chosen();
    remember(now);
    fit(now);
    part("film-make").disabled = false; // what was wrong may be right now, and is told if it is not
    part("film-said").textContent = "";
    look();
  });
}
part("notices").append(part("film-going"));
part("film-going").addEventListener("click", () => part("show-film").click());
part("show-film").addEventListener("click", () => {
  part("more").close();
  document.querySelector("[data-film=at]").value = Math.round(window.whorlbenchProgram.value("playhead") * 100) / 100 + 1;
  fit(chosen());
  if (!making && !fault) part("film-said").textContent = "";
  fault = false;
  part("film").showModal();
  show();
  if (!making) look();
});
// A sheet that is closed and makes nothing keeps no program.
part("film").addEventListener("close", () => { show(); if (!making) end(); });

recall();
