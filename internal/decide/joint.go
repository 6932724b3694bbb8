package decide

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/combine"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// joint is a cabinet that stands under several groups: how high it may go, and
// so what it is worth, hangs on all of them.
type joint struct {
	cabinet *cabinet.Placed
	groups  []int           // indices of matters
	heights []length.Length // of the system and the plan, lowest first; 0 first: none fits
	taller  length.Length   // what a group that comes down for a taller row makes of it; 0 for none
}

// jointsOf finds the cabinets under several groups.
func jointsOf(ms []*matter) []joint {
	var out []joint
	for g, m := range ms {
		for _, s := range m.under {
			i := slices.IndexFunc(out, func(j joint) bool { return j.cabinet == s.Cabinet })
			if i < 0 {
				i = len(out)
				out = append(out, joint{cabinet: s.Cabinet, heights: heightsFor(m.k.System, s.Cabinet)})
			}
			out[i].groups = append(out[i].groups, g)
			if t, ok := m.tallerFor(s.Cabinet); ok && (out[i].taller == 0 || t < out[i].taller) {
				out[i].taller = t
			}
		}
	}
	return slices.DeleteFunc(out, func(j joint) bool { return len(j.groups) < 2 })
}

func heightsFor(s *cabinet.System, c *cabinet.Placed) []length.Length {
	out := append([]length.Length{0, c.Height}, s.Sizes(c.Kind).Heights...)
	slices.Sort(out)
	return slices.Compact(out)
}

// tallerFor is the height that the group's taller row gives a cabinet.
func (m *matter) tallerFor(c *cabinet.Placed) (length.Length, bool) {
	for _, s := range m.taller.swaps {
		if s.Cabinet == c && m.taller.mayFit() {
			return s.Height, true
		}
	}
	return 0, false
}

func (j *joint) at(h length.Length) uint8 {
	i, _ := slices.BinarySearch(j.heights, h)
	return uint8(min(i, j.unlimited()))
}

func (j *joint) unlimited() int { return min(len(j.heights)-1, 255) }

// effect is what an option of one of its groups does to the cabinet.
func (j *joint) effect(index int, m *matter, o kitchen.Option) combine.Effect {
	e := combine.Effect{Joint: index, Limit: uint8(j.unlimited())}
	switch {
	case o.TakesDown() || m.goesAnyhow():
		_, e.Wish = m.tallerFor(j.cabinet)
		e.Wish = e.Wish && o == kitchen.RemoveTaller
	case o == kitchen.Keep:
		e.Limit = j.at(m.highest(j.cabinet, j.heights))
	default:
		e.Limit = max(j.at(m.highest(j.cabinet, j.heights)), j.at(j.cabinet.Height))
	}
	return e
}

// highest is the tallest of some heights that a cabinet can have under the group
// as found; 0 where none fits.
func (m *matter) highest(c *cabinet.Placed, heights []length.Length) length.Length {
	best := heights[len(heights)-1]
	for _, s := range m.under {
		if s.Cabinet != c {
			continue
		}
		for _, l := range s.Limits {
			if l.Axis != fit.Up || l.Overhead == nil || l.Overhead.Group != m.group.ID {
				continue
			}
			low, _ := tallestWithin(heights, c, l.Margin.Plus(c.Top))
			best = min(best, low)
		}
	}
	return best
}

// swap is what the cabinet becomes under the lowest limit of its groups; false
// where it stays as planned. A wish that the limits do not grant is not possible.
func (j *joint) swap(limit uint8, wish bool) (s cabinet.Swap, swapped, possible bool) {
	c, top := j.cabinet, j.heights[limit]
	h := c.Height
	if wish {
		h = j.taller
	}
	if top < h && wish {
		return cabinet.Swap{}, false, false
	}
	if h = min(h, top); h == c.Height || h == 0 {
		return cabinet.Swap{}, false, true
	}
	return cabinet.Swap{Cabinet: c, Height: h, Top: c.Underside + h}, true, true
}
