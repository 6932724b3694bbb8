package rail

import (
	"slices"

	"railhead/internal/length"
	"railhead/internal/survey"
)

// LeastPiece is the shortest rail that still holds two screws and a hanger
// between them (common practice, no source).
const LeastPiece = 150 * length.Millimetre

// divide cuts a run that is longer than the longest stock into the fewest
// pieces that can be bought, all of one length: so none is shorter than half a
// stock length, and a mirrored wall has the mirrored joints. Where studs are
// known each joint then moves to the middle of the nearest stud bay, so that
// one piece of blocking across the bay takes the end screws of both sides and
// no stud has two rail ends on its face; all joints stay where they were when a
// piece would become too long for the stock, or too short.
func divide(run survey.Span, wall *survey.Wall, stock []length.Length) []Piece {
	longest := longestOf(stock)
	if longest < LeastPiece || run.To-run.From <= longest {
		return []Piece{{From: run.From, To: run.To}}
	}
	n := (run.To - run.From + longest - 1) / longest
	even := make([]length.Length, 0, n+1)
	for i := length.Length(0); i <= n; i++ {
		even = append(even, share(run.From, run.To, i, n))
	}
	if moved := inBays(even, wall); canBeCut(moved, longest) {
		return joined(moved)
	}
	return joined(even)
}

func longestOf(stock []length.Length) length.Length {
	if len(stock) == 0 {
		return 0
	}
	return slices.Max(stock)
}

// share is the station i/n of the way from one end to the other, to the nearest
// nanometre, ties to even.
func share(from, to, i, n length.Length) length.Length {
	return length.Interpolate(0, from.Exact(), n, to.Exact(), i).Nearest()
}

// inBays moves the joints between the ends into the middle of the nearest bay.
func inBays(ends []length.Length, wall *survey.Wall) []length.Length {
	out := slices.Clone(ends)
	if !hasStuds(wall) {
		return out
	}
	for i := 1; i < len(out)-1; i++ {
		out[i] = nearestBay(out[i], wall.Studs)
	}
	return out
}

// nearestBay is the middle of the bay nearest to a station; of two the left one.
func nearestBay(at length.Length, studs []length.Length) length.Length {
	best, found := at, false
	for i := 1; i < len(studs); i++ {
		middle := share(studs[i-1], studs[i], 1, 2)
		if !found || (middle-at).Abs() < (best-at).Abs() {
			best, found = middle, true
		}
	}
	return best
}

func canBeCut(ends []length.Length, longest length.Length) bool {
	for i := 1; i < len(ends); i++ {
		if l := ends[i] - ends[i-1]; l > longest || l < LeastPiece {
			return false
		}
	}
	return true
}

// joined are the pieces between stations, butted against each other.
func joined(ends []length.Length) []Piece {
	var out []Piece
	for i := 1; i < len(ends); i++ {
		out = append(out, Piece{From: ends[i-1], To: ends[i], Joint: i < len(ends)-1})
	}
	return out
}
