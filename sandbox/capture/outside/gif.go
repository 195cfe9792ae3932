package outside

import (
	"bytes"
	"fmt"
	"image"
	"os"
	"os/exec"
	"path/filepath"
	"time"
)

// GIF returns what ffmpeg's palettegen and paletteuse make of frames, as they
// are without options, the time that it takes and that of all processors
// together.
func GIF(frames []*image.RGBA) (data []byte, wall, cpu time.Duration, err error) {
	tool, err := exec.LookPath("ffmpeg")
	if err != nil {
		return nil, 0, 0, exec.ErrNotFound
	}
	dir, err := os.MkdirTemp("", "outside")
	if err != nil {
		return nil, 0, 0, err
	}
	defer os.RemoveAll(dir)
	raw, made := filepath.Join(dir, "frames"), filepath.Join(dir, "made.gif")
	var pixels bytes.Buffer
	for _, m := range frames {
		pixels.Write(m.Pix)
	}
	if err := os.WriteFile(raw, pixels.Bytes(), 0o600); err != nil {
		return nil, 0, 0, err
	}
	size := frames[0].Rect.Size()
	cmd := exec.Command(tool, "-v", "error", "-f", "rawvideo", "-pix_fmt", "rgba", "-s", fmt.Sprintf("%dx%d", size.X, size.Y), "-framerate", "25", "-i", raw,
		"-vf", "split[a][b];[a]palettegen[p];[b][p]paletteuse", made)
	begin := time.Now()
	if msg, err := cmd.CombinedOutput(); err != nil {
		return nil, 0, 0, fmt.Errorf("ffmpeg: %w: %s", err, msg)
	}
	wall, cpu = time.Since(begin), cmd.ProcessState.UserTime()+cmd.ProcessState.SystemTime()
	data, err = os.ReadFile(made)
	return data, wall, cpu, err
}
