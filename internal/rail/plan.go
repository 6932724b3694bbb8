package rail

import (
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// Plan is a rail for every row of every wall, wall by wall, the higher row
// first; none where the system's cabinets are screwed through hanging strips.
// found is what hangs under the ceiling now, after what is left when the work
// up there is done.
func Plan(k *kitchen.Kitchen, found, after kitchen.Sky) []Rail {
	out := []Rail{}
	if k.System.Rail == nil {
		return out
	}
	for _, r := range rows(k) {
		out = append(out, r.plan(k, found, after))
	}
	if len(out) > 0 {
		out[0].Findings = append(out[0].Findings, unstated(k.System)...)
	}
	inCorners(k.Room, out)
	return out
}

func (r *row) plan(k *kitchen.Kitchen, found, after kitchen.Sky) Rail {
	system := k.System.Rail
	out := Rail{Wall: r.wall.Index, RowTop: r.top, LowerEdge: r.top - system.Drop}
	for _, c := range r.cabinets {
		out.Cabinets = append(out.Cabinets, c.cabinet)
	}
	b := band{k, r.wall, out.LowerEdge, out.LowerEdge + system.Profile}
	runs := survey.Without(r.runs(k.Plan.Fillers), b.interrupted(after))
	for _, run := range runs {
		for _, p := range divide(run, r.wall, system.Stock) {
			out.Pieces = append(out.Pieces, p)
			out.Fixings = append(out.Fixings, limitsOf(system).fixings(p, r.wall)...)
		}
	}
	out.Stations = b.stations(runs, r, &out)
	hidden := b.hidden(runs, found)
	out.BeforeCut = len(hidden) == 0
	out.notice(b, r, runs, append(b.hidden(runs, gone(found)), hidden...))
	return out
}

// gone is what went with the old cabinets, as it hung: the wall behind it has
// come to light, and nothing else is left of it.
func gone(found kitchen.Sky) kitchen.Sky {
	var out kitchen.Sky
	for _, g := range found.Gone {
		out.Hung = append(out.Hung, kitchen.Hung{Overhead: g.Overhead, From: g.From, To: g.To})
	}
	return out
}

// hidden are the overheads that hang down to the rail's place, where a rail is
// to run: it goes on after they were cut.
func (b band) hidden(runs []survey.Span, found kitchen.Sky) []*survey.Overhead {
	var out []*survey.Overhead
	for _, t := range atWall(b.k.Room, b.wall, found) {
		for _, s := range t.below(b.top()) {
			if common(s, runs) > 0 {
				out = append(out, t.over)
				break
			}
		}
	}
	return out
}

// inCorners says of every rail that starts where the one of the wall before
// ends at the same level: it is cut to stop against that one's face.
func inCorners(room *survey.Room, rails []Rail) {
	for i := range rails {
		for j := range rails {
			if meetInCorner(room, &rails[j], &rails[i]) {
				rails[i].Findings = append(rails[i].Findings, cornerNote(room, &rails[i]))
			}
		}
	}
}

func meetInCorner(room *survey.Room, left, right *Rail) bool {
	if room.Walls[right.Wall].Prev != left.Wall || left.RowTop != right.RowTop {
		return false
	}
	if len(left.Pieces) == 0 || len(right.Pieces) == 0 {
		return false
	}
	end := left.Pieces[len(left.Pieces)-1].To
	return end == room.Walls[left.Wall].Length && right.Pieces[0].From == 0
}
