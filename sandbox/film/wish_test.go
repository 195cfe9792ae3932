package film

import (
	"os"
	"strings"
	"testing"

	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/scene"
	"whorlbench/sandbox/words"
)

func halfMoon(t *testing.T) []byte {
	t.Helper()
	data, err := os.ReadFile("../../presets/library/c-caps/half-moon.toml")
	if err != nil {
		t.Fatal(err)
	}
	return data
}

const plain = `{"format": "gif", "width": 180, "height": 120, "fps": "12.5", "slow": "1", "at": "3/2", "moments": 8, "ground": "theme", "show": {"arms": true}}`

// TestWish: each part of a wish sets its option; what is not shown is hidden.
func TestWish(t *testing.T) {
	wish := strings.NewReplacer(`"gif"`, `"webm"`, `"theme"`, `"#102030"`, `"slow": "1"`, `"slow": "2", "rounds": 3, "mirror": true, "trail": 1, "per": 1`).Replace(plain)
	j, err := Read(halfMoon(t), []byte(wish), &words.English)
	if err != nil {
		t.Fatal(err)
	}
	if j.Film != WebM || j.Width != 180 || j.Height != 120 || j.FPS.String() != "25/2" || j.At.String() != "1/2" || j.Rounds != 3 || !j.Mirror || j.Per != capture.PerPetal || j.Show.Trail != scene.HalfRound {
		t.Errorf("%+v, want what was wished", j.Options)
	}
	if j.Ground != capture.Coloured || j.Colour.B != 0x30 || !j.Night {
		t.Errorf("ground %v %v, night %v, want #102030 by night", j.Ground, j.Colour, j.Night)
	}
	if s := j.Show; s.HideArms || !s.HideHandPath || !s.HideGrid || !s.HideLetters || !s.PlainInk || s.Title || s.Beats || s.Names || s.ByPiece {
		t.Errorf("shown is %+v, want the arms only", s)
	}
	if got, want := j.FileName(), "half-moon-180x120-12.5fps.webm"; got != want {
		t.Errorf("file name %q, want %q", got, want)
	}
	// Three rounds of 2 s, half as fast, 12.5 frames a second.
	if l, err := j.Timeline(); err != nil || l.N != 150 {
		t.Errorf("%d frames, %v, want 150", l.N, err)
	}
}

// TestWishRefused: what cannot be is told in words.
func TestWishRefused(t *testing.T) {
	for _, tt := range []struct{ old, with, want string }{
		{`"gif"`, `"sheet", "rounds": 40`, "a sheet of 160 pictures is too long, at most 120"},
		{`"gif"`, `"film"`, `format: found "film"`},
		{`"12.5"`, `"quick"`, `Frames a second: found "quick"`},
		{`"12.5"`, `"60"`, "at most 50 in a GIF"},
		{`180`, `8`, "found 8x120"},
		{`"theme"`, `"red"`, `colour: found "red"`},
		{`"gif", "width": 180`, `"mp4", "width": 181`, "even numbers only for MP4"},
		{`"gif"`, `"mp4", "ground": "clear"`, words.English.Film.Opaque},
		{plain, `{`, "failed to read the wish"},
	} {
		wish := strings.Replace(plain, tt.old, tt.with, 1)
		if strings.Contains(tt.with, "clear") {
			wish = strings.Replace(wish, `"ground": "theme", `, "", 1)
		}
		if _, err := Read(halfMoon(t), []byte(wish), &words.English); err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("%s: error %v, want %q in it", wish, err, tt.want)
		}
	}
}

// TestPreview: it has the shape of what it stands for, and is small.
func TestPreview(t *testing.T) {
	wish := strings.NewReplacer("180", "1080", "120", "1920").Replace(plain)
	j, err := Preview(halfMoon(t), []byte(wish), &words.English)
	if err != nil || j.Format != capture.PNG || j.Width != 480 || j.Height != 853 {
		t.Fatalf("%v, %d by %d, want a PNG of 480 by 853", err, j.Width, j.Height)
	}
}
