package survey

import (
	"testing"

	"railhead/internal/length"
	"railhead/internal/level"
)

func mm(n int) length.Length { return length.Length(n) * length.Millimetre }

// floor makes a profile of pairs of station and height in millimetres.
func floor(t *testing.T, pairs ...int) level.Profile {
	t.Helper()
	var points []level.Point
	for i := 0; i < len(pairs); i += 2 {
		points = append(points, level.Point{At: mm(pairs[i]), Height: level.Fixed(mm(pairs[i+1]).Exact())})
	}
	p, fault := level.NewProfile(points)
	if fault != nil {
		t.Fatal(fault)
	}
	return p
}

func room(walls ...Wall) *Room {
	r := &Room{Walls: walls, Groups: []Group{{}}}
	for i := range r.Walls {
		r.Walls[i].Index = i
		r.Groups[0].Walls = append(r.Groups[0].Walls, i)
	}
	return r
}

func TestHighestFloor(t *testing.T) {
	level, hump := floor(t, 0, 5), floor(t, 0, 0, 1000, 8, 2000, 0)
	for _, c := range []struct {
		name  string
		walls []Wall
		spans []WallSpan
		wall  int
		at    int
		high  int
	}{
		{"the hump under a cabinet", []Wall{{Floor: hump}}, []WallSpan{{0, mm(600), mm(1200)}}, 0, 1000, 8},
		{"a hump beside the cabinets does not count", []Wall{{Floor: hump}}, []WallSpan{{0, 0, mm(500)}}, 0, 500, 4},
		{"of two spans the higher floor", []Wall{{Floor: hump}}, []WallSpan{{0, 0, mm(500)}, {0, mm(1500), mm(1600)}}, 0, 500, 4},
		{"a tie goes to the first wall", []Wall{{Floor: level}, {Floor: level}}, []WallSpan{{1, 0, mm(500)}, {0, mm(900), mm(1000)}}, 0, 900, 5},
		{"and on one wall to the smallest station", []Wall{{Floor: level}}, []WallSpan{{0, mm(900), mm(1000)}, {0, mm(300), mm(400)}}, 0, 300, 5},
		{"a step up at a cabinet's right end lies outside it", []Wall{{Floor: floor(t, 0, 0, 600, 0, 600, 9)}}, []WallSpan{{0, 0, mm(600)}}, 0, 0, 0},
		{"a step down at a cabinet's left end lies outside it", []Wall{{Floor: floor(t, 0, 9, 600, 9, 600, 0)}}, []WallSpan{{0, mm(600), mm(900)}}, 0, 600, 0},
		{"a step inside counts with its higher side", []Wall{{Floor: floor(t, 0, 0, 600, 0, 600, 9)}}, []WallSpan{{0, mm(500), mm(900)}}, 0, 600, 9},
	} {
		t.Run(c.name, func(t *testing.T) {
			wall, spot := room(c.walls...).HighestFloor(c.spans)
			if wall != c.wall || spot.At != mm(c.at) || spot.Value.CmpLength(mm(c.high)) != 0 {
				t.Errorf("wall %d at %s: %s; want wall %d at %d: %d", wall, spot.At, spot.Value, c.wall, c.at, c.high)
			}
		})
	}
}

func TestFloorFallOverALevelGroup(t *testing.T) {
	r := room(
		Wall{Length: mm(2000), Floor: floor(t, 0, 0, 1000, 8, 2000, 0)},
		Wall{Length: mm(3000), Floor: floor(t, 0, 0, 3000, -7)},
	)
	if fall := r.FloorFall(0); fall.CmpLength(mm(15)) != 0 {
		t.Errorf("fall %s, want 15: from the hump on one wall to the low end of the other", fall)
	}
}

func TestOverheadsThatGoWithTheOldKitchen(t *testing.T) {
	for _, c := range []struct {
		name string
		o    Overhead
		goes bool
	}{
		{"a gap closed on top of the old cabinets", Overhead{Kind: ClosedGap, Carrier: CarriedByOldCabinets}, true},
		{"a gap closed from the ceiling", Overhead{Kind: ClosedGap, Carrier: CarriedByCeiling}, false},
		{"a gap that both carry", Overhead{Kind: ClosedGap, Carrier: CarriedByBoth}, false},
		{"a gap and nobody knows", Overhead{Kind: ClosedGap}, false},
		{"a soffit", Overhead{Kind: Soffit}, false},
	} {
		if got := c.o.GoesWithOldCabinets(); got != c.goes {
			t.Errorf("%s: goes %v, want %v", c.name, got, c.goes)
		}
	}
}
