package bundle

import (
	"bytes"
	"fmt"
	"html/template"
	"os"

	"whorlbench/sandbox/words"
)

// Page is what index.html is filled with.
type Page struct {
	Words    words.Table
	WasmSize int64  // bytes of the program unpacked, for a true loading bar
	Version  string // of the whole build; changes when any file does
}

func renderFile(from, to string, data Page) error {
	t, err := template.ParseFiles(from)
	if err != nil {
		return fmt.Errorf("failed to read the page: %w", err)
	}
	var page bytes.Buffer
	if err := t.Option("missingkey=error").Execute(&page, data); err != nil {
		return fmt.Errorf("failed to fill the page: %w", err)
	}
	return os.WriteFile(to, page.Bytes(), 0o644)
}
