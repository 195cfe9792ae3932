package german

import "whorlbench/sandbox/words"

var why = words.Why{
	Yes: "Stück %d, denn: %s.",
	No:  "Kein Stück. Dazu gehört: %s.",
	In:  "In Stück %d: %s.",

	Alike: "Arm und Prop beide %s", Apart: "Arm %s, Prop %s",
	Ratio: "das Prop dreht sich %s auf eine Drehung des Arms",
	Round: "die Hand geht um einen Kreis", Straight: "die Hand geht auf einer geraden Linie", Oval: "die Hand geht auf einer Ellipse",
	Stays: "die Hand bleibt, wo sie ist", Still: "nichts bewegt sich",
	Carried: "das Prop dreht sich nicht", Turning: "das Prop geht ganz herum",
	Swings: "das Prop schwingt hin und her",
	Out:    "es zeigt gerade von der Mitte weg", Back: "es zeigt zur Mitte zurück", Off: "es steht %s° zum Arm",
	EndOut: "es zeigt an den Enden nach außen", EndBack: "es zeigt an den Enden nach innen", EndOff: "es zeigt an den Enden weder nach außen noch nach innen",
	Petals: "Blätter: %s, die erste Spitze bei %s°", NoPetals: "keine Blätter",

	Others: "Die anderen Stücke auch nicht.",

	Takes: [...]string{
		"ein Kreis, und das Prop dreht sich einmal auf eine Drehung des Arms, gleich herum, und zeigt gerade von der Mitte weg",
		"ein Kreis, und das Prop dreht sich einmal auf eine Drehung des Arms, gleich herum, und zeigt zur Mitte zurück",
		"ein Kreis, und das Prop dreht sich einmal auf eine Drehung des Arms, gleich herum",
		"ein Kreis, und das Prop dreht sich eine ganze Zahl von Malen auf eine Drehung des Arms: zweimal oder öfter gleich herum, oder einmal oder öfter andersherum",
		"ein Kreis, und das Prop dreht sich einen Bruch auf eine Drehung des Arms",
		"ein Kreis, Arm und Prop drehen gleich herum, das Prop nicht genau einmal auf eine Drehung des Arms",
		"ein Kreis, Arm und Prop drehen gegeneinander",
		"ein Kreis, und das Prop dreht sich einmal auf eine Drehung des Arms, andersherum",
		"ein Kreis, und das Prop dreht sich zweimal auf eine Drehung des Arms, andersherum",
		"ein Kreis und vier Blätter, die erste Spitze bei 45°",
		"ein Kreis und vier Blätter, die erste Spitze bei 0°",
		"eine Hand, die bleibt, wo sie ist, und ein Prop, das sich dreht",
		"ein Prop, das hin- und herschwingt",
		"eine gerade Linie, und das Prop dreht sich einmal auf eine Drehung des Arms und zeigt an den Enden nach außen",
		"eine gerade Linie, und das Prop dreht sich einmal auf eine Drehung des Arms und zeigt an den Enden nach innen",
	},

	OneCircle:  "In Stück %d teilen sich Hand und Kopf einen Kreis: %s m von der Mitte zum Rand, die halbe Schnur von %s m.",
	TwoCircles: "In Stück %d misst der Kreis der Hand %s m von der Mitte zum Rand und der des Kopfes %s m; mit der halben Schnur, %s m, wären sie einer.",
}
