package main

import (
	"image/color"
	"testing"

	"whorlbench/engine/frac"
	"whorlbench/sandbox/capture"
	"whorlbench/sandbox/scene"
)

// TestRenderFlags: each flag sets its option and no other.
func TestRenderFlags(t *testing.T) {
	for _, tt := range []struct {
		args []string
		want func(o *capture.Options)
	}{
		{nil, func(o *capture.Options) {}},
		{[]string{"--size", "1920x1080"}, func(o *capture.Options) { o.Width, o.Height = 1920, 1080 }},
		{[]string{"--fps", "30000/1001"}, func(o *capture.Options) { o.FPS = frac.New(30000, 1001) }},
		{[]string{"--rounds", "3"}, func(o *capture.Options) { o.Rounds = 3 }},
		{[]string{"--rounds", "whole"}, func(o *capture.Options) {}},
		{[]string{"--slow", "2.5"}, func(o *capture.Options) { o.Slow = frac.New(5, 2) }},
		{[]string{"--at", "1/3"}, func(o *capture.Options) { o.At = frac.New(1, 3) }},
		{[]string{"--per", "petal"}, func(o *capture.Options) { o.Per = capture.PerPetal }},
		{[]string{"--moments", "12"}, func(o *capture.Options) { o.Moments = 12 }},
		{[]string{"--theme", "night"}, func(o *capture.Options) { o.Night = true }},
		{[]string{"--background", "clear"}, func(o *capture.Options) { o.Ground = capture.Clear }},
		{[]string{"--background", "#0a1B2c"}, func(o *capture.Options) {
			o.Ground, o.Colour, o.Night = capture.Coloured, color.NRGBA{10, 27, 44, 255}, true
		}},
		{[]string{"--background", "#ffffff"}, func(o *capture.Options) { o.Ground, o.Colour = capture.Coloured, color.NRGBA{255, 255, 255, 255} }},
		{[]string{"--background", "#000000", "--theme", "day"}, func(o *capture.Options) { o.Ground, o.Colour = capture.Coloured, color.NRGBA{A: 255} }},
		{[]string{"--mirror"}, func(o *capture.Options) { o.Mirror = true }},
		{[]string{"--trail", "half"}, func(o *capture.Options) { o.Show.Trail = scene.HalfRound }},
		{[]string{"--trail", "all"}, func(o *capture.Options) { o.Show.Trail = scene.AllRounds }},
		{[]string{"--trail", "none"}, func(o *capture.Options) { o.Show.Trail = scene.NoTrail }},
		{[]string{"--show", "grid"}, func(o *capture.Options) { o.Show.HideGrid = false }},
		{[]string{"--show", "pieces, title"}, func(o *capture.Options) { o.Show.ByPiece, o.Show.Title = true, true }},
		{[]string{"--show", "timing", "--caption", "Both hands; split"}, func(o *capture.Options) { o.Show.Timing, o.Show.Caption = true, "Both hands; split" }},
		{[]string{"--show", "names,beats,"}, func(o *capture.Options) { o.Show.Names, o.Show.Beats = true, true }},
		{[]string{"--hide", "path,arms"}, func(o *capture.Options) { o.Show.HideHandPath, o.Show.HideArms = true, true }},
		{[]string{"--hide", "letters,kinds"}, func(o *capture.Options) { o.Show.HideLetters, o.Show.PlainInk = true, true }},
	} {
		_, req, _, done := askedFor(append(tt.args, "file"), streams{})
		if done {
			t.Errorf("%q is refused", tt.args)
			continue
		}
		want := capture.Defaults()
		tt.want(&want)
		got := req.Options
		if !got.FPS.Equal(want.FPS) || !got.Slow.Equal(want.Slow) || !got.At.Equal(want.At) {
			t.Errorf("%q: %v, %v, %v, want %v, %v, %v", tt.args, got.FPS, got.Slow, got.At, want.FPS, want.Slow, want.At)
		}
		got.FPS, got.Slow, got.At = want.FPS, want.Slow, want.At // fractions are not compared with ==
		if got != want {
			t.Errorf("%q: %+v, want %+v", tt.args, got, want)
		}
	}
}

// TestRenderSize: nothing but a width and a height is a size.
func TestRenderSize(t *testing.T) {
	for _, text := range []string{"", "360", "360x", "x360", "360x360x1", "360x360 ", "360 x360", "axb", "360×360"} {
		o := capture.Defaults()
		in := texts{size: text, fps: "1", rounds: "1", slow: "1", at: "0", per: "beat", moments: "2", theme: "day", background: "theme", trail: "round"}
		if wrong := in.read(&o); len(wrong) != 1 {
			t.Errorf("size %q: %q, want one line", text, wrong)
		}
	}
}
