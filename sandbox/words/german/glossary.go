package german

import "whorlbench/sandbox/words"

// Glossary explains the words in German. Endings are what German puts after a
// name in a sentence.
var Glossary = words.Glossary{
	Others: "Auch %s genannt.", Shows: "In Bewegung sehen: %s", Comma: ", ",
	Endings: []string{"s", "es", "n", "en", "e", "er"},
	Terms: []words.Term{
		{
			Key: "poi", Word: "Poi", Others: []string{"Poispiel"},
			Says: []string{
				"Ein Gewicht an einer Schnur, eins für jede Hand, in Kreisen geschwungen; das Wort ist Māori, und die Kunst auch.",
				"Ein Poi kann ziehen, aber nie schieben, also muss die Schnur straff bleiben.",
			},
			Shows: "half-moon", Related: []string{"tether", "staff", "prop"},
		},
		{
			Key: "staff", Word: "Stab", Others: []string{"Stock", "starres Prop"},
			Says: []string{
				"Ein Prop, das von der Hand bis zum Kopf steif ist, also schieben und ziehen kann.",
				"Ein Stab kann anhalten und umkehren, wo ein Poi schlaff würde.",
			},
			Shows: "turned-back", Related: []string{"poi", "prop", "stop"},
		},
		{
			Key: "prop", Word: "Prop",
			Says: []string{
				"Was geschwungen wird: ein Poi, ein Stab, eine Keule.",
				"Auf der Werkbank ist es eine Linie von der Hand zum Kopf.",
			},
			Shows: "half-moon", Related: []string{"poi", "staff", "head"},
		},
		{
			Key: "head", Word: "Kopf", Others: []string{"Köpfe", "Propkopf"},
			Says: []string{
				"Das ferne Ende des Props, der Teil, der das Bild zeichnet.",
			},
			Shows: "half-moon", Related: []string{"tether", "prop"},
		},
		{
			Key: "tether", Word: "Schnur", Others: []string{"Leine", "Schnüre"},
			Says: []string{
				"Was den Kopf eines Pois mit der Hand verbindet: eine Schnur oder eine Kette.",
				"Sie gibt Zug in ihrer eigenen Richtung weiter und quer dazu nichts.",
			},
			Shows: "slack-water", Related: []string{"poi", "slack", "handle"},
		},
		{
			Key: "handle", Word: "Griff", Others: []string{"Knauf", "Handgriff"},
			Says: []string{
				"Das nahe Ende des Props, der Teil, den du hältst; hier ist das dort, wo die Hand ist.",
			},
			Shows: "mooring-post", Related: []string{"tether", "hand-path"},
		},
		{
			Key: "arm", Word: "Arm",
			Says: []string{
				"Hier die Linie von der Mitte der Handbahn zur Hand; dreht sie sich, so dreht sich der Arm.",
				"Dein eigener Arm tut, was nötig ist, damit die Hand auf dieser Bahn bleibt.",
			},
			Shows: "beam-from-the-mole", Related: []string{"hand-path", "extension"},
		},
		{
			Key: "hand-path", Word: "Handbahn", Others: []string{"Bahn der Hand"},
			Says: []string{
				"Die Linie, auf der die Hand geht: ein Kreis, eine Ellipse, eine Gerade oder nur ein Punkt.",
			},
			Shows: "ferry-run", Related: []string{"arm", "stroke"},
		},
		{
			Key: "plane", Word: "Ebene",
			Says: []string{
				"Die flache Scheibe, in der ein Prop geschwungen wird.",
				"Es gibt drei: Wand, Rad und Boden.",
			},
			Shows: "half-moon", Related: []string{"wall-plane", "wheel-plane", "floor-plane"},
		},
		{
			Key: "wall-plane", Word: "Wandebene", Others: []string{"frontale Ebene"},
			Says: []string{
				"Die Ebene, die dem Publikum zugewandt ist, wie ein Bild an einer Wand vor oder hinter dir.",
			},
			Shows: "half-moon", Related: []string{"plane", "wheel-plane", "floor-plane"},
		},
		{
			Key: "wheel-plane", Word: "Radebene", Others: []string{"seitliche Ebene"},
			Says: []string{
				"Die Ebene neben dir, von vorn nach hinten, wie das Rad eines Karrens.",
			},
			Shows: "paddle-steamer", Related: []string{"plane", "wall-plane", "floor-plane"},
		},
		{
			Key: "floor-plane", Word: "Bodenebene", Others: []string{"waagerechte Ebene"},
			Says: []string{
				"Die waagerechte Ebene, wie eine Tischplatte, über dem Kopf oder um den Körper.",
			},
			Shows: "weather-vane", Related: []string{"plane", "wall-plane", "wheel-plane"},
		},
		{
			Key: "spin", Word: "Spin", Others: []string{"Drehung des Props"},
			Says: []string{
				"Das Drehen des Props, gezählt in Drehungen und danach, wie herum es geht.",
			},
			Shows: "mooring-post", Related: []string{"in-spin", "antispin", "static-spin"},
		},
		{
			Key: "in-spin", Word: "In-Spin", Others: []string{"Inspin"},
			Says: []string{
				"Das Prop dreht gleich herum wie die Hand: in einer Blume zweimal oder öfter auf eine Drehung des Arms, in einem Stern mit einem Bruch.",
				"An den Blattspitzen zeigen Hand und Prop in dieselbe Richtung; dazwischen kommt der Kopf zur Mitte herein, bei den meisten Größen mit einer Schlaufe.",
			},
			Shows: "twin-lanterns", Related: []string{"antispin", "flower", "petal"},
		},
		{
			Key: "antispin", Word: "Antispin", Others: []string{"Anti-Spin"},
			Says: []string{
				"Das Prop dreht andersherum als die Hand.",
				"Die Blätter sind die Spitzen, an denen Hand und Prop in dieselbe Richtung zeigen.",
			},
			Shows: "three-sails", Related: []string{"in-spin", "flower", "petal"},
		},
		{
			Key: "flower", Word: "Blume",
			Says: []string{
				"Was der Kopf zeichnet, wenn die Hand um einen Kreis geht und sich das Prop auf jede Drehung des Arms eine ganze Zahl von Malen dreht: zweimal oder öfter gleich herum, oder einmal oder öfter andersherum.",
				"Bei je einer Drehung gleich herum gibt es keine Blätter; das ist eine Extension, eine Isolation oder ein Unit-Turn, und der strenge Sinn von CAP zählt es als Blume.",
				"Sie heißt nach ihren Blättern und nach In-Spin oder Antispin.",
			},
			Shows: "compass-card", Related: []string{"petal", "in-spin", "antispin", "star-flower"},
		},
		{
			Key: "petal", Word: "Blatt", Others: []string{"Blätter", "Petal", "Blattspitze"},
			Says: []string{
				"Eine der Schlaufen oder Spitzen einer Blume; an ihrer Spitze zeigt das Prop gerade von der Mitte weg.",
				"Bis sich eine Blume schließt, unterscheiden sich Prop und Arm um so viele Drehungen, wie sie Blätter hat; Drehungen andersherum zählen als minus.",
			},
			Shows: "compass-card", Related: []string{"flower", "box-mode", "diamond-mode"},
		},
		{
			Key: "extension", Word: "Extension",
			Says: []string{
				"Hand und Prop gehen zusammen in einer geraden Linie herum, das Prop zeigt nach außen: ein langer Arm.",
			},
			Shows: "beam-from-the-mole", Related: []string{"isolation", "unit-turn", "giants"},
		},
		{
			Key: "isolation", Word: "Isolation",
			Says: []string{
				"Hand und Prop gehen zusammen herum, und das Prop zeigt über die Mitte zurück.",
				"Im genauen Sinn teilen sich Hand und Kopf einen Kreis, der Handkreis ist also so breit, wie die Schnur lang ist: von der Mitte zum Rand eine halbe Schnur.",
				"Im lockeren Sinn tut es jeder Kreis, solange das Prop zur Mitte zurückzeigt.",
				"Die Werkbank nimmt für den Namen den lockeren Sinn und zeigt im Bild, wie genau es ist.",
			},
			Shows: "tide-ring", Related: []string{"extension", "unit-turn"},
		},
		{
			Key: "unit-turn", Word: "Unit-Turn", Others: []string{"Unit Circle"},
			Says: []string{
				"Arm und Prop machen zusammen eine Drehung, die ganze Zeit im selben Winkel zueinander.",
				"Extension und Isolation sind die beiden, die einen eigenen Namen haben.",
			},
			Shows: "capstan", Related: []string{"extension", "isolation"},
		},
		{
			Key: "cateye", Word: "Cateye", Others: []string{"Katzenauge"},
			Says: []string{
				"Die zweiblättrige Antispin-Blume: eine Drehung der Hand, eine Drehung des Props andersherum.",
				"Der Kopf zeichnet eine Ellipse, oder eine Gerade, wenn der Handkreis von der Mitte zum Rand so viel misst, wie die Schnur lang ist.",
			},
			Shows: "ships-cat", Related: []string{"antispin", "flower", "triquetra"},
		},
		{
			Key: "triquetra", Word: "Triquetra", Others: []string{"dreiblättrige Antispin-Blume"},
			Says: []string{
				"Die dreiblättrige Antispin-Blume: Das Prop dreht sich zweimal gegen eine Drehung der Hand.",
				"Manche nennen so jede Handbahn, die dasselbe dreieckige Bild zeichnet.",
			},
			Shows: "three-sails", Related: []string{"antispin", "flower", "cateye"},
		},
		{
			Key: "star-flower", Word: "Sternblume", Others: []string{"Stern"},
			Says: []string{
				"Eine Blume, bei der die Zahl der Propdrehungen auf eine des Arms ein Bruch ist, sodass sie zwei oder mehr Drehungen der Hand braucht, um sich zu schließen.",
				"Ihre Blätter fallen zwischen die der Drehung davor.",
			},
			Shows: "paper-star", Related: []string{"flower", "petal", "round"},
		},
		{
			Key: "box-mode", Word: "Box-Modus", Others: []string{"Box"},
			Says: []string{
				"Vier Blätter, die in die vier Ecken zeigen, wie die Ecken eines Fensters.",
			},
			Shows: "harbour-square", Related: []string{"diamond-mode", "petal"},
		},
		{
			Key: "diamond-mode", Word: "Diamond-Modus",
			Says: []string{
				"Vier Blätter, die nach oben, unten, links und rechts zeigen.",
			},
			Shows: "compass-card", Related: []string{"box-mode", "petal", "diamond"},
		},
		{
			Key: "static-spin", Word: "Static Spin", Others: []string{"Drehen auf der Stelle"},
			Says: []string{
				"Die Hand bleibt, wo sie ist, und nur das Prop dreht sich.",
			},
			Shows: "mooring-post", Related: []string{"spin", "pendulum"},
		},
		{
			Key: "pendulum", Word: "Pendel", Others: []string{"Pendeln"},
			Says: []string{
				"Das Prop schwingt unter der Hand hin und her, nach beiden Seiten gleich weit.",
			},
			Shows: "lamp-under-the-bridge", Related: []string{"static-spin", "stall"},
		},
		{
			Key: "stroke", Word: "Strich", Others: []string{"gerader Strich"},
			Says: []string{
				"Ein Zug von Hand und Prop auf einer Bahn, mit einem Paar von Tempi.",
				"Ein gerader Strich geht auf einer geraden Linie.",
			},
			Shows: "ferry-run", Related: []string{"piece", "linear-extension", "linear-isolation"},
		},
		{
			Key: "linear-extension", Word: "lineare Extension", Others: []string{"Linex"},
			Says: []string{
				"Die Hand geht auf einer geraden Linie hin und her, während sich das Prop einmal dreht; an beiden Enden zeigt das Prop nach außen.",
			},
			Shows: "ferry-run", Related: []string{"linear-isolation", "stroke", "diamond"},
		},
		{
			Key: "linear-isolation", Word: "lineare Isolation",
			Says: []string{
				"Die Hand geht auf einer geraden Linie hin und her, während sich das Prop einmal dreht; an beiden Enden zeigt das Prop nach innen.",
			},
			Shows: "oar-stroke", Related: []string{"linear-extension", "stroke"},
		},
		{
			Key: "stall", Word: "Stall",
			Others: []string{"Stalls"},
			Says: []string{
				"Ein Moment, in dem das Prop stillsteht und dann den Weg zurückgeht, den es kam.",
				"Ein Pendel hat einen an jedem Ende seines Schwungs; ein Poi kann dort stehen bleiben, wo sein eigenes Gewicht es anhält.",
			},
			Shows: "lamp-under-the-bridge", Related: []string{"pendulum", "stop"},
		},
		{
			Key: "giants", Word: "Giants", Others: []string{"Giant"},
			Says: []string{
				"Große, langsame Kreise mit gestrecktem Arm, sodass Arm und Prop eine lange Linie bilden.",
			},
			Shows: "beam-from-the-mole", Related: []string{"extension"},
		},
		{
			Key: "weave", Word: "Weave",
			Says: []string{
				"Beide Props kreisen neben dem Körper und wechseln vor ihm von Seite zu Seite, sodass jedes eine Acht zeichnet.",
				"Die Werkbank lässt jede Hand in einer Ebene, ihr Muster zeigt also die beiden Kreise ohne den Wechsel.",
			},
			Shows: "paddle-steamer", Related: []string{"fountain", "wheel-plane", "split-time"},
		},
		{
			Key: "fountain", Word: "Fountain",
			Says: []string{
				"Manche nennen so einen Weave, der über den Kopf geht und von Vorwärtskreisen in Rückwärtskreise und zurück.",
				"Andere nennen so jedes Muster, in dem die Props in der Mitte steigen und an den Seiten fallen.",
				"Die Werkbank lässt jede Hand in einer Ebene, ihr Muster zeigt also nur die Kreise, aus denen so etwas gemacht ist.",
			},
			Shows: "paddle-steamer", Related: []string{"weave", "wheel-plane"},
		},
		{
			Key: "cap", Word: "CAP", Others: []string{"Continuous Assembly Pattern"},
			Says: []string{
				"Ein Muster, das aus Teilen anderer Muster zusammengesetzt ist und ohne Ende weitergeht.",
				"Im weiten Sinn schließt es sich und besteht aus zwei oder mehr verschiedenen Mustern.",
				"Im strengen Sinn besteht es außerdem nur aus Blumen, und die Hand ändert unterwegs ihre Richtung.",
				"Die Werkbank zeigt, was jeder Sinn sagt, und warum.",
			},
			Shows: "half-moon", Related: []string{"broad-sense", "strict-sense", "c-cap", "s-cap"},
		},
		{
			Key: "broad-sense", Word: "im weiten Sinn", Others: []string{"CAP (weit)"},
			Says: []string{
				"Ein CAP im weiten Sinn schließt sich und besteht aus zwei oder mehr verschiedenen Mustern.",
			},
			Shows: "gangway", Related: []string{"cap", "strict-sense"},
		},
		{
			Key: "strict-sense", Word: "im strengen Sinn", Others: []string{"CAP (streng)"},
			Says: []string{
				"Ein CAP im strengen Sinn ist eines im weiten Sinn, das nur aus Blumen besteht und in dem die Hand ihre Richtung ändert.",
			},
			Shows: "half-moon", Related: []string{"cap", "broad-sense"},
		},
		{
			Key: "c-cap", Word: "C-CAP",
			Says: []string{
				"Ein CAP im strengen Sinn, in dem die Hand auf einem Bogen eines Kreises hin- und hergeht, wie ein Buchstabe C.",
			},
			Shows: "half-moon", Related: []string{"cap", "s-cap"},
		},
		{
			Key: "s-cap", Word: "S-CAP",
			Says: []string{
				"Ein CAP im strengen Sinn, in dem die Hand auf zwei entgegengesetzt gekrümmten Bögen hin- und hergeht, wie ein Buchstabe S.",
			},
			Shows: "swan", Related: []string{"cap", "c-cap"},
		},
		{
			Key: "diamond", Word: "Diamond",
			Says: []string{
				"Ein Muster, in dem die Hand um vier gleich lange gerade Seiten mit rechten Winkeln geht.",
			},
			Shows: "kite", Related: []string{"linear-extension", "diamond-mode"},
		},
		{
			Key: "elementary", Word: "elementares Muster", Others: []string{"elementar"},
			Says: []string{
				"Durchweg ein einziges Muster: eine Bahn, eine Zahl von Propdrehungen auf eine des Arms, und kein Sprung; es darf schneller und langsamer gehen.",
				"CAPs sind aus Ausschnitten solcher Muster zusammengesetzt.",
			},
			Shows: "three-sails", Related: []string{"cap", "flower"},
		},
		{
			Key: "hybrid", Word: "Hybrid",
			Says: []string{
				"Hier: Die beiden Hände machen in irgendeinem Moment verschiedene Muster.",
				"Manche sagen es nur, wenn die Hände nie ein Muster teilen; dann sind beide Hände auf einem C, die ihre Teile tauschen, kein Hybrid.",
				"Andere verlangen nur, dass eine Hand eine Blume macht und die andere etwas Einfacheres, etwa eine Extension.",
			},
			Shows: "gangway-and-bell", Related: []string{"timing", "direction"},
		},
		{
			Key: "timing", Word: "Timing",
			Says: []string{
				"Wie zwei Props beim Drehen zueinander stehen: zusammen, eine Vierteldrehung, eine halbe Drehung auseinander, oder dazwischen.",
			},
			Shows: "pier-end", Related: []string{"together-time", "split-time", "quarter-time", "direction"},
		},
		{
			Key: "together-time", Word: "Together-Time",
			Says: []string{
				"Beide Props zeigen im selben Moment in dieselbe Richtung, oder spiegeln einander, wenn sie gegeneinander drehen.",
			},
			Shows: "one-gig-two-oars", Related: []string{"timing", "split-time", "quarter-time"},
		},
		{
			Key: "split-time", Word: "Split-Time", Others: []string{"Split"},
			Says: []string{
				"Ein Prop ist dem anderen eine halbe Drehung voraus: eins oben, während das andere unten ist.",
			},
			Shows: "seesaw", Related: []string{"timing", "together-time", "quarter-time"},
		},
		{
			Key: "quarter-time", Word: "Quarter-Time", Others: []string{"Quarter"},
			Says: []string{
				"Ein Prop ist dem anderen eine Vierteldrehung voraus.",
			},
			Shows: "leading-lights", Related: []string{"timing", "together-time", "split-time"},
		},
		{
			Key: "direction", Word: "Drehrichtung",
			Says: []string{
				"Ob zwei Props gleich herum drehen oder gegeneinander.",
			},
			Shows: "lock-gates", Related: []string{"same-direction", "opposite-direction", "timing"},
		},
		{
			Key: "same-direction", Word: "gleiche Richtung", Others: []string{"gleich herum"},
			Says: []string{
				"Beide Props drehen gleich herum, wie das Publikum es sieht.",
			},
			Shows: "one-gig-two-oars", Related: []string{"direction", "opposite-direction"},
		},
		{
			Key: "opposite-direction", Word: "Gegenrichtung", Others: []string{"gegeneinander"},
			Says: []string{
				"Ein Prop dreht im Uhrzeigersinn, das andere dagegen, wie das Publikum es sieht.",
			},
			Shows: "lock-gates", Related: []string{"direction", "same-direction"},
		},
		{
			Key: "beat", Word: "Schlag", Others: []string{"Schläge", "Beat"},
			Says: []string{
				"Der gleichmäßige Puls, den du zählst; wie schnell er geht, ist das Tempo.",
			},
			Shows: "half-moon", Related: []string{"tempo", "round"},
		},
		{
			Key: "tempo", Word: "Tempo", Others: []string{"Schläge in der Minute", "bpm"},
			Says: []string{
				"Wie viele Schläge auf eine Minute kommen.",
				"Langsamer ist nicht immer leichter: Unter einem gewissen Tempo wird eine Schnur schlaff.",
			},
			Shows: "slack-water", Related: []string{"beat", "slack"},
		},
		{
			Key: "piece", Word: "Stück",
			Says: []string{
				"Ein Teil eines Musters auf dem Streifen: eine Bahn, ein Paar von Tempi, so und so viele Schläge.",
			},
			Shows: "half-moon", Related: []string{"seam", "stroke", "round"},
		},
		{
			Key: "round", Word: "Runde",
			Others: []string{"Runde der Hand"},
			Says: []string{
				"Ein Gang durch alle Stücke einer Hand; danach beginnt sie von vorn.",
				"Ein Stern kann mehrere Runden brauchen, bis auch das Prop zurück ist.",
			},
			Shows: "coil-of-rope", Related: []string{"piece", "star-flower"},
		},
		{
			Key: "seam", Word: "Übergang", Others: []string{"Übergänge", "Naht"},
			Says: []string{
				"Die Stelle, an der ein Stück in das nächste übergeht.",
				"Er ist glatt, ein Knick, ein Stopp oder eine Lücke.",
			},
			Shows: "half-moon", Related: []string{"smooth", "kink", "stop", "gap"},
		},
		{
			Key: "smooth", Word: "glatt",
			Says: []string{
				"Ein Übergang, an dem nichts springt oder anhält und der Kopf sein Tempo höchstens längs der Schnur ändert, was sie weitergeben kann.",
			},
			Shows: "half-moon", Related: []string{"seam", "kink"},
		},
		{
			Key: "kink", Word: "Knick", Others: []string{"Ruck"},
			Says: []string{
				"Ein Übergang, an dem der Kopf sein Tempo auf einmal zur Seite ändern müsste, was eine Schnur nicht weitergeben kann.",
			},
			Shows: "bump-at-the-quay", Related: []string{"seam", "smooth", "tether"},
		},
		{
			Key: "stop", Word: "Stopp",
			Others: []string{"Stopp am Übergang"},
			Says: []string{
				"Ein Übergang, an dem das Prop anhalten und umkehren müsste: Ein Stab kann das, ein Poi nicht.",
			},
			Shows: "turned-back", Related: []string{"seam", "staff", "stall"},
		},
		{
			Key: "gap", Word: "Lücke",
			Says: []string{
				"Ein Übergang, an dem Hand, Prop oder Kopf springen müssten, sodass es niemand so schwingen kann.",
			},
			Shows: "missing-plank", Related: []string{"seam", "smooth"},
		},
		{
			Key: "slack", Word: "schlaff",
			Says: []string{
				"Eine Schnur ist schlaff, wenn sie schieben müsste; der Kopf fällt dann aus seiner Bahn.",
				"Ein schnelleres Tempo hilft meist.",
			},
			Shows: "slack-water", Related: []string{"tether", "tempo", "taut"},
		},
		{
			Key: "taut", Word: "straff",
			Says: []string{
				"Eine Schnur ist straff, solange an ihr gezogen wird, sodass Kopf und Hand so weit auseinander bleiben, wie sie lang ist.",
			},
			Shows: "beam-from-the-mole", Related: []string{"slack", "tether"},
		},
		{
			Key: "transition", Word: "Wechsel", Others: []string{"Transition"},
			Says: []string{
				"Der Weg von einem Muster ins andere, in einem Moment, in dem beide im Ort und, damit es glatt geht, im Tempo übereinstimmen.",
				"Ein CAP geht so von Muster zu Muster, Runde um Runde.",
			},
			Shows: "rounds-of-the-watch", Related: []string{"cap", "seam"},
		},
		{
			Key: "mirror", Word: "Spiegelbild", Others: []string{"gespiegelt"},
			Says: []string{
				"Dasselbe Muster mit vertauschtem Links und Rechts, sodass aus dem Uhrzeigersinn der Gegenuhrzeigersinn wird.",
				"Die Spiegelansicht ändert nur, wie es zu sehen ist; das Spiegelbild ändert das Muster.",
			},
			Shows: "lock-gates", Related: []string{"direction", "opposite-direction"},
		},
		{
			Key: "tangle", Word: "Verwickeln", Others: []string{"verwickelt"},
			Says: []string{
				"Die Arme wickeln sich mit jeder Runde etwas weiter umeinander, bis es nicht mehr geht.",
			},
			Shows: "crossed-lines", Related: []string{"c-cap", "split-time", "same-direction"},
		},
	},
}
