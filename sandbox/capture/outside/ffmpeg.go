// Package outside asks ffmpeg, a program that knows nothing of this one, what it
// finds in files and what it makes of frames. It serves tests; each function
// returns exec.ErrNotFound where ffmpeg is not installed.
package outside

import (
	"bytes"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"time"
)

// Decode returns what ffmpeg makes of a file, with flags before its name and
// after it.
func Decode(file []byte, before, after []string) ([]byte, error) {
	out, _, _, err := run(file, before, after)
	return out, err
}

// run is Decode that also tells the time that it takes, and that of all
// processors together.
func run(file []byte, before, after []string) (out []byte, wall, cpu time.Duration, err error) {
	tool, err := exec.LookPath("ffmpeg")
	if err != nil {
		return nil, 0, 0, exec.ErrNotFound
	}
	dir, err := os.MkdirTemp("", "outside")
	if err != nil {
		return nil, 0, 0, err
	}
	defer os.RemoveAll(dir)
	name := filepath.Join(dir, "file") // as ffmpeg goes to and fro in some
	if err := os.WriteFile(name, file, 0o600); err != nil {
		return nil, 0, 0, err
	}
	var said bytes.Buffer
	cmd := exec.Command(tool, append(append(append([]string{"-v", "error"}, before...), "-i", name), append(after, "-")...)...)
	cmd.Stderr = &said
	begin := time.Now()
	if out, err = cmd.Output(); err != nil {
		return nil, 0, 0, fmt.Errorf("ffmpeg: %w: %s", err, said.Bytes())
	}
	return out, time.Since(begin), cmd.ProcessState.UserTime() + cmd.ProcessState.SystemTime(), nil
}
