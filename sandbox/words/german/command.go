package german

import "whorlbench/sandbox/words"

// Command belongs to German, but stands by itself: the program in the browser does
// without it.
var Command = words.Command{
	Usage: `whorlbench: zusammengesetzte Poi-Muster bauen und verstehen

Aufruf:
  whorlbench serve [--addr HOST:PORT] [--dir ORDNER] [--public-url URL]
  whorlbench check [--json] [--strict STUFE] DATEI...
  whorlbench sample [--per-beat N] DATEI
  whorlbench link [--public-url URL] DATEI...
  whorlbench render [-o ORT] [--format FORMAT] [--size BxH] [...] DATEI...

Befehle:
  serve   öffnet die Werkbank für einen Browser auf diesem Gerät
  check   sagt, woraus ein Muster besteht und wie es heißt, wie seine Stücke
          aneinanderschließen, was eine Schnur täte
  sample  gibt aus, wo Hände und Köpfe sind, als CSV
  link    gibt Links aus, die Muster in der Werkbank öffnen
  render  macht Bilder, Bilderbögen und Schleifen: PNG, SVG, GIF, APNG, Film

- als DATEI ist die Standardeingabe

Zum Beispiel:
  $ whorlbench check half-moon.toml
` + sampleAnswer + `
WHORLBENCH_LANG=de in der Umgebung: Antworten auf Deutsch, sonst auf Englisch
Rückgabewert: 0 in Ordnung, 1 check --strict hat einen Fehler gefunden, 2 die Eingabe war unbrauchbar
`,
	Unknown: "%s: den Befehl %q gibt es nicht",
	BadFlag: "%s: %v",
	Stray:   "%s: unerwartetes Argument %q",
	TryHelp: "Hilfe: %s --help",

	Serve: words.Serve{
		Usage: `Aufruf: whorlbench serve [--addr HOST:PORT] [--dir ORDNER] [--public-url URL]

Stellt die gebaute Werkbank bereit, bis es unterbrochen wird.

  --addr HOST:PORT   wo gelauscht wird (sonst 127.0.0.1:8377; Port 0 nimmt einen freien)
  --dir ORDNER       die gebaute Werkbank (sonst web/dist; make dist baut sie)
  --public-url URL   die Adresse, unter der andere diese Werkbank erreichen, für die Links
                     und Codes, die sie macht (sonst die, unter der sie geöffnet wurde)
`,
		At:        "die Werkbank ist unter %s",
		Stop:      "Strg+C beendet sie",
		Exposed:   "ACHTUNG: lauscht an %s, über dieses Gerät hinaus: Wer es erreicht, kann die Werkbank öffnen",
		PortTaken: "whorlbench serve: %s ist belegt; versuch: whorlbench serve --addr %s (oder Port 0 für einen freien)",
		NoListen:  "whorlbench serve: kann an %s nicht lauschen: %v",
		NoFolder:  "die Werkbank wird gerade neu gebaut; versuch es gleich noch einmal",
		NoDist:    "whorlbench serve: %s: %v; die Werkbank baut: make dist",
		Failed:    "whorlbench serve: %v",
		BadPublic: "whorlbench serve: --public-url: %v",
		Missing:   "den Ordner gibt es nicht",
		NoIndex:   "im Ordner ist keine index.html",

		ForeignHost: "dieser Server antwortet nur auf seine eigene Adresse, nicht auf %q",
		ReadOnly:    "dieser Server gibt nur Dateien: nimm GET oder HEAD",
		NotFound:    "so eine Datei gibt es hier nicht",
		NoEncoding:  "diese Datei gibt es in keiner Kodierung, die du annimmst",
		Unreadable:  "diese Datei lässt sich nicht lesen",
	},

	Check: words.Check{
		Usage: `Aufruf: whorlbench check [--json] [--strict STUFE] DATEI...

Sagt für jede Hand, aus welchen elementaren Mustern ihre Stücke geschnitten sind, wie
sie aneinanderschließen, wie das Ganze nach jeder Definition heißt, was eine echte
Schnur täte und wann es sich schließt. - liest die Standardeingabe.

  --json           ein Objekt je Datei, für andere Programme, auf Englisch; mehrere
                   Dateien: ein Array
  --strict STUFE   Rückgabewert 1, wenn dieser Fehler oder ein schlimmerer gefunden wird;
                   der schlimmste zuerst: gap, stop, kink, slack, tangle
`,
		NoFile:       "whorlbench check: keine Datei genannt; versuch: whorlbench check half-moon.toml (- liest die Standardeingabe)",
		CannotRead:   "%s: lässt sich nicht lesen: %v",
		TooLong:      "%s:1:1: länger als %d Bytes, das ist kein Muster",
		CannotWrite:  "whorlbench check: kann die Antwort nicht schreiben: %v",
		Stdin:        "<stdin>",
		Hand:         "%s Hand",
		Head:         [5]string{"Stück", "Muster", "Verhältnis", "Schläge", "Blätter"},
		SeamHead:     [6]string{"Übergang", "Urteil", "Hand dreht", "längs m/s", "quer m/s", ""},
		From:         "%d → %d",
		Degrees:      "%s°",
		HandBack:     "Hand kehrt um",
		ArmReverses:  "Arm dreht andersherum",
		PropReverses: "Prop dreht andersherum",
		Fault:        "%s, %s: %s",
		NoLevel:      "whorlbench check: --strict: %q gefunden, erlaubt ist %s",
		PetalsMode:   "%s, %s-Modus",
		PetalsTip:    "%s, erste Spitze bei %s°",
		None:         "–",
		LaneCloses:   "schließt sich nach %s, %s, %s",
		LaneNever:    "die Hand endet eine Runde %s m neben ihrem Anfang: Die Spur schließt sich nie",
		WholeCloses:  "das Ganze schließt sich: %s, %s",
		WholeNever:   "das Ganze schließt sich nie",
		Caution: `Gib acht: Schwing mit Platz um dich herum, zuerst mit weichen Props. Feuer braucht
eine Aufsicht, und es gelten die Regeln vor Ort. Das hier sind Zahlen, kein Unterricht:
Lern von Leuten, die Erfahrung haben und, wo es verlangt wird, eine Erlaubnis.
`,
	},

	Sample: words.Sample{
		Usage: `Aufruf: whorlbench sample [--per-beat N] DATEI

Gibt als CSV aus, wo Hand und Kopf im Raum sind (m, X nach rechts vom Publikum gesehen,
Y nach oben, Z zum Publikum) und was die Schnur trüge (in Vielfachen des Kopfgewichts),
von Schlag 0 bis zum Schließen, oder über eine Runde, wenn es sich nie schließt.

  --per-beat N   Zeilen je Schlag (sonst 24)
`,
		OneFile:     "whorlbench sample: %d Dateien gefunden, erlaubt ist eine; versuch: whorlbench sample half-moon.toml",
		PerBeat:     "whorlbench sample: --per-beat: %d gefunden, erlaubt ist 1 oder mehr",
		TooMany:     "%s: %v Zeilen sind zu viele, höchstens %d: Nimm weniger Zeilen je Schlag",
		CannotWrite: "whorlbench sample: kann die Antwort nicht schreiben: %v",
	},

	Link: words.LinkCommand{
		Usage: `Aufruf: whorlbench link [--public-url URL] DATEI...

Gibt für jede Datei einen Link aus, der ihr Muster in der Werkbank öffnet. Das ganze Muster
steckt im Teil hinter dem #, den kein Browser irgendwohin schickt. - liest die Standardeingabe.

  --public-url URL   die Adresse, unter der andere die Werkbank erreichen (sonst
                     http://127.0.0.1:8377/, was nur auf diesem Gerät gilt)
`,
		NoFile:      "whorlbench link: keine Datei genannt; versuch: whorlbench link --public-url https://spin.example/ half-moon.toml",
		BadAddress:  "whorlbench link: --public-url: %v",
		Refused:     "%s: %v",
		OnlyHere:    "whorlbench link: Links zu %s öffnen sich nur auf diesem Gerät; --public-url macht sie für andere",
		CannotWrite: "whorlbench link: kann die Antwort nicht schreiben: %v",
	},

	Render: &render,
}

var render = words.Render{
	Usage: `Aufruf: whorlbench render [Optionen] DATEI...

Macht Bilder und Schleifen von Mustern. Die Bilder sind aus den Schlägen gerechnet, also folgt
auf das letzte einer Schleife ihr erstes: keins doppelt, keins fehlt. Wo ihre Zeit keine ganze
Zahl von Bildern ist, sind sie gleichmäßig darauf verteilt, und das Tempo bleibt.
- liest die Standardeingabe. Die Namen der gemachten Dateien stehen auf der Standardausgabe.

  -o ORT               eine Datei, deren Endung für das Format stehen kann, ein Ordner, oder
                       - für die Standardausgabe (sonst dieser Ordner)
  --force              überschreibt Dateien, die schon da sind

  --format FORMAT      png, svg        ein Schlag
                       sheet           ein Bild je Schlag oder Blatt, nummeriert (PNG)
                       strobe          mehrere Momente in einem Bild (PNG)
                       sheet-svg, strobe-svg   diese beiden als Zeichnungen
                       gif             eine Schleife (die Voreinstellung)
                       apng            eine Schleife, genau, und auf Wunsch durchsichtig
                       frames          die Bilder einer Schleife als PNG-Dateien in einem ZIP
                       webm, mp4       ein Film, mit ffmpeg, wenn es da ist
                       card            eine Lehrkarte zum Drucken, meist zwei Seiten (HTML)
  --size BxH           Pixel; bei einem Bogen die jedes Bildes (sonst 360x360)
  --fps N              Bilder je Sekunde, 1 bis 120; bei einem GIF höchstens 50 (sonst 25)
  --rounds N           Runden der längsten Hand; whole: bis alles ist, wie es war
                       (sonst whole, oder eine Runde, wenn das nie geschieht)
  --slow N             so viele Male so langsam (sonst 1)
  --at SCHLAG          der Schlag, den png und svg zeigen (sonst 0)
  --per WAS            Bogen und Karte: beat (Schlag) oder petal (Blatt) (sonst beat)
  --moments N          strobe: wie viele (sonst 8)

  --theme FARBEN       day oder night (sonst day, auf dunklem Grund night)
  --background FARBE   theme, clear oder eine Farbe wie #ffffff (sonst theme)
  --mirror             wie im Spiegel, für Lernende vor dem Bild
  --trail LÄNGE        round, half, all oder none (sonst round)
  --show LISTE         mehr davon: grid, pieces (je eine Farbe), title, names, beats,
                       timing (wie die Props zweier Hände zueinander stehen), slack
                       (Punkte, wo eine Schnur schlaff würde), taken (der Weg, den eine
                       Hand wirklich nähme)
  --caption TEXT       ein Text darunter
  --hide LISTE         weniger davon: path (der Hand), arms, letters, kinds (der Striche)
  --clicks             webm und mp4: ein Klick auf jedem Schlag, andere an Übergängen und Runden
  --same-frame         rahmt alle Dateien gleich, damit sie nebeneinanderstehen können
  --public-url URL     Karte: die Adresse, unter der andere die Werkbank erreichen, für ihren Link
                       und Code; ohne sie steht auf der Karte die Datei des Musters
`,
	NoFile:      "whorlbench render: keine Datei genannt; versuch: whorlbench render half-moon.toml (- liest die Standardeingabe)",
	Format:      "whorlbench render: --format: %q gefunden, erlaubt ist %s",
	Size:        "whorlbench render: --size: %q gefunden, erlaubt sind Breite und Höhe wie 360x360",
	Number:      "whorlbench render: --%s: %q gefunden, erlaubt ist %s",
	Choice:      "whorlbench render: --%s: %q gefunden, erlaubt ist %s",
	Background:  "whorlbench render: --background: %q gefunden, erlaubt ist theme, clear oder eine Farbe wie #ffffff",
	Opaque:      "whorlbench render: --background: clear gibt es nicht in %s",
	NotOfCard:   "whorlbench render: --%s: gefunden mit --format card; eine Karte ist so groß wie ihr Papier und nimmt %s, -o und --force",
	CardOnly:    "whorlbench render: --%s: gefunden ohne --format card, wozu es gehört",
	BadPublic:   "whorlbench render: --public-url: %v",
	Ending:      "whorlbench render: -o: %s gefunden, erlaubt ist eine Endung %s; oder nenne --format",
	EndingOf:    "whorlbench render: -o: %s mit --format %s gefunden, erlaubt ist eine Endung %s",
	OneName:     "whorlbench render: -o: %s ist eine Datei, %d Muster gefunden; versuch: -o %s/",
	Silent:      "whorlbench render: --clicks: eine Klickspur gibt es in webm und mp4, nicht in %s",
	OneOut:      "whorlbench render: die Standardausgabe nimmt eine Datei, %d gefunden; versuch: -o ORDNER/",
	Fault:       "whorlbench render: %v",
	Of:          "%s: %v",
	There:       "%s ist schon da; --force überschreibt es",
	NoFileThere: "%s ist etwas anderes als eine Datei und bleibt, wie es ist",
	AnyNumber:   "eine Zahl wie 25, 0,5 oder 1/3",
	WholeNumber: "eine ganze Zahl ab 1",
	CannotWrite: "%s: lässt sich nicht schreiben: %v",
	Stopped:     "whorlbench render: gestoppt; was nicht fertig war, ist nicht behalten",
	Stdout:      "<stdout>",
	Whole:       "whole",
	NoVideo:     "whorlbench render: %s braucht ffmpeg, das nicht da ist (unter Debian: apt-get install ffmpeg); gif und apng brauchen nichts",
	VideoFailed: "ffmpeg hat es nicht gemacht: %v: %s",
	VideoSaid:   "ffmpeg hat es nicht gemacht: %s",
	Working:     "zeichnet",
}

// sampleAnswer is what check says of a C-cap; a test holds it to that.
const sampleAnswer = `  half-moon.toml: Half-moon
  rechte Hand
    Stück  Muster                        Verhältnis  Schläge  Blätter
        1  Extension                              1        2  0
        2  vierblättrige Antispin-Blume          −3        2  4, Diamond-Modus, erste Spitze bei 0°
    Übergang  Urteil  Hand dreht  längs m/s  quer m/s
    1 → 2     glatt         180°          0         0  Hand kehrt um, Arm dreht andersherum
    2 → 1     glatt         180°          0         0  Hand kehrt um, Arm dreht andersherum
    schließt sich nach 1 Runde, 4 Schläge, 2 s
    Elementar     Nein: Stück 1 ist Extension und Stück 2 ist eine vierblättrige Antispin-Blume.
    CAP (weit)    Ja: Es schließt sich; Stück 1 ist Extension und Stück 2 ist eine vierblättrige Antispin-Blume.
    CAP (streng)  Ja: Alle Stücke sind Ausschnitte von Blumen, und nach Stück 1 kehrt die Hand um.
    C-CAP         Ja: Die Hand geht auf einem Bogen eines Kreises hin und her.
    S-CAP         Nein: Die Hand bleibt auf einem Kreis, und ein S braucht zwei.
    Diamond       Nein: In Stück 1 geht die Hand nicht geradeaus.
    Schnur   Straff ab 109,2 bpm; bei 120 bleibt sie straff.
    Zug      Von 0,2 bis 7 Mal das Gewicht des Kopfes.
    Tempo    Der Kopf erreicht 7,5 m/s, das sind 27 km/h.
    Platz    Halte alle 2,2 m fern; ein Meter für sie ist darin.
    Hand     Sie ginge in Wirklichkeit bis zu 56 cm neben dieser Bahn, denn eine Schnur zieht nur längs.
    Wackeln  Ein kleines Wackeln wird jede Runde 9,3 Mal so groß, wenn die Hand nicht darauf antwortet.
  das Ganze schließt sich: 4 Schläge, 2 s
  C-CAP: Extension und vierblättrige Antispin-Blume (im strengen Sinn)
`
