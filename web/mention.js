// Finds the words of the glossary in a text, as Glossary.Find of the program
// does: a test holds both to the same answers.

const inWord = /[\p{L}\p{Nd}]/u, capital = /^\p{Lu}/u;
const blanks = (text) => text.replaceAll("-", " ");

// finder takes a glossary and returns what finds its words in a text: a list of
// { from, to, key } from left to right; of two that begin at one place, the longer.
export function finder({ terms, endings }) {
  const names = terms.flatMap((t) => [t.word, ...(t.others ?? [])].map((name) => ({ name: blanks(name), key: t.key, exact: capital.test(name) })));
  names.sort((a, b) => b.name.length - a.name.length);
  const ends = [...endings, ""];

  function longest(text, at) {
    for (const { name, key, exact } of names) {
      const here = blanks(text.slice(at, at + name.length));
      if (exact ? here !== name : !folded(here, name)) continue;
      const end = at + name.length;
      for (const e of ends) {
        if (text.startsWith(e, end) && !inWord.test(letter(text, end + e.length))) return { from: at, to: end + e.length, key };
      }
    }
    return null;
  }

  return (text) => {
    const found = [];
    for (let i = 0; i < text.length; ) {
      if (!inWord.test(letter(text, i))) { i += letter(text, i).length; continue; }
      const m = longest(text, i);
      if (m) { found.push(m); i = m.to; }
      while (i < text.length && inWord.test(letter(text, i))) i += letter(text, i).length;
    }
    return found;
  };
}

const letter = (text, at) => (at < text.length ? String.fromCodePoint(text.codePointAt(at)) : "");

// folded reports whether two texts are one but for their case, letter by letter.
function folded(a, b) {
  return a.length === b.length && a.toLowerCase() === b.toLowerCase() && a.toUpperCase() === b.toUpperCase();
}
