package film

import (
	"encoding/binary"
	"math"
)

// The light of a colour by ITU-R BT.709, item 3.2, and what its two differences
// are divided by (item 3.3).
const (
	lightR, lightG, lightB = 0.2126, 0.7152, 0.0722
	overB, overR           = 1.8556, 1.5748
)

// ToYUV writes a picture (red, green, blue, opacity; even sides) into dst as
// films have it: light, then two differences of colour at half the size each
// way, in the limited range of BT.709, item 5. dst holds width·height·3/2
// bytes. Browsers differ in how they would do it themselves.
func ToYUV(dst, rgba []byte, width, height int) {
	blue := width * height
	red := blue + blue/4
	plain := newPlainRow(width)
	for y := 0; y < height; y += 2 {
		up, low := rgba[4*y*width:4*(y+1)*width], rgba[4*(y+1)*width:4*(y+2)*width]
		lightUp, lightLow := dst[y*width:(y+1)*width], dst[(y+1)*width:(y+2)*width]
		blues, reds := dst[blue+y*width/4:][:width/2], dst[red+y*width/4:][:width/2]
		for x := 0; x < width; {
			a, b := binary.LittleEndian.Uint64(up[4*x:]), binary.LittleEndian.Uint64(low[4*x:])
			if a == b && uint32(a>>32) == uint32(a) {
				from := x
				for x += 2; x < width && binary.LittleEndian.Uint64(up[4*x:]) == a && binary.LittleEndian.Uint64(low[4*x:]) == a; {
					x += 2
				}
				if a != plain.of {
					if x-from < longRun {
						light, blue, red := yuvOfPlain(a)
						for ; from < x; from += 2 {
							lightUp[from], lightUp[from+1], lightLow[from], lightLow[from+1] = light, light, light, light
							blues[from/2], reds[from/2] = blue, red
						}
						continue
					}
					plain.of = a
					plain.fill()
				}
				copy(lightUp[from:x], plain.light)
				copy(lightLow[from:x], plain.light)
				copy(blues[from/2:x/2], plain.blue)
				copy(reds[from/2:x/2], plain.red)
				continue
			}
			var r, g, bl int32
			four := [4]uint32{uint32(a), uint32(a >> 32), uint32(b), uint32(b >> 32)}
			var light [4]uint8
			for i, c := range four {
				pr, pg, pb := int32(c&255), int32(c>>8&255), int32(c>>16&255)
				light[i] = lightOf(4*pr, 4*pg, 4*pb)
				r, g, bl = r+pr, g+pg, bl+pb
			}
			lightUp[x], lightUp[x+1], lightLow[x], lightLow[x+1] = light[0], light[1], light[2], light[3]
			_, blues[x/2], reds[x/2] = yuvOf(r, g, bl)
			x += 2
		}
	}
}

// plainRow is what becomes of a row of one colour, which most of a picture is.
type plainRow struct {
	of               uint64 // two pixels
	light, blue, red []byte
}

func newPlainRow(width int) *plainRow {
	p := &plainRow{light: make([]byte, width), blue: make([]byte, width/2), red: make([]byte, width/2)}
	p.fill()
	return p
}

// longRun is how many pixels of one colour are worth a row of it.
const longRun = 64

// yuvOfPlain returns what becomes of two pixels of one colour.
func yuvOfPlain(two uint64) (light, blue, red uint8) {
	return yuvOf(4*int32(two&255), 4*int32(two>>8&255), 4*int32(two>>16&255))
}

func (p *plainRow) fill() {
	light, blue, red := yuvOfPlain(p.of)
	for i := range p.light {
		p.light[i] = light
	}
	for i := range p.blue {
		p.blue[i], p.red[i] = blue, red
	}
}

// The formulas above in whole numbers: of the sum of four pixels, in parts of
// 1 << parts of one code value. Each is within a thousandth of it.
const (
	parts = 18
	one   = 1 << parts / 4
	half  = 1 << (parts - 1)
)

var (
	rToY, gToY, bToY = whole(219. / 255 * lightR), whole(219. / 255 * lightG), whole(219. / 255 * lightB)
	rToBlue, gToBlue = whole(-224. / 255 * lightR / overB), whole(-224. / 255 * lightG / overB)
	gToRed, bToRed   = whole(-224. / 255 * lightG / overR), whole(-224. / 255 * lightB / overR)
	bToBlue, rToRed  = -rToBlue - gToBlue, -gToRed - bToRed // so that grey has no colour
)

func whole(x float64) int32 { return int32(math.Round(one * x)) }

// lightOf returns the light of four pixels' sum.
func lightOf(r, g, b int32) uint8 {
	return uint8((16<<parts + half + rToY*r + gToY*g + bToY*b) >> parts)
}

func yuvOf(r, g, b int32) (light, blue, red uint8) {
	return lightOf(r, g, b), uint8((128<<parts + half + rToBlue*r + gToBlue*g + bToBlue*b) >> parts),
		uint8((128<<parts + half + rToRed*r + gToRed*g + bToRed*b) >> parts)
}
