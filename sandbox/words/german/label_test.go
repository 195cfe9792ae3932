package german_test

import (
	"reflect"
	"testing"

	"whorlbench/sandbox/words"
	"whorlbench/sandbox/words/german"
	"whorlbench/sandbox/words/texts"
)

// Whoever works by voice says what is written on a control, so its name contains
// that (WCAG 2.2, 2.5.3).
func TestNamesContainWhatIsWritten(t *testing.T) {
	for _, table := range []words.Table{words.English, german.German} {
		eachNamed(reflect.ValueOf(table), "", func(where, label, short string) {
			if !texts.HasWords(label, short) {
				t.Errorf("%s: %s: %q is written, but %q is the name", table.Lang, where, short, label)
			}
		})
	}
}

// eachNamed calls do for each control's name in v.
func eachNamed(v reflect.Value, where string, do func(where, label, short string)) {
	switch v.Kind() {
	case reflect.Struct:
		label, short := v.FieldByName("Label"), v.FieldByName("Short")
		if label.IsValid() && short.IsValid() {
			do(where, label.String(), short.String())
		}
		for i := range v.NumField() {
			eachNamed(v.Field(i), where+" "+v.Type().Field(i).Name, do)
		}
	case reflect.Array, reflect.Slice:
		for i := range v.Len() {
			eachNamed(v.Index(i), where, do)
		}
	}
}
