// Package engine is the mathematics of a spinning pattern: hand paths,
// strokes and pieces with exact speeds, lanes that carry on from piece to
// piece and repeat round after round, and the edits that keep them whole.
//
// The package knows no file, clock or screen; the same input gives the same
// output everywhere. A plane is the complex plane: x to the right, y up, in
// metres. Angles are anticlockwise from +x: Degrees where a person reads
// them, radians (plain float64) where they are computed with. Time is in
// beats; only physics turns beats into seconds.
package engine
