// Package site serves a folder of built files over HTTP and nothing else:
// only reading, only what lies in the folder, with the strict headers that
// keep the page to its own origin.
package site

import (
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io"
	"io/fs"
	"net/http"
	"net/url"
	"os"
	"path"
	"slices"
	"strings"
	"time"

	"whorlbench/sandbox/words"
)

// Site answers requests from the files of one folder. It keeps nothing open
// between requests, so the folder may be replaced while it runs.
type Site struct {
	dir    string
	hosts  []string
	public []byte // what PublicFile says, nil: what the file in the folder says
}

// New returns the site of the folder dir. A request whose Host names none of
// hosts is refused; no hosts at all means that any is fine.
func New(dir string, hosts []string) *Site { return &Site{dir: dir, hosts: hosts} }

// PublicFile is where the page reads by which address others reach it:
// {"url": ""} means by the one that it was opened at. A build has such a file,
// so that any static host serves the page; it may be edited there.
const PublicFile = "public.json"

// WithPublicURL returns the site with another answer for PublicFile, and with
// the address's host among those that may be asked for, as a proxy before it
// does. An empty address changes nothing.
func (s *Site) WithPublicURL(address string) *Site {
	u, err := url.Parse(address)
	if address == "" || err != nil {
		return s
	}
	with := *s
	with.public, _ = json.Marshal(map[string]string{"url": address}) // texts always can be
	if with.hosts != nil {
		with.hosts = append(slices.Clone(s.hosts), strings.ToLower(u.Hostname()))
	}
	return &with
}

const index = "index.html"

// ServeHTTP implements http.Handler.
func (s *Site) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	setHeaders(w.Header(), r.URL.RawQuery)
	say := &words.SaidCommand.Serve
	if !hostAllowed(r.Host, s.hosts) {
		refuse(w, http.StatusMisdirectedRequest, fmt.Sprintf(say.ForeignHost, r.Host))
		return
	}
	if r.Method != http.MethodGet && r.Method != http.MethodHead {
		w.Header().Set("Allow", "GET, HEAD")
		refuse(w, http.StatusMethodNotAllowed, say.ReadOnly)
		return
	}
	name, ok := fileName(r.URL.Path)
	if !ok {
		refuse(w, http.StatusNotFound, say.NotFound)
		return
	}
	if name == PublicFile && s.public != nil {
		w.Header().Set("Content-Type", contentType(name))
		http.ServeContent(w, r, "", time.Time{}, bytes.NewReader(s.public))
		return
	}
	// Opened anew each time: a build swaps the whole folder for a new one.
	root, err := os.OpenRoot(s.dir)
	if err != nil {
		w.Header().Set("Retry-After", "1")
		refuse(w, http.StatusServiceUnavailable, say.NoFolder)
		return
	}
	defer root.Close()
	s.serve(w, r, root, name)
}

// fileName returns the name within the folder that a request's path means;
// ok is false for one that could mean anything else.
func fileName(urlPath string) (name string, ok bool) {
	name, rooted := strings.CutPrefix(urlPath, "/")
	if !rooted {
		return "", false
	}
	if name == "" {
		return index, true
	}
	if dir, isDir := strings.CutSuffix(name, "/"); isDir {
		name = dir + "/" + index
	}
	// ValidPath leaves no empty, "." or ".." element.
	if !fs.ValidPath(name) || strings.ContainsAny(name, "\\\x00") {
		return "", false
	}
	for elem := range strings.SplitSeq(name, "/") {
		if strings.HasPrefix(elem, ".") {
			return "", false
		}
	}
	return name, true
}

func (s *Site) serve(w http.ResponseWriter, r *http.Request, root *os.Root, name string) {
	say := &words.SaidCommand.Serve
	info, err := root.Stat(name)
	if err == nil && info.IsDir() && isRegular(root, name+"/"+index) {
		// Relative, so that it holds below any path a proxy may add.
		w.Header().Set("Location", "./"+url.PathEscape(path.Base(name))+"/")
		w.WriteHeader(http.StatusMovedPermanently)
		return
	}
	if err != nil || !info.Mode().IsRegular() {
		refuse(w, http.StatusNotFound, say.NotFound)
		return
	}
	h := w.Header()
	h.Add("Vary", "Accept-Encoding")
	coding, ok := choose(r.Header.Values("Accept-Encoding"), func(c string) bool {
		return isRegular(root, name+suffix[c])
	})
	if !ok {
		refuse(w, http.StatusNotAcceptable, say.NoEncoding)
		return
	}
	h.Set("Content-Type", contentType(name))
	if coding != identity {
		h.Set("Content-Encoding", coding)
	}
	if err := send(w, r, root, name+suffix[coding]); err != nil {
		for _, key := range []string{"Content-Encoding", "Content-Length", "Etag"} {
			h.Del(key)
		}
		refuse(w, http.StatusInternalServerError, say.Unreadable)
	}
}

// send answers with one file of the folder. An error means that nothing has
// been written yet.
func send(w http.ResponseWriter, r *http.Request, root *os.Root, name string) error {
	f, err := root.Open(name)
	if err != nil {
		return err
	}
	defer f.Close()
	sum := sha256.New()
	size, err := io.Copy(sum, f)
	if err != nil {
		return err
	}
	if _, err := f.Seek(0, io.SeekStart); err != nil {
		return err
	}
	h := w.Header()
	// The tag is of these very bytes: a new build is noticed however its
	// files are dated.
	h.Set("Etag", `"`+hex.EncodeToString(sum.Sum(nil)[:16])+`"`)
	if h.Get("Content-Encoding") != "" && r.Header.Get("Range") == "" {
		h.Set("Content-Length", fmt.Sprint(size)) // ServeContent leaves it out for an encoded file
	}
	http.ServeContent(w, r, "", time.Time{}, f)
	return nil
}

// isRegular is asked before opening: opening a pipe would wait for its writer.
func isRegular(root *os.Root, name string) bool {
	info, err := root.Stat(name)
	return err == nil && info.Mode().IsRegular()
}

func refuse(w http.ResponseWriter, status int, why string) {
	h := w.Header()
	h.Set("Content-Type", "text/plain; charset=utf-8")
	w.WriteHeader(status)
	io.WriteString(w, why+"\n") // a client that has gone away needs no answer
}

// Errors that Check may give.
var (
	ErrNoFolder = words.Fault(func() string { return words.SaidCommand.Serve.Missing })
	ErrNoIndex  = words.Fault(func() string { return words.SaidCommand.Serve.NoIndex })
)

// Check reports whether dir is a folder that can be served.
func Check(dir string) error {
	root, err := os.OpenRoot(dir)
	if err != nil {
		return ErrNoFolder
	}
	defer root.Close()
	if !isRegular(root, index) {
		return ErrNoIndex
	}
	return nil
}
