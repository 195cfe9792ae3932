package link

import (
	"errors"

	"whorlbench/engine"
)

// Shared is a link that can be given away.
type Shared struct {
	URL string
	// NoCode is the reason why another device could not open the link, which
	// is then good on this one only; nil if it could.
	NoCode error
}

// Share returns the link that holds p, given where the page was opened and
// the public address that the bench was started with, which may be empty. The
// errors are those of Encode, ErrNotPublic and ErrBadAddress.
func Share(p engine.Pattern, page, public string) (Shared, error) {
	fragment, err := Encode(p)
	if err != nil {
		return Shared{}, err
	}
	address, err := Address(page, public)
	if err != nil && !errors.Is(err, ErrOnlyHere) {
		return Shared{}, err
	}
	return Shared{address + fragment, err}, nil
}
