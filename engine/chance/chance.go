// Package chance gives tests their random numbers; no program imports it.
package chance

import (
	"math/rand/v2"
	"os"
	"strconv"
	"testing"
)

// New returns a source of its own for each test and prints its seed, which
// WHORLBENCH_SEED sets.
func New(t testing.TB) *rand.Rand {
	t.Helper()
	seed := rand.Uint64()
	if s := os.Getenv("WHORLBENCH_SEED"); s != "" {
		var err error
		if seed, err = strconv.ParseUint(s, 10, 64); err != nil {
			t.Fatalf("WHORLBENCH_SEED: %v", err)
		}
	}
	t.Logf("WHORLBENCH_SEED=%d", seed)
	return rand.New(rand.NewPCG(seed, 0))
}
