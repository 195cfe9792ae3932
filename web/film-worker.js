// Runs the program that makes pictures and films, beside the page. Its address
// says which file has the page's language, none for English.

importScripts("wasm_exec.js");

onmessage = (e) => {
  const { what, toml, wish } = e.data;
  self.whorlbenchFilm[what](toml, wish);
};

async function table() {
  const file = new URLSearchParams(location.search).get("words");
  if (!file) return "";
  const answer = await fetch(file);
  if (!answer.ok) throw new Error(`${file}: ${answer.status}`);
  return answer.text();
}

const go = new Go();
Promise.all([WebAssembly.instantiateStreaming(fetch("film.wasm"), go.importObject), table()])
  .then(([{ instance }, words]) => {
    self.whorlbenchWords = words;
    // A frame whose bytes are in the program's memory, which is another one after it
    // has grown: all at once, so that it cannot grow meanwhile.
    self.whorlbenchFrame = (at, length, settings) => new VideoFrame(new Uint8Array(instance.exports.mem.buffer, at, length), settings);
    return go.run(instance);
  })
  .catch((err) => postMessage({ failed: err.message }));
