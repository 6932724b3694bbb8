package fill

// fromStart places a new cabinet of height h at q.
func (g *graph) fromStart(out []move, q, h int32) []move {
	room := g.room[h][q] - q
	for _, s := range g.byClass[g.class[h][0]:g.class[h][1]] {
		if g.sizes[s].width <= room {
			out = g.place(out, s, q, 0, same)
		}
	}
	return out
}

// place puts size s at q, where there is room for it, with what comes before it.
func (g *graph) place(out []move, s, q int32, gain int64, as how) []move {
	one := &g.sizes[s]
	to := q + one.width
	gain += one.gain
	out = append(out, move{g.after(to, one.height), s, gain, as})
	c := g.clear[to]
	if i, ok := g.pairAt(c); ok {
		if n, fits := g.near(i, 1, one.height); fits && to+n.far == c {
			out = append(out, move{g.pairState(g.across, i, s), s, gain + n.gain, as})
		}
	}
	return out
}

// fromAfter goes on behind a new cabinet.
func (g *graph) fromAfter(out []move, q, h int32) []move {
	out = g.beside(out, q, h)
	c := g.clear[q]
	if behind := q + g.panel; behind <= g.room[h][q] && !g.r.Closed && behind+g.leastOpen <= c {
		out = append(out, move{g.open(behind+g.leastOpen, 0), none, -g.onePanel - g.opened(g.leastOpen), left})
	}
	if c == g.segments[g.segment[q]].to {
		out = g.reach(out, q, c, h)
	}
	return out
}

// fromStayed goes on behind a cabinet that stays: it keeps the sides it has, and what is left beside it may be as
// narrow as it is.
func (g *graph) fromStayed(out []move, i int32) []move {
	f := &g.fixed[i]
	out = g.beside(out, f.to, f.height)
	c := g.clear[f.to]
	if !g.r.Closed && f.to+g.leastOpen <= c {
		out = append(out, move{g.open(f.to+g.leastOpen, 0), none, -g.opened(g.leastOpen), left})
	}
	if c == g.segments[g.segment[f.to]].to {
		return g.reachStayed(out, f, c)
	}
	if wide := c - f.to; !g.r.Closed && wide > 0 && wide < g.leastOpen {
		out = g.keep(out, c, -g.opened(wide), left)
	}
	return out
}

// beside goes on behind any cabinet of height h, with another one that touches it or with a filler.
func (g *graph) beside(out []move, q, h int32) []move {
	var miss int64
	if !g.onLine[q] {
		miss = g.oneMiss
	}
	out = g.begun(out, q, h, -miss, nothing)
	out = g.kept(out, q, h, -miss, nothing)
	if q+g.leastFiller <= g.clear[q] {
		out = append(out, move{g.filler(q+g.leastFiller, h), none, -g.filled(g.leastFiller), filled})
	}
	return out
}

// begun begins a new cabinet at q, behind one of height h or (heightN) behind an end.
func (g *graph) begun(out []move, q, h int32, gain int64, as how) []move {
	if h == g.heightN {
		return append(out, move{g.fresh(q), none, gain, as})
	}
	return append(out, move{g.start(q, h), none, gain, as}, move{g.fresh(q), none, gain - g.oneChange, as})
}

// fromFresh begins a new cabinet of each height at q.
func (g *graph) fromFresh(out []move, q int32) []move {
	for j := range g.heightN {
		out = append(out, move{g.start(q, j), none, 0, same})
	}
	return out
}

// kept is the cabinet that stays at q, if there is one, behind one of height h or (heightN) behind an end.
func (g *graph) kept(out []move, q, h int32, gain int64, as how) []move {
	if i := g.fixedAt[q]; i != none {
		return g.keep(out, q, gain-g.change(h, g.fixed[i].height), as)
	}
	return out
}

// keep is the cabinet that stays at q.
func (g *graph) keep(out []move, q int32, gain int64, as how) []move {
	if i := g.fixedAt[q]; i != none && !g.fixed[i].clash {
		out = append(out, move{g.stayed + i, g.keeps(), gain, as})
	}
	return out
}

func (g *graph) change(h, j int32) int64 {
	if h == j || h == g.heightN {
		return 0
	}
	return g.oneChange
}

func (g *graph) filled(wide int32) int64 { return g.oneFiller + int64(wide)*g.perFiller }
func (g *graph) opened(wide int32) int64 { return int64(wide) * g.perOpen }

// fromFiller begins what comes behind a filler, or makes it wider. Of equals the first counts: what stands is as far to
// the left as may be.
func (g *graph) fromFiller(out []move, q, h int32) []move {
	if s := &g.segments[g.segment[q]]; h < g.heightN || q-s.from >= s.sides[0].least {
		out = g.begun(out, q, h, 0, same)
	}
	out = g.kept(out, q, h, 0, same)
	if g.clear[q] > q {
		out = append(out, move{g.filler(q+1, h), none, -g.perFiller, same})
	}
	return out
}

func (g *graph) fromOpen(out []move, q, end int32) []move {
	s := &g.segments[g.segment[q]]
	wide := q - s.from
	if end == 0 || s.sides[0].open || wide >= g.leastOpen && wide+g.panel >= s.sides[0].least {
		out = g.panelled(out, q, same)
	}
	out = g.keep(out, q, 0, same)
	if g.clear[q] > q {
		out = append(out, move{g.open(q+1, end), none, -g.perOpen, same})
	}
	return out
}

// panelled begins a new cabinet behind a panel at q.
func (g *graph) panelled(out []move, q int32, as how) []move {
	if q+g.panel > g.clear[q] {
		return out
	}
	for j := range g.heightN {
		if g.room[j][q] > q+g.panel {
			out = append(out, move{g.start(q+g.panel, j), none, -g.onePanel, as})
		}
	}
	return out
}
