package combine

import "math/bits"

// bound is the most that what is still to be done may be worth. It lets each
// thing be decided with the knowledge which trades were called by those before
// it, which is worth no less than deciding beforehand; and it counts of each
// trade's labour a share, and of its minimum the rest, which is no more than the
// larger of them.
type bound struct {
	bits             int     // trades that are told apart, the dearest
	share            []int64 // of each trade's labour that is counted
	fixed            []int64 // what being called costs at least beside it
	slack            int64   // what rounding may add up to
	ways             []boundWay
	perhaps          []perhaps
	reach            []int // sets of trades that may have been called
	from, open, seen []int
	sum              []int64
	value            []int64 // after each stage and for each set
	labour           []int64
}

// boundWay is a way as the bound sees it.
type boundWay struct {
	worth    int64 // less the share of its labour
	sure     int   // set of trades called for certain
	may      int   // and perhaps
	from, to int   // those called perhaps, from the likeliest
}

type perhaps struct {
	trade  int
	chance int64
}

// size bounds the work of a bound: sets of trades times ways.
const size = 1 << 20

// prepare reads a task for the shares given.
func (b *bound) prepare(t *task) {
	b.bits = 0
	for b.bits < len(t.trades) && len(t.ways)<<(b.bits+1) <= size {
		b.bits++
	}
	b.fixed, b.slack = b.fixed[:0], 0
	for n, tr := range t.trades {
		b.fixed = append(b.fixed, partDown(tr.callOut, certain)+partDown(tr.minimum, certain-b.share[n]))
		b.slack += partDown(tr.callOut+tr.minimum, int64(len(t.stages))) + 2
	}
	b.ways, b.perhaps = b.ways[:0], b.perhaps[:0]
	for w := range t.ways {
		b.readWay(t, &t.ways[w])
	}
	b.findReach(t)
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

// findReach lists for each stage the sets of trades that may have been called
// before it and may be again; more of them do no harm.
func (b *bound) findReach(t *task) {
	b.reach, b.from = append(b.reach[:0], 0), append(b.from[:0], 0, 1)
	b.seen = append(b.seen[:0], make([]int, 1<<b.bits)...)
	b.open = b.open[:0]
	for k := range t.stages {
		b.open = append(b.open, 0)
		for _, l := range t.stages[k].live {
			if l.trade < b.bits {
				b.open[k] |= 1 << l.trade
			}
		}
		b.step(t, k)
		b.from = append(b.from, len(b.reach))
	}
}

// step lists the sets after stage k.
func (b *bound) step(t *task, k int) {
	before := b.reach[b.from[k]:b.from[k+1]]
	if k > 0 && len(before) == 1<<bits.OnesCount(uint(b.open[k-1])) { // all that could be
		for set := b.open[k]; ; set = (set - 1) & b.open[k] {
			b.reach = append(b.reach, set)
			if set == 0 {
				return
			}
		}
	}
	full := 1 << bits.OnesCount(uint(b.open[k]))
	ways := b.ways[t.stages[k].from:t.stages[k].to]
	for i := range ways {
		if b.again(ways, i) {
			continue
		}
		for _, set := range before {
			b.mark(k, set|ways[i].sure, ways[i].may)
		}
		if len(b.reach)-b.from[k+1] == full {
			return
		}
	}
}

// again reports whether a way before way i calls for the same trades.
func (b *bound) again(ways []boundWay, i int) bool {
	for a := range ways[:i] {
		if ways[a].sure == ways[i].sure && ways[a].may == ways[i].may {
			return true
		}
	}
	return false
}

// mark lists a set with any of some more trades.
func (b *bound) mark(k, set, may int) {
	set, may = set&b.open[k], may&b.open[k]&^set
	for more := may; ; more = (more - 1) & may {
		if b.seen[set|more] != k+1 {
			b.seen[set|more] = k + 1
			b.reach = append(b.reach, set|more)
		}
		if more == 0 {
			return
		}
	}
}

// fill reckons back from the last stage.
func (b *bound) fill(t *task) {
	width := 1 << b.bits
	n := len(t.stages)
	if need := (n + 1) * width; cap(b.value) < need {
		b.value = make([]int64, need)
	} else {
		b.value = b.value[:need]
	}
	clear(b.value[n*width:])
	b.sumUp()
	for k := n - 1; k >= 0; k-- {
		later := after{b.value[(k+1)*width : (k+2)*width], b.open[k]}
		here := b.value[k*width : (k+1)*width]
		sets := b.reach[b.from[k]:b.from[k+1]]
		for _, set := range sets {
			here[set] = impossible
		}
		for i := t.stages[k].from; i < t.stages[k].to; i++ {
			b.raise(here, sets, &b.ways[i], later)
		}
	}
}

// sumUp adds up what the trades of each set cost at least.
func (b *bound) sumUp() {
	b.sum = append(b.sum[:0], 0)
	for set := 1; set < 1<<b.bits; set++ {
		b.sum = append(b.sum, b.sum[set&(set-1)]+b.fixed[bits.TrailingZeros(uint(set))])
	}
}

// raise raises what is still to come for each set to what a way makes of it.
func (b *bound) raise(here []int64, sets []int, w *boundWay, later after) {
	value, sum := later.value, b.sum
	switch more := b.perhaps[w.from:w.to]; len(more) {
	case 0:
		for _, set := range sets {
			v := w.worth - sum[w.sure&^set] + value[(set|w.sure)&later.open]
			if v > here[set] {
				here[set] = v
			}
		}
	default:
		for _, set := range sets {
			v := w.worth - sum[w.sure&^set] + b.chain(set|w.sure, more, later)
			if v > here[set] {
				here[set] = v
			}
		}
	}
}

// after is what is still to come after a stage, for each set of trades that were
// called; those that nobody calls for any more are left out of it.
type after struct {
	value []int64
	open  int
}

func (a *after) of(set int) int64 { return a.value[set&a.open] }

// chain is the worth of a set where more trades may be called, from the
// likeliest: as if no less likely one came without it.
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
