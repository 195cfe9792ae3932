package site

import (
	"net"
	"slices"
	"strings"
)

// LoopbackHosts returns the Host names to allow for a server that listens at
// addr, nil if addr can be reached from beyond this machine. A page elsewhere
// whose name is made to point at this machine is thereby refused.
func LoopbackHosts(addr net.Addr) []string {
	tcp, ok := addr.(*net.TCPAddr)
	if !ok || !tcp.IP.IsLoopback() {
		return nil
	}
	return []string{"localhost", "127.0.0.1", "::1", tcp.IP.String()}
}

// hostAllowed reports whether a Host header, with or without a port, names
// one of hosts.
func hostAllowed(header string, hosts []string) bool {
	if len(hosts) == 0 {
		return true
	}
	host, _, err := net.SplitHostPort(header)
	if err != nil { // no port
		host = header
		if inner, ok := strings.CutPrefix(header, "["); ok {
			host = strings.TrimSuffix(inner, "]")
		}
	}
	return slices.Contains(hosts, strings.ToLower(host))
}
