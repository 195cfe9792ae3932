// Goes to the page in the person's language before anything else is loaded. That
// is the language chosen in this tab or in this browser; at a first visit, where the
// page is the one that an address without a name leads to, the browser's own. It
// stays where it is if there is no page in that language.
//
// Going keeps the address's query and fragment and the tab's history state, in which
// there may be work.

window.whorlbenchLanguage = (() => {
  const key = "whorlbench.language";
  const here = document.documentElement.lang;
  const pages = new Map();
  for (const l of document.querySelectorAll("link[rel=alternate][hreflang]")) pages.set(l.hreflang, l.getAttribute("href"));
  const [first] = pages.keys();

  function remembered() {
    try { return history.state?.language ?? localStorage.getItem(key); } catch { return null; }
  }
  function remember(language) {
    try { localStorage.setItem(key, language); } catch { /* it is for this tab, then */ }
    try { history.replaceState({ ...history.state, language }, ""); } catch { /* too large */ }
  }

  const it = {
    leaving: false,
    choose(language) {
      remember(language);
      go(language);
    },
  };
  function go(language) {
    if (language === here || !pages.has(language)) return;
    it.leaving = true;
    const to = pages.get(language) + location.search + location.hash;
    try {
      history.replaceState(history.state, "", to);
      location.reload();
    } catch { // no address may be changed here
      location.replace(to);
    }
  }

  go(remembered() ?? (here === first ? navigator.languages[0]?.split("-")[0] : here));
  return it;
})();
