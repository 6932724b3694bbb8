package fill

// fromBegin goes on from where segment i begins.
func (g *graph) fromBegin(out []move, i int32) []move {
	s := &g.segments[i]
	b, c := s.from, g.clear[s.from]
	meets := s.sides[0]
	switch {
	case meets.open:
		out = g.panelled(out, b, left)
	case meets.least == 0:
		out = g.begun(out, b, g.heightN, 0, nothing)
	}
	out = g.keep(out, b, 0, nothing)
	if !meets.open && b+g.leastFiller <= c {
		out = append(out, move{g.filler(b+g.leastFiller, g.heightN), none, -g.filled(g.leastFiller), filled})
	}
	if (meets.open || !g.r.Closed) && b < c {
		out = append(out, move{g.open(b+1, 1), none, -g.perOpen, left})
	}
	if c == s.to && (b == c || !g.r.Closed || meets.open || s.sides[1].open) {
		out = g.pass(out, i, -g.opened(c-b), left)
	}
	return out
}

// pass goes past the end of segment i, whatever stands beside it.
func (g *graph) pass(out []move, i int32, gain int64, as how) []move {
	switch {
	case int(i) == len(g.gaps):
		return append(out, move{g.end, none, gain, as})
	case g.gaps[i].must:
		return out
	}
	return append(out, move{g.begin + i + 1, g.passes(), gain, as})
}

// reach goes from a new cabinet of height h that ends at q to the segment's end c.
func (g *graph) reach(out []move, q, c, h int32) []move {
	i := g.segment[c]
	meets := g.segments[i].sides[1]
	wide, panelled := c-q, q+g.panel <= g.room[h][q]
	if meets.open {
		if panelled && wide >= g.panel {
			out = g.pass(out, i, -g.onePanel-g.opened(wide-g.panel), left)
		}
		return out
	}
	if wide < meets.least {
		return out
	}
	if wide == 0 {
		return g.pass(out, i, 0, nothing)
	}
	if wide >= g.leastFiller {
		out = g.pass(out, i, -g.filled(wide), filled)
	}
	if !g.r.Closed && panelled && wide-g.panel >= g.leastOpen {
		out = g.pass(out, i, -g.onePanel-g.opened(wide-g.panel), left)
	}
	return out
}

// reachStayed goes from a cabinet that stays to the segment's end c.
func (g *graph) reachStayed(out []move, f *fixed, c int32) []move {
	i := g.segment[c]
	open := g.segments[i].sides[1].open
	wide := c - f.to
	if wide == 0 {
		out = g.pairStayed(out, f, i)
		return g.pass(out, i, 0, nothing)
	}
	if !open && wide >= g.leastFiller {
		out = g.pass(out, i, -g.filled(wide), filled)
	}
	if open || !g.r.Closed {
		out = g.pass(out, i, -g.opened(wide), left)
	}
	return out
}
