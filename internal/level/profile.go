package level

import (
	"sort"

	"railhead/internal/length"
)

// Point is one station of a profile.
type Point struct {
	At     length.Length
	Height Height
}

// Profile is a level along a wall: straight between its points, level beyond
// the outer ones. Two points at one station are a step: the first is the value
// on its left, the second on its right.
type Profile struct{ points []Point }

// Fault is what makes points no profile.
type Fault struct {
	Code  string
	Index int // the point at fault
}

// Error is the code.
func (f *Fault) Error() string { return f.Code }

// NewProfile checks the points' order: in order of station, at most two at one station.
func NewProfile(points []Point) (Profile, *Fault) {
	if len(points) == 0 {
		return Profile{}, &Fault{"survey.profile.empty", 0}
	}
	for i := 1; i < len(points); i++ {
		switch {
		case points[i].At < points[i-1].At:
			return Profile{}, &Fault{"survey.profile.unordered", i}
		case i > 1 && points[i].At == points[i-2].At:
			return Profile{}, &Fault{"survey.profile.third_at_station", i}
		}
	}
	return Profile{points}, nil
}

// Level is a profile with one height everywhere.
func Level(h Height) Profile { return Profile{[]Point{{0, h}}} }

// Points are the profile's points in order.
func (p Profile) Points() []Point { return p.points }

// Empty reports whether there is no profile at all.
func (p Profile) Empty() bool { return len(p.points) == 0 }

// Moved is the profile moved up by a length.
func (p Profile) Moved(by length.Length) Profile {
	if by == 0 {
		return p
	}
	out := make([]Point, len(p.points))
	for i, pt := range p.points {
		out[i] = Point{pt.At, pt.Height.Plus(by)}
	}
	return Profile{out}
}

// Under is the profile a measured height lower: its doubt adds to every point's.
func (p Profile) Under(h Height) Profile {
	out := make([]Point, len(p.points))
	for i, pt := range p.points {
		out[i] = Point{pt.At, pt.Height.Sub(h)}
	}
	return Profile{out}
}

// Side picks one of the two values that a step has at its station.
type Side int

// The sides of a station.
const (
	Left  Side = iota // the limit from smaller stations
	Right             // the limit from larger stations
)

// At is the value at a station, on one side of it.
func (p Profile) At(x length.Length, s Side) length.Exact {
	i, j := p.around(x, s)
	if i == j {
		return p.points[i].Height.Value
	}
	a, b := p.points[i], p.points[j]
	return length.Interpolate(a.At, a.Height.Value, b.At, b.Height.Value, x)
}

// HeightAt is [Profile.At] with the readings it rests on.
func (p Profile) HeightAt(x length.Length, s Side) Height {
	i, j := p.around(x, s)
	if i == j {
		return p.points[i].Height
	}
	return between(p.points[i].At, p.points[i].Height, p.points[j].At, p.points[j].Height, x)
}

// around finds the points to interpolate between: equal indexes mean the
// station is on a point, or beyond the outer ones.
func (p Profile) around(x length.Length, s Side) (int, int) {
	last := len(p.points) - 1
	first := sort.Search(len(p.points), func(i int) bool { return p.points[i].At >= x })
	if first > last {
		return last, last
	}
	if p.points[first].At == x {
		if s == Right && first < last && p.points[first+1].At == x {
			first++
		}
		return first, first
	}
	if first == 0 {
		return 0, 0
	}
	return first - 1, first
}

// Breaks are the stations of points strictly between from and to, each once.
func (p Profile) Breaks(from, to length.Length) []length.Length {
	return p.AppendBreaks(nil, from, to)
}

// AppendBreaks adds the breaks between from and to to a list; one that it ends with
// is not added again.
func (p Profile) AppendBreaks(out []length.Length, from, to length.Length) []length.Length {
	for _, pt := range p.points {
		if pt.At > from && pt.At < to && (len(out) == 0 || out[len(out)-1] != pt.At) {
			out = append(out, pt.At)
		}
	}
	return out
}
