package qr

import (
	"math/rand/v2"
	"testing"

	goqr "github.com/piglig/go-qr"
)

// A code is, module for module, what another encoder makes of the same text at
// the same levels.
func TestModulesAgree(t *testing.T) {
	const seed, most = 18004, 1273
	t.Logf("seed %d", seed)
	r := rand.New(rand.NewPCG(seed, 1))
	sizes := []int{1, 2, 14, 15, 412, 413, 1272, most}
	for range 120 {
		sizes = append(sizes, 1+r.IntN(most))
	}
	versions := map[int]bool{}
	for _, n := range sizes {
		text := make([]byte, n)
		for i := range text {
			text[i] = byte(' ' + r.IntN(95))
		}
		got, err := encode(string(text))
		if err != nil {
			t.Fatal(err)
		}
		segment, err := goqr.MakeBytes(text)
		if err != nil {
			t.Fatal(err)
		}
		segments := []*goqr.QrSegment{segment}
		want, err := goqr.EncodeSegments(segments, goqr.Medium, 1, easyVersion, -1, true)
		if err != nil {
			want, err = goqr.EncodeSegments(segments, goqr.Low, 1, mostVersion, -1, true)
		}
		if err != nil {
			t.Fatal(err)
		}
		if got.size != want.Size() {
			t.Fatalf("%d bytes: %d modules a side, want %d", n, got.size, want.Size())
		}
		versions[got.size] = true
		wrong := 0
		for at, dark := range got.dark {
			if dark != want.Module(at%got.size, at/got.size) {
				wrong++
			}
		}
		if wrong > 0 {
			t.Errorf("%d bytes, %d modules a side: %d are not as they should be", n, got.size, wrong)
		}
	}
	if len(versions) < 15 {
		t.Errorf("%d versions were tried, want most of the 25", len(versions))
	}
}
