package combine

import "slices"

// settleJoints finds where each joint is open, and the most that it may still
// come to; false where one is impossible whatever is done.
func (t *task) settleJoints() bool {
	for n := range t.joints {
		t.joints[n].first, t.joints[n].last = -1, -1
	}
	for k := range t.stages {
		for _, w := range t.waysOf(k) {
			for _, e := range t.given[w.effect:w.lastEnd] {
				j := &t.joints[e.Joint]
				if j.first < 0 {
					j.first = k
				}
				j.last = k
			}
		}
	}
	t.busy = t.busy[:0]
	for k := range t.stages {
		t.openAndShut(k)
	}
	t.translate()
	return t.weigh()
}

// openAndShut gives each joint that begins at stage k a slot which no other one
// uses while it is open.
func (t *task) openAndShut(k int) {
	st := &t.stages[k]
	for n := range t.joints {
		if j := &t.joints[n]; j.first == k {
			j.slot = t.free()
			st.open = append(st.open, openJoint{j.slot, j.none(), nil})
		}
	}
	for n := range t.joints {
		if j := &t.joints[n]; j.last == k {
			t.busy[j.slot] = false
			st.shut = append(st.shut, openJoint{j.slot, j.none(), j.outcome})
		}
	}
}

// free takes a free slot.
func (t *task) free() int {
	slot := slices.Index(t.busy, false)
	if slot < 0 {
		slot, t.busy = len(t.busy), append(t.busy, false)
	}
	t.busy[slot] = true
	return slot
}

// translate puts the effects of the ways into slots and states.
func (t *task) translate() {
	t.effects = t.effects[:0]
	for _, e := range t.given {
		j := &t.joints[e.Joint]
		rank, _ := slices.BinarySearch(j.limits, e.Limit)
		state := uint16(2 * rank)
		if e.Wish {
			state++
		}
		t.effects = append(t.effects, effect{e.Joint, j.slot, state})
	}
}

// weigh finds the most that each joint may still come to at each stage, from the
// last one back.
func (t *task) weigh() bool {
	t.tables, t.bonus = t.tables[:0], 0
	for n := range t.joints {
		j := &t.joints[n]
		most := j.outcome
		for k := j.last; k >= 0 && k >= j.first; k-- {
			if k < j.last {
				t.stages[k].bound = append(t.stages[k].bound, openJoint{j.slot, j.none(), most})
			}
			most = t.before(k, n, most)
		}
		worth := most[j.none()]
		if worth == impossible {
			return false
		}
		for k := range max(0, j.first) {
			t.stages[k].bonus += worth
		}
		if j.first < 0 {
			t.base += worth
		} else {
			t.bonus += worth
		}
	}
	return true
}

// before is the most that each state of a joint before stage k may come to, from
// the most after it.
func (t *task) before(k, joint int, after []int64) []int64 {
	from := len(t.tables)
	for state := range after {
		most := int64(impossible)
		for _, w := range t.waysOf(k) {
			to := uint16(state)
			for _, e := range t.effectsOf(&w) {
				if e.joint == joint {
					to = both(to, e.state)
				}
			}
			most = max(most, after[to])
		}
		t.tables = append(t.tables, most)
	}
	return t.tables[from:len(t.tables):len(t.tables)]
}
