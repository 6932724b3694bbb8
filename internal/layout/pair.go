package layout

import (
	"railhead/internal/fill"
	"railhead/internal/length"
	"railhead/internal/space"
)

// pair adds the gaps whose neighbours should be equal: those that nothing new may
// stand in.
func (s *solver) pair(r *row) {
	f := s.room.Filling
	for _, g := range r.Gaps {
		p := fill.Pair{From: down(g.From, r.grid), To: min(up(g.To, r.grid), r.whole), Worth: f.Weights.Symmetry}
		switch g.Kind {
		case space.WindowGap:
			p.Must = f.Equal.Window
		case space.HoodGap:
			p.Must = f.Equal.Hood
		case space.DuctGap:
			p.Must, p.Worth = f.Equal.DuctBox, f.Weights.DuctPair
		}
		if p.From < p.To && r.closed(p.From, p.To) {
			r.pairs = append(r.pairs, p)
			r.paired = append(r.paired, g)
		}
	}
}

// closed reports whether nothing new may stand anywhere over a stretch, and nothing
// stays there.
func (r *row) closed(from, to length.Length) bool {
	if r.kept(from, to) {
		return false
	}
	at := from
	for _, l := range r.limits {
		if l.Height == 0 && l.From <= at && at < l.To {
			at = l.To
		}
	}
	return at >= to
}
