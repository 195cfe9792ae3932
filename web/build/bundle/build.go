// Package bundle makes the folder that the bench is served from. The same
// sources give the same bytes, and a file that has not changed since the last
// build is not packed again.
package bundle

import (
	"context"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"

	"whorlbench/cmd/whorlbench/site"
	"whorlbench/sandbox/words"
	"whorlbench/web/build/icon"
)

// The names of the files that do not come from the page's folder under the
// same name.
const (
	WasmName     = "whorlbench.wasm"
	FilmName     = "film.wasm"
	WasmExecName = "wasm_exec.js"
	IndexName    = "index.html"
	ManifestName = "build.json"
)

// Options say what to build.
type Options struct {
	Package string        // Go main package of the program
	Film    string        // of the one that makes pictures and films, if there is one
	Pages   string        // folder with index.html and the page's other files
	Out     string        // folder to make
	Words   words.Table   // for index.html
	More    []words.Table // further languages, each of which gets a page and a file of its own
	// Glossaries are written as JSON, by language; the page fetches its own.
	Glossaries map[string]*words.Glossary
	Files      map[string]string // the texts of further files, by their names
	Brotli     int               // quality of brotli, 1 to 11; 0 makes none, but keeps what is still true
}

// screenless is the build tag that leaves the engine out (sandbox/paint).
const screenless = "screenless"

// plainFiles are the endings of the page's files that are taken as they are.
var plainFiles = []string{".js", ".css", ".svg", ".png", ".webmanifest"}

// Build makes the folder o.Out anew. The new one takes the old one's place
// only when it is whole; on an error the old one stays.
func Build(ctx context.Context, o Options) (Manifest, error) {
	if err := mayReplace(o.Out); err != nil {
		return Manifest{}, err
	}
	parent := filepath.Dir(o.Out)
	if err := os.MkdirAll(parent, 0o755); err != nil {
		return Manifest{}, err
	}
	// Beside the old one, so that it is one rename away.
	next, err := os.MkdirTemp(parent, ".dist-*")
	if err != nil {
		return Manifest{}, err
	}
	defer os.RemoveAll(next)
	if err := os.Chmod(next, 0o755); err != nil {
		return Manifest{}, err
	}
	m, err := fill(ctx, next, o)
	if err != nil {
		return Manifest{}, err
	}
	return m, swap(next, o.Out)
}

// fill makes every file of a build in dir.
func fill(ctx context.Context, dir string, o Options) (Manifest, error) {
	if err := Compile(ctx, o.Package, filepath.Join(dir, WasmName)); err != nil {
		return Manifest{}, err
	}
	if o.Film != "" {
		if err := Compile(ctx, o.Film, filepath.Join(dir, FilmName), screenless); err != nil {
			return Manifest{}, err
		}
	}
	if err := copyWasmExec(ctx, filepath.Join(dir, WasmExecName)); err != nil {
		return Manifest{}, err
	}
	if err := copyPlain(o.Pages, dir); err != nil {
		return Manifest{}, err
	}
	for name, text := range o.Files {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			return Manifest{}, err
		}
	}
	if err := writeIcons(o.Pages, dir); err != nil {
		return Manifest{}, err
	}
	if err := writeGlossaries(o.Glossaries, dir); err != nil {
		return Manifest{}, err
	}
	if err := os.WriteFile(filepath.Join(dir, site.PublicFile), []byte("{\"url\": \"\"}\n"), 0o644); err != nil {
		return Manifest{}, err
	}
	m, err := writePages(dir, o)
	if err != nil {
		return Manifest{}, err
	}
	if err := pack(ctx, dir, o.Out, &m, o.Brotli); err != nil {
		return Manifest{}, err
	}
	return m, m.write(filepath.Join(dir, ManifestName))
}

func copyPlain(from, to string) error {
	entries, err := os.ReadDir(from)
	if err != nil {
		return err
	}
	for _, e := range entries {
		name := e.Name()
		if !e.Type().IsRegular() || name[0] == '.' || !slices.Contains(plainFiles, filepath.Ext(name)) {
			continue
		}
		if err := copyFile(filepath.Join(from, name), filepath.Join(to, name)); err != nil {
			return err
		}
	}
	return nil
}

// iconName is the icon as the page has it; the others are drawn from it.
const iconName = "icon.svg"

// iconSides are the sizes (pixels) that a program of the device needs (Web
// Application Manifest; Chromium's criteria for installing).
var iconSides = []int{192, 512}

// writeIcons draws the icon as PNG: as it is, and so that a launcher may cut
// it to its own shape. A page without an icon has none.
func writeIcons(from, to string) error {
	svg, err := os.ReadFile(filepath.Join(from, iconName))
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	if err != nil {
		return err
	}
	i, err := icon.Parse(svg)
	if err != nil {
		return err
	}
	for _, side := range iconSides {
		for kind, maskable := range map[string]bool{"icon": false, "icon-maskable": true} {
			data, err := i.PNG(side, maskable)
			if err != nil {
				return fmt.Errorf("failed to draw the icon: %w", err)
			}
			if err := os.WriteFile(filepath.Join(to, fmt.Sprintf("%s-%d.png", kind, side)), data, 0o644); err != nil {
				return err
			}
		}
	}
	return nil
}

// writeGlossaries writes each language's glossary as glossary.LANG.json.
func writeGlossaries(glossaries map[string]*words.Glossary, to string) error {
	for lang, g := range glossaries {
		data, err := json.Marshal(g)
		if err != nil {
			return fmt.Errorf("failed to write the glossary: %w", err)
		}
		if err := os.WriteFile(filepath.Join(to, "glossary."+lang+".json"), data, 0o644); err != nil {
			return err
		}
	}
	return nil
}

func copyFile(from, to string) error {
	data, err := os.ReadFile(from)
	if err != nil {
		return err
	}
	return os.WriteFile(to, data, 0o644)
}

// writePages fills the templates and surveys the folder, which is otherwise
// whole. They are filled twice: the version that stands in them is made of
// everything, themselves without a version included.
func writePages(dir string, o Options) (Manifest, error) {
	info, err := os.Stat(filepath.Join(dir, WasmName))
	if err != nil {
		return Manifest{}, err
	}
	data := pageOf(o.Words)
	data.WasmSize, data.Languages = info.Size(), languages(o)
	if err := writeTables(dir, o.More); err != nil {
		return Manifest{}, err
	}
	if err := fillPages(o.Pages, dir, data, o.More); err != nil {
		return Manifest{}, err
	}
	before, err := survey(dir)
	if err != nil {
		return Manifest{}, err
	}
	data.Version = before.Version
	if err := fillPages(o.Pages, dir, data, o.More); err != nil {
		return Manifest{}, err
	}
	m, err := survey(dir)
	m.Version = before.Version
	return m, err
}

// mayReplace keeps a mistyped -o from wiping a folder that no build made.
func mayReplace(dir string) error {
	entries, err := os.ReadDir(dir)
	if errors.Is(err, fs.ErrNotExist) || err == nil && len(entries) == 0 {
		return nil
	}
	if err != nil {
		return err
	}
	if _, err := os.Stat(filepath.Join(dir, ManifestName)); err != nil {
		return fmt.Errorf("%s holds files but no %s, so no build made it; it is left alone", dir, ManifestName)
	}
	return nil
}

// swap puts the folder next in the place of out.
func swap(next, out string) error {
	old := next + "-old"
	err := os.Rename(out, old)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	if err := os.Rename(next, out); err != nil {
		return errors.Join(err, os.Rename(old, out))
	}
	return os.RemoveAll(old)
}

func hash(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])
}
