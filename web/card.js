// The lesson card: a worker makes it, the sheet shows it, and the browser prints
// it or gives it out as a file.

import { give } from "./page.js";

const part = (id) => document.getElementById(id);
let worker = null, made = null; // made: the document and its name

async function publicAddress() {
  try { return (await (await fetch("public.json")).json()).url ?? ""; } catch { return ""; }
}

function clear() {
  worker?.terminate();
  worker = made = null;
  part("card-look").replaceChildren();
  part("card-paper").replaceChildren();
  part("card-share").hidden = true;
  part("card-print").disabled = part("card-save").disabled = true;
  document.documentElement.classList.remove("has-card");
}

function show() {
  part("more").close();
  clear();
  const { making, failed } = part("card-said").dataset;
  const fail = (why) => { part("card-said").textContent = failed.replace("{why}", why); };
  part("card-said").textContent = making;
  part("card").showModal();
  const file = window.whorlbenchProgram.file();
  if (file.error) { fail(file.error); return; }
  const mine = (worker = new Worker(document.body.dataset.worker));
  const address = publicAddress(); // the worker may be ready first
  mine.onerror = (e) => fail(e.message || "film-worker.js");
  mine.onmessage = async ({ data: m }) => {
    if (m.ready) {
      const wish = { page: new URL("./", location.href).href, public: await address, mirror: false };
      mine.postMessage({ what: "card", toml: file.text, wish: JSON.stringify(wish) });
      return;
    }
    if (mine !== worker) return;
    if (m.failed) fail(m.failed);
    else if (m.card) take(m);
  };
}

function take(m) {
  made = new File([m.card], m.name, { type: "text/html" });
  // The article alone: the document's own style is not for this page, which has it in a file.
  const text = m.card.slice(m.card.indexOf("<article"), m.card.lastIndexOf("</body>"));
  const article = new DOMParser().parseFromString(text, "text/html").querySelector("article");
  part("card-look").replaceChildren(document.importNode(article, true));
  part("card-paper").replaceChildren(document.importNode(article, true));
  document.documentElement.classList.add("has-card");
  part("card-said").textContent = "";
  part("card-save").disabled = false;
  part("card-print").disabled = false;
  part("card-share").hidden = !navigator.canShare?.({ files: [made] });
  worker?.terminate();
  worker = null;
}

part("card-print").hidden = typeof window.print !== "function";
part("card-print").addEventListener("click", () => window.print());
part("card-save").addEventListener("click", () => give(made.name, made, made.type));
part("card-share").addEventListener("click", () => navigator.share({ files: [made] }).catch(() => {})); // put away again
part("show-card").addEventListener("click", show);
part("card").addEventListener("close", clear);
