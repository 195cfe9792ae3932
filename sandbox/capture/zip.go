package capture

import (
	"archive/zip"
	"bytes"
	"context"
	"fmt"
	"io"
	"strconv"

	"whorlbench/sandbox/words"
)

// zipped writes the loop's frames as PNG files in a ZIP, which only holds them:
// they are packed already.
func (t *Take) zipped(ctx context.Context, w io.Writer, tell Progress) error {
	l := t.Timeline()
	z := zip.NewWriter(w)
	digits, n := len(strconv.Itoa(l.N)), 0
	q := queue{ahead: max(t.Workers, 1), take: func(data []byte) error {
		n++
		f, err := z.CreateHeader(&zip.FileHeader{Name: fmt.Sprintf("%s-%0*d.png", words.FileName(t.pattern.Title), digits, n), Method: zip.Store})
		if err != nil {
			return err
		}
		_, err = f.Write(data)
		return err
	}}
	err := t.EachFrame(ctx, l, tell, func(_ int, f Frame) error {
		now := f.clone()
		return q.add(func() ([]byte, error) {
			var file bytes.Buffer
			err := encoder.Encode(&file, straight(now))
			return file.Bytes(), err
		})
	})
	if err == nil {
		err = q.takeAll(0)
	}
	if err != nil {
		return err
	}
	return z.Close()
}
