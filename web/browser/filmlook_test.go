//go:build browser

package browser

import "testing"

// TestFilmSheets leaves pictures of the capture sheet with all that it may ask,
// and holds that nothing of it has to be scrolled sideways.
func TestFilmSheets(t *testing.T) {
	for _, s := range []screen{phone, phoneSide, desk, projector} {
		t.Run(s.name, func(t *testing.T) {
			v := newVisit(t, s)
			v.openFilm()
			v.wishes(map[string]any{"format": "mp4", "size": "own", "ground": "colour", "length": "own", "theme": "night", "clicks": true})
			v.wait(`document.getElementById("film-about").textContent.includes("mp4") || document.getElementById("film-refused").textContent !== ""`)
			v.shot("film-all")
			eval[bool](v, `(document.querySelector("[data-film=clicks]").scrollIntoView({ block: "center" }), true)`)
			v.frames(2)
			v.shot("film-clicks")
			if eval[bool](v, `(({ scrollWidth, clientWidth }) => scrollWidth > clientWidth + 1)(document.getElementById("film"))`) {
				t.Error("the sheet has to be scrolled sideways")
			}
			v.clean()
		})
	}
}
