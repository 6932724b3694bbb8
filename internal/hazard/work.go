package hazard

import (
	"slices"
	"strconv"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// dustFree are the finishes that hold no silica worth a warning.
var dustFree = []string{"wood", "metal", "none"}

// dust: board, joint compound, plaster, tile and masonry give off silica when
// they are cut, broken or drilled.
func (s *site) dust() {
	for _, o := range s.opened {
		if !slices.Contains(dustFree, o.Finish) || o.Structure == survey.Solid || o.Structure == survey.Bearing {
			s.warn("caution.dust.silica", o.Pointer)
		}
	}
	for _, c := range slices.Concat(s.wall, s.tall) {
		if w := &s.k.Room.Walls[c.Wall]; w.Backing == survey.Masonry {
			s.warn("caution.dust.silica", w.Pointer+"/backing")
		}
	}
}

// falling: what is cut loose overhead, old cabinets, and new ones until they are
// fixed. One warning for each kind is enough.
func (s *site) falling() {
	for _, o := range s.opened {
		s.warn("caution.falling.overhead", o.Pointer)
	}
	for _, old := range s.k.Plan.Old {
		if old.Kind != cabinet.Base {
			s.warn("caution.falling.old_cabinets", "/plan/old_cabinets")
		}
	}
	if len(s.wall) > 0 {
		s.warn("caution.falling.cabinets", s.wall[0].Pointer)
	}
}

// What one person should not lift alone (common practice, no source).
const (
	wideCabinet = 800 * length.Millimetre
	highCabinet = 900 * length.Millimetre
)

// lifting warns once, at the first cabinet that takes two people, and counts them.
func (s *site) lifting() {
	heavy := slices.Clone(s.tall)
	for _, c := range s.wall {
		if c.Width() >= wideCabinet || c.Height >= highCabinet {
			heavy = append(heavy, c)
		}
	}
	if len(heavy) == 0 {
		return
	}
	first := slices.MinFunc(heavy, func(a, b *cabinet.Placed) int { return a.Index - b.Index })
	s.warn("caution.lift.two_people", first.Pointer, finding.Word("count", strconv.Itoa(len(heavy))))
}

func (s *site) ladders() {
	switch {
	case len(s.opened) > 0:
		s.warn("caution.ladder.work", s.opened[0].Pointer)
	case len(s.wall) > 0:
		s.warn("caution.ladder.work", s.wall[0].Pointer)
	case len(s.tall) > 0:
		s.warn("caution.ladder.work", s.tall[0].Pointer)
	}
}

// cooking: cabinets, fillers and soffits over a cooking surface are combustible
// until they are protected.
func (s *site) cooking() {
	switch c := s.k.Plan.Cooking; {
	case c == nil:
	case c.Energy == cabinet.Gas:
		s.warn("caution.cooking.gas", c.Pointer)
	default:
		s.warn("caution.cooking.electric", c.Pointer)
	}
}

// fireblocking: what shuts the hollow of a soffit off from walls and joist bays
// is kept or put back before it is closed.
func (s *site) fireblocking() {
	for _, o := range s.opened {
		if o.Kind != survey.Beam && (o.Structure == survey.Framed || o.Structure == survey.StructureUnknown) {
			s.warn("caution.fire.blocking", o.Pointer)
		}
	}
}

// gasValves warns of gas valves that end up behind a cabinet.
func (s *site) gasValves() {
	for i := range s.k.Plan.Cabinets {
		c := &s.k.Plan.Cabinets[i]
		for _, p := range c.Native(s.k.Room) {
			w := &s.k.Room.Walls[p.Wall]
			for j := range w.Fixtures {
				if f := &w.Fixtures[j]; f.Kind == survey.GasValve && s.covers(c, p, f) {
					s.warn("caution.gas.valve_covered", f.Pointer)
				}
			}
		}
	}
}

// covers reports whether a cabinet stands or hangs in front of a fixture. What
// stands on legs also covers what is behind its plinth.
func (s *site) covers(c *cabinet.Placed, p cabinet.Patch, f *survey.Fixture) bool {
	low := s.k.Above(p.Wall, f.Level.Value).Minus(f.Height / 2)
	high := low.Plus(f.Height)
	return f.At-f.Width/2 < p.To && f.At+f.Width/2 > p.From &&
		low.CmpLength(c.Top) < 0 && (c.Stands() || high.CmpLength(c.Underside) > 0)
}
