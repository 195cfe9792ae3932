package engine_test

import (
	"bytes"
	"os"
	"os/exec"
	"regexp"
	"testing"
)

// TestNothingFused builds the engine for a processor that can round a product
// and a sum as one operation, and looks for such operations in what comes out.
func TestNothingFused(t *testing.T) {
	if testing.Short() {
		t.Skip("builds the engine for another processor")
	}
	goTool, err := exec.LookPath("go")
	if err != nil {
		t.Skip("no go command to build with")
	}
	build := exec.Command(goTool, "build", "-gcflags=-S", "./...")
	build.Env = append(os.Environ(), "GOOS=linux", "GOARCH=arm64", "CGO_ENABLED=0")
	listing, err := build.CombinedOutput()
	if err != nil {
		t.Fatalf("go build: %v\n%s", err, listing)
	}
	// A product that is not fused shows that there is a listing to look at.
	if !bytes.Contains(listing, []byte("FMULD")) {
		t.Fatal("no listing of the engine's code")
	}
	for _, line := range fused.FindAll(listing, -1) {
		t.Errorf("fused: %s", bytes.TrimSpace(line))
	}
}

// fused matches the fused operations of arm64.
var fused = regexp.MustCompile(`(?m)^.*\tFN?M(ADD|SUB)[DS]\t.*$`)

func TestFusedPattern(t *testing.T) {
	for _, test := range []struct {
		line string
		want bool
	}{
		{"\t0x0068 00104 (engine/track.go:111)\tFNMSUBD\tF0, F3, F4, F3\n", true},
		{"\t0x0068 00104 (engine/track.go:111)\tFMADDD\tF0, F3, F4, F3\n", true},
		{"\t0x0068 00104 (engine/track.go:111)\tFMULD\tF0, F3\n", false},
		{"\t0x0068 00104 (engine/track.go:111)\tFADDD\tF0, F3\n", false},
	} {
		if got := fused.MatchString(test.line); got != test.want {
			t.Errorf("fused.MatchString(%q) = %v, want %v", test.line, got, test.want)
		}
	}
}
