package link

import (
	"errors"
	"fmt"
	"net/netip"
	"net/url"
	"strings"

	"whorlbench/sandbox/words"
)

// Errors that say why an address is not for others.
var (
	ErrOnlyHere   = errors.New("an address of this device only")
	ErrNotPublic  = errors.New("no address on the web")
	ErrBadAddress = errors.New("no address to share")
)

// Address returns the address that a fragment is put behind, given where the
// page was opened and the public address that the bench was started with,
// which may be empty. It has neither query nor fragment.
//
// With ErrOnlyHere the address comes too: such a link is good on this device,
// in another tab or tomorrow, but is not to be made a code of. With
// ErrNotPublic (a page opened from a file) and ErrBadAddress there is none.
func Address(page, public string) (string, error) {
	if public != "" {
		return PublicURL(public)
	}
	w := &words.Said.Share.Link
	u, err := url.Parse(page)
	if err != nil || !onTheWeb(u) {
		return "", Error{ErrNotPublic, 0, fmt.Sprintf(w.NotPublic, plainly(page))}
	}
	address := bare(u)
	if loopback(u.Hostname()) {
		return address, Error{ErrOnlyHere, 0, fmt.Sprintf(w.OnlyHere, address)}
	}
	return address, nil
}

// PublicURL checks an address that others are said to reach the bench by and
// returns it as links have it. ErrBadAddress is for one that is no web
// address or that leads only to the device itself.
func PublicURL(text string) (string, error) {
	u, err := url.Parse(text)
	if err != nil || !onTheWeb(u) || u.User != nil || u.RawQuery != "" || u.ForceQuery || strings.Contains(text, "#") || loopback(u.Hostname()) {
		return "", Error{ErrBadAddress, 0, fmt.Sprintf(words.Said.Share.Link.BadAddress, plainly(text))}
	}
	return bare(u), nil
}

// bare returns an address without what is not the page's own.
func bare(u *url.URL) string {
	v := url.URL{Scheme: u.Scheme, Host: u.Host, Path: u.Path, RawPath: u.RawPath}
	if v.Path == "" {
		v.Path = "/"
	}
	return v.String()
}

func onTheWeb(u *url.URL) bool {
	return (u.Scheme == "http" || u.Scheme == "https") && u.Hostname() != "" && u.Opaque == ""
}

// loopback reports whether a host means the device that asks: the addresses
// of RFC 1122 and RFC 4291 and the names of RFC 6761.
func loopback(host string) bool {
	host = strings.ToLower(strings.TrimSuffix(host, "."))
	if host == "localhost" || strings.HasSuffix(host, ".localhost") {
		return true
	}
	ip, err := netip.ParseAddr(host)
	if err != nil {
		return false
	}
	ip = ip.Unmap()
	return ip.IsLoopback() || ip.IsUnspecified()
}

// plainly keeps an address that is shown short.
func plainly(s string) string {
	const most = 80 // characters
	if r := []rune(s); len(r) > most {
		return string(r[:most]) + words.Said.Preset.Rest
	}
	return s
}
