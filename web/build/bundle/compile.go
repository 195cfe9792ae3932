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

// Compile builds the Go main package pkg for the browser into the file out.
// Paths, symbols and the state of the work tree are left out of it, so that
// one source gives one program on every machine.
func Compile(ctx context.Context, pkg, out string) error {
	cmd := exec.CommandContext(ctx, "go", "build", "-trimpath", "-buildvcs=false", "-ldflags", "-s -w", "-o", out, pkg)
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
