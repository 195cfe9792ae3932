// Keeps one whole version of the bench for when there is no network. A new
// build has another version here, so the browser takes it as a new script: it is
// fetched in the background, checked, and waits until the page asks for it or
// no page is open any more.

const version = {{json .Version}};
const scope = new URL("./", self.location.href); // works below any path
const prefix = `whorlbench ${scope.pathname} `; // others may live on this host
const cacheName = prefix + version;
const index = "index.html";
const list = "build.json";
const changing = "public.json"; // a host may edit it, so it is asked for each time

const address = (name) => new URL(name === index ? "./" : name, scope).href;

self.addEventListener("install", (e) => e.waitUntil(keep()));

// keep takes every file of this version, or fails and is tried again at a later
// visit: a build that is being replaced would give files of two.
async function keep() {
  const build = await (await take(list)).json();
  if (build.version !== version) throw new Error(`found version ${build.version}, wanted ${version}`);
  const cache = await caches.open(cacheName);
  for (const [name, file] of Object.entries(build.files)) {
    if (name === "sw.js") continue; // the browser keeps it
    const answer = await take(name);
    const bytes = await answer.arrayBuffer();
    if (name !== changing && (await hash(bytes)) !== file.sha256) throw new Error(`${name} is of another version`);
    const headers = new Headers(answer.headers);
    headers.delete("Content-Encoding"); // it is unpacked
    headers.delete("Content-Length");
    await cache.put(address(name), new Response(bytes, { headers }));
  }
}

// take asks the host whether what the browser has is still true, so that what
// the page has just loaded is not loaded twice.
async function take(name) {
  const answer = await fetch(address(name), { cache: "no-cache" });
  if (!answer.ok) throw new Error(`${name}: ${answer.status}`);
  return answer;
}

async function hash(bytes) {
  const sum = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(sum, (b) => b.toString(16).padStart(2, "0")).join("");
}

self.addEventListener("activate", (e) => e.waitUntil(clear()));

async function clear() {
  for (const name of await caches.keys()) {
    if (name.startsWith(prefix) && name !== cacheName) await caches.delete(name);
  }
  // The page of a first visit too: else the next version, finding no page of
  // this one, would not wait to be asked for.
  await self.clients.claim();
}

self.addEventListener("message", (e) => { if (e.data === "take over") self.skipWaiting(); });

self.addEventListener("fetch", (e) => {
  const url = new URL(e.request.url);
  if (e.request.method !== "GET" || url.origin !== scope.origin || !url.pathname.startsWith(scope.pathname)) return;
  const name = url.pathname.slice(scope.pathname.length) || index;
  if (name === list) return; // says what is on the host
  e.respondWith(name === changing ? fresh(e.request, name) : kept(e.request, name));
});

async function kept(request, name) {
  return (await find(name)) ?? fetch(request);
}
async function fresh(request, name) {
  try {
    return await fetch(request);
  } catch (err) {
    const old = await find(name);
    if (old) return old;
    throw err;
  }
}
async function find(name) {
  return (await caches.open(cacheName)).match(address(name));
}
