package engine

// Every tolerance of the project, with its reason.
const (
	// TolGap (m): a hand that comes back within a micrometre has come back;
	// far above rounding (1e-13 m), far below what anyone can see or feel.
	TolGap = 1e-6
	// TolPropGap (degrees): the same, for the prop's angle.
	TolPropGap = 1e-6
	// TolKink (m/s): a sideways jump of the head slower than this is lost in
	// the stretch of a tether and the give of a wrist.
	TolKink = 0.05
	// TurnBack (degrees): a hand that changes its heading by more than this
	// turns back. The small excess keeps an exact 135° corner out.
	TurnBack = 135 + 1e-6
	// TolPath (m): paths that differ by less are one path.
	TolPath = 1e-6
	// TolPhase (degrees): how far a phase may be off and still be called
	// extension, isolation, diamond or box. The small excess, far above the
	// rounding of the largest angles, keeps half a degree itself in.
	TolPhase = 0.5 + 1e-9
	// TolRound (m): semi-axes that differ by less make a circle.
	TolRound = 1e-6
	// TolSlack (multiples of the head's weight, and of the greatest pull where
	// that is more): a tether that would have to push with less is taut. A pull
	// that only just comes down to nothing is reckoned to 1e-13 of its parts;
	// nobody feels a billionth of a head's weight.
	TolSlack = 1e-9
	// TolMeet (m): hands nearer than this meet.
	TolMeet = 1e-3

	// seamDust (share of the beat asked for): a beat that is reckoned in a few
	// steps from an exact one is wrong by some units of 2e-16 of itself; one
	// that lies before a seam by less than this is meant to be the seam.
	seamDust = 1e-13
)
