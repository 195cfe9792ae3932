package main

import (
	"bytes"
	"context"
	"flag"
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
	lang         string // what names the language, if anything does
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
		case "lang":
			s.lang = strings.TrimSpace(body)
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
		full, err := filepath.Abs(file)
		if err != nil {
			t.Fatal(err)
		}
		t.Run(strings.TrimSuffix(filepath.Base(file), ".txt"), func(t *testing.T) { s.check(t, full) })
	}
}

// update writes what the command prints into the scripts: read the
// difference line by line before it is kept.
var update = flag.Bool("update", false, "write the answers into the scripts")

// rewrite puts new bodies in the place of a script's sections; a section that
// it has not and that would be empty stays away.
func rewrite(t *testing.T, file string, bodies map[string]string) {
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	out := sectionLine.Split(string(text), -1)[0]
	marks := sectionLine.FindAllStringSubmatchIndex(string(text), -1)
	for i, m := range marks {
		end := len(text)
		if i+1 < len(marks) {
			end = marks[i+1][0]
		}
		name, body := string(text[m[2]:m[3]]), string(text[m[1]:end])
		if b, ok := bodies[name]; ok {
			body = b
			delete(bodies, name)
		}
		out += "-- " + name + " --\n" + body
	}
	for _, name := range []string{"stdout", "stderr"} {
		if b := bodies[name]; b != "" {
			out += "-- " + name + " --\n" + b
		}
	}
	if err := os.WriteFile(file, []byte(out), 0o644); err != nil {
		t.Fatal(err)
	}
}

func (s script) check(t *testing.T, file string) {
	t.Chdir(t.TempDir())
	for name, body := range s.files {
		if err := os.WriteFile(name, []byte(body), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	var out, errs bytes.Buffer
	speak(s.lang)
	defer speak("")
	status := run(context.Background(), s.args, strings.NewReader(s.stdin), &out, &errs)
	if *update {
		rewrite(t, file, map[string]string{"stdout": out.String(), "stderr": errs.String()})
		return
	}
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
