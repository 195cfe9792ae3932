//go:build browser

package browser

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"
)

// driver gives the commands of the W3C's WebDriver (Recommendation of
// 5 June 2018) to a browser and returns the value of the answer.
type driver interface {
	command(c command, params any) (json.RawMessage, error)
}

// command is one of WebDriver, as the two ways to send it name it.
type command struct{ marionette, method, path string }

var (
	newSession = command{"WebDriver:NewSession", http.MethodPost, ""}
	navigate   = command{"WebDriver:Navigate", http.MethodPost, "/url"}
	refresh    = command{"WebDriver:Refresh", http.MethodPost, "/refresh"}
	setRect    = command{"WebDriver:SetWindowRect", http.MethodPost, "/window/rect"}
	execute    = command{"WebDriver:ExecuteScript", http.MethodPost, "/execute/sync"}
	actions    = command{"WebDriver:PerformActions", http.MethodPost, "/actions"}
	screenshot = command{"WebDriver:TakeScreenshot", http.MethodGet, "/screenshot"}
	endSession = command{"WebDriver:DeleteSession", http.MethodDelete, ""}
)

// overHTTP is a driver that is a program of its own, as WebKit's.
type overHTTP struct{ root, session string }

func (d *overHTTP) command(c command, params any) (json.RawMessage, error) {
	address := d.root + "/session"
	if d.session != "" {
		address += "/" + d.session + c.path
	}
	var body io.Reader
	if c.method == http.MethodPost {
		text, err := json.Marshal(params)
		if err != nil {
			return nil, err
		}
		body = bytes.NewReader(text)
	}
	ask, err := http.NewRequest(c.method, address, body)
	if err != nil {
		return nil, err
	}
	client := http.Client{Timeout: patience}
	answer, err := client.Do(ask)
	if err != nil {
		return nil, err
	}
	defer answer.Body.Close()
	var out struct{ Value json.RawMessage }
	if err := json.NewDecoder(answer.Body).Decode(&out); err != nil {
		return nil, fmt.Errorf("%s %s: %w", c.method, address, err)
	}
	if answer.StatusCode != http.StatusOK {
		return nil, fmt.Errorf("%s %s: %s", c.method, address, out.Value)
	}
	if c == newSession {
		var s struct{ SessionID string }
		if err := json.Unmarshal(out.Value, &s); err != nil || s.SessionID == "" {
			return nil, fmt.Errorf("no session in %s (%v)", out.Value, err)
		}
		d.session = s.SessionID
	}
	return out.Value, nil
}

// marionette is Firefox's own door, which its driver would only pass the
// commands on to: JSON with its length before it (Firefox source
// documentation, Marionette, "Protocol").
type marionette struct {
	conn net.Conn
	in   *bufio.Reader
	last int
}

func dialMarionette(port string) (*marionette, error) {
	conn, err := net.Dial("tcp", net.JoinHostPort("127.0.0.1", port))
	if err != nil {
		return nil, err
	}
	d := &marionette{conn: conn, in: bufio.NewReader(conn)}
	if _, err := d.read(); err != nil { // it says who it is
		conn.Close()
		return nil, err
	}
	return d, nil
}

func (d *marionette) read() ([]byte, error) {
	if err := d.conn.SetReadDeadline(time.Now().Add(patience)); err != nil {
		return nil, err
	}
	head, err := d.in.ReadString(':')
	if err != nil {
		return nil, err
	}
	n, err := strconv.Atoi(strings.TrimSuffix(head, ":"))
	if err != nil {
		return nil, fmt.Errorf("the length of a message: %w", err)
	}
	text := make([]byte, n)
	_, err = io.ReadFull(d.in, text)
	return text, err
}

func (d *marionette) command(c command, params any) (json.RawMessage, error) {
	d.last++
	text, err := json.Marshal([]any{0, d.last, c.marionette, params})
	if err != nil {
		return nil, err
	}
	if _, err := fmt.Fprintf(d.conn, "%d:%s", len(text), text); err != nil {
		return nil, err
	}
	text, err = d.read()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", c.marionette, err)
	}
	var answer [4]json.RawMessage // kind, number, error, result
	if err := json.Unmarshal(text, &answer); err != nil {
		return nil, fmt.Errorf("%s: %w", c.marionette, err)
	}
	if string(answer[2]) != "null" {
		return nil, fmt.Errorf("%s: %s", c.marionette, answer[2])
	}
	var out struct{ Value json.RawMessage }
	err = json.Unmarshal(answer[3], &out)
	return out.Value, err
}

// hearing keeps what a program writes.
type hearing struct {
	mu   sync.Mutex
	text bytes.Buffer
}

func (h *hearing) Write(p []byte) (int, error) {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.text.Write(p)
}

func (h *hearing) String() string {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.text.String()
}

// programHere returns the path of the first program that is here, or leaves
// the test out.
func programHere(t *testing.T, names ...string) string {
	t.Helper()
	for _, name := range names {
		if path, err := exec.LookPath(name); err == nil {
			return path
		}
	}
	t.Skipf("not here: %s", strings.Join(names, " or "))
	return ""
}

// started starts a program that ends with the test.
func started(t *testing.T, out io.Writer, env []string, name string, args ...string) {
	t.Helper()
	c := exec.Command(name, args...)
	c.Env, c.Stdout, c.Stderr = append(os.Environ(), env...), out, out
	c.WaitDelay = time.Second // its children may hold what it writes to
	must(t, c.Start())
	t.Cleanup(func() { c.Process.Kill(); c.Wait() })
}

// within tries something until it is there, as programs take a while to start.
func within(what func() bool) bool {
	for end := time.Now().Add(patience); time.Now().Before(end); time.Sleep(20 * time.Millisecond) {
		if what() {
			return true
		}
	}
	return false
}

// display starts a screen in memory and returns what a program with windows
// needs to know: WebGL is drawn in software there.
func display(t *testing.T, home string) (env []string) {
	t.Helper()
	path := programHere(t, "Xvfb")
	r, w, err := os.Pipe()
	must(t, err)
	defer r.Close()
	c := exec.Command(path, "-displayfd", "3", "-screen", "0", "1600x1000x24", "-nolisten", "tcp")
	c.ExtraFiles = []*os.File{w}
	err = c.Start()
	w.Close()
	must(t, err)
	t.Cleanup(func() { c.Process.Kill(); c.Wait() })
	number, err := bufio.NewReader(r).ReadString('\n')
	if err != nil {
		t.Skipf("%s gave no screen: %v", path, err)
	}
	run := filepath.Join(home, "run")
	must(t, os.Mkdir(run, 0o700))
	return []string{
		"DISPLAY=:" + strings.TrimSpace(number), "GDK_BACKEND=x11", "LIBGL_ALWAYS_SOFTWARE=1",
		"HOME=" + home, "XDG_RUNTIME_DIR=" + run, "XDG_CONFIG_HOME=" + filepath.Join(home, ".config"),
		"NO_AT_BRIDGE=1", "GTK_A11Y=none", // no bus is here to ask
	}
}

// startFirefox starts Firefox with a profile of its own. Nothing of the
// network but the bench is asked for, and files are saved without a question.
func startFirefox(t *testing.T, home string, heard *hearing) (driver, error) {
	t.Helper()
	path := programHere(t, "firefox-esr", "firefox")
	env := display(t, home)
	profile, downloads := filepath.Join(home, "profile"), filepath.Join(home, "Downloads")
	must(t, os.Mkdir(profile, 0o755))
	prefs := map[string]any{
		"marionette.port":             0, // any that is free
		"browser.download.folderList": 2, "browser.download.dir": downloads, "browser.download.useDownloadDir": true,
		"browser.download.always_ask_before_handling_new_types": false,
		"browser.shell.checkDefaultBrowser":                     false, "browser.startup.homepage_override.mstone": "ignore",
		"app.update.enabled": false, "app.normandy.enabled": false, "app.shield.optoutstudies.enabled": false, "datareporting.healthreport.uploadEnabled": false, "datareporting.policy.dataSubmissionEnabled": false,
		"toolkit.telemetry.enabled": false, "network.captive-portal-service.enabled": false,
		"network.connectivity-service.enabled": false, "services.settings.server": "data:,#remote-settings-dummy/v1", "messaging-system.rsexperimentloader.enabled": false,
	}
	var text strings.Builder
	for name, value := range prefs {
		set, err := json.Marshal(value)
		must(t, err)
		fmt.Fprintf(&text, "user_pref(%q, %s);\n", name, set)
	}
	must(t, os.WriteFile(filepath.Join(profile, "user.js"), []byte(text.String()), 0o644))
	started(t, heard, env, path, "--marionette", "--no-remote", "--profile", profile, "about:blank")
	var port []byte
	if !within(func() bool {
		port, _ = os.ReadFile(filepath.Join(profile, "MarionetteActivePort"))
		return len(port) > 0
	}) {
		return nil, fmt.Errorf("%s opened no port", path)
	}
	d, err := dialMarionette(strings.TrimSpace(string(port)))
	if err != nil {
		return nil, err
	}
	_, err = d.command(newSession, map[string]any{"capabilities": map[string]any{}})
	return d, err
}

// startWebKit starts WebKitGTK's driver and, by it, its small browser.
func startWebKit(t *testing.T, home string, heard *hearing) (driver, error) {
	t.Helper()
	path := programHere(t, "WebKitWebDriver")
	env := display(t, home)
	must(t, os.Mkdir(filepath.Join(home, ".config"), 0o755))
	must(t, os.WriteFile(filepath.Join(home, ".config", "user-dirs.dirs"), []byte("XDG_DOWNLOAD_DIR=\"$HOME/Downloads\"\n"), 0o644))
	// A port that is free now.
	l, err := net.Listen("tcp", "127.0.0.1:0")
	must(t, err)
	_, port, err := net.SplitHostPort(l.Addr().String())
	must(t, err)
	must(t, l.Close())
	started(t, heard, env, path, "--port="+port)
	if !within(func() bool {
		conn, err := net.Dial("tcp", net.JoinHostPort("127.0.0.1", port))
		if err == nil {
			conn.Close()
		}
		return err == nil
	}) {
		return nil, fmt.Errorf("%s opened no port", path)
	}
	d := &overHTTP{root: "http://127.0.0.1:" + port}
	_, err = d.command(newSession, map[string]any{"capabilities": map[string]any{}})
	if err == nil {
		t.Cleanup(func() { d.command(endSession, nil) })
	}
	return d, err
}
