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
	return p.best(from, to, func(a, b length.Exact) bool { return a.Less(b) })
}

// Highest is the first of the highest places over a closed span.
func (p Profile) Highest(from, to length.Length) Spot {
	return p.best(from, to, func(a, b length.Exact) bool { return b.Less(a) })
}

// best is the first of the best of all spots.
func (p Profile) best(from, to length.Length, better func(a, b length.Exact) bool) Spot {
	out := Spot{from, Right, p.At(from, Right)}
	for i, pt := range p.points {
		if pt.At <= from || pt.At >= to {
			continue
		}
		side := Left
		if i > 0 && p.points[i-1].At == pt.At {
			side = Right
		}
		if better(pt.Height.Value, out.Value) {
			out = Spot{pt.At, side, pt.Height.Value}
		}
	}
	if last := p.At(to, Left); better(last, out.Value) {
		out = Spot{to, Left, last}
	}
	return out
}
