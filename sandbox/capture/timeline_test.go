package capture

import (
	"testing"

	"whorlbench/engine/frac"
)

func f(s string) frac.Frac {
	x, err := frac.Parse(s)
	if err != nil {
		panic(err)
	}
	return x
}

// TestClock: delays are whole ticks that differ by one at most and add up to
// the loop's time.
func TestClock(t *testing.T) {
	for _, tt := range []struct {
		seconds   string
		n         int
		perSecond int64
		all       int
		least     int
		most      int
	}{
		{"2", 50, 100, 200, 4, 4},   // 25 a second: exactly 4 hundredths
		{"8/3", 67, 100, 267, 3, 4}, // four beats at 90 a minute
		{"1", 30, 100, 100, 3, 4},   // 30 a second is no whole number of hundredths
		{"4/3", 66, 100, 133, 2, 3}, // as many as have two hundredths each
		{"2.504", 63, 1000, 2504, 39, 40},
		{"0.004", 1, 100, 0, 0, 0},
	} {
		c := Timeline{N: tt.n, Seconds: f(tt.seconds), Beats: f("4")}.Clock(tt.perSecond)
		all, least, most := 0, 1<<30, 0
		for k := range tt.n {
			d := c.Delay(k)
			all, least, most = all+d, min(least, d), max(most, d)
		}
		if all != tt.all || least != tt.least || most != tt.most {
			t.Errorf("%s s in %d frames: %d ticks of %d to %d, want %d of %d to %d", tt.seconds, tt.n, all, least, most, tt.all, tt.least, tt.most)
		}
	}
}

// TestTimeline: frames are spread evenly over the beats, and none is shown
// twice: the one after the last is the first.
func TestTimeline(t *testing.T) {
	for _, tt := range []struct {
		id     string
		change func(o *Options)
		n      int
		beats  string
	}{
		{"half-moon", nil, 50, "4"}, // 4 beats at 120 a minute are 2 s
		{"half-moon", func(o *Options) { o.FPS = f("24") }, 48, "4"},
		{"half-moon", func(o *Options) { o.Slow = f("2") }, 100, "4"},
		{"half-moon", func(o *Options) { o.Rounds = 3 }, 150, "12"},
		{"half-moon", func(o *Options) { o.FPS = f("7"); o.Slow = f("1.1") }, 15, "4"}, // 15.4 frames
	} {
		l := libraryTake(t, tt.id, tt.change).Timeline()
		if l.N != tt.n || !l.Beats.Equal(f(tt.beats)) {
			t.Errorf("%s: %d frames of %v beats, want %d of %s", tt.id, l.N, l.Beats, tt.n, tt.beats)
		}
		for k := range l.N {
			if got, want := l.Beat(k), f(tt.beats).Float()*float64(k)/float64(tt.n); got < want-1e-12 || got > want+1e-12 {
				t.Errorf("%s: frame %d shows beat %v, want %v", tt.id, k, got, want)
			}
		}
	}
}
