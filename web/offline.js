// The page as a program of the device: kept for when there is no network, and
// told when a new version is there. Where a browser has no such thing, or a
// host is not secure, the page works as it does without.
//
// When a new version waits, the document gets a cancelable event "updateready"
// with detail.take(), which loads it. Unless that is cancelled, the line
// #update asks.

const part = (id) => document.getElementById(id);
let waiting = null;

function take() {
  const worker = waiting;
  const look = () => { if (worker.state === "activated") location.reload(); };
  worker.addEventListener("statechange", look);
  worker.postMessage("take over");
  look(); // another tab may have taken it
}

function ready(worker) {
  if (worker === waiting) return;
  waiting = worker;
  const told = new CustomEvent("updateready", { cancelable: true, detail: { take } });
  if (!document.dispatchEvent(told)) return;
  part("update").hidden = false;
  window.whorlbenchPage?.announce(part("update-text").textContent);
}

part("update-take").addEventListener("click", take);
part("update-later").addEventListener("click", () => { part("update").hidden = true; });

async function register() {
  let kept;
  try {
    kept = await navigator.serviceWorker.register("sw.js");
  } catch {
    return; // not allowed here
  }
  const follow = (worker) => {
    const first = !kept.active; // nothing is replaced
    const look = () => { if (worker.state === "installed" && !first) ready(worker); };
    worker.addEventListener("statechange", look);
    look();
  };
  kept.addEventListener("updatefound", () => follow(kept.installing));
  if (kept.installing) follow(kept.installing);
  if (kept.waiting) ready(kept.waiting);
  // A bench that stays open for days asks when it is looked at again.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") kept.update().catch(() => {}); // no network
  });
}

// The bench first: what is kept is fetched when it is there, or has failed.
function whenSettled(then) {
  const settled = () => document.documentElement.dataset.state !== undefined;
  if (settled()) { then(); return; }
  const watch = new MutationObserver(() => { if (settled()) { watch.disconnect(); then(); } });
  watch.observe(document.documentElement, { attributeFilter: ["data-state"] });
}
if ("serviceWorker" in navigator && !document.documentElement.classList.contains("stage-only")) whenSettled(register);
