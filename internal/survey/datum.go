package survey

import (
	"railhead/internal/length"
	"railhead/internal/level"
)

// Rule is which rule gave a datum.
type Rule int

// Rules, in the order in which they are tried.
const (
	ByGiven Rule = iota
	ByFloorStanding
	ByPlannedWalls
	ByAllWalls
)

// String is the rule's name on the wire.
func (r Rule) String() string {
	return [...]string{"given", "floor_standing", "planned_walls", "all_walls"}[r]
}

// Datum is the level that a level group's heights refer to.
type Datum struct {
	Group int
	Wall  int
	At    length.Length
	Level level.Height
	Fall  length.Exact // from the group's highest floor point to its lowest
	By    Rule
}

// WallSpan is a stretch of one wall.
type WallSpan struct {
	Wall     int
	From, To length.Length
}

// HighestFloor is the datum over spans: the highest floor point; ties go to the
// first wall, then to the smallest station. Spans must not be empty.
func (r *Room) HighestFloor(spans []WallSpan) (wall int, spot level.Spot) {
	wall = -1
	for _, s := range spans {
		top := r.Walls[s.Wall].Floor.Highest(s.From, s.To)
		if wall < 0 || higherFloor(top, s.Wall, spot, wall) {
			wall, spot = s.Wall, top
		}
	}
	return wall, spot
}

func higherFloor(a level.Spot, aWall int, b level.Spot, bWall int) bool {
	if c := a.Value.Cmp(b.Value); c != 0 {
		return c > 0
	}
	if aWall != bWall {
		return aWall < bWall
	}
	return a.At < b.At
}

// FloorFall is from the highest to the lowest floor point of a level group's walls.
func (r *Room) FloorFall(group int) length.Exact {
	var high, low length.Exact
	for i, w := range r.Groups[group].Walls {
		wall := &r.Walls[w]
		h, l := wall.Floor.Highest(0, wall.Length).Value, wall.Floor.Lowest(0, wall.Length).Value
		if i == 0 || high.Less(h) {
			high = h
		}
		if i == 0 || l.Less(low) {
			low = l
		}
	}
	return high.Sub(low)
}

// Whole is the span of a whole wall.
func (w *Wall) Whole() WallSpan { return WallSpan{w.Index, 0, w.Length} }
