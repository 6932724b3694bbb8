package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// closeGaps closes the gaps over the cabinets: a strip scribed to the ceiling, and
// where that is too narrow a panel, which also goes back to the wall where its end
// is seen.
func (s *sheet) closeGaps() {
	panel, filler := s.account(ClosingPanel), s.account(Filler)
	for i := range s.covers {
		c := &s.covers[i]
		if long := longOf(c.gap); long.Sign() > 0 {
			filler.add(filler.metre("length", long))
		}
		if s.takesPanel(c.cabinet) {
			panel.addFaces(c.gap, "gap")
			panel.addEnds(s.panelEnds(c), "gap")
		}
	}
}

// takesPanel reports whether a strip is too narrow somewhere over a cabinet: over
// one cabinet it is one or the other.
func (m *measuring) takesPanel(p *cabinet.Placed) bool {
	for _, s := range m.sheets {
		for i := range s.covers {
			if c := &s.covers[i]; c.cabinet == p && highest(c.gap).CmpLength(m.figures().Length(kitchen.MostFiller)) > 0 {
				return true
			}
		}
	}
	return false
}

func (s *sheet) panelEnds(c *cover) []end {
	var out []end
	if s.endShows(c, false) {
		out = append(out, end{c.depth, heightAt(c.gap, c.From)})
	}
	if s.endShows(c, true) {
		out = append(out, end{c.depth, heightAt(c.gap, c.To)})
	}
	return withHeight(out)
}

// endShows reports whether a panel's end is seen: not where the wall ends, where
// something stays hanging, or where another cabinet's gap is closed. What a filler
// bridges counts as touching.
func (s *sheet) endShows(c *cover, right bool) bool {
	w, bridged := &s.k.Room.Walls[c.Wall], s.figures().Length(kitchen.MostFiller)
	if right && c.To >= w.Length-bridged || !right && c.From <= bridged {
		return false
	}
	for i := range w.Overheads {
		if o := &w.Overheads[i]; o.Group != s.o.Group && c.goesOn(o.From, o.To, right, bridged) {
			return false
		}
	}
	for _, other := range s.sheets {
		for i := range other.covers {
			if d := &other.covers[i]; d != c && c.meets(s.k.Room, d, right, bridged) {
				return false
			}
		}
	}
	return true
}

// goesOn reports whether a stretch of the wall goes on from one of its ends.
func (c *cover) goesOn(from, to length.Length, right bool, bridged length.Length) bool {
	if right {
		return to > c.To && from <= c.To+bridged
	}
	return from < c.From && to >= c.From-bridged
}

// meets reports whether another cover goes on from an end: along the wall, or with
// its cabinet's flank where that comes around the corner.
func (c *cover) meets(room *survey.Room, d *cover, right bool, bridged length.Length) bool {
	if d.Wall == c.Wall {
		return c.goesOn(d.From, d.To, right, bridged)
	}
	for _, p := range d.cabinet.Patches(room) {
		if p.Wall == c.Wall && p.Near < c.depth && c.goesOn(p.From, p.To, right, bridged) {
			return true
		}
	}
	return false
}
