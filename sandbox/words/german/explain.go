package german

import "whorlbench/sandbox/words"

var explain = words.Explain{
	Open: "Fachwörter …", Title: "Fachwörter",
	Intro:  "Jedes Wort mit dem, was es bedeutet, auch wo sich Leute uneins sind, und einem Muster, das es zeigt.",
	Search: "Suche", None: "So ein Wort gibt es hier nicht. Versuch ein anderes, etwa Blatt, Split oder Übergang.",
	Letters: "Buchstaben",
	All:     "Alle Wörter", Back: "Zurück zu %s",
	Play: "Abspielen", Pause: "Anhalten",
	InBench: "In der Werkbank öffnen",
	Judged:  "Gerade auf der Werkbank: %s",
	Used:    "Wörter, die hier vorkommen:",
	Means:   "Was es bedeutet", See: "Siehe auch",
	Failed: "Die Wörter ließen sich nicht laden. Prüfe die Verbindung und öffne das noch einmal.",
	Loose:  "Lockerer Sinn", Exact: "Genauer Sinn",
	HybridHere:   "Irgendein Moment",
	HybridApart:  "Nichts gemeinsam",
	HybridBeside: "Blume und Einfaches",
	OneHand:      "Dieses Muster hat eine Hand; ein Hybrid braucht zwei.",
	Steps:        "Schritt für Schritt …", StepsMirror: "Wie im Spiegel",
	Copy: "Kopieren", Copied: "Kopiert.", ByHand: "Dieser Browser lässt die Seite nicht kopieren. Der Text ist markiert; kopiere ihn mit dem Menü oder den Tasten des Browsers.",
	Hand: "Weitergeben …", StepsText: "Die Schritte als ein Text", StepsFailed: "Die Schritte ließen sich nicht erzählen: %s",
}
