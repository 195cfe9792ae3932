package outside

import (
	"archive/zip"
	"bytes"
	"fmt"
	"image"
	"image/draw"
	"image/png"
)

// InStep fails unless ffmpeg decodes a file as so many pictures as a ZIP has PNGs, and
// each is nearer to the one of its number than to any other: so that none is
// missing, doubled or out of turn, and the step from the last to the first is the
// one that the PNGs have there. Opacity is left out.
func InStep(file, zipped []byte) error {
	want, size, err := unzipped(zipped)
	if err != nil {
		return err
	}
	got, err := Decode(file, nil, []string{"-fps_mode", "passthrough", "-f", "rawvideo", "-pix_fmt", "rgb24"})
	if err != nil {
		return err
	}
	one := 3 * size.X * size.Y
	if len(got) != len(want)*one {
		return fmt.Errorf("ffmpeg finds %d bytes of pictures, want %d pictures of %d", len(got), len(want), one)
	}
	for k := range want {
		if near := nearest(want, got[k*one:(k+1)*one]); near != k {
			return fmt.Errorf("frame %d shows frame %d of %d", k, near, len(want))
		}
	}
	return nil
}

// unzipped returns PNGs of one size, in order, three bytes a pixel.
func unzipped(zipped []byte) (frames [][]byte, size image.Point, err error) {
	z, err := zip.NewReader(bytes.NewReader(zipped), int64(len(zipped)))
	if err != nil {
		return nil, size, fmt.Errorf("failed to read the frames: %w", err)
	}
	for _, f := range z.File {
		r, err := f.Open()
		if err != nil {
			return nil, size, fmt.Errorf("failed to open %s: %w", f.Name, err)
		}
		m, err := png.Decode(r)
		if err != nil {
			return nil, size, fmt.Errorf("failed to decode %s: %w", f.Name, err)
		}
		size = m.Bounds().Size()
		px := image.NewNRGBA(m.Bounds())
		draw.Draw(px, px.Rect, m, m.Bounds().Min, draw.Src)
		var rgb []byte
		for i := 0; i < len(px.Pix); i += 4 {
			rgb = append(rgb, px.Pix[i:i+3]...)
		}
		frames = append(frames, rgb)
	}
	return frames, size, nil
}

// nearest returns the number of the frame that a picture is nearest to.
func nearest(frames [][]byte, picture []byte) (at int) {
	least := -1
	for k, f := range frames {
		sum := 0
		for i := range f {
			d := int(f[i]) - int(picture[i])
			sum += d * d
		}
		if least < 0 || sum < least {
			at, least = k, sum
		}
	}
	return at
}
