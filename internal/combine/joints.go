package combine

import (
	"math"
	"slices"
)

// impossible is the worth of what cannot be.
const impossible = math.MinInt64

// joint follows what a joint has come to: a state is the place of its lowest
// limit among limits, twice, and one more where somebody wishes. The last state
// but one is that nothing bears on it.
type joint struct {
	limits      []uint8 // that some way sets, from the lowest
	first, last int     // the stages that bear on it
	slot        int
	outcome     []int64 // by state
}

// openJoint is a joint at a stage with a worth for each state: what it comes to,
// or the most that it may still come to.
type openJoint struct {
	slot  int
	none  uint16 // the state that nothing bears on it
	worth []int64
}

// effect is what a way does to a joint.
type effect struct {
	joint, slot int
	state       uint16
}

func (j *joint) none() uint16 { return uint16(2 * len(j.limits)) }

// both is the state that two states make together.
func both(a, b uint16) uint16 { return min(a>>1, b>>1)<<1 | (a|b)&1 }

// readJoints reads the joints; false where one of them rules out everything.
func (t *task) readJoints() bool {
	t.joints = t.joints[:0]
	for range t.p.Joints {
		var j *joint
		t.joints, j = another(t.joints)
		*j = joint{first: -1, last: -1, limits: j.limits[:0], outcome: j.outcome[:0]}
	}
	for k := range t.stages {
		t.bear(k)
	}
	for j := range t.joints {
		t.outcomes(j)
	}
	t.share()
	t.translate()
	return t.weigh()
}

// bear notes the joints that stage k bears on.
func (t *task) bear(k int) {
	for _, w := range t.waysOf(k) {
		for _, e := range t.given[w.effect:w.lastEnd] {
			j := &t.joints[e.Joint]
			if j.first < 0 {
				j.first = k
			}
			j.last = k
			if at, found := slices.BinarySearch(j.limits, e.Limit); !found {
				j.limits = slices.Insert(j.limits, at, e.Limit)
			}
		}
	}
}

// outcomes asks a joint what each state comes to.
func (t *task) outcomes(n int) {
	j, given := &t.joints[n], &t.p.Joints[n]
	for _, limit := range j.limits {
		j.outcome = append(j.outcome, t.outcome(given, limit, false), t.outcome(given, limit, true))
	}
	j.outcome = append(j.outcome, t.outcome(given, given.Unlimited, false), impossible)
}

func (t *task) outcome(j *Joint, limit uint8, wish bool) int64 {
	worth, ok := j.settle(limit, wish)
	if !ok {
		return impossible
	}
	return clamp(worth, t.most)
}

// share gives each joint a slot that no other one uses while it is open.
func (t *task) share() {
	t.busy = t.busy[:0]
	for k := range t.stages {
		st := &t.stages[k]
		for n := range t.joints {
			if j := &t.joints[n]; j.first == k {
				j.slot = t.free()
				st.open = append(st.open, openJoint{j.slot, j.none(), nil})
			}
		}
		for n := range t.joints {
			if j := &t.joints[n]; j.first >= 0 && j.last == k {
				t.busy[j.slot] = false
				st.shut = append(st.shut, openJoint{j.slot, j.none(), j.outcome})
			}
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

// translate puts the effects of ways into slots and states.
func (t *task) translate() {
	t.effects = t.effects[:0]
	for _, e := range t.given {
		j := &t.joints[e.Joint]
		rank, found := slices.BinarySearch(j.limits, e.Limit)
		state := uint16(2 * rank)
		if e.Wish {
			state++
		}
		if !found {
			state = j.none() // of a way that was dropped
		}
		t.effects = append(t.effects, effect{e.Joint, j.slot, state})
	}
}

// weigh finds the most that each joint may still come to at each stage; false
// where one is impossible whatever is done.
func (t *task) weigh() bool {
	t.tables, t.bonus = t.tables[:0], 0
	for n := range t.joints {
		j := &t.joints[n]
		most := j.outcome
		for k := j.last; k >= 0 && k >= j.first; k-- {
			if k < j.last {
				t.stages[k].bound = append(t.stages[k].bound, openJoint{j.slot, j.none(), most})
			}
			most = t.before(k, j, most)
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
func (t *task) before(k int, j *joint, after []int64) []int64 {
	from := len(t.tables)
	for state := range after {
		most := int64(impossible)
		for _, w := range t.waysOf(k) {
			to := uint16(state)
			for _, e := range t.effects[w.effect:w.lastEnd] {
				if e.slot == j.slot {
					to = both(to, e.state)
				}
			}
			most = max(most, after[to])
		}
		t.tables = append(t.tables, most)
	}
	return t.tables[from:len(t.tables):len(t.tables)]
}
