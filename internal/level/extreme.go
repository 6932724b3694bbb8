package level

import "railhead/internal/length"

// Spot is one side of one station, and the value there.
type Spot struct {
	At    length.Length
	Side  Side
	Value length.Exact
}

// Spots are the places where a profile can be extreme over the closed span
// from..to: both ends with their limits from inside, and both sides of every
// break between them. An extreme of a piecewise straight line lies at one.
func (p Profile) Spots(from, to length.Length) []Spot {
	out := []Spot{{from, Right, p.At(from, Right)}}
	for _, x := range p.Breaks(from, to) {
		out = append(out, Spot{x, Left, p.At(x, Left)}, Spot{x, Right, p.At(x, Right)})
	}
	return append(out, Spot{to, Left, p.At(to, Left)})
}

// Lowest is the first of the lowest places over a closed span.
func (p Profile) Lowest(from, to length.Length) Spot {
	return best(p.Spots(from, to), func(a, b length.Exact) bool { return a.Less(b) })
}

// Highest is the first of the highest places over a closed span.
func (p Profile) Highest(from, to length.Length) Spot {
	return best(p.Spots(from, to), func(a, b length.Exact) bool { return b.Less(a) })
}

func best(spots []Spot, better func(a, b length.Exact) bool) Spot {
	out := spots[0]
	for _, s := range spots[1:] {
		if better(s.Value, out.Value) {
			out = s
		}
	}
	return out
}
