package level

import (
	"slices"

	"railhead/internal/length"
)

// Shifted is the profile with every station moved by a length.
func (p Profile) Shifted(by length.Length) Profile {
	if by == 0 {
		return p
	}
	out := slices.Clone(p.points)
	for i := range out {
		out[i].At += by
	}
	return Profile{out}
}

// Mirrored is the profile seen from the other side: station x becomes at − x.
func (p Profile) Mirrored(at length.Length) Profile {
	out := slices.Clone(p.points)
	slices.Reverse(out) // and with it the two sides of a step
	for i := range out {
		out[i].At = at - out[i].At
	}
	return Profile{out}
}
