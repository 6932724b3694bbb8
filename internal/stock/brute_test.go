package stock

import "railhead/internal/length"

// brute tries every way to put the pieces into bars, in plain lengths and without any of the package's tricks.
type brute struct {
	p      Problem
	bars   []bruteBar
	bought length.Length
	best   bruteResult
	found  bool
}

type bruteBar struct {
	stock, used length.Length
	pieces      int
}

type bruteResult struct {
	bought length.Length
	bars   int
	offcut length.Length // the longest
}

// fits: n pieces take n-1 cuts between them.
func (b bruteBar) fits(kerf length.Length) bool {
	return b.used+length.Length(b.pieces-1)*kerf <= b.stock
}

func (b bruteBar) offcut(kerf length.Length) length.Length {
	return max(0, b.stock-b.used-length.Length(b.pieces)*kerf)
}

func (r bruteResult) better(than bruteResult) bool {
	if r.bought != than.bought {
		return r.bought < than.bought
	}
	if r.bars != than.bars {
		return r.bars < than.bars
	}
	return r.offcut > than.offcut
}

func bruteForce(p Problem) bruteResult {
	b := &brute{p: p}
	b.place(0)
	return b.best
}

// place puts piece i into each bar begun and into each new one.
func (b *brute) place(i int) {
	if b.found && b.bought > b.best.bought {
		return
	}
	if i == len(b.p.Pieces) {
		b.finish()
		return
	}
	l := b.p.Pieces[i].Length
	for j := range b.bars {
		was := b.bars[j]
		b.bars[j].used += l
		b.bars[j].pieces++
		if b.bars[j].fits(b.p.Kerf) {
			b.place(i + 1)
		}
		b.bars[j] = was
	}
	for _, s := range b.p.Stock {
		if l <= s {
			b.bars = append(b.bars, bruteBar{s, l, 1})
			b.bought += s
			b.place(i + 1)
			b.bought -= s
			b.bars = b.bars[:len(b.bars)-1]
		}
	}
}

func (b *brute) finish() {
	r := bruteResult{bought: b.bought, bars: len(b.bars)}
	for _, bar := range b.bars {
		r.offcut = max(r.offcut, bar.offcut(b.p.Kerf))
	}
	if !b.found || r.better(b.best) {
		b.best, b.found = r, true
	}
}

func resultOf(plan Plan) bruteResult {
	r := bruteResult{bought: plan.Bought, bars: len(plan.Bars)}
	for _, b := range plan.Bars {
		r.offcut = max(r.offcut, b.Offcut)
	}
	return r
}
