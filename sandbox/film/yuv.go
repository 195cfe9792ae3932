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
	var was uint32 // a colour, and what becomes of four pixels of it
	lightWas, blueWas, redWas := yuvOf(0, 0, 0)
	for y := 0; y < height; y += 2 {
		up, low := rgba[4*y*width:4*(y+1)*width], rgba[4*(y+1)*width:4*(y+2)*width]
		lightUp, lightLow := dst[y*width:(y+1)*width], dst[(y+1)*width:(y+2)*width]
		at := y / 2 * (width / 2)
		for x := 0; x < width; x += 2 {
			a, b := binary.LittleEndian.Uint64(up[4*x:]), binary.LittleEndian.Uint64(low[4*x:])
			if c := uint32(a); a == b && uint32(a>>32) == c { // most of a picture is plain
				if c != was {
					was = c
					lightWas, blueWas, redWas = yuvOf(4*int32(c&255), 4*int32(c>>8&255), 4*int32(c>>16&255))
				}
				lightUp[x], lightUp[x+1], lightLow[x], lightLow[x+1] = lightWas, lightWas, lightWas, lightWas
				dst[blue+at], dst[red+at] = blueWas, redWas
				at++
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
			_, dst[blue+at], dst[red+at] = yuvOf(r, g, bl)
			at++
		}
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
