// The pattern told step by step. The program that tells it works beside the
// page, as for pictures and films, and goes when the dialog closes.

import { copy, element, program } from "./page.js";

const part = (id) => document.getElementById(id);

let worker = null, ready = false;
let told = null; // { title, text }

function start() {
  if (worker) return;
  worker = new Worker(document.body.dataset.worker);
  worker.onmessage = (e) => hear(e.data);
  worker.onerror = (e) => hear({ failed: e.message || "film-worker.js" });
}
function end() {
  worker?.terminate();
  worker = null;
  ready = false;
}

function ask() {
  const file = program().file();
  if (file.error) { refuse(file.error); return; }
  worker.postMessage({ what: "steps", toml: file.text, wish: JSON.stringify({ mirror: part("steps-mirror").checked }) });
}

function hear(m) {
  if (m.ready) { ready = true; ask(); }
  else if (m.failed) { end(); refuse(part("steps-refused").dataset.text.replace("%s", () => m.failed)); }
  else if (m.steps) show(JSON.parse(m.steps));
}

function refuse(why) {
  part("steps-told").replaceChildren();
  part("steps-refused").textContent = why;
}

// step is one of the list: its number stands before it, its beats under it.
function step(said, beats) {
  const [, number, text] = said.match(/^(\d+\. )?(.*)$/s);
  const line = element("p", "", ...(number ? [element("span", number)] : []), element("span", text));
  const list = element("ul", "", ...(beats ?? []).map((b) => element("li", b)));
  list.dataset.unlinked = ""; // the same words in each line are no links
  return element("li", "", line, ...(beats ? [list] : []));
}

function show(m) {
  told = m;
  const { View, Hands, Together, Tempo, Care } = m.told;
  part("steps-told").replaceChildren(
    element("p", View),
    ...Hands.flatMap((h) => [element("h3", h.Head), element("p", h.Start), element("ul", "", ...h.Steps.map((s, i) => step(s, h.Beats?.[i]))), element("p", h.Close)]),
    ...(Together ?? []).map((s) => element("p", s)), element("p", Tempo), element("p", Care),
  );
  part("steps-text").value = m.text;
  byHand(false);
  part("steps-copy").disabled = part("steps-hand").disabled = false;
}

part("show-steps").addEventListener("click", () => {
  part("more").close();
  told = null;
  part("steps-title").textContent = program().about().title;
  part("steps-mirror").checked = document.querySelector("[data-id=mirror]")?.ariaPressed === "true";
  part("steps-told").replaceChildren(element("p", part("steps-told").dataset.loading));
  part("steps-refused").textContent = part("steps-said").textContent = "";
  byHand(false);
  part("steps-copy").disabled = part("steps-hand").disabled = true;
  part("steps-hand").hidden = !navigator.share;
  part("steps").showModal();
  start();
  if (ready) ask();
});
part("steps-mirror").addEventListener("change", () => { part("steps-said").textContent = ""; if (ready) ask(); });
part("steps").addEventListener("close", end);

part("steps-copy").addEventListener("click", async () => {
  const said = part("steps-said");
  const done = await copy(part("steps-text"));
  said.textContent = done ? said.dataset.copied : said.dataset.byHand;
  if (!done) byHand(true);
});
// byHand shows the steps as the one text that is marked to be copied, in the place
// of those with links, whose words not every browser would mark.
function byHand(on) {
  part("steps-text").hidden = !on;
  part("steps-told").hidden = on;
  if (on) part("steps-text").scrollIntoView({ block: "nearest" });
}
part("steps-hand").addEventListener("click", () => navigator.share({ title: told.title, text: told.text }).catch(() => {})); // put away again
