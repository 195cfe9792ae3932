package bundle

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
)

// compact are the packages whose speed nobody notices: their functions are not
// put in the place of calls, which makes the program smaller. What draws, and
// what is evaluated point by point, is not among them.
var compact = []string{
	"whorlbench/sandbox/words", "whorlbench/sandbox/bench", "whorlbench/sandbox/session", "whorlbench/sandbox/shelf",
	"whorlbench/sandbox/qr", "whorlbench/sandbox/host", "whorlbench/sandbox", "whorlbench/presets/...",
	"whorlbench/engine/mend", "whorlbench/engine/follow", "whorlbench/engine/naming",
	"archive/zip", "encoding/json", "github.com/pelletier/go-toml/v2/unstable",
}

// Compile builds the Go main package pkg for the browser into the file out.
// Paths, symbols and the state of the work tree are left out of it, so that
// one source gives one program on every machine. The tags are Go build tags.
func Compile(ctx context.Context, pkg, out string, tags ...string) error {
	args := []string{"build", "-trimpath", "-buildvcs=false", "-ldflags", "-s -w", "-tags", strings.Join(tags, ",")}
	for _, room := range compact {
		args = append(args, "-gcflags", room+"=-l")
	}
	cmd := exec.CommandContext(ctx, "go", append(args, "-o", out, pkg)...)
	cmd.Env = append(os.Environ(), "GOOS=js", "GOARCH=wasm")
	if text, err := cmd.CombinedOutput(); err != nil {
		return fmt.Errorf("failed to compile %s: %w\n%s", pkg, err, bytes.TrimSpace(text))
	}
	return os.Chmod(out, 0o644)
}

// copyWasmExec copies the script that starts a Go program in the browser. It
// must be the one of the toolchain that compiled the program.
func copyWasmExec(ctx context.Context, to string) error {
	root, err := exec.CommandContext(ctx, "go", "env", "GOROOT").Output()
	if err != nil {
		return fmt.Errorf("failed to find the Go toolchain: %w", err)
	}
	return copyFile(filepath.Join(strings.TrimSpace(string(root)), "lib", "wasm", WasmExecName), to)
}
