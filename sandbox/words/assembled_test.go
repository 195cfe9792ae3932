package words_test

// assembled is the second half of the glossary.
var assembled = []entry{
	// CAPs in the broad sense only.
	{
		"180 0: 1/2 -3/2 1 beats=4; 1/2 -1/2 1 line=0",
		"CAP of four-petal antispin flower and linear isolation, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is a four-petal antispin flower and piece 2 is linear isolation.",
			"strict: No: piece 2 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: in piece 1 the hand does not go straight.",
		},
	},
	{
		"90 90: 1 1 1; 1 3 1",
		"CAP of extension and two-petal in-spin flower, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a two-petal in-spin flower.",
			"strict: No: all pieces are slices of flowers, but the hand never changes its direction.",
		},
	},
	{
		"90 90: 1 1 1; 1 -3 1",
		"CAP of extension and four-petal antispin flower, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower.",
			"strict: No: all pieces are slices of flowers, but the hand never changes its direction.",
		},
	},
	{
		"90 90: 1 1 1; 0 1 1 point c=0,0.6",
		"CAP of extension and static spin, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is static spin.",
			"strict: No: in piece 2 the hand stays where it is, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1; 0 0 1 point c=0,0.6",
		"CAP of extension and held still, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is held still.",
			"strict: No: in piece 2 nothing moves, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 3/2 1/2",
		"CAP of extension, unit turn 90° off the arm, isolation and more, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a five-petal antispin star flower.",
			"strict: No: piece 2 is a star, whose ratio is a fraction, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 0 1/2",
		"CAP of extension, isolation and carried prop, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a carried prop.",
			"strict: No: in piece 2 the prop does not turn, and this sense takes flowers only.",
		},
	},
	{
		"0 0: 1 1 1; 1 1 1 c=1.2,0 arm@180",
		"CAP of extension and isolation, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: from piece 1 on the hand goes all the way round its circle.",
		},
	},
	{
		"90 90: 1 1 1/2 oval=0.6,0.4,0; -1 3 1/2 oval=0.6,0.4,0",
		"CAP of elliptical path of ratio 1 and elliptical path of ratio −3, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is an elliptical path of ratio 1 and piece 2 is an elliptical path of ratio −3.",
			"strict: No: in piece 1 the hand goes along an ellipse, and this sense takes flowers only.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 3 1/2; 0 1 1 point c=0,0.6 swing=20",
		"CAP of extension, four-petal antispin flower and pendulum, broad sense; not joined up: after piece 2 the prop jumps by 160°", "broad", []string{
			"broad: Yes: it closes; piece 1 is extension and piece 2 is a four-petal antispin flower.",
			"strict: No: in piece 3 the prop only swings, and this sense takes flowers only.",
		},
	},
	// CAPs in the strict sense, without a shape.
	{
		"0 0: 1 1 1; -1 3 1 c=1.2,0 arm@180",
		"CAP of extension and four-petal antispin flower, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the arm reverses after piece 1.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: from piece 1 on the hand goes all the way round its circle.",
		},
	},
	{
		"90 90: 1 1 1; -1 3 1",
		"CAP of extension and four-petal antispin flower, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: from piece 1 on the hand goes all the way round its circle.",
			"S: No: from piece 1 on the hand goes all the way round its circle.",
		},
	},
	{
		"90 90: 1 1 3/4; -1 3 1/4; 1 1 1/4; -1 3 3/4",
		"CAP of extension and four-petal antispin flower, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: the way that begins with piece 2 is not as long as the way before it.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"180 180: 1 1 1/2 c=-0.6,0; 1 1 1/2 c=0.6,0 arm@180; -1 3 1/2 c=0.6,0; -1 3 1/2 c=-0.6,0 arm@360",
		"CAP of extension, isolation and four-petal antispin flower, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the hand sweeps one arc before it turns back, and an S has two.",
		},
	},
	// C-caps.
	{
		"90 90: 1 1 1/2; -1 3 1/2",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/4; -1 3 1/4",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 3/4; -1 3 3/4",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 270: 1 1 1/2 r=0.3; -1 3 1/2 r=0.3 beats=7",
		"C-cap of isolation and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 3 1/2; -1 5 1/2",
		"C-cap of two-petal in-spin flower and six-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 -2 1/2; -1 -2 1/2",
		"C-cap of triquetra and one-petal in-spin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"180 180: 1 1 1/4; -1 3 1/2; 1 1 1/4",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/4; 1 1 1/4 beats=3; -1 3 1/8; -1 3 3/8",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/4; 1 -3 1/4; -1 -1 1/4; -1 3 1/4",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/2; -1 3 1/2; 1 1 1/2; -1 5 1/2",
		"C-cap of extension, four-petal antispin flower and six-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/2 end; -1 2 1/2 start; 1 1 1/2 end; -1 2 1/2 start",
		"C-cap of extension, triquetra and isolation, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	{
		"90 90: 1 1 1/2 oval=0.6,0.6,30; -1 3 1/2",
		"C-cap of extension and four-petal antispin flower, strict sense", "broad strict C", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: Yes: the hand goes to and fro on one arc of one circle.",
			"S: No: the hand stays on one circle, and an S needs two.",
		},
	},
	// S-caps.
	{
		"180 180: 1 1 1/2 r=0.3 c=-0.3,0; -1 2 1/2 r=0.3 c=0.3,0 arm@180; 1 1 1/2 r=0.3 c=0.3,0; -1 2 1/2 r=0.3 c=-0.3,0 arm@0",
		"S-cap of extension and triquetra, strict sense", "broad strict S", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: Yes: the hand sweeps two arcs that bend opposite ways, to and fro.",
		},
	},
	{
		"180 90: -1 2 1/2 r=0.3 c=0.3,0; 1 1 1/2 r=0.3 c=0.3,0; -1 2 1/2 r=0.3 c=-0.3,0 arm@0; 1 1 1/2 r=0.3 c=-0.3,0",
		"S-cap of triquetra and unit turn 90° off the arm, strict sense", "broad strict S", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 1.",
			"C: No: piece 3 lies on another circle than piece 1.",
			"S: Yes: the hand sweeps two arcs that bend opposite ways, to and fro.",
		},
	},
	{
		"270 270: 1 1 1/4 r=0.3 c=-0.3,0; -1 2 1/2 r=0.3 c=0.3,0 arm@180; 1 1 1/2 r=0.3 c=0.3,0; -1 2 1/2 r=0.3 c=-0.3,0 arm@0; 1 1 1/4 r=0.3 c=-0.3,0",
		"S-cap of extension and triquetra, strict sense", "broad strict S", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: No: piece 4 lies on another circle than piece 2.",
			"S: Yes: the hand sweeps two arcs that bend opposite ways, to and fro.",
		},
	},
	// Two arcs, and yet no S: they bend one way; four arcs; no way back.
	{
		"180 180: 1 1 1/2 r=0.3 c=-0.3,0; 1 3 1/4 r=0.3 c=0,0.3 arm@270; -1 1 1/4 r=0.3 c=0,0.3; -1 1 1/2 r=0.3 c=-0.3,0 arm@360",
		"CAP of extension, two-petal in-spin flower and cateye, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the arcs of pieces 1 and 2 bend the same way.",
		},
	},
	{
		"180 180: 1 1 1/2 r=0.3 c=-0.3,0; -1 2 1/2 r=0.3 c=0.3,0 arm@180; 1 1 1/2 r=0.3 c=0.9,0 arm@180; -1 2 1/2 r=0.3 c=0.9,0; 1 1 1/2 r=0.3 c=0.3,0 arm@0; -1 2 1/2 r=0.3 c=-0.3,0 arm@0",
		"CAP of extension, isolation and triquetra, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 3.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the hand sweeps three arcs before it turns back, and an S has two.",
		},
	},
	{
		"180 180: 1 1 1/2 r=0.3 c=-0.3,0; -1 2 1/2 r=0.3 c=0.3,0 arm@180; 1 1 1/2 r=0.4 c=0.2,0 arm@0; -1 2 1/2 r=0.2 c=-0.4,0 arm@0",
		"CAP of extension and triquetra, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the hand turns back after piece 2.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the hand does not come back along the arcs by which it went.",
		},
	},
	{
		"45 45: 1 1 3/4 r=0.70710678119 c=-0.5,0; -1 1 1/4 r=0.70710678119 c=0.5,0 arm@225",
		"CAP of extension and cateye, strict sense", "broad strict", []string{
			"strict: Yes: all pieces are slices of flowers, and the arm reverses after piece 1.",
			"C: No: piece 2 lies on another circle than piece 1.",
			"S: No: the hand never turns back.",
		},
	},
	// Diamonds.
	{
		"0 0: 1 1 1/2 r=0.25 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; 1 1 1/2 r=0.25 c=0,-0.25 line=180 arm@180; 1 1 1/2 r=0.25 c=0.25,0 line=270 arm@270",
		"Diamond of linear extension, linear in-between and linear isolation", "broad diamond", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: Yes: the hand goes round four equal straight sides with square corners.",
		},
	},
	{
		"0 0: 1 -1 1/2 r=0.25 c=0,0.25 line=0; 0 -1 1/4 c=-0.25,0.25 point; 1 -1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; 0 -1 1/4 c=-0.25,-0.25 point; 1 -1 1/2 r=0.25 c=0,-0.25 line=180 arm@180; 0 -1 1/4 c=0.25,-0.25 point; 1 -1 1/2 r=0.25 c=0.25,0 line=270 arm@270; 0 -1 1/4 c=0.25,0.25 point",
		"Diamond of linear extension and static spin", "broad diamond", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is static spin.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: Yes: the hand goes round four equal straight sides with square corners.",
		},
	},
	{
		"90 90: 1 1 1/4 r=0.25 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; 1 1 1/2 r=0.25 c=0,-0.25 line=180 arm@180; 1 1 1/2 r=0.25 c=0.25,0 line=270 arm@270; 1 1 1/4 r=0.25 c=0,0.25 line=0 arm@0",
		"Diamond of linear extension, linear in-between and linear isolation", "broad diamond", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: Yes: the hand goes round four equal straight sides with square corners.",
		},
	},
	{
		"0 0: 1 1 1/2 r=0.25 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; -1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@270; -1 1 1/2 r=0.25 c=0,0.25 line=0 arm@180",
		"CAP of linear extension and linear in-between, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: the hand turns at three places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 1 1/2 r=0.25 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.25,0 line=90 arm@90; 1 1 1/2 r=0.35355339059 line=225 arm@225",
		"CAP of linear extension, linear isolation and linear in-between, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: the hand turns at three places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 1 1/2 r=0.5 c=0,0.25 line=0; 1 1 1/2 r=0.25 c=-0.5,0 line=90 arm@90; 1 1 1/2 r=0.5 c=0,-0.25 line=180 arm@180; 1 1 1/2 r=0.25 c=0.5,0 line=270 arm@270",
		"CAP of linear extension, linear in-between and linear isolation, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: its sides are not equal, or its corners not square.",
		},
	},
	{
		"0 0: 1 1 1/2 r=0.25 c=0.25,0 line=0; 1 1 1/2 r=0.25 c=0,-0.25 line=90 arm@90; 1 1 1/2 r=0.25 c=-0.25,-0.5 line=0 arm@0; 1 1 1/2 r=0.5 c=-0.5,0 line=270 arm@270; 1 1 1/2 r=0.5 c=0,0.5 line=180 arm@180; 1 1 1/2 r=0.25 c=0.5,0.25 line=90 arm@90",
		"CAP of linear extension, linear in-between and linear isolation, broad sense", "broad", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: No: the hand turns at more than four places, and a diamond has four corners.",
		},
	},
	{
		"0 0: 1 1 3 line=0",
		"Linear extension", "elementary", []string{
			"elementary: Yes: it is one pattern, linear extension, and nothing jumps.",
			"broad: No: it is only one pattern, linear extension, and a CAP needs two.",
			"diamond: No: the hand turns at two places, and a diamond has four corners.",
		},
	},
	{
		"45 45: 1 1 1/2 r=0.35355339059 c=-0.25,0.25 line=45; 1 1 1/2 r=0.35355339059 c=-0.25,-0.25 line=135 arm@135; 1 1 1/2 r=0.35355339059 c=0.25,-0.25 line=225 arm@225; 1 1 1/2 r=0.35355339059 c=0.25,0.25 line=315 arm@315",
		"Diamond of linear extension, linear in-between and linear isolation", "broad diamond", []string{
			"broad: Yes: it closes; piece 1 is linear extension and piece 2 is linear in-between.",
			"strict: No: piece 1 is a stroke along a straight line, and this sense takes flowers only.",
			"diamond: Yes: the hand goes round four equal straight sides with square corners.",
		},
	},
}
