package words

import "testing"

func TestSpelt(t *testing.T) {
	for in, want := range map[string]string{
		"1⅓ beats": "1 1/3 beats", "takes ⅔ of a beat": "takes 2/3 of a beat", "½ turn": "½ turn", "2¾": "2¾",
	} {
		if got := Spelt(in); got != want {
			t.Errorf("Spelt(%q) = %q, want %q", in, got, want)
		}
	}
}
