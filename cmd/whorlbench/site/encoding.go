package site

import (
	"strconv"
	"strings"
)

const identity = "identity"

// codings are those that a file may lie in ready, the preferred first.
var codings = []string{"br", "gzip", identity}

// suffix is what a file's name has in addition when it lies in a coding.
var suffix = map[string]string{"br": ".br", "gzip": ".gz", identity: ""}

// choose returns the coding to answer in: of those that are ready, the one
// with the client's greatest weight, the preferred one on a tie (RFC 9110,
// 12.5.3). ok is false if the client takes none of them.
func choose(accept []string, ready func(coding string) bool) (coding string, ok bool) {
	weights := parseAccept(accept)
	best := 0.0
	for _, c := range codings {
		q := weight(weights, c)
		if q > best && (c == identity || ready(c)) {
			coding, best = c, q
		}
	}
	return coding, best > 0
}

// leastIdentity is the weight of an answer as it is when the client names no
// weight for it: below any that can be written, as a weight has three places.
const leastIdentity = 1e-4

func weight(weights map[string]float64, coding string) float64 {
	if q, ok := weights[coding]; ok {
		return q
	}
	any, ok := weights["*"]
	if coding != identity {
		return any
	}
	if ok && any == 0 {
		return 0
	}
	return leastIdentity
}

// parseAccept reads Accept-Encoding headers. What cannot be read is as if not
// sent; a weight that cannot be read refuses its coding.
func parseAccept(headers []string) map[string]float64 {
	weights := make(map[string]float64)
	for part := range strings.SplitSeq(strings.Join(headers, ","), ",") {
		coding, params, _ := strings.Cut(part, ";")
		coding = strings.ToLower(strings.TrimSpace(coding))
		if coding == "" {
			continue
		}
		if coding == "x-gzip" { // RFC 9110, 8.4.1.3
			coding = "gzip"
		}
		weights[coding] = quality(params)
	}
	return weights
}

func quality(params string) float64 {
	for p := range strings.SplitSeq(params, ";") {
		key, value, ok := strings.Cut(p, "=")
		if !ok || !strings.EqualFold(strings.TrimSpace(key), "q") {
			continue
		}
		q, err := strconv.ParseFloat(strings.TrimSpace(value), 64)
		if err != nil || !(q >= 0 && q <= 1) {
			return 0
		}
		return q
	}
	return 1
}
