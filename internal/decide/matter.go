package decide

import (
	"railhead/internal/cabinet"
	"railhead/internal/contents"
	"railhead/internal/fit"
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// matter is one overhead group with everything that its options, gates, reasons
// and advice are drawn from.
type matter struct {
	k        *kitchen.Kitchen
	group    kitchen.OverheadGroup
	overlaps []overlap   // cabinets that reach into it as found
	trims    []trim.Trim // what trimming would cut: for the overlaps, else for the headroom
	opened   []trim.Trim // what opening a part would take down
	cuts     []cut       // of the trims
	restStay bool        // a piece beside the cuts is long enough to hang on its own
	paint    hazard.Area
	under    []*fit.Result // wall and tall cabinets whose floor area meets it
	taller   taller
	stands   *stands // once it is asked for
	rows     []fit.Row
	lower    *fit.Lower
}

// overlap is a cabinet under an overhead that leaves it too little room.
type overlap struct {
	cabinet  *cabinet.Placed
	overhead *survey.Overhead
	limit    fit.Limit
}

// matters are the room's overhead groups with what bears on each.
func matters(k *kitchen.Kitchen, found []fit.Result, rows []fit.Row, lower *fit.Lower) []*matter {
	var out []*matter
	named := map[string]*matter{}
	for _, g := range k.Groups() {
		m := &matter{k: k, group: g, lower: lower, rows: rows}
		out, named[g.ID] = append(out, m), m
	}
	for i := range found {
		for _, l := range found[i].Limits {
			if l.Overhead != nil && l.Axis == fit.Up && !blockedElsewhere(&found[i], l.Overhead) {
				named[l.Overhead.Group].meet(overlap{found[i].Cabinet, l.Overhead, l})
			}
		}
	}
	stand(out, found)
	layOut(k, found, out)
	for _, m := range out {
		m.taller = m.tallerRow(rows)
	}
	sharePaint(out)
	return out
}

// blockedElsewhere reports whether something else above a cabinet blocks it, so
// that cutting this overhead for it would be a waste.
func blockedElsewhere(r *fit.Result, o *survey.Overhead) bool {
	return anyOf(r.Limits, func(l fit.Limit) bool {
		return l.Axis == fit.Up && l.Verdict == fit.Blocked && (l.Overhead == nil || l.Overhead.Group != o.Group)
	})
}

// meet notes an overhead that reaches into a cabinet.
func (m *matter) meet(o overlap) {
	if o.limit.Margin.Sign() < 0 {
		m.overlaps = append(m.overlaps, o)
	}
}

// stand finds the wall and tall cabinets under each group.
func stand(all []*matter, found []fit.Result) {
	for i := range found {
		c := found[i].Cabinet
		if c.Kind == cabinet.Base {
			continue
		}
		for _, m := range all {
			if m.covers(found[i].Patches) {
				m.under = append(m.under, &found[i])
			}
		}
	}
}

func (m *matter) covers(patches []cabinet.Patch) bool {
	for _, o := range m.group.Parts {
		if meets(patches, o) {
			return true
		}
	}
	return false
}

// meets reports whether a cabinet's floor area reaches under an overhead.
func meets(patches []cabinet.Patch, o *survey.Overhead) bool {
	area := cabinet.Under(o)
	for _, p := range patches {
		if p.Overlaps(area) {
			return true
		}
	}
	return false
}

// inTheWay reports whether some cabinet does not fit because of the group.
func (m *matter) inTheWay() bool { return len(m.overlaps) > 0 }

// blind reports whether nobody has looked into some of the group.
func (m *matter) blind() bool {
	return anyOf(m.group.Parts, func(o *survey.Overhead) bool { return contents.UnseenOf(o) > 0 })
}

// goesAnyhow reports whether all of it goes with the old cabinets.
func (m *matter) goesAnyhow() bool {
	return all(m.group.Parts, (*survey.Overhead).GoesWithOldCabinets)
}

// height turns a level of an overhead's wall into a height above its datum.
func (m *matter) height(o *survey.Overhead, v length.Exact) length.Exact {
	return m.k.Above(o.Wall, v)
}

func all[T any](in []T, ok func(T) bool) bool {
	for _, v := range in {
		if !ok(v) {
			return false
		}
	}
	return true
}

func anyOf[T any](in []T, ok func(T) bool) bool {
	for _, v := range in {
		if ok(v) {
			return true
		}
	}
	return false
}
