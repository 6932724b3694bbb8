package propose

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// assumed are the datums that a room is first filled above: where the plan decides,
// the highest floor along the walls that are filled or have cabinets.
func (p *proposer) assumed() []survey.Datum {
	out := slices.Clone(p.kept.Datums)
	for g := range out {
		if p.open(g) {
			out[g] = kitchen.DatumOver(p.k.Room, p.spans(g), survey.ByPlannedWalls)
			out[g].Group, out[g].Fall = g, p.kept.Datums[g].Fall
		}
	}
	return out
}

// open reports whether new cabinets move a group's datum: it is not given, they stand
// on its floor, or nothing that stays does.
func (p *proposer) open(g int) bool {
	walls := p.k.Room.Groups[g].Walls
	filled := slices.ContainsFunc(walls, func(w int) bool { return slices.Contains(p.f.Walls, w) })
	stand := p.f.Asks(cabinet.Base) || p.f.Asks(cabinet.Tall)
	return filled && p.kept.Datums[g].By != survey.ByGiven && (stand || p.kept.Datums[g].By != survey.ByFloorStanding)
}

// spans are the walls of a group that are filled, or on which something stays.
func (p *proposer) spans(g int) []survey.WallSpan {
	var out []survey.WallSpan
	for _, w := range p.k.Room.Groups[g].Walls {
		stays := slices.ContainsFunc(p.kept.Plan.Cabinets, func(c cabinet.Placed) bool {
			return slices.ContainsFunc(c.Native(p.k.Room), func(q cabinet.Patch) bool { return q.Wall == w })
		})
		if stays || slices.Contains(p.f.Walls, w) {
			out = append(out, p.k.Room.Walls[w].Whole())
		}
	}
	return out
}

// moved reports whether datums differ in their levels.
func moved(a, b []survey.Datum) bool {
	return !slices.EqualFunc(a, b, func(x, y survey.Datum) bool { return x.Level.Value.Equal(y.Level.Value) })
}
