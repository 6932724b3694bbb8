package combine

import "math/bits"

// bound is the most that what is still to be done may be worth. It is reckoned
// for each set of trades that may have been called, as if each thing were decided
// knowing which trades those before it called, which is worth no less than
// deciding beforehand. Of a trade's labour it counts a share, and of its minimum
// the rest, which together are no more than the larger of them.
//
// What is worth a state between such sets, where some trades were called perhaps,
// is no more than what lies between their worths: all that the chances change is
// linear, and the best of several linear worths is convex.
type bound struct {
	bits    int     // trades that are told apart, the dearest
	share   []int64 // of each trade's labour that is counted; any is true (see tune)
	fixed   []int64 // what being called costs at least beside it
	sum     []int64 // the same for each set of trades
	slack   int64   // what rounding may add up to
	ways    []boundWay
	perhaps []perhaps
	value   []int64 // before each stage, for each set
	reached reached

	labour, called, mass []int64 // see follow
	slope                []float64
}

// boundWay is a way as the bound sees it.
type boundWay struct {
	worth     int64 // less the share of its labour
	sure, may int   // sets of trades that it calls for certain, and perhaps
	from, to  int   // those called perhaps, the likeliest first
}

// perhaps is a trade that is called with a chance.
type perhaps struct {
	trade  int
	chance int64
}

// quickWork and thoroughWork are how many sets of trades times ways a bound goes
// through at most, but that it tells always so many trades apart.
const (
	quickWork    = 1 << 15
	thoroughWork = 1 << 20
	always       = 8
)

// prepare reckons the bound with the shares that it has, with no more work than
// given.
func (b *bound) prepare(t *task, work int) {
	b.bits = 0
	for b.bits < len(t.trades) && (b.bits < always || len(t.ways)<<(b.bits+1) <= work) {
		b.bits++
	}
	b.fixed = b.fixed[:0]
	for n, tr := range t.trades {
		b.fixed = append(b.fixed, tr.callOut+partDown(tr.minimum, certain-b.share[n]))
	}
	b.slack = t.rounding()
	b.sum = append(b.sum[:0], 0)
	for set := 1; set < 1<<b.bits; set++ {
		b.sum = append(b.sum, b.sum[set&(set-1)]+b.fixed[bits.TrailingZeros(uint(set))])
	}
	b.ways, b.perhaps = b.ways[:0], b.perhaps[:0]
	for w := range t.ways {
		b.readWay(t, &t.ways[w])
	}
	b.reached.find(t, b)
	b.fill(t)
}

func (b *bound) readWay(t *task, w *way) {
	made := boundWay{worth: w.worth, from: len(b.perhaps)}
	for _, c := range t.callsOf(w) {
		made.worth -= partDown(c.labour, b.share[c.trade])
		switch {
		case c.trade >= b.bits || c.unmoved == certain:
		case c.unmoved == 0:
			made.sure |= 1 << c.trade
		default:
			made.may |= 1 << c.trade
			b.perhaps = insert(b.perhaps, made.from, perhaps{c.trade, certain - c.unmoved})
		}
	}
	made.to = len(b.perhaps)
	b.ways = append(b.ways, made)
}

// insert keeps the list from place from on in order, the likeliest first.
func insert(list []perhaps, from int, p perhaps) []perhaps {
	list = append(list, p)
	for i := len(list) - 1; i > from && list[i-1].chance < p.chance; i-- {
		list[i-1], list[i] = list[i], list[i-1]
	}
	return list
}

// fill reckons back from the last stage.
func (b *bound) fill(t *task) {
	n, width := len(t.stages), 1<<b.bits
	if need := (n + 1) * width; cap(b.value) < need {
		b.value = make([]int64, need)
	} else {
		b.value = b.value[:need]
	}
	clear(b.value[n*width:])
	for k := n - 1; k >= 0; k-- {
		here, later := b.value[k*width:(k+1)*width], b.after(k)
		sets := b.reached.before(k)
		for _, set := range sets {
			here[set] = impossible
		}
		for i := t.stages[k].from; i < t.stages[k].to; i++ {
			b.raise(here, sets, &b.ways[i], later)
		}
	}
}

// raise raises what is still to come for each set to what a way makes of it.
func (b *bound) raise(here []int64, sets []int, w *boundWay, later after) {
	if w.from == w.to { // the common case, and half the time
		for _, set := range sets {
			here[set] = max(here[set], w.worth-b.sum[w.sure&^set]+later.of(set|w.sure))
		}
		return
	}
	for _, set := range sets {
		here[set] = max(here[set], b.worth(w, set, later))
	}
}

// worth is the most that a way and what comes later are worth for a set.
func (b *bound) worth(w *boundWay, set int, later after) int64 {
	return w.worth - b.sum[w.sure&^set] + b.chain(set|w.sure, b.perhaps[w.from:w.to], later)
}

// after is what is still to come after a stage, for each set of trades that were
// called; those that nobody calls for any more are left out of it.
type after struct {
	value []int64
	open  int
}

func (b *bound) after(k int) after {
	return after{b.value[(k+1)<<b.bits : (k+2)<<b.bits], b.reached.open[k]}
}

func (a *after) of(set int) int64 { return a.value[set&a.open] }

// chain is the most that is still to come for a set where more trades may have
// been called, the likeliest first, less what those cost: as if no less likely
// one were called without it.
func (b *bound) chain(set int, more []perhaps, later after) int64 {
	at := later.of(set)
	v := at
	for i := range more {
		p := &more[i]
		next := set | 1<<p.trade
		if next == set {
			continue
		}
		to := later.of(next)
		if cost := b.fixed[p.trade] - (to - at); cost > 0 {
			v -= partDown(cost, p.chance)
		} else {
			v -= cost
		}
		set, at = next, to
	}
	return v
}
