package film

import (
	"encoding/binary"
	"math"

	"whorlbench/sandbox/capture"
)

// The light of a colour by ITU-R BT.709, item 3.2, and what its two differences
// are divided by (item 3.3).
const (
	lightR, lightG, lightB = 0.2126, 0.7152, 0.0722
	overB, overR           = 1.8556, 1.5748
)

// ToYUV writes what of a frame has changed (red, green, blue, opacity; even
// sides) into dst as films have it: light, then two differences of colour at
// half the size each way, in the limited range of BT.709, item 5. dst holds
// width·height·3/2 bytes. Browsers differ in how they would do it themselves.
func ToYUV(dst []byte, f capture.Frame) {
	width, height := f.Rect.Dx(), f.Rect.Dy()
	blue := width * height
	red := blue + blue/4
	for y := 0; y < height; y += 2 {
		up, low := f.Pix[y*f.Stride:], f.Pix[(y+1)*f.Stride:]
		lightUp, lightLow := dst[y*width:(y+1)*width], dst[(y+1)*width:(y+2)*width]
		blues, reds := dst[blue+y*width/4:][:width/2], dst[red+y*width/4:][:width/2]
		f.Changed.Runs(y, 2, func(from, to int) {
			// Of four pixels of one colour, as most are.
			var plain uint64
			light, b, r := yuvOfPlain(plain)
			for x := from; x < to; x += 2 {
				upper, lower := binary.LittleEndian.Uint64(up[4*x:]), binary.LittleEndian.Uint64(low[4*x:])
				if upper == lower && uint32(upper>>32) == uint32(upper) {
					if upper != plain {
						plain = upper
						light, b, r = yuvOfPlain(plain)
					}
					lightUp[x], lightUp[x+1], lightLow[x], lightLow[x+1] = light, light, light, light
					blues[x/2], reds[x/2] = b, r
					continue
				}
				var sumR, sumG, sumB int32
				four := [4]uint32{uint32(upper), uint32(upper >> 32), uint32(lower), uint32(lower >> 32)}
				var lights [4]uint8
				for i, c := range four {
					pr, pg, pb := int32(c&255), int32(c>>8&255), int32(c>>16&255)
					lights[i] = lightOf(4*pr, 4*pg, 4*pb)
					sumR, sumG, sumB = sumR+pr, sumG+pg, sumB+pb
				}
				lightUp[x], lightUp[x+1], lightLow[x], lightLow[x+1] = lights[0], lights[1], lights[2], lights[3]
				_, blues[x/2], reds[x/2] = yuvOf(sumR, sumG, sumB)
			}
		})
	}
}

// OpacityToYUV writes what of a frame's opacity has changed into dst as the
// light of a grey picture, value by value, which is how WebM has it. dst has
// been made by NewGrey.
func OpacityToYUV(dst []byte, f capture.Frame) {
	width := f.Rect.Dx()
	for y := range f.Rect.Dy() {
		f.Changed.Runs(y, 1, func(from, to int) {
			for x := from; x < to; x++ {
				dst[y*width+x] = f.Pix[y*f.Stride+4*x+3]
			}
		})
	}
}

// NewGrey returns a picture without light and colour, as films have it.
func NewGrey(width, height int) []byte {
	const noColour = 128
	grey := make([]byte, width*height*3/2)
	for i := width * height; i < len(grey); i++ {
		grey[i] = noColour
	}
	return grey
}

// yuvOfPlain returns what becomes of two pixels of one colour.
func yuvOfPlain(two uint64) (light, blue, red uint8) {
	return yuvOf(4*int32(two&255), 4*int32(two>>8&255), 4*int32(two>>16&255))
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
