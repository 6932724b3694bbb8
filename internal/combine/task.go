package combine

// task is a problem made ready for the search: things in the order in which they
// are taken, trades that charge something only, joints and lines by number.
type task struct {
	p      *Problem
	most   int64
	base   int64 // what no way can change
	bonus  int64 // the most that all joints that somebody bears on come to
	trades []trade
	number []int // of each trade of the problem among trades; -1: charges nothing but labour
	stages []stage
	ways   []way
	calls  []call
	joints []joint
	lines  lines

	given   []Effect // of the ways
	effects []effect // the same by slot and state
	tables  []int64
	busy    []bool
	doomed  []bool
}

// stage is one thing being done.
type stage struct {
	thing      int
	from, to   int         // its ways
	live       []liveTrade // trades that were perhaps called and may be again
	closing    []int       // trades that nobody calls for any more
	save       int64       // the most that live trades not called so far save for sure
	open, shut []openJoint // joints that begin and end here
	bound      []openJoint // joints that are open after it
	bonus      int64       // the most that joints yet to begin are worth
}

// way is one way to do a stage's thing.
type way struct {
	pick            int   // in the problem
	worth           int64 // less the labour of trades that charge nothing else
	line            line
	calls, callsEnd int
	effect, lastEnd int
}

// call is one trade that a way calls for.
type call struct {
	trade           int
	unmoved, labour int64
}

// prepare reads a problem; false where it cannot be done at all. No way of path
// makes another one needless.
func (t *task) prepare(p *Problem, path []int) bool {
	t.p, t.most = p, p.most()
	t.readTrades()
	t.lines.prepare(p)
	t.stages, t.ways, t.calls, t.given = t.stages[:0], t.ways[:0], t.calls[:0], t.given[:0]
	for _, i := range p.order() {
		if len(p.Things[i].Ways) == 0 {
			return false
		}
		st := t.readThing(i)
		if path == nil {
			t.thin(st, -1)
		} else {
			t.thin(st, path[i])
		}
	}
	t.readJoints()
	return t.settle()
}

// settle finds what may still come after each stage from the ways that are left;
// false where some joint rules out all of them.
func (t *task) settle() bool {
	for k := range t.stages {
		st := &t.stages[k]
		*st = stage{
			thing: st.thing, from: st.from, to: st.to,
			live: st.live[:0], closing: st.closing[:0], open: st.open[:0], shut: st.shut[:0], bound: st.bound[:0],
		}
	}
	t.base = 0
	t.settleTrades()
	t.lines.settle(t)
	if len(t.stages) == 0 && t.lines.start() == oneLine {
		t.base += t.lines.worth
	}
	return t.settleJoints()
}

// readThing lists the ways to do a thing.
func (t *task) readThing(i int) *stage {
	var st *stage
	t.stages, st = another(t.stages)
	st.thing, st.from = i, len(t.ways)
	for w := range t.p.Things[i].Ways {
		t.readWay(w, &t.p.Things[i].Ways[w])
	}
	st.to = len(t.ways)
	return st
}

func (t *task) readWay(pick int, given *Way) {
	made := way{pick: pick, worth: clamp(given.Worth, t.most), line: t.lines.number(given.Line), calls: len(t.calls), effect: len(t.given)}
	for _, c := range given.Calls {
		labour, n, u := charge(c.Labour, t.most), t.number[c.Trade], unmoved(c.Chance)
		switch {
		case n < 0:
			made.worth -= labour
		case u < certain || labour > 0:
			t.calls = append(t.calls, call{n, u, labour})
		}
	}
	t.given = append(t.given, given.Effects...)
	made.callsEnd, made.lastEnd = len(t.calls), len(t.given)
	t.ways = append(t.ways, made)
}

func (t *task) waysOf(k int) []way { return t.ways[t.stages[k].from:t.stages[k].to] }

func (t *task) callsOf(w *way) []call { return t.calls[w.calls:w.callsEnd] }

func (t *task) effectsOf(w *way) []effect { return t.effects[w.effect:w.lastEnd] }

// another is a list with one more element, as it was left when it was last used.
func another[T any](list []T) ([]T, *T) {
	if len(list) < cap(list) {
		list = list[:len(list)+1]
	} else {
		var fresh T
		list = append(list, fresh)
	}
	return list, &list[len(list)-1]
}
