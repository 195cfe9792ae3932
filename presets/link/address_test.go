package link_test

import (
	"errors"
	"testing"

	"whorlbench/presets/link"
)

// Which addresses are a device's own: RFC 1122 section 3.2.1.3, RFC 4291
// sections 2.5.2 and 2.5.3, RFC 6761 section 6.3. The hosts are those that RFC
// 2606 and RFC 5737 keep for examples.
func TestAddress(t *testing.T) {
	for _, tt := range []struct {
		page, public string
		want         string
		cause        error
	}{
		{"https://spin.example/", "", "https://spin.example/", nil},
		{"https://spin.example/bench/?from=mail#w1.abc", "", "https://spin.example/bench/", nil},
		{"https://spin.example", "", "https://spin.example/", nil},
		{"https://spin.example:8443/a%20b/index.html", "", "https://spin.example:8443/a%20b/index.html", nil},
		{"http://192.0.2.7:8377/", "", "http://192.0.2.7:8377/", nil},
		{"http://[2001:db8::1]:8377/", "", "http://[2001:db8::1]:8377/", nil},
		{"http://localhost.example/", "", "http://localhost.example/", nil},
		{"https://someone@spin.example/", "", "https://spin.example/", nil},

		{"http://127.0.0.1:8377/#w1.abc", "", "http://127.0.0.1:8377/", link.ErrOnlyHere},
		{"http://127.9.9.9/", "", "http://127.9.9.9/", link.ErrOnlyHere},
		{"http://localhost:8377/", "", "http://localhost:8377/", link.ErrOnlyHere},
		{"http://LocalHost./", "", "http://LocalHost./", link.ErrOnlyHere},
		{"http://bench.localhost/", "", "http://bench.localhost/", link.ErrOnlyHere},
		{"http://[::1]:8377/", "", "http://[::1]:8377/", link.ErrOnlyHere},
		{"http://[::ffff:127.0.0.1]/", "", "http://[::ffff:127.0.0.1]/", link.ErrOnlyHere},
		{"http://0.0.0.0:8377/", "", "http://0.0.0.0:8377/", link.ErrOnlyHere},
		{"file:///home/someone/dist/index.html", "", "", link.ErrNotPublic},
		{"about:blank", "", "", link.ErrNotPublic},
		{"", "", "", link.ErrNotPublic},
		{"http://%zz/", "", "", link.ErrNotPublic},

		{"http://127.0.0.1:8377/", "https://spin.example/bench/", "https://spin.example/bench/", nil},
		{"http://127.0.0.1:8377/", "https://spin.example", "https://spin.example/", nil},
		{"file:///index.html", "http://192.168.1.20:8377/", "http://192.168.1.20:8377/", nil},
		{"https://spin.example/", "ftp://spin.example/", "", link.ErrBadAddress},
		{"https://spin.example/", "spin.example", "", link.ErrBadAddress},
		{"https://spin.example/", "https://", "", link.ErrBadAddress},
		{"https://spin.example/", "https:spin.example", "", link.ErrBadAddress},
		{"https://spin.example/", "http://localhost:8377/", "", link.ErrBadAddress},
		{"https://spin.example/", "https://a:b@spin.example/", "", link.ErrBadAddress},
		{"https://spin.example/", "https://spin.example/?a=b", "", link.ErrBadAddress},
		{"https://spin.example/", "https://spin.example/#", "", link.ErrBadAddress},
	} {
		got, err := link.Address(tt.page, tt.public)
		if got != tt.want || !errors.Is(err, tt.cause) || (err == nil) != (tt.cause == nil) {
			t.Errorf("Address(%q, %q) = %q, %v, want %q, %v", tt.page, tt.public, got, err, tt.want, tt.cause)
		}
	}
}
