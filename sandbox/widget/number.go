package widget

import "strconv"

// trim writes a number as short as it is.
func trim(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
