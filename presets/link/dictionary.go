package link

// dictionary is what a stream of version 1 may refer back to before it has
// said anything: the words of a file, those that are most often used last, as
// near ones are cheaper to point at. It is part of the version and never
// changes: a link that was made once must be read for ever.
const dictionary = `
rigid = true
shoulders = 0.
reach = 0.
head_mass = 0.
[performer]
tether = 0.
law = "ease-start"
law = "ease-end"
law = "ease-both"
swing_back = true
swing = 
path = "point"
radius = [0.
path = "ellipse"
tilt = 
offset = 0.
plane = "floor"
plane = "wheel"
part = ["1/3", "2/3"]
part = [0, 0.5]
part = [0.5, 1]
arm = "1/3"
prop = "-1/3"
Petals of the hand path in extension, isolation, antispin and in-spin; the prop turns.
Untitled pattern
path = "line"
radius = 0.
centre = [-0.
centre = [0.3, 0]
arm_at = 0
arm_at = 180
arm_at = 270
prop_at = 0
prop_at = 180
prop_at = 270
format = 1
title = "The "
notes = """
A "
notes = "
tempo = 60
tempo = 120
tempo = 90

[[hand]]
side = "left"

[[hand]]
side = "right"
arm_at = 
prop_at = 

[[hand.piece]]
arm = -0.5
prop = 1.5
cycles = 1
beats = 4

[[hand.piece]]
arm = -1
prop = -3
cycles = 0.25

[[hand.piece]]
arm = 1
prop = 1
cycles = 0.5
beats = 2

[[hand.piece]]
arm = -1
prop = 3
cycles = 0.5
beats = 2
`
