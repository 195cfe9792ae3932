package main

import (
	"context"
	"errors"
	"flag"
	"fmt"
	"log"
	"net"
	"net/http"
	"os/signal"
	"strconv"
	"syscall"
	"time"

	"whorlbench/cmd/whorlbench/site"
	"whorlbench/presets/link"
)

const (
	defaultAddr = "127.0.0.1:8377"
	defaultDir  = "web/dist"
	// graceTime lets answers that are under way come to their end.
	graceTime = 5 * time.Second
)

func serve(ctx context.Context, args []string, std streams) int {
	flags := flag.NewFlagSet(program+" serve", flag.ContinueOnError)
	addr := flags.String("addr", defaultAddr, "")
	dir := flags.String("dir", defaultDir, "")
	public := flags.String("public-url", "", "")
	stray, status, done := parse(flags, args, say.Serve.Usage, std)
	if done {
		return status
	}
	if len(stray) > 0 {
		complain(std, say.Stray, flags.Name(), stray[0])
		complain(std, say.TryHelp, flags.Name())
		return unusable
	}
	if *public != "" {
		address, err := link.PublicURL(*public)
		if err != nil {
			complain(std, say.Serve.BadPublic, err)
			return unusable
		}
		*public = address
	}
	if err := site.Check(*dir); err != nil {
		complain(std, say.Serve.NoDist, *dir, err)
		return unusable
	}
	ln, err := net.Listen("tcp", *addr)
	if err != nil {
		complain(std, "%s", listenFault(*addr, err))
		return unusable
	}
	ctx, stop := signal.NotifyContext(ctx, syscall.SIGINT, syscall.SIGTERM)
	defer stop()
	// From here on the address is ours, so what is printed is true.
	hosts := site.LoopbackHosts(ln.Addr())
	if hosts == nil {
		complain(std, say.Serve.Exposed, ln.Addr())
	}
	fmt.Fprintf(std.out, say.Serve.At+"\n", pageURL(ln.Addr()))
	fmt.Fprintln(std.out, say.Serve.Stop)

	if err := serveUntil(ctx, stop, ln, newServer(site.New(*dir, hosts).WithPublicURL(*public), std)); err != nil {
		complain(std, say.Serve.Failed, err)
		return unusable
	}
	return fine
}

func newServer(h http.Handler, std streams) *http.Server {
	return &http.Server{
		Handler:           h,
		ReadHeaderTimeout: 5 * time.Second,
		ReadTimeout:       10 * time.Second,
		WriteTimeout:      2 * time.Minute, // a slow phone and the whole program
		IdleTimeout:       time.Minute,
		MaxHeaderBytes:    64 << 10,
		ErrorLog:          log.New(std.err, "", 0),
	}
}

// serveUntil serves until ctx ends. restore is called then, so that a second
// interrupt ends the program at once.
func serveUntil(ctx context.Context, restore func(), ln net.Listener, srv *http.Server) error {
	failed := make(chan error, 1)
	go func() { failed <- srv.Serve(ln) }()
	select {
	case err := <-failed:
		return err
	case <-ctx.Done():
	}
	restore()
	grace, cancel := context.WithTimeout(context.Background(), graceTime)
	defer cancel()
	if err := srv.Shutdown(grace); err != nil {
		return srv.Close() // who is still downloading is cut off
	}
	return nil
}

// pageURL returns the address to open for a listener's.
func pageURL(addr net.Addr) string {
	host, port, err := net.SplitHostPort(addr.String())
	if err != nil {
		return "http://" + addr.String() + "/"
	}
	if ip := net.ParseIP(host); ip != nil && ip.IsUnspecified() {
		host = "127.0.0.1" // "every address" is none that a browser opens
	}
	return "http://" + net.JoinHostPort(host, port) + "/"
}

// listenFault says why an address cannot be had and what to try.
func listenFault(addr string, err error) string {
	if errors.Is(err, syscall.EADDRINUSE) {
		return fmt.Sprintf(say.Serve.PortTaken, addr, nextAddr(addr))
	}
	cause := err
	if op := (*net.OpError)(nil); errors.As(err, &op) {
		cause = op.Err // without the address twice
	}
	return fmt.Sprintf(say.Serve.NoListen, addr, cause)
}

// nextAddr returns addr with the next port, or with port 0 if there is none.
func nextAddr(addr string) string {
	host, port, err := net.SplitHostPort(addr)
	n, err2 := strconv.Atoi(port)
	if err != nil || err2 != nil || n >= 65535 {
		n = -1
	}
	return net.JoinHostPort(host, strconv.Itoa(n+1))
}
