package main

import (
	"bytes"
	"context"
	"errors"
	"io"
	"strings"
	"testing"
)

type fails struct{}

func (fails) Read([]byte) (int, error)  { return 0, errors.New("torn cable") }
func (fails) Write([]byte) (int, error) { return 0, errors.New("disk full") }

// endless never ends, as a device may.
type endless struct{}

func (endless) Read(p []byte) (int, error) {
	for i := range p {
		p[i] = '#'
	}
	return len(p), nil
}

func TestCheckHardInputs(t *testing.T) {
	half := readScript(t, "testdata/check-c-cap.txt").files["half-moon.toml"]
	for _, tt := range []struct {
		name string
		in   io.Reader
		out  io.Writer
		errs string
	}{
		{"input fails", fails{}, io.Discard, "<stdin>: cannot be read: torn cable\n"},
		{"input never ends", endless{}, io.Discard, "<stdin>:1:1: longer than 8388608 bytes, which is no pattern\n"},
		{"output fails", strings.NewReader(half), fails{}, "whorlbench check: cannot write the answer: disk full\n"},
	} {
		var errs bytes.Buffer
		if got := run(context.Background(), []string{"check", "-"}, tt.in, tt.out, &errs); got != unusable {
			t.Errorf("%s: status %d, want %d", tt.name, got, unusable)
		}
		if got := errs.String(); got != tt.errs {
			t.Errorf("%s: %q, want %q", tt.name, got, tt.errs)
		}
	}
}
