package naming

// Ruling is what a definition says of a pattern: yes or no, and the clause
// that decided, with the numbers that it needs. Pieces and rounds count from 0.
type Ruling struct {
	Yes        bool
	Clause     Clause
	Piece      int        // the piece, or the first of two, that decided
	Other      int        // the second
	Figures    [2]Figure  // of both
	Difference Difference // between both
	Round      int
	Count      int
	Gap        float64 // m or degrees
	Beat       float64
}

// Clause is the part of a definition that decided. Beside each stand the
// fields of a Ruling that go with it.
type Clause uint8

// The clauses.
const (
	// Of more than one definition.
	NeverCloses  Clause = iota // no; Gap m: the hand ends a round elsewhere
	OnePattern                 // Elementary: yes, CAP: no; Figures[0]; Count pieces
	ThereAndBack               // the same, played forward and back
	TwoPatterns                // Elementary: no, CAP: yes; Piece, Other, Figures, Difference
	NewEachRound               // the same; Piece, Figures[0], Round: it is another pattern there
	HandJumps                  // no; Piece before the jump, Gap m
	PropJumps                  // no; Piece before the jump, Gap degrees
	HeadJumps                  // no; Piece before the jump, Gap m

	// CAP, strict sense.
	NotBroad    // no; the rest as in the broad sense's ruling
	NoFlower    // no; Piece, Figures[0]
	NeverTurns  // no
	TurnsBack   // yes; Piece before the place where the hand turns back
	ArmReverses // yes; Piece before the place where the arm reverses

	// C-cap and S-cap.
	NotStrict    // no
	OtherCircle  // C no; Piece lies on another circle than Other
	WholeCircle  // no; Piece goes all the way round
	UnequalArcs  // C no: some way out is not the way back; Piece
	OneArc       // C yes
	OnlyOneArc   // S no: all on one circle
	NoTurnBack   // S no: the hand never turns back
	NotTwoArcs   // S no; Count arcs from one turning back to the next
	BendOneWay   // S no; Piece and Other bend the same way
	OtherWayBack // S no: the hand does not come back along the same arcs; Piece
	TwoArcs      // S yes

	// Diamond.
	NotStraight  // no; Piece is no straight stroke
	NotFourSides // no; Count places where the hand turns, 5 for more than four, 0 if it stays
	NotSquare    // no: the sides are not equal, or the corners not right angles
	NotRound     // no: the hand does not go round all four sides
	FourSides    // yes

	// Hybrid.
	HandsAlike  // no; Figures of left and right at the beginning
	HandsDiffer // yes; at Beat Piece of the left hand and Other of the right, Figures
	HandsSwap   // yes; the same, though both hands are made of the same patterns

	// Of other readings of words.
	PieceIsOne     // yes; Piece
	NoPieceIs      // no
	OneCircle      // exact isolation yes; Piece
	TwoCircles     // exact isolation no; Piece, Gap m between the radii of hand's and head's circle
	HandsShare     // hybrid no; Piece of the left hand and Other of the right, Figures
	HandsShareNone // hybrid yes
	FlowerBeside   // hybrid yes; at Beat Piece of the left hand and Other of the right, Figures
	NoneBeside     // hybrid no
)
