package outside

import (
	"fmt"
	"image"
	"time"
)

// GIF returns what ffmpeg's palettegen and paletteuse make of frames, as they
// are without options, the time that it takes and that of all processors
// together.
func GIF(frames []*image.RGBA) (data []byte, wall, cpu time.Duration, err error) {
	var raw []byte
	for _, m := range frames {
		raw = append(raw, m.Pix...)
	}
	size := frames[0].Rect.Size()
	return run(raw, []string{"-f", "rawvideo", "-pix_fmt", "rgba", "-s", fmt.Sprintf("%dx%d", size.X, size.Y), "-framerate", "25"},
		[]string{"-vf", "split[a][b];[a]palettegen[p];[b][p]paletteuse", "-f", "gif"})
}
