package report

import (
	"railhead/api"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// Datums writes the datum of every level group.
func (s Scale) Datums(k *kitchen.Kitchen) []api.Datum {
	return each(k.Datums, func(d survey.Datum) api.Datum {
		out := api.Datum{
			Wall: k.Room.Walls[d.Wall].ID, At: s.plan(d.At), FloorFall: s.up(d.Fall), By: d.By.String(),
			Walls: each(k.Room.Groups[d.Group].Walls, func(w int) string { return k.Room.Walls[w].ID }),
		}
		if line, ok := k.LineAbove(d.Wall); ok {
			out.LaserAbove = ptr(s.down(line))
		}
		if below, ok := k.OverBench(d.Wall, 0); ok {
			out.BenchAbove = ptr(s.down(below.Neg()))
		}
		return out
	})
}

// Applied writes what holds for each overhead.
func Applied(in kitchen.AppliedOptions) map[string]api.Applied {
	out := make(map[string]api.Applied, len(in))
	for id, a := range in {
		out[id] = api.Applied{Option: a.Option.String(), By: a.By.String()}
	}
	return out
}
