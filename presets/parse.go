package presets

import (
	"errors"
	"fmt"
	"strings"

	"github.com/pelletier/go-toml/v2/unstable"

	"whorlbench/sandbox/words"
)

// builder turns a file's expressions into a tree of tables. The parser knows
// the grammar; which tables and keys may be written again is decided here, as
// TOML 1.0 has it, with hashed names: a table of a hundred thousand keys must
// not take a hundred thousand times as long as one of ten.
type builder struct {
	src     *source
	data    []byte
	bad     *problems
	root    *table
	current *table
}

// parse returns the file's root table. Keys written twice go to bad; a text
// that is no TOML is an error.
func parse(src *source, bad *problems) (*table, error) {
	b := &builder{src: src, data: []byte(src.text), bad: bad}
	b.root = &table{origin: headed}
	b.current = b.root
	var p unstable.Parser
	p.Reset(b.data)
	for p.NextExpression() {
		switch n := p.Expression(); n.Kind {
		case unstable.KeyValue:
			b.keyValue(b.current, n)
		case unstable.Table:
			b.header(n, false)
		case unstable.ArrayTable:
			b.header(n, true)
		}
	}
	if err := p.Error(); err != nil {
		return nil, b.syntax(err)
	}
	return b.root, nil
}

func (b *builder) syntax(err error) error {
	off := len(b.src.text)
	var at *unstable.ParserError
	if errors.As(err, &at) {
		// A highlight is a piece of the parser's input, so the capacity
		// behind it tells where it begins.
		off = cap(b.data) - cap(at.Highlight)
	}
	return b.src.refuse(off, fmt.Sprintf(words.Said.Preset.NotTOML, err.Error()))
}

// name returns a key part. Bare keys share the file's text.
func (b *builder) name(k *unstable.Node) string {
	if int(k.Raw.Length) == len(k.Data) {
		off := int(k.Raw.Offset)
		return b.src.text[off : off+len(k.Data)]
	}
	return string(k.Data)
}

// header opens the table that a [header] or a [[header]] names.
func (b *builder) header(n *unstable.Node, list bool) {
	t := b.root
	start := -1
	for it := n.Key(); it.Next(); {
		k := it.Node()
		name, off := b.name(k), int(k.Raw.Offset)
		if start < 0 {
			start = openingBracket(b.src.text[:off])
		}
		e := t.find(name)
		if it.IsLast() {
			b.open(t, e, name, off, start, list)
			return
		}
		switch {
		case e == nil:
			t = t.child(name, off, start, implied)
		case e.value.kind == isTable && e.value.table.origin != inline:
			t = e.value.table
		case e.value.open:
			t = e.value.last()
		default:
			b.again(words.Said.Preset.Redefined, name, off, e)
			b.current = new(table)
			return
		}
	}
}

// openingBracket returns where the brackets begin that a text ends with.
func openingBracket(s string) int {
	before := len(strings.TrimRight(s, "[ \t"))
	return before + strings.IndexByte(s[before:], '[')
}

// open makes the last part of a header the current table.
func (b *builder) open(t *table, e *entry, name string, off, start int, list bool) {
	w := &words.Said.Preset
	switch {
	case e == nil && !list:
		b.current = t.child(name, off, start, headed)
	case e == nil:
		v := &node{kind: isList, off: start, open: true}
		t.add(name, off, v)
		b.current = pushTable(v, start)
	case list && e.value.open:
		b.current = pushTable(e.value, start)
	case !list && e.value.kind == isTable && e.value.table.origin == implied:
		b.current = e.value.table
		b.current.origin = headed
		b.current.off, e.value.off = start, start
	default:
		what := w.Redefined
		if !list && e.value.kind == isTable && e.value.table.origin == headed {
			what = w.Twice
		}
		b.again(what, name, off, e)
		b.current = new(table) // its keys have been complained about with it
	}
}

func pushTable(list *node, off int) *table {
	t := &table{off: off, origin: headed}
	list.push(&node{kind: isTable, off: off, table: t})
	return t
}

// keyValue adds what stands under a key, dotted or not, to t.
func (b *builder) keyValue(t *table, n *unstable.Node) {
	w := &words.Said.Preset
	for it := n.Key(); it.Next(); {
		k := it.Node()
		name, off := b.name(k), int(k.Raw.Offset)
		e := t.find(name)
		if it.IsLast() {
			v := b.value(n.Value(), b.afterKey(k))
			if e != nil {
				b.again(w.Twice, name, off, e)
				return
			}
			t.add(name, off, v)
			return
		}
		switch {
		case e == nil:
			t = t.child(name, off, off, dotted)
		case e.value.kind == isTable && e.value.table.origin == dotted:
			t = e.value.table
		default:
			b.again(w.Redefined, name, off, e)
			return
		}
	}
}

// afterKey returns where the value of a key begins: behind blanks and "=".
func (b *builder) afterKey(k *unstable.Node) int {
	off := int(k.Raw.Offset) + int(k.Raw.Length)
	rest := b.src.text[off:]
	return off + len(rest) - len(strings.TrimLeft(rest, "= \t"))
}

// value makes a node of a parsed value. The parser does not say where a list
// begins, so off does; a list directly in a list has its outer list's place.
func (b *builder) value(n *unstable.Node, off int) *node {
	v := &node{off: off}
	switch n.Kind {
	case unstable.Array:
		v.kind = isList
		for it := n.Children(); it.Next(); {
			if v.count >= maxItems {
				v.count++
				continue
			}
			v.push(b.value(it.Node(), off))
		}
		return v
	case unstable.InlineTable:
		v.kind, v.off = isTable, int(n.Raw.Offset)
		v.table = &table{off: v.off, origin: inline}
		for it := n.Children(); it.Next(); {
			b.keyValue(v.table, it.Node())
		}
		// Dotted keys inside may not be added to from outside either; they
		// cannot be reached, as this table cannot.
		return v
	}
	v.off = int(n.Raw.Offset)
	v.text = b.src.text[v.off : v.off+int(n.Raw.Length)]
	switch n.Kind {
	case unstable.String:
		v.kind, v.text = isText, string(n.Data)
	case unstable.Integer:
		v.kind = isWhole
	case unstable.Float:
		v.kind = isDecimal
	case unstable.Bool:
		v.kind = isBool
	default:
		v.kind = isDate
	}
	return v
}

// again notes that a key may not be written where it is.
func (b *builder) again(what, name string, off int, first *entry) {
	at := first.off // the entry itself may move
	b.bad.add(off, Error{Key: name}, func() string { return fmt.Sprintf(what, b.src.line(at)) })
}
