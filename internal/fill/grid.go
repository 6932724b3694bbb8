package fill

import "railhead/internal/length"

// coarsest is the coarsest grid on which a run has the same best answers: the longest length that divides everything
// there is. Nothing is lost on it. With the order of the cabinets, fillers and open stretches settled, what is left to
// choose is how wide the fillers and stretches are, between bounds and for a price by width; there is always a best
// choice where nothing can be moved any more, because all of it has come up against something that is on the grid; a
// cabinet also with its side against an end of a stretch that it stands over.
func (r *Run) coarsest() length.Length {
	g := length.GCD(r.Length, r.Panel)
	for _, s := range r.Sizes {
		g = length.GCD(g, s.Width)
	}
	for _, f := range r.Fixed {
		g = length.GCD(length.GCD(g, f.At), f.Width)
	}
	for _, s := range r.Whole {
		s = r.around(s)
		g = length.GCD(length.GCD(g, s.From), s.To)
	}
	for _, l := range r.Limits {
		g = length.GCD(length.GCD(g, l.From), l.To)
		for _, s := range l.Sides {
			g = length.GCD(g, r.whole(s.Least))
		}
	}
	for _, l := range r.Lines {
		if l%r.Grid == 0 {
			g = length.GCD(g, l)
		}
	}
	for _, e := range r.Ends {
		g = length.GCD(g, r.whole(e.Least))
	}
	return length.GCD(length.GCD(g, r.leastFiller()), r.leastOpen())
}

// Places is how many places a run that makes sense is filled through: those on the
// coarsest grid. What filling takes grows with them, and with its sizes.
func (r *Run) Places() int { return int(r.Length/r.coarsest()) + 1 }

// whole is a length rounded up to the grid.
func (r *Run) whole(l length.Length) length.Length { return l.RoundTo(r.Grid, length.Up) }

// around is a stretch with its ends moved out to the grid. A cabinet is on the grid: it stands over both or neither.
func (r *Run) around(s Span) Span { return Span{s.From.RoundTo(r.Grid, length.Down), r.whole(s.To)} }

// leastFiller and leastOpen are a Grid at least: what is narrower is not there.
func (r *Run) leastFiller() length.Length { return r.whole(max(r.Grid, r.LeastFiller)) }
func (r *Run) leastOpen() length.Length   { return r.whole(max(r.Grid, r.LeastOpen)) }
