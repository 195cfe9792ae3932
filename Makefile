# Everything the project does, by name. Go and make are all it needs; make
# test also needs a Chromium, and installs Debian's if it may; Firefox and
# WebKit are tried where they are.

GO   ?= go
ADDR ?= 127.0.0.1:8377
DIST ?= web/dist
SHOTS ?= web/shots
# Nothing needs git: a copy of the sources builds as well as a clone.
export GOFLAGS ?= -buildvcs=false
# The fuzz target, for how long, and where it stands: also FuzzDecode in
# ./presets/link, FuzzUnpack in ./presets/archive, FuzzRecord in ./sandbox/shelf.
FUZZ     ?= FuzzDecode
FUZZROOM ?= ./presets
FUZZTIME ?= 60s

# What a browser that the tests can drive may be called.
CHROME_NAMES = chromium chromium-browser google-chrome google-chrome-stable
MAC_CHROME   = /Applications/Google Chrome.app/Contents/MacOS/Google Chrome

.DEFAULT_GOAL := help
.NOTPARALLEL:
.PHONY: help run test dist fuzz kill bench bench-frame bench-capture shots size clean vet format unit browser chromium engines ffmpeg npm

help:
	@echo 'make run     build the bench and serve it; ADDR=host:port chooses where'
	@echo 'make test    everything that must hold, in a real browser too'
	@echo 'make dist    build $(DIST), ready for any static host'
	@echo 'make size    hold the download against an empty program of the same engine'
	@echo 'make bench   the Go benchmarks'
	@echo 'make bench-frame  a frame of the bench next to other pages, in Chromium'
	@echo 'make bench-capture  GIFs next to ffmpeg, films next to the bare encoder'
	@echo 'make shots   pictures of every state at four screen sizes, in $(SHOTS)'
	@echo 'make fuzz    feed the file reader nonsense for $(FUZZTIME)'
	@echo 'make kill    end the tab 200 times while edits are made, and look for the work'
	@echo 'make clean   take away what was built'

# A first start spares the half minute of brotli: over loopback it saves nothing.
run:
	$(GO) run ./web/build -o $(DIST) -no-brotli
	$(GO) build -o whorlbench ./cmd/whorlbench
	./whorlbench serve --dir $(DIST) --addr $(ADDR)

dist:
	$(GO) run ./web/build -o $(DIST)

test: chromium engines ffmpeg npm format vet unit dist size browser

format:
	@unformatted=$$($$($(GO) env GOROOT)/bin/gofmt -l .); \
	if [ -n "$$unformatted" ]; then echo "not formatted, run gofmt -w on:"; echo "$$unformatted"; exit 1; fi

vet:
	$(GO) vet ./...
	$(GO) vet -tags browser ./web/...
	GOOS=js GOARCH=wasm $(GO) vet -tags screenless ./sandbox/film/...
	GOOS=js GOARCH=wasm $(GO) vet ./sandbox/... ./web/size/empty ./web/browser/parity ./web/browser/storage

unit:
	$(GO) build ./...
	$(GO) test ./...

browser: dist
	$(GO) test -tags browser -timeout 75m -skip '^TestEngine' ./web/browser/...
	$(GO) test -tags browser -count=1 -v -run '^TestEngine' ./web/browser

size:
	$(GO) run ./web/size

fuzz:
	$(GO) test -run '^$$' -fuzz '^$(FUZZ)$$' -fuzztime $(FUZZTIME) $(FUZZROOM)

# Every state at the four sizes, as the browser tests meet them.
shots: chromium dist
	WHORLBENCH_SHOTS=$(abspath $(SHOTS)) $(GO) test -tags browser -count=1 -run 'TestStates|TestUnusualStates|TestGraphicsLost|TestLargeText' ./web/browser

# A measurement, not a test: it judges nothing.
bench-frame: chromium npm dist
	WHORLBENCH_FRAMES=1 $(GO) test -tags browser -count=1 -timeout 30m -v -run TestFrameTime ./web/browser

# Likewise: bytes, error and time of GIFs next to ffmpeg's of the same frames,
# and how fast films are made in Chromium next to its bare encoder.
bench-capture: chromium dist
	WHORLBENCH_CAPTURE=1 $(GO) test -count=1 -v -run TestAgainstFFmpeg ./sandbox/capture
	WHORLBENCH_CAPTURE=1 $(GO) test -tags browser -count=1 -timeout 30m -v -run 'TestFilmRate|TestGIFRate' ./web/browser

# The tab's process is ended two hundred times while edits are made.
kill: chromium dist
	WHORLBENCH_KILLS=200 $(GO) test -tags browser -count=1 -timeout 30m -v -run TestKilledAtRandom ./web/browser

bench:
	$(GO) test -run '^$$' -bench . -benchmem ./...

clean:
	rm -rf web/dist web/.dist-* web/shots web/node_modules whorlbench

# The browser tests need a browser: one that is named, one that is here, or
# Debian's where it may be installed.
chromium:
	@if [ -n "$$WHORLBENCH_CHROME" ]; then \
		[ -x "$$WHORLBENCH_CHROME" ] || { echo "WHORLBENCH_CHROME=$$WHORLBENCH_CHROME is no program"; exit 1; }; \
	elif for name in $(CHROME_NAMES); do command -v $$name; done | grep -q . || [ -x "$(MAC_CHROME)" ]; then :; \
	elif [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null; then \
		apt-get update && DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends chromium; \
	else \
		echo "make test needs Chromium or Chrome: install it (on Debian: apt-get install chromium)"; \
		echo "or name it: make test WHORLBENCH_CHROME=/path/to/chrome"; \
		exit 1; \
	fi

# Firefox and WebKit are tried too, with Debian's packages where they may be
# installed; elsewhere their tests are left out, and say so.
ENGINES = firefox-esr webkit2gtk-driver xvfb libgl1-mesa-dri
engines:
	@root=; [ "$$(id -u)" = 0 ] || root='sudo -n'; \
	missing() { ! { command -v firefox-esr || command -v firefox; } >/dev/null || ! command -v WebKitWebDriver >/dev/null || ! command -v Xvfb >/dev/null; }; \
	install() { $$root env DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends "$$@"; }; \
	if missing && command -v apt-get >/dev/null && $$root true 2>/dev/null; then \
		install $(ENGINES) || { $$root apt-get update && install $(ENGINES); } || \
		for package in $(ENGINES); do install $$package || echo "$$package cannot be installed"; done; \
	fi; \
	if missing; then echo "Firefox, WebKitWebDriver or Xvfb is not here: tests of what is missing will be left out"; fi

# Films are read by ffprobe. Debian's is installed where it may and can be;
# elsewhere those checks are left out, and say so.
ffmpeg:
	@if command -v ffprobe >/dev/null; then :; \
	elif [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null && apt-get update && DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends ffmpeg; then :; \
	else \
		echo "ffprobe is not here: the checks of films will be left out"; \
	fi

# The check by axe-core needs npm, which fetches what web/package-lock.json
# names. Debian's is installed where it may be; elsewhere that check alone is
# left out, and says so.
npm:
	@if command -v npm >/dev/null; then :; \
	elif [ "$$(id -u)" = 0 ] && command -v apt-get >/dev/null; then \
		apt-get update && DEBIAN_FRONTEND=noninteractive apt-get install -y --no-install-recommends npm; \
	else \
		echo "npm is not here: the check by axe-core will be left out"; \
	fi
