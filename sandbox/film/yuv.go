package film

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
	for y := 0; y < height; y += 2 {
		for x := 0; x < width; x += 2 {
			var r, g, b float32
			for _, at := range [4]int{y*width + x, y*width + x + 1, (y+1)*width + x, (y+1)*width + x + 1} {
				p := rgba[4*at : 4*at+3 : 4*at+3]
				pr, pg, pb := float32(p[0]), float32(p[1]), float32(p[2])
				dst[at] = uint8(16.5 + 219./255*(lightR*pr+lightG*pg+lightB*pb))
				r, g, b = r+pr/4, g+pg/4, b+pb/4
			}
			light := lightR*r + lightG*g + lightB*b
			at := y/2*(width/2) + x/2
			dst[blue+at] = uint8(128.5 + 224./255*(b-light)/overB)
			dst[red+at] = uint8(128.5 + 224./255*(r-light)/overR)
		}
	}
}
