package fill

// pairAt is the gap that begins at c, if it wants equal neighbours.
func (g *graph) pairAt(c int32) (int32, bool) {
	i := g.segment[c]
	return i, i != none && int(i) < len(g.gaps) && g.gaps[i].paired && g.segments[i].to == c
}

// nearness is how near to an end of its segment a new cabinet may stand, and what is between.
type nearness struct {
	far  int32
	gain int64
	as   how
}

// near is the nearness of a cabinet of height h to one end of segment i; false where it has no room for its panel.
func (g *graph) near(i int32, which int, h int32) (nearness, bool) {
	s := &g.segments[i]
	meets := s.sides[which]
	switch {
	case meets.open:
		from := s.from
		if which == 1 {
			from = max(s.from, s.to-g.panel)
		}
		return nearness{g.panel, -g.onePanel, left}, from+g.panel <= g.room[h][from]
	case meets.least == 0:
		return nearness{0, 0, nothing}, true
	}
	wide := max(meets.least, g.leastFiller)
	return nearness{wide, -g.filled(wide), filled}, true
}

// fromAcross passes gap i behind size s, to an equal cabinet on the other side.
func (g *graph) fromAcross(out []move, i, s int32) []move {
	return g.toEqual(out, i, s, g.sizes[s].width, g.sizes[s].height, same)
}

// pairStayed passes gap i behind a cabinet that stays, to an equal one on the other side.
func (g *graph) pairStayed(out []move, f *fixed, i int32) []move {
	if int(i) == len(g.gaps) || !g.gaps[i].paired {
		return out
	}
	return g.toEqual(out, i, g.size(f.to-f.from, f.height), f.to-f.from, f.height, nothing)
}

// toEqual passes gap i to a cabinet of a width and height: size s, or one that stays.
func (g *graph) toEqual(out []move, i, s, width, height int32, as how) []move {
	if j := g.fixedAt[g.segments[i+1].from]; j != none {
		if f := &g.fixed[j]; f.to-f.from != width || f.height != height {
			return out
		}
		s = int32(len(g.sizes))
	}
	if s == none {
		return out
	}
	return append(out, move{g.pairState(g.match, i, s), g.passes(), g.gaps[i].gain, as})
}

// fromMatch places size s, or the cabinet that stays, as near to gap i as may be.
func (g *graph) fromMatch(out []move, i, s int32) []move {
	b := g.segments[i+1].from
	if int(s) == len(g.sizes) {
		return g.keep(out, b, 0, nothing)
	}
	one := &g.sizes[s]
	n, fits := g.near(i+1, 0, one.height)
	q := b + n.far
	if !fits || q > g.clear[b] || q+one.width > g.room[one.height][q] {
		return out
	}
	return g.place(out, s, q, n.gain, n.as)
}

// checkPairs refuses pairs about what is no gap.
func (t *task) checkPairs() Errors {
	var wrong Errors
	for i, p := range t.r.Pairs {
		if !t.isGap(p) {
			wrong = append(wrong, Error{CodeNoGap, InPairs, i})
		}
	}
	return wrong
}

func (t *task) isGap(p Pair) bool {
	for i := range t.gaps {
		if t.length(t.segments[i].to) <= p.From && p.To <= t.length(t.segments[i+1].from) {
			return true
		}
	}
	return false
}
