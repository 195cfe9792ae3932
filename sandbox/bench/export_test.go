package bench

// Forget has the next frame arranged and drawn anew from the ground up.
func (b *Bench) Forget() { b.kept, b.planned = kept{}, planFor{} }

// Keeps reports whether the next frame would draw what moves alone.
func (b *Bench) Keeps() bool {
	g, ok := b.still()
	return ok && b.kept.drawn && g == b.kept.given
}
