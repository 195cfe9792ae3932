package german_test

import (
	"slices"
	"strings"
	"testing"

	"whorlbench/engine"
	"whorlbench/engine/duet"
	"whorlbench/engine/frac"
	"whorlbench/engine/mend"
	"whorlbench/engine/naming"
	"whorlbench/engine/seam"
	"whorlbench/engine/tether"
	"whorlbench/presets"
	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
)

// speak lets everything be said in German while a test runs.
func speak(t *testing.T) *words.Table {
	words.Use(&german.German)
	t.Cleanup(func() { words.Use(&words.English) })
	return words.Said
}

func builtIn(t *testing.T, id string) engine.Pattern {
	t.Helper()
	for _, e := range presets.Library() {
		if e.ID == id {
			p, err := e.Pattern()
			if err != nil {
				t.Fatal(err)
			}
			return p
		}
	}
	t.Fatalf("no built-in pattern %s", id)
	return engine.Pattern{}
}

// lane is a hand of a built-in pattern with all that is judged of it.
func lane(t *testing.T, id string, i int) (p engine.Pattern, k *engine.Track, seams []seam.Seam) {
	p = builtIn(t, id)
	k = engine.NewTrack(p.Lanes[i])
	return p, k, seam.Of(k, p.Tempo, p.Performer.Rigid)
}

// TestNamesInGerman: the sentences are whole German ones, written by hand: the
// article has the name's gender, and no name stands where another case belongs.
func TestNamesInGerman(t *testing.T) {
	w := speak(t)
	for _, tt := range []struct {
		id   string
		line string
		why  []string // some of the definitions
	}{
		{"half-moon", "C-CAP: Extension und vierblättrige Antispin-Blume (im strengen Sinn)", []string{
			"Nein: Stück 1 ist Extension und Stück 2 ist eine vierblättrige Antispin-Blume.",
			"Ja: Alle Stücke sind Ausschnitte von Blumen, und nach Stück 1 kehrt die Hand um.",
			"Ja: Die Hand geht auf einem Bogen eines Kreises hin und her."}},
		{"capstan", "Unit-Turn 90° neben dem Arm", []string{"Ja: Es ist ein einziges Muster, ein Unit-Turn 90° neben dem Arm, und nichts springt."}},
		{"ships-cat", "Cateye", []string{"Nein: Es ist nur ein Muster, ein Cateye, und ein CAP braucht zwei."}},
		{"three-sails", "Triquetra", []string{"Nein: Es ist nur ein Muster, eine Triquetra, und ein CAP braucht zwei."}},
		{"lamp-under-the-bridge", "Pendel", []string{"Ja: Es ist ein einziges Muster, ein Pendel, und nichts springt."}},
		{"kite", "Diamond: lineare Extension", []string{
			"Nein: Stück 1 und 2 sind beide lineare Extension, aber die Hand geht auf einer anderen Bahn.",
			"Ja: Die Hand geht um vier gleich lange gerade Seiten mit rechten Winkeln."}},
		{"missing-plank", "C-CAP: Extension und vierblättrige Antispin-Blume (im strengen Sinn); nicht verbunden: Nach Stück 1 springt das Prop um 30°", nil},
		{"turned-back", "Extension, hin und zurück", []string{"Ja: Es ist ein einziges Muster, Extension, hin und zurück gespielt."}},
	} {
		_, k, seams := lane(t, tt.id, 0)
		whole := naming.Judge(k, seams)
		if got := w.LaneLine(&whole); got != tt.line {
			t.Errorf("%s is called %q, want %q", tt.id, got, tt.line)
		}
		var because []string
		for _, d := range w.Definitions(&whole) {
			because = append(because, d.Because)
		}
		for _, want := range tt.why {
			if !slices.Contains(because, want) {
				t.Errorf("%s: %q is not said of it, but\n%s", tt.id, want, strings.Join(because, "\n"))
			}
		}
	}
}

// TestStepsInGerman: a pattern's steps, written by hand.
func TestStepsInGerman(t *testing.T) {
	w := speak(t)
	for id, want := range map[string][]string{
		"half-moon": {
			"Links, rechts und die Drehrichtung sind so gemeint, wie sie jemand sieht, der dir gegenübersteht. Hände und Schultern sind deine eigenen.",
			"Rechte Hand, flach vor dir wie ein Bild an der Wand.",
			"Am Anfang ist die Hand oben auf ihrem Kreis, und das Prop zeigt nach oben. Der Kreis misst 60 cm von der Mitte bis zum Rand; seine Mitte liegt genau zwischen deinen Schultern.",
			"1. Ein halber Kreis gegen den Uhrzeigersinn, von oben über links nach unten; das Prop macht eine halbe Drehung gegen den Uhrzeigersinn und zeigt immer von der Mitte weg; zwei Schläge. Dann kehrt die Hand um, während das Prop nach unten zeigt.",
			"Schlag 1: Hand oben, Prop nach oben.",
			"Schlag 2: Hand links, Prop nach links.",
			"2. Ein halber Kreis im Uhrzeigersinn, von unten über links nach oben; das Prop macht wie zuvor eineinhalb Drehungen gegen den Uhrzeigersinn; zwei Schläge. Dann kehrt die Hand um, während das Prop nach oben zeigt.",
			"Schlag 3: Hand unten, Prop nach unten.",
			"Schlag 4: Hand links, Prop nach links.",
			"Jetzt sind Hand und Prop wieder am Anfang (vier Schläge): Fang von vorn an.",
			"Zähle gleichmäßig, etwa 120 Schläge in der Minute. Mit leerer Hand geh so langsam, wie du magst; ein Poi braucht sein Tempo.",
			"Schaff Platz um dich herum, nimm zuerst weiche Props, und geh den Weg mit leerer Hand ab, bevor das Prop dazukommt.",
		},
		"lamp-under-the-bridge": {
			"1. Die Hand bleibt, wo sie ist; das Prop pendelt unter der Hand, 50° nach jeder Seite, einmal hin und her; zwei Schläge.",
		},
		"paper-star": {
			"1. Einmal um den Kreis gegen den Uhrzeigersinn, von oben wieder dorthin; das Prop macht eineinhalb Drehungen im Uhrzeigersinn; drei Schläge.",
			"Jetzt ist die Hand wieder am Anfang, das Prop aber nicht: Mach weiter, bis du zwei Runden geschafft hast (sechs Schläge).",
		},
		"swan": {
			"2. Ein halber Kreis im Uhrzeigersinn, von links über oben nach rechts, auf einem Kreis mit der Mitte 60 cm rechts von der vorigen; das Prop macht wie zuvor eine Drehung gegen den Uhrzeigersinn; zwei Schläge. Dann kehrt die Hand um, während das Prop nach rechts zeigt.",
		},
		"paddle-steamer": {
			"Linke Hand, neben dir wie das Rad eines Karrens.",
			"Beide Hände kommen gemeinsam an ihren Anfang zurück. Dauer: vier Schläge.",
		},
	} {
		steps := w.StepByStep(builtIn(t, id), false)
		lines := steps.Lines()
		if id == "half-moon" && !slices.Equal(lines, want) {
			t.Errorf("%s is told\n%s\nwant\n%s", id, strings.Join(lines, "\n"), strings.Join(want, "\n"))
		}
		for _, line := range want {
			if !slices.Contains(lines, line) {
				t.Errorf("%s: there is no line\n%s\nin\n%s", id, line, strings.Join(lines, "\n"))
			}
		}
	}
}

// TestTetherInGerman: what a tether does, with its verb where German has it.
func TestTetherInGerman(t *testing.T) {
	w := speak(t)
	spin := engine.Stroke(engine.PointPath(0), frac.Int(0), frac.Int(1), frac.Int(1), frac.Int(4))
	k := engine.NewTrack(engine.Lane{Side: engine.Right, Tether: 0.6, Pieces: []engine.Piece{spin}})
	at := tether.Window{OK: true, From: 109.1946, Open: true}
	for _, tt := range []struct {
		r    tether.Result
		want string
	}{
		{tether.Result{Rounds: 1, Window: at}, "Straff ab 109,2 bpm; bei 90 bleibt sie straff."},
		{tether.Result{Rounds: 1, Window: at, Slack: true, Spans: []tether.Span{{From: 1, To: 1.25}}, Least: tether.Extreme{Prop: 100}}, "Straff ab 109,2 bpm; bei 90 wird sie etwa 0,25 Schläge lang schlaff, oben."},
		{tether.Result{Rounds: 1, Window: at, Slack: true, Spans: []tether.Span{{From: 0, To: 1}, {From: 2, To: 2.5}}}, "Straff ab 109,2 bpm; bei 90 wird sie 2 Mal in 1 Runde schlaff, bis zu etwa 1 Schlag lang."},
		{tether.Result{Rounds: 1, Slack: true, Spans: []tether.Span{{From: 0, To: 4}}}, "Irgendwo schlaff, bei jedem Tempo; bei 90 ist sie die ganze Zeit schlaff."},
	} {
		if got := w.TetherLine(k, &tt.r, 90); got != tt.want {
			t.Errorf("TetherLine(%+v) = %q, want %q", tt.r, got, tt.want)
		}
	}
}

// TestDuetInGerman: two hands.
func TestDuetInGerman(t *testing.T) {
	w := speak(t)
	spans := []duet.Span{{To: 1, Direction: duet.Same, Timing: duet.Together}, {From: 1, To: 2, Direction: duet.Same, Timing: duet.Quarter}}
	for got, want := range map[string]string{
		w.SpansSaid(w.Duet.Props, spans[:1]): "Props drehen durchweg gleich herum, die ganze Zeit zusammen.",
		w.SpansSaid(w.Duet.Hands, spans):     "Hände drehen durchweg gleich herum: zusammen → Quarter.",
		w.SpanSaid(duet.Span{From: 0.5, To: 2.5, Direction: duet.Opposite, Timing: duet.Split}): "Schlag 0,5 bis 2,5: Gegenrichtung, Split.",
	} {
		if got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// TestMendingInGerman: fixes, each a whole sentence.
func TestMendingInGerman(t *testing.T) {
	w := speak(t)
	p, _, _ := lane(t, "bump-at-the-quay", 0)
	var got []string
	for _, f := range mend.Of(p.Lanes[0], p.Performer, p.Tempo, 0) {
		r := w.Remedy(p.Lanes[0], f)
		got = append(got, r.Label)
		got = append(append(append(append(got, r.Does...), r.Left), r.Costs...), r.Also...)
	}
	for _, want := range []string{
		"Stück 2 umwandeln: vierblättrige Antispin-Blume", "In Stück 2 macht das Prop 1½ Drehungen statt 2½ Drehungen", "Jetzt glatt",
		"Der Übergang nach Stück 2 wird auch glatt", "Die Schläge für den kleinsten Ruck verteilen", "Stück 1 dauert 1⅓ Schläge, Stück 2 dauert 2⅔",
		"Die Hand sanft umkehren lassen", "In Stück 1 läuft die Hand sanft in das Ende hinein", "Die Kurve verbiegt sich um bis zu 37 cm",
	} {
		if !slices.Contains(got, want) {
			t.Errorf("%q is not said, but\n%s", want, strings.Join(got, "\n"))
		}
	}
}

// TestNumbersInGerman: a comma before the decimals, none between thousands.
func TestNumbersInGerman(t *testing.T) {
	w := speak(t)
	for got, want := range map[string]string{
		words.Number(1234.5, 1): "1234,5", words.Number(-0.25, 2): "−0,25", words.Value(frac.New(1, 8)): "0,125", words.Value(frac.New(1, 3)): "1/3",
		words.Metres(0.3): "0,3", w.CountBeats(frac.New(9, 2)): "4,5 Schläge", w.Seconds(frac.Int(4), 108): "2,222 s",
		words.TakenDecimals("0,5"): "0.5", words.TakenDecimals("0.5"): "0.5",
	} {
		if got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	if got, want := w.PlainName(naming.Figure{Kind: naming.UnitTurn, Offset: 22.5}), "Unit-Turn, 22.5° neben dem Arm"; got != want {
		t.Errorf("for another program it is %q, want %q", got, want)
	}
}

// TestGlossaryInGerman: every word and other name is found in a text as itself, with
// German endings too, and in no other word.
func TestGlossaryInGerman(t *testing.T) {
	g := &german.Glossary
	names := map[string]string{}
	for _, term := range g.Terms {
		for _, name := range append([]string{term.Word}, term.Others...) {
			if other, twice := names[name]; twice {
				t.Errorf("%q stands for %s and for %s", name, other, term.Key)
			}
			names[name] = term.Key
			if got := g.Find("Das ist " + name + "."); len(got) != 1 || got[0].Key != term.Key {
				t.Errorf("in a text %q is found as %v, want %s", name, got, term.Key)
			}
		}
	}
	for text, want := range map[string][]string{
		"Zwei Blumen und drei Blätter":             {"flower", "petal"},
		"Die Köpfe des Props an der Schnur":        {"head", "prop", "tether"},
		"Im weiten Sinn ist es ein CAP aus Runden": {"broad-sense", "cap", "round"},
		"eine vierblättrige Antispin-Blume":        {"antispin", "flower"},
		"Armbanduhr, Stabilität, Glatteis":         nil,
	} {
		var got []string
		for _, m := range g.Find(text) {
			got = append(got, m.Key)
		}
		if !slices.Equal(got, want) {
			t.Errorf("in %q are found %v, want %v", text, got, want)
		}
	}
}
