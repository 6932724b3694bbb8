package kitchen

import (
	"railhead/internal/cabinet"
	"railhead/internal/survey"
)

// Given is a datum that the planner set, by level group.
type Given map[int]survey.Datum

// Datums finds the datum of every level group: given, else the highest floor
// point under its floor-standing cabinets, else along its walls with planned
// cabinets, else along its walls.
func Datums(room *survey.Room, plan *cabinet.Plan, given Given) []survey.Datum {
	out := make([]survey.Datum, len(room.Groups))
	for g := range room.Groups {
		d, ok := given[g]
		if !ok {
			d = found(room, plan, g)
		}
		d.Group, d.Fall = g, room.FloorFall(g)
		out[g] = d
	}
	return out
}

func found(room *survey.Room, plan *cabinet.Plan, group int) survey.Datum {
	spans, by := datumSpans(room, plan, group)
	return DatumOver(room, spans, by)
}

// DatumOver is the highest floor over some spans, as a datum.
func DatumOver(room *survey.Room, spans []survey.WallSpan, by survey.Rule) survey.Datum {
	wall, spot := room.HighestFloor(spans)
	return survey.Datum{
		Wall:  wall,
		At:    spot.At,
		Level: room.Walls[wall].Floor.HeightAt(spot.At, spot.Side),
		By:    by,
	}
}

// GivenDatums are the datums of a kitchen that the planner set.
func (k *Kitchen) GivenDatums() Given {
	out := Given{}
	for g, d := range k.Datums {
		if d.By == survey.ByGiven {
			out[g] = d
		}
	}
	return out
}

func datumSpans(room *survey.Room, plan *cabinet.Plan, group int) ([]survey.WallSpan, survey.Rule) {
	var standing, planned, all []survey.WallSpan
	withCabinets := map[int]bool{}
	for i := range plan.Cabinets {
		c := &plan.Cabinets[i]
		for _, p := range c.Native(room) {
			withCabinets[p.Wall] = true
		}
		if c.Stands() {
			standing = append(standing, footprint(c, room, group)...)
		}
	}
	for _, w := range room.Groups[group].Walls {
		all = append(all, room.Walls[w].Whole())
		if withCabinets[w] {
			planned = append(planned, room.Walls[w].Whole())
		}
	}
	switch {
	case len(standing) > 0:
		return standing, survey.ByFloorStanding
	case len(planned) > 0:
		return planned, survey.ByPlannedWalls
	default:
		return all, survey.ByAllWalls
	}
}

// footprint is where a standing cabinet meets the floors of a group's walls: the
// walls it stands at, and those its flank meets in a corner.
func footprint(c *cabinet.Placed, room *survey.Room, group int) []survey.WallSpan {
	var out []survey.WallSpan
	for _, p := range c.Touching(room) {
		if room.Walls[p.Wall].Group == group {
			out = append(out, p.Span())
		}
	}
	return out
}
