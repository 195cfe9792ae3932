package capture

// queue has frames packed side by side and takes them in order, however long
// each takes; no more than a few wait, which bounds the memory.
type queue struct {
	ahead   int // so many at a time
	waiting []chan packed
	take    func(data []byte) error
}

type packed struct {
	data []byte
	err  error
}

// add has a frame packed, and takes those before it that must not wait longer.
func (q *queue) add(pack func() ([]byte, error)) error {
	c := make(chan packed, 1)
	q.waiting = append(q.waiting, c)
	go func() {
		data, err := pack()
		c <- packed{data, err}
	}()
	return q.takeAll(q.ahead)
}

// takeAll takes all frames but so many of the last.
func (q *queue) takeAll(but int) error {
	for len(q.waiting) > but {
		p := <-q.waiting[0]
		q.waiting = q.waiting[1:]
		if p.err != nil {
			return p.err
		}
		if err := q.take(p.data); err != nil {
			return err
		}
	}
	return nil
}
