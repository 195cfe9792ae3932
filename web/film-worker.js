// Runs the program that makes pictures and films, beside the page.

importScripts("wasm_exec.js");

onmessage = (e) => {
  const { what, toml, wish } = e.data;
  self.whorlbenchFilm[what](toml, wish);
};

const go = new Go();
WebAssembly.instantiateStreaming(fetch("film.wasm"), go.importObject)
  .then(({ instance }) => go.run(instance))
  .catch((err) => postMessage({ failed: err.message }));
