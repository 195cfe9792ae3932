//go:build browser

package browser

import (
	"context"
	"fmt"
	"math/rand/v2"
	"os"
	"strconv"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/systeminfo"
	"github.com/chromedp/chromedp"
)

// TestKilledAtRandom ends the tab's process by SIGKILL while edits follow each
// other, 50 times (WHORLBENCH_KILLS times): whatever edit had been answered is
// there when the bench is opened again.
func TestKilledAtRandom(t *testing.T) {
	kills := 50
	if n, err := strconv.Atoi(os.Getenv("WHORLBENCH_KILLS")); err == nil {
		kills = n
	}
	seed := uint64(time.Now().UnixNano())
	t.Logf("seed %d", seed)
	r := rand.New(rand.NewPCG(seed, 1))
	v := newVisit(t, screen{"small", 320, 300, 1, false})
	last := 0
	for round := range kills {
		// Edits, each waiting for the answer to the one before.
		edited := make(chan int)
		ctx, stop := context.WithCancel(v.ctx) // a process that is gone does not answer
		go func(n int) {
			for {
				_, err := chromedp.Run(ctx, chromedp.Evaluate[string](fmt.Sprintf(`whorlbenchProgram.rename("edit %d", "")`, n+1)))
				if err != nil {
					edited <- n
					return
				}
				n++
			}
		}(last)
		wait := 5 + r.IntN(250) // ms
		must(t, chromedp.Do(v.ctx, chromedp.Sleep(time.Duration(wait)*time.Millisecond)))
		if v.killRenderers() == 0 {
			t.Fatal("no process of a page was found to kill")
		}
		stop()
		answered := <-edited
		// A browser keeps a process in reserve, and has to notice that it is gone.
		must(t, chromedp.Do(v.ctx, chromedp.Sleep(500*time.Millisecond)))
		again, cancel := chromedp.NewContext(v.ctx)
		t.Cleanup(cancel)
		v.ctx = again
		v.load()
		title := eval[string](v, `whorlbenchProgram.about().title`)
		kept, err := strconv.Atoi(strings.TrimPrefix(title, "edit "))
		if answered > 0 && (err != nil || kept < answered) {
			t.Fatalf("round %d, killed after %d ms: %q is kept, want edit %d or later", round, wait, title, answered)
		}
		last = kept
	}
}

// killRenderers ends every process that runs a page, and returns how many.
func (v *visit) killRenderers() (n int) {
	v.t.Helper()
	info, err := chromedp.CallBrowser(v.ctx, systeminfo.GetProcessInfo, cdp.Empty{})
	must(v.t, err)
	for _, p := range info.ProcessInfo {
		if p.Type == "renderer" && syscall.Kill(int(p.ID), syscall.SIGKILL) == nil {
			n++
		}
	}
	return n
}
