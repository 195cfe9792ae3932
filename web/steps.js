// The pattern told step by step. The program that tells it works beside the
// page, as for pictures and films, and goes when the dialog closes.

import { element, program } from "./page.js";

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

function show(m) {
  told = m;
  const { View, Hands, Together, Tempo, Care } = m.told;
  part("steps-told").replaceChildren(
    element("p", View),
    ...Hands.flatMap((h) => [element("h3", h.Head), element("p", h.Start), element("ul", "", ...h.Steps.map((s) => element("li", s))), element("p", h.Close)]),
    ...(Together ?? []).map((s) => element("p", s)), element("p", Tempo), element("p", Care),
  );
  part("steps-text").value = m.text;
  part("steps-copy").disabled = part("steps-hand").disabled = false;
}

part("show-steps").addEventListener("click", () => {
  part("more").close();
  told = null;
  part("steps-title").textContent = program().about().title;
  part("steps-mirror").checked = document.querySelector("[data-id=mirror]")?.ariaPressed === "true";
  part("steps-told").replaceChildren(element("p", part("steps-told").dataset.loading));
  part("steps-refused").textContent = part("steps-said").textContent = "";
  part("steps-text").hidden = true;
  part("steps-copy").disabled = part("steps-hand").disabled = true;
  part("steps-hand").hidden = !navigator.share;
  part("steps").showModal();
  start();
  if (ready) ask();
});
part("steps-mirror").addEventListener("change", () => { part("steps-said").textContent = ""; if (ready) ask(); });
part("steps").addEventListener("close", end);

part("steps-copy").addEventListener("click", async () => {
  const { copied, byHand } = part("steps-said").dataset;
  try {
    await navigator.clipboard.writeText(told.text);
    part("steps-said").textContent = copied;
  } catch { // forbidden, or the page is not served securely
    const text = part("steps-text");
    text.hidden = false;
    part("steps-said").textContent = byHand;
    text.focus();
    text.select();
    text.scrollIntoView({ block: "center" });
  }
});
part("steps-hand").addEventListener("click", () => navigator.share({ title: told.title, text: told.text }).catch(() => {})); // put away again
