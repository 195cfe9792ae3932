package bench

import "whorlbench/sandbox/scene"

// Forget has the next frame arranged and drawn anew from the ground up.
func (b *Bench) Forget() { b.kept, b.planned = kept{}, planFor{} }

// Keeps reports whether the next frame would draw what moves alone.
func (b *Bench) Keeps() bool {
	g, ok := b.still()
	return ok && b.kept.drawn && g == b.kept.given
}

// CompareViews returns how both sides of a comparison are seen.
func (b *Bench) CompareViews() (left, right scene.View) {
	left, right = b.compareLook(0).View, b.compareLook(1).View
	if b.compare.over {
		right = left
	}
	return left, right
}
