package contents

import (
	"railhead/internal/belief"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

// looks moves the odds by what somebody has seen. Where everything was seen, that
// is what there is. What was seen over a part says that more of it is in the
// rest, by how likely the look would then have been; having seen nothing speaks
// against everything, and the more so the longer the part.
func (t *trail) looks(c Cluster) {
	state, services := c.seenState()
	looked := c.evidence("/looked", lookedInto)
	switch shown := c.shown(); {
	case c.UnseenLength() == 0:
		t.set(belief.Point(int(States), int(state)), "contents.look.all", append(looked, services...)...)
	case state != Empty:
		t.move(seenRows[state], services)
	case shown > 0:
		part := partOf(shown, c.Length())
		t.move(row{"assume.contents.seen_empty", c.nothingSeen(part)}, looked, finding.Word("part", part.Text()))
	}
}

// nothingSeen is how likely it is that a look at a part of the length shows
// nothing, by what is there: what runs through shows unless it is missed, and
// what is at one place is likely to be elsewhere.
func (c Cluster) nothingSeen(part Factor) Factors {
	out, missed := unmoved, thousandths(c.figures.Of(kitchen.Missed))
	for s := FewWires; s < States; s++ {
		through := thousandths(c.figures.Of(throughs[s]))
		out[s] = share(int64(through*missed+(Same-through)*(Same-part)), int64(Same*Same))
	}
	return out
}
