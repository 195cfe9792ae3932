package words

// Glossary explains the words of the trade and the bench's own. The page has it
// as JSON.
type Glossary struct {
	Others string `json:"others"` // %s: other names
	Shows  string `json:"shows"`  // %s: a pattern's title
	Comma  string `json:"comma"`  // between words
	// Endings are what may follow a name where it stands in a text.
	Endings []string `json:"endings"`
	Terms   []Term   `json:"terms"`
}

// Term is one word. Where people differ about what it means, each use is a
// sentence of its own.
type Term struct {
	Key     string   `json:"key"`
	Word    string   `json:"word"`
	Others  []string `json:"others,omitempty"` // other names in use
	Says    []string `json:"says"`             // sentences
	Shows   string   `json:"shows"`            // the id of a built-in pattern that shows it
	Related []string `json:"related"`          // keys
}

// EnglishGlossary belongs to English, but stands by itself: the page fetches its
// language's when it is asked for.
var EnglishGlossary = Glossary{
	Others: "Also called %s.", Shows: "See it move: %s", Comma: ", ",
	Endings: []string{"s", "es", "’s"},
	Terms: []Term{
		{
			Key: "poi", Word: "poi", Others: []string{"poi spinning"},
			Says: []string{
				"A weight on a tether, one for each hand, swung in circles; the word is Māori, and so is the art.",
				"A poi can pull but never push, so the tether has to stay taut.",
			},
			Shows: "half-moon", Related: []string{"tether", "staff", "prop"},
		},
		{
			Key: "staff", Word: "staff", Others: []string{"stick", "rigid prop"},
			Says: []string{
				"A prop that is stiff from hand to head, so it can push as well as pull.",
				"A staff can stop and turn back where a poi would go slack.",
			},
			Shows: "turned-back", Related: []string{"poi", "prop", "stop"},
		},
		{
			Key: "prop", Word: "prop",
			Says: []string{
				"Whatever is spun: a poi, a staff, a club.",
				"On the bench it is drawn as a line from hand to head.",
			},
			Shows: "half-moon", Related: []string{"poi", "staff", "head"},
		},
		{
			Key: "head", Word: "prop head", Others: []string{"the head"},
			Says: []string{
				"The far end of the prop, the part that draws the picture.",
			},
			Shows: "half-moon", Related: []string{"tether", "prop"},
		},
		{
			Key: "tether", Word: "tether", Others: []string{"cord", "leash"},
			Says: []string{
				"What ties the head of a poi to the hand: a cord or a chain.",
				"It passes a pull along itself and nothing across itself.",
			},
			Shows: "slack-water", Related: []string{"poi", "slack", "handle"},
		},
		{
			Key: "handle", Word: "handle", Others: []string{"grip", "knob"},
			Says: []string{
				"The near end of the prop, the part that is held; here it is where the hand is.",
			},
			Shows: "mooring-post", Related: []string{"tether", "hand-path"},
		},
		{
			Key: "arm", Word: "arm",
			Says: []string{
				"Here, the line from the middle of the hand path to the hand; its turning is the turning of the arm.",
				"Your own arm does what it must so that the hand stays on that path.",
			},
			Shows: "beam-from-the-mole", Related: []string{"hand-path", "extension"},
		},
		{
			Key: "hand-path", Word: "hand path", Others: []string{"path of the hand"},
			Says: []string{
				"The line along which the hand goes: a circle, an ellipse, a straight line or just one point.",
			},
			Shows: "ferry-run", Related: []string{"arm", "stroke"},
		},
		{
			Key: "plane", Word: "plane",
			Says: []string{
				"The flat sheet in which a prop is spun.",
				"There are three: wall, wheel and floor.",
			},
			Shows: "half-moon", Related: []string{"wall-plane", "wheel-plane", "floor-plane"},
		},
		{
			Key: "wall-plane", Word: "wall plane", Others: []string{"frontal plane"},
			Says: []string{
				"The plane that faces the audience, like a picture on a wall in front of or behind you.",
			},
			Shows: "half-moon", Related: []string{"plane", "wheel-plane", "floor-plane"},
		},
		{
			Key: "wheel-plane", Word: "wheel plane", Others: []string{"side plane"},
			Says: []string{
				"The plane beside you that runs fore and aft, like the wheel of a cart.",
			},
			Shows: "paddle-steamer", Related: []string{"plane", "wall-plane", "floor-plane"},
		},
		{
			Key: "floor-plane", Word: "floor plane", Others: []string{"horizontal plane"},
			Says: []string{
				"The level plane, like a table top, above the head or around the body.",
			},
			Shows: "weather-vane", Related: []string{"plane", "wall-plane", "wheel-plane"},
		},
		{
			Key: "spin", Word: "spin", Others: []string{"spinning"},
			Says: []string{
				"The turning of the prop, counted in turns and by which way round it goes.",
			},
			Shows: "mooring-post", Related: []string{"in-spin", "antispin", "static-spin"},
		},
		{
			Key: "in-spin", Word: "in-spin", Others: []string{"inspin"},
			Says: []string{
				"The prop turns the same way round as the hand: twice or more to one turn of the arm in a flower, a fraction in a star.",
				"At the tips of its petals hand and prop point the same way; between them the head comes in toward the middle, in most sizes with a loop.",
			},
			Shows: "twin-lanterns", Related: []string{"antispin", "flower", "petal"},
		},
		{
			Key: "antispin", Word: "antispin", Others: []string{"anti-spin"},
			Says: []string{
				"The prop turns the other way round than the hand.",
				"Its petals are the tips at which hand and prop point the same way.",
			},
			Shows: "three-sails", Related: []string{"in-spin", "flower", "petal"},
		},
		{
			Key: "flower", Word: "flower",
			Says: []string{
				"What the head draws when the hand goes round a circle and the prop turns a whole number of times to each turn of the arm: twice or more the same way, or once or more the other way.",
				"With one turn each the same way there are no petals; that is an extension, an isolation or a unit turn, and the strict sense of CAP counts it as a flower.",
				"It is named by its petals and by in-spin or antispin.",
			},
			Shows: "compass-card", Related: []string{"petal", "in-spin", "antispin", "star-flower"},
		},
		{
			Key: "petal", Word: "petal", Others: []string{"petal tip"},
			Says: []string{
				"One of the loops or tips of a flower; at its tip the prop points straight out from the middle.",
				"Until a flower closes, prop and arm differ by as many turns as it has petals; turns the other way round count as minus.",
			},
			Shows: "compass-card", Related: []string{"flower", "box-mode", "diamond-mode"},
		},
		{
			Key: "extension", Word: "extension",
			Says: []string{
				"Hand and prop go round together in one straight line, with the prop pointing outward: one long arm.",
			},
			Shows: "beam-from-the-mole", Related: []string{"isolation", "unit-turn", "giants"},
		},
		{
			Key: "isolation", Word: "isolation",
			Says: []string{
				"Hand and prop go round together with the prop pointing back across the middle.",
				"In the exact sense hand and head share one circle, so the hand’s circle is as wide as the tether is long: half the tether from its middle to its edge.",
				"In the loose sense any size of circle will do as long as the prop points back at the middle.",
				"The bench uses the loose sense for the name and shows how exact it is by the picture.",
			},
			Shows: "tide-ring", Related: []string{"extension", "unit-turn"},
		},
		{
			Key: "unit-turn", Word: "unit turn", Others: []string{"unit circle"},
			Says: []string{
				"Arm and prop make one turn together, at one angle to each other all the time.",
				"Extension and isolation are the two with a name of their own.",
			},
			Shows: "capstan", Related: []string{"extension", "isolation"},
		},
		{
			Key: "cateye", Word: "cateye", Others: []string{"cat eye", "cat’s eye"},
			Says: []string{
				"The two-petal antispin flower: one turn of the hand, one turn of the prop the other way.",
				"The head draws an ellipse, or a straight line where the hand’s circle measures the length of the tether from its middle to its edge.",
			},
			Shows: "ships-cat", Related: []string{"antispin", "flower", "triquetra"},
		},
		{
			Key: "triquetra", Word: "triquetra", Others: []string{"three-petal antispin"},
			Says: []string{
				"The three-petal antispin flower: the prop turns twice against one turn of the hand.",
				"Some use the word for any hand path that draws the same three-cornered picture.",
			},
			Shows: "three-sails", Related: []string{"antispin", "flower", "cateye"},
		},
		{
			Key: "star-flower", Word: "star flower", Others: []string{"star"},
			Says: []string{
				"A flower whose number of prop turns to one of the arm is a fraction, so that it takes two or more turns of the hand to close.",
				"Its petals fall between those of the turn before.",
			},
			Shows: "paper-star", Related: []string{"flower", "petal", "round"},
		},
		{
			Key: "box-mode", Word: "box mode", Others: []string{"box"},
			Says: []string{
				"Four petals that point to the four corners, like the corners of a window.",
			},
			Shows: "harbour-square", Related: []string{"diamond-mode", "petal"},
		},
		{
			Key: "diamond-mode", Word: "diamond mode",
			Says: []string{
				"Four petals that point up, down, left and right.",
			},
			Shows: "compass-card", Related: []string{"box-mode", "petal", "diamond"},
		},
		{
			Key: "static-spin", Word: "static spin", Others: []string{"spin in place"},
			Says: []string{
				"The hand stays where it is and only the prop turns.",
			},
			Shows: "mooring-post", Related: []string{"spin", "pendulum"},
		},
		{
			Key: "pendulum", Word: "pendulum", Others: []string{"swing"},
			Says: []string{
				"The prop swings to and fro below the hand, as far to one side as to the other.",
			},
			Shows: "lamp-under-the-bridge", Related: []string{"static-spin", "stall"},
		},
		{
			Key: "stroke", Word: "stroke", Others: []string{"straight stroke"},
			Says: []string{
				"One sweep of hand and prop along one path at one pair of speeds.",
				"A straight stroke is one along a straight line.",
			},
			Shows: "ferry-run", Related: []string{"piece", "linear-extension", "linear-isolation"},
		},
		{
			Key: "linear-extension", Word: "linear extension", Others: []string{"linex"},
			Says: []string{
				"The hand goes to and fro on a straight line while the prop turns once; at both ends the prop points outward.",
			},
			Shows: "ferry-run", Related: []string{"linear-isolation", "stroke", "diamond"},
		},
		{
			Key: "linear-isolation", Word: "linear isolation",
			Says: []string{
				"The hand goes to and fro on a straight line while the prop turns once; at both ends the prop points inward.",
			},
			Shows: "oar-stroke", Related: []string{"linear-extension", "stroke"},
		},
		{
			Key: "stall", Word: "stall", Others: []string{"stalled"},
			Says: []string{
				"A moment at which the prop stands still and then goes back the way it came.",
				"A pendulum has one at each end of its swing; a poi can stall where its own weight does the stopping.",
			},
			Shows: "lamp-under-the-bridge", Related: []string{"pendulum", "stop"},
		},
		{
			Key: "giants", Word: "giants", Others: []string{"giant"},
			Says: []string{
				"Large slow circles with the whole arm stretched, so that arm and prop make one long line.",
			},
			Shows: "beam-from-the-mole", Related: []string{"extension"},
		},
		{
			Key: "weave", Word: "weave",
			Says: []string{
				"Both props circle beside the body and cross from side to side in front of it, so that each draws an eight.",
				"The bench keeps each hand in one plane, so its pattern shows the two circles without the crossing.",
			},
			Shows: "paddle-steamer", Related: []string{"fountain", "wheel-plane", "split-time"},
		},
		{
			Key: "fountain", Word: "fountain",
			Says: []string{
				"Some call so a weave that goes on overhead and from forward circles into backward ones and back.",
				"Others call so any pattern in which the props rise in the middle and fall at the sides.",
				"The bench keeps each hand in one plane, so its pattern shows only the circles such a move is made from.",
			},
			Shows: "paddle-steamer", Related: []string{"weave", "wheel-plane"},
		},
		{
			Key: "cap", Word: "CAP", Others: []string{"continuous assembly pattern"},
			Says: []string{
				"A pattern put together from parts of other patterns, which goes on without end.",
				"In the broad sense it closes and is made of two or more different patterns.",
				"In the strict sense it is also made of flowers only, and the hand changes its direction on the way.",
				"The bench shows what each sense says, and why.",
			},
			Shows: "half-moon", Related: []string{"broad-sense", "strict-sense", "c-cap", "s-cap"},
		},
		{
			Key: "broad-sense", Word: "broad sense", Others: []string{"CAP (broad)"},
			Says: []string{
				"A CAP in the broad sense closes and is made of two or more different patterns.",
			},
			Shows: "gangway", Related: []string{"cap", "strict-sense"},
		},
		{
			Key: "strict-sense", Word: "strict sense", Others: []string{"CAP (strict)"},
			Says: []string{
				"A CAP in the strict sense is one in the broad sense, made of flowers only, in which the hand changes its direction.",
			},
			Shows: "half-moon", Related: []string{"cap", "broad-sense"},
		},
		{
			Key: "c-cap", Word: "C-cap",
			Says: []string{
				"A CAP in the strict sense in which the hand goes to and fro on one arc of one circle, like a letter C.",
			},
			Shows: "half-moon", Related: []string{"cap", "s-cap"},
		},
		{
			Key: "s-cap", Word: "S-cap",
			Says: []string{
				"A CAP in the strict sense in which the hand goes to and fro along two arcs that bend opposite ways, like a letter S.",
			},
			Shows: "swan", Related: []string{"cap", "c-cap"},
		},
		{
			Key: "diamond", Word: "diamond",
			Says: []string{
				"A pattern in which the hand goes round four equal straight sides with square corners.",
			},
			Shows: "kite", Related: []string{"linear-extension", "diamond-mode"},
		},
		{
			Key: "elementary", Word: "elementary pattern", Others: []string{"elementary"},
			Says: []string{
				"One pattern all through: one path, one number of prop turns to one of the arm, and no jump; it may go faster and slower.",
				"CAPs are put together from slices of such patterns.",
			},
			Shows: "three-sails", Related: []string{"cap", "flower"},
		},
		{
			Key: "hybrid", Word: "hybrid",
			Says: []string{
				"Here: the two hands do different patterns at some moment.",
				"Some say so only if the hands never share a pattern; then both hands on one C that change parts are no hybrid.",
				"Others ask only that one hand does a flower and the other something simpler, such as an extension.",
			},
			Shows: "gangway-and-bell", Related: []string{"timing", "direction"},
		},
		{
			Key: "timing", Word: "timing",
			Says: []string{
				"How two props stand to each other as they turn: together, a quarter apart, half a turn apart, or between.",
			},
			Shows: "pier-end", Related: []string{"together-time", "split-time", "quarter-time", "direction"},
		},
		{
			Key: "together-time", Word: "together time",
			Says: []string{
				"Both props point the same way at the same moment, or mirror each other if they turn opposite ways.",
			},
			Shows: "one-gig-two-oars", Related: []string{"timing", "split-time", "quarter-time"},
		},
		{
			Key: "split-time", Word: "split time", Others: []string{"split"},
			Says: []string{
				"One prop is half a turn ahead of the other: one is up while the other is down.",
			},
			Shows: "seesaw", Related: []string{"timing", "together-time", "quarter-time"},
		},
		{
			Key: "quarter-time", Word: "quarter time", Others: []string{"quarter timing"},
			Says: []string{
				"One prop is a quarter turn ahead of the other.",
			},
			Shows: "leading-lights", Related: []string{"timing", "together-time", "split-time"},
		},
		{
			Key: "direction", Word: "direction",
			Says: []string{
				"Whether two props turn the same way round or opposite ways.",
			},
			Shows: "lock-gates", Related: []string{"same-direction", "opposite-direction", "timing"},
		},
		{
			Key: "same-direction", Word: "same direction",
			Says: []string{
				"Both props turn the same way round, as the audience sees it.",
			},
			Shows: "one-gig-two-oars", Related: []string{"direction", "opposite-direction"},
		},
		{
			Key: "opposite-direction", Word: "opposite directions", Others: []string{"opposite direction"},
			Says: []string{
				"One prop turns clockwise while the other turns anticlockwise, as the audience sees it.",
			},
			Shows: "lock-gates", Related: []string{"direction", "same-direction"},
		},
		{
			Key: "beat", Word: "beat",
			Says: []string{
				"The even pulse that you count; how fast it goes is the tempo.",
			},
			Shows: "half-moon", Related: []string{"tempo", "round"},
		},
		{
			Key: "tempo", Word: "tempo", Others: []string{"beats a minute", "bpm"},
			Says: []string{
				"How many beats there are in a minute.",
				"Slower is not always easier: below some tempo a tether goes slack.",
			},
			Shows: "slack-water", Related: []string{"beat", "slack"},
		},
		{
			Key: "piece", Word: "piece",
			Says: []string{
				"One part of a pattern on the strip: one path, one pair of speeds, so many beats.",
			},
			Shows: "half-moon", Related: []string{"seam", "stroke", "round"},
		},
		{
			Key: "round", Word: "one round", Others: []string{"a round", "each round", "round of the hand"},
			Says: []string{
				"One pass through all the pieces of a hand, after which it begins again.",
				"A star may need several rounds until the prop is back too.",
			},
			Shows: "coil-of-rope", Related: []string{"piece", "star-flower"},
		},
		{
			Key: "seam", Word: "seam", Others: []string{"join"},
			Says: []string{
				"The place where one piece goes over into the next.",
				"It is smooth, a kink, a stop or a gap.",
			},
			Shows: "half-moon", Related: []string{"smooth", "kink", "stop", "gap"},
		},
		{
			Key: "smooth", Word: "smooth",
			Says: []string{
				"A join at which nothing jumps or stops, and the head changes its speed, if at all, only along the tether, which can pass that on.",
			},
			Shows: "half-moon", Related: []string{"seam", "kink"},
		},
		{
			Key: "kink", Word: "kink", Others: []string{"jerk"},
			Says: []string{
				"A join at which the head would have to change its speed sideways at once, which a tether cannot pass on.",
			},
			Shows: "bump-at-the-quay", Related: []string{"seam", "smooth", "tether"},
		},
		{
			Key: "stop", Word: "stop at a join", Others: []string{"a stop", "dead stop"},
			Says: []string{
				"A join at which the prop would have to stop and turn back: a staff can, a poi cannot.",
			},
			Shows: "turned-back", Related: []string{"seam", "staff", "stall"},
		},
		{
			Key: "gap", Word: "gap",
			Says: []string{
				"A join at which hand, prop or head would have to jump, so that nobody can spin it as it stands.",
			},
			Shows: "missing-plank", Related: []string{"seam", "smooth"},
		},
		{
			Key: "slack", Word: "slack",
			Says: []string{
				"A tether is slack when it would have to push; the head then falls out of its path.",
				"A quicker tempo usually mends it.",
			},
			Shows: "slack-water", Related: []string{"tether", "tempo", "taut"},
		},
		{
			Key: "taut", Word: "taut",
			Says: []string{
				"A tether is taut while it is pulled, so that head and hand stay as far apart as it is long.",
			},
			Shows: "beam-from-the-mole", Related: []string{"slack", "tether"},
		},
		{
			Key: "transition", Word: "transition", Others: []string{"changeover"},
			Says: []string{
				"The way from one pattern into another, at a moment where both agree in place and, for it to be smooth, in speed.",
				"A CAP goes from pattern to pattern in this way, round after round.",
			},
			Shows: "rounds-of-the-watch", Related: []string{"cap", "seam"},
		},
		{
			Key: "mirror", Word: "mirror image", Others: []string{"mirrored"},
			Says: []string{
				"The same pattern with left and right changed over, so that clockwise becomes anticlockwise.",
				"The mirror view changes only how it is seen; the mirror image changes the pattern.",
			},
			Shows: "lock-gates", Related: []string{"direction", "opposite-direction"},
		},
		{
			Key: "tangle", Word: "tangle", Others: []string{"tangled"},
			Says: []string{
				"The arms wrap round each other a little more with each round until they can go no further.",
			},
			Shows: "crossed-lines", Related: []string{"c-cap", "split-time", "same-direction"},
		},
	},
}
