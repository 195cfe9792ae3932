package main

import (
	"context"
	"io"
	"os"
	"strings"
	"testing"
)

// TestRenderByEnding: the ending of the one file that is asked for stands for
// the format, and cannot belie one that is named.
func TestRenderByEnding(t *testing.T) {
	for _, tt := range []struct {
		args   []string
		status int
		begins string // of the file, by its format's own signature
		says   string
	}{
		{[]string{"-o", "a.png"}, fine, "\x89PNG", ""},
		{[]string{"-o", "A.PNG"}, fine, "\x89PNG", ""},
		{[]string{"-o", "a.svg"}, fine, "<svg", ""},
		{[]string{"-o", "a.gif"}, fine, "GIF89a", ""},
		{[]string{"-o", "a.zip"}, fine, "PK", ""},
		{[]string{"-o", "a.apng"}, fine, "\x89PNG", ""},
		{[]string{"-o", "a.png", "--format", "strobe"}, fine, "\x89PNG", ""},
		{[]string{"-o", "a.mine", "--format", "gif"}, fine, "GIF89a", ""},
		{[]string{"-o", "a"}, fine, "GIF89a", ""},
		{[]string{"-o", "a.jpg"}, unusable, "", "found a.jpg, allowed an ending .gif, .png"},
		{[]string{"-o", "a.gif", "--format", "png"}, unusable, "", "found a.gif with --format png, allowed an ending .png"},
		{[]string{"-o", "a.gif", "half-moon.toml"}, unusable, "", "a.gif is one file, found 2 patterns; try: -o a/"},
		{[]string{"-o", "a.mp4", "--format", "apng"}, unusable, "", "allowed an ending .png, .apng"},
	} {
		t.Chdir(t.TempDir())
		status, errs := rendered(t, context.Background(), io.Discard, tt.args...)
		if status != tt.status || !strings.Contains(errs, tt.says) {
			t.Errorf("%v: status %d, %q, want %d, %q", tt.args, status, errs, tt.status, tt.says)
		}
		data, err := os.ReadFile(tt.args[1])
		if tt.status == fine && (err != nil || !strings.Contains(string(data[:min(len(data), 60)]), tt.begins)) {
			t.Errorf("%v: %v, the file begins %.20q, want %q", tt.args, err, data, tt.begins)
		}
		if tt.status != fine && len(left(t)) > 0 {
			t.Errorf("%v: files %v, want none", tt.args, left(t))
		}
	}
}
