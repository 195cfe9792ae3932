package bundle

import (
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
)

// Manifest says what a build is made of. It lies in the build as build.json.
type Manifest struct {
	Version string          `json:"version"`
	Files   map[string]File `json:"files"`
}

// File is one file of a build.
type File struct {
	Size   int64   `json:"size"` // bytes
	SHA256 string  `json:"sha256"`
	Brotli *Packed `json:"br,omitempty"`
	Gzip   *Packed `json:"gz,omitempty"`
}

// Packed is a file in a content coding, which lies beside it.
type Packed struct {
	Size    int64  `json:"size"` // bytes
	SHA256  string `json:"sha256"`
	Quality int    `json:"quality"`
}

// Names returns the names of the files in order.
func (m Manifest) Names() []string { return slices.Sorted(maps.Keys(m.Files)) }

// survey lists the files of dir. The version is made of all their names and
// bytes.
func survey(dir string) (Manifest, error) {
	entries, err := os.ReadDir(dir)
	if err != nil {
		return Manifest{}, err
	}
	m := Manifest{Files: make(map[string]File)}
	var all strings.Builder
	for _, e := range entries {
		data, err := os.ReadFile(filepath.Join(dir, e.Name()))
		if err != nil {
			return Manifest{}, err
		}
		f := File{Size: int64(len(data)), SHA256: hash(data)}
		m.Files[e.Name()] = f
		fmt.Fprintf(&all, "%s %s\n", f.SHA256, e.Name())
	}
	m.Version = hash([]byte(all.String()))[:12]
	return m, nil
}

func (m Manifest) write(file string) error {
	text, err := json.MarshalIndent(m, "", " ")
	if err != nil {
		return err
	}
	return os.WriteFile(file, append(text, '\n'), 0o644)
}

// readManifest returns the manifest of an earlier build, an empty one where
// there is none that can be read.
func readManifest(dir string) Manifest {
	var m Manifest
	text, err := os.ReadFile(filepath.Join(dir, ManifestName))
	if err != nil || json.Unmarshal(text, &m) != nil {
		return Manifest{}
	}
	return m
}
