package main

import (
	"bytes"
	"context"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// A script is one run of the command, written down: sections that begin with
// a line "-- NAME --". The sections args, stdin, stdout, stderr and status
// hold what their names say, every other one is a file that the run finds. In
// args, one line is one argument. What comes before the first section says
// what the script is there for.
type script struct {
	args         []string
	stdin        string
	stdout, errs string
	status       string // "0" if the script does not say
	files        map[string]string
}

var sectionLine = regexp.MustCompile(`(?m)^-- (\S+) --\n`)

func readScript(t *testing.T, file string) script {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	s := script{files: map[string]string{}, status: "0"}
	marks := sectionLine.FindAllSubmatchIndex(text, -1)
	for i, m := range marks {
		end := len(text)
		if i+1 < len(marks) {
			end = marks[i+1][0]
		}
		name, body := string(text[m[2]:m[3]]), string(text[m[1]:end])
		switch name {
		case "args":
			s.args = strings.Split(strings.TrimSuffix(body, "\n"), "\n")
		case "stdin":
			s.stdin = body
		case "stdout":
			s.stdout = body
		case "stderr":
			s.errs = body
		case "status":
			s.status = strings.TrimSpace(body)
		default:
			s.files[name] = body
		}
	}
	return s
}

func TestScripts(t *testing.T) {
	files, err := filepath.Glob("testdata/*.txt")
	if err != nil || len(files) == 0 {
		t.Fatalf("no scripts: %v", err)
	}
	for _, file := range files {
		s := readScript(t, file)
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), s.check)
	}
}

func (s script) check(t *testing.T) {
	t.Chdir(t.TempDir())
	for name, body := range s.files {
		if err := os.WriteFile(name, []byte(body), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	var out, errs bytes.Buffer
	status := run(context.Background(), s.args, strings.NewReader(s.stdin), &out, &errs)
	if got := strconv.Itoa(status); got != s.status {
		t.Errorf("status %s, want %s", got, s.status)
	}
	if got := out.String(); got != s.stdout {
		t.Errorf("standard output:\n%s\nwant:\n%s", got, s.stdout)
	}
	if got := errs.String(); got != s.errs {
		t.Errorf("standard error:\n%s\nwant:\n%s", got, s.errs)
	}
}
