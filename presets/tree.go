package presets

// kind is the sort of value found in a file.
type kind uint8

const (
	isText kind = iota
	isWhole
	isDecimal
	isBool
	isDate
	isList
	isTable
)

// node is one value and where it begins.
type node struct {
	kind  kind
	off   int
	text  string // a text's content, any other scalar's digits as written
	items []*node
	count int // of the list, also those beyond maxItems, which are not kept
	table *table
	open  bool // a list of tables written as [[headers]]
	spare *table
}

// maxItems is how many items of a list are kept: as many as any list may
// have, and one more.
const maxItems = MaxPieces + 1

// origin says how a table came to be, which decides what may add to it.
type origin uint8

const (
	implied origin = iota // on the way to a longer [header]
	headed                // by its own [header], or the file itself
	dotted                // by a dotted key
	inline                // between braces
)

// table is one TOML table with its keys in the order of the file.
type table struct {
	off     int
	origin  origin
	entries []entry
	index   map[string]int // name to entry, once there are many
}

type entry struct {
	name  string
	off   int // of the key
	value *node
	used  bool
}

// manyKeys is the number of keys from which looking them up in a map pays.
const manyKeys = 16

// find returns the entry of that name, nil if there is none. It is valid
// until the next add.
func (t *table) find(name string) *entry {
	if t.index != nil {
		if i, ok := t.index[name]; ok {
			return &t.entries[i]
		}
		return nil
	}
	for i := range t.entries {
		if t.entries[i].name == name {
			return &t.entries[i]
		}
	}
	return nil
}

func (t *table) add(name string, off int, v *node) {
	t.entries = append(t.entries, entry{name: name, off: off, value: v})
	switch {
	case t.index != nil:
		t.index[name] = len(t.entries) - 1
	case len(t.entries) == manyKeys:
		t.index = make(map[string]int, 2*manyKeys)
		for i := range t.entries {
			t.index[t.entries[i].name] = i
		}
	}
}

// child adds a new table under name.
func (t *table) child(name string, keyOff, off int, how origin) *table {
	c := &table{off: off, origin: how}
	t.add(name, keyOff, &node{kind: isTable, off: off, table: c})
	return c
}

// push adds an item to a list.
func (n *node) push(item *node) {
	n.count++
	if len(n.items) < maxItems {
		n.items = append(n.items, item)
		return
	}
	n.spare = item.table
}

// last returns the table that was pushed last.
func (n *node) last() *table {
	if n.spare != nil {
		return n.spare
	}
	return n.items[len(n.items)-1].table
}
