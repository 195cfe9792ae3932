package main

import (
	"bytes"
	"context"
	"strings"
	"testing"
)

func TestUsage(t *testing.T) {
	for _, tt := range []struct {
		args   []string
		status int
		errs   string // first line of standard error; empty: usage on standard output
	}{
		{nil, unusable, "whorlbench: build and understand compound poi patterns"},
		{[]string{"help"}, fine, ""},
		{[]string{"-h"}, fine, ""},
		{[]string{"--help"}, fine, ""},
		{[]string{"juggle"}, unusable, `whorlbench: there is no command "juggle"`},
	} {
		var out, errs bytes.Buffer
		if got := run(context.Background(), tt.args, strings.NewReader(""), &out, &errs); got != tt.status {
			t.Errorf("run(%q) = %d, want %d", tt.args, got, tt.status)
		}
		first, _, _ := strings.Cut(errs.String(), "\n")
		if first != tt.errs {
			t.Errorf("run(%q): standard error begins %q, want %q", tt.args, first, tt.errs)
		}
		if all := out.String() + errs.String(); !strings.Contains(all, "whorlbench serve") || !strings.Contains(all, "whorlbench check") {
			t.Errorf("run(%q) lists not every command there is:\n%s", tt.args, all)
		}
	}
}

// The usage text's sample is a real one.
func TestUsageSample(t *testing.T) {
	for lang, file := range map[string]string{"": "check-c-cap.txt", "de": "check-german.txt"} {
		t.Run(lang, func(t *testing.T) { usageSample(t, lang, file) })
	}
}

func usageSample(t *testing.T, lang, file string) {
	speak(lang)
	defer speak("")
	s := readScript(t, "testdata/"+file)
	answer, _, ok := strings.Cut(s.stdout, "\n\n")
	if !ok {
		t.Fatal("the script's answer has no part before the caution")
	}
	sample := "  " + strings.ReplaceAll(answer, "\n", "\n  ") + "\n"
	if !strings.Contains(say.Usage, sample) {
		t.Errorf("usage:\n%s\nwant in it:\n%s", say.Usage, sample)
	}
}
