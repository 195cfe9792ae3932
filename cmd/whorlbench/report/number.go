package report

import (
	"bytes"
	"encoding/json"
	"math"
	"strconv"
	"strings"
)

// Number is written rounded to 6 decimals, without trailing zeros and never
// as −0; one that is not finite is null.
type Number float64

func num(x float64) *Number {
	n := Number(x)
	return &n
}

// MarshalJSON implements json.Marshaler.
func (n Number) MarshalJSON() ([]byte, error) {
	x := float64(n)
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return []byte("null"), nil
	}
	return []byte(Fixed(x, 6)), nil
}

// Fixed writes x rounded to a number of places, without trailing zeros and
// never as −0.
func Fixed(x float64, places int) string {
	s := strconv.FormatFloat(x, 'f', places, 64)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}

// JSON writes the reports of one file as an object, of several as an array,
// with a line for each file.
func JSON(reports []Report, several bool) ([]byte, error) {
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	for i, r := range reports {
		switch {
		case i > 0:
			out.Truncate(out.Len() - 1) // the encoder's line end
			out.WriteString(",\n")
		case several:
			out.WriteByte('[')
		}
		if err := enc.Encode(r); err != nil {
			return nil, err
		}
	}
	if several {
		if len(reports) == 0 {
			out.WriteByte('[')
		} else {
			out.Truncate(out.Len() - 1)
		}
		out.WriteString("]\n")
	}
	return out.Bytes(), nil
}
