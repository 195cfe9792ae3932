package german

import "whorlbench/sandbox/words"

var card = words.Card{
	Open: "Lehrkarte …", Head: "Lehrkarte",
	Print: "Drucken", Save: "Als HTML speichern", Share: "Teilen …",
	Making: "Die Karte wird gemacht.", Failed: "Die Karte ließ sich nicht machen: {why}",
	Sub: "%s. %s.", Tempo: "%s Schläge in der Minute",
	Round: "Die ganze Runde, wie sie bei Schlag 1 steht. Buchstaben stehen, wo Stücke aneinanderschließen.",
	Beats: "Schlag für Schlag", Tips: "Blatt für Blatt", Joins: "Übergang für Übergang",
	Reading:  "Die Linie mit dem Pfeil ist der Weg zum nächsten Bild.",
	TwoHands: "Die rechte Hand und ihr Kopf sind Scheiben mit dicker Linie, die linken Ringe mit dünner.",
	OneRound: "Gezeigt ist eine Runde; Prop und Hand sind erst nach mehreren zusammen zurück.",
	TooMany:  "Platz ist für %d Bilder, also nicht für eins je Schlag.",
	First:    "Das sind die ersten %d von %d.",
	Stance:   "%s: Hand %s, Prop nach %s", StanceStay: "%s: Prop nach %s", Middle: "in der Mitte",
	Made: "Geschnitten und gefügt", Piece: "Stück", Name: "Ist ein Teil von", Length: "Schläge", Join: "Übergang", At: "Marke",
	Rest:    "%d weitere Stücke folgen. Die Datei hat sie alle.",
	Props:   "Props: %s, %s",
	Counted: "In diesen Sätzen zählen die Schläge ab 0, wo eine Runde beginnt.",
	Room:    "Tempo und Platz", Tether: "Das Prop misst %s cm von der Hand zum Kopf.",
	File:       "Die Datei des Musters",
	NoLink:     "Andere können diese Werkbank über keine Adresse erreichen, also gibt es hier keinen Link. Gib die Datei %s mit der Karte aus.",
	NoLinkFile: "Andere können diese Werkbank über keine Adresse erreichen, also gibt es hier keinen Link. Das ist %s, ohne Notizen, zum Abtippen oder Aufheben:",
}
