// Package texts walks what a table of words holds, for tests.
package texts

import (
	"fmt"
	"reflect"
	"strings"
	"unicode"
)

// Each hands every text of v, however deep, to found with its path, which begins
// with name. An empty list counts as one empty text.
func Each(name string, v any, found func(path, text string)) {
	walk(name, reflect.ValueOf(v), found)
}

func walk(path string, v reflect.Value, found func(path, text string)) {
	switch v.Kind() {
	case reflect.String:
		found(path, v.String())
	case reflect.Pointer:
		walk(path, v.Elem(), found)
	case reflect.Struct:
		for i := range v.NumField() {
			walk(path+"."+v.Type().Field(i).Name, v.Field(i), found)
		}
	case reflect.Slice, reflect.Array:
		if v.Len() == 0 {
			found(path, "")
		}
		for i := range v.Len() {
			walk(fmt.Sprintf("%s[%d]", path, i), v.Index(i), found)
		}
	default:
		panic("texts: a table holds a " + v.Kind().String() + " at " + path)
	}
}

// HasWords reports whether some words stand in a text as they are, in whatever
// case, and not as parts of others.
func HasWords(text, some string) bool {
	split := func(s string) string {
		return " " + strings.Join(strings.FieldsFunc(strings.ToLower(s), func(r rune) bool {
			return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '°' && r != '%'
		}), " ") + " "
	}
	return some == "" || strings.Contains(split(text), split(some))
}
