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

// readJoints lists the limits that the ways set and asks what each state of a
// joint comes to.
func (t *task) readJoints() {
	t.joints = t.joints[:0]
	for range t.p.Joints {
		var j *joint
		t.joints, j = another(t.joints)
		j.limits, j.outcome = j.limits[:0], j.outcome[:0]
	}
	for _, w := range t.ways {
		for _, e := range t.given[w.effect:w.lastEnd] {
			j := &t.joints[e.Joint]
			if at, found := slices.BinarySearch(j.limits, e.Limit); !found {
				j.limits = slices.Insert(j.limits, at, e.Limit)
			}
		}
	}
	for j := range t.joints {
		t.outcomes(j)
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
