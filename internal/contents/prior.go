package contents

import (
	"strconv"

	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// builtIn moves the odds from nothing to what kind, age, hints and neighbours of
// a cluster make of them.
func (t *trail) builtIn(k *kitchen.Kitchen, c Cluster) {
	t.kind(c)
	t.age(k.Room)
	t.hints(c)
	t.bath(c)
	t.hood(k, c)
	t.panel(k.Room, c)
}

// kind starts from the part that most often holds something: what it holds runs
// on into the others.
func (t *trail) kind(c Cluster) {
	best := c.Parts[0]
	for _, o := range c.Parts {
		if kindRow(o).factors[Empty] < kindRow(best).factors[Empty] {
			best = o
		}
	}
	t.move(kindRow(best), []string{best.Pointer + "/kind"}, finding.Word("overhead", best.ID))
}

func kindRow(o *survey.Overhead) row {
	if o.Kind == survey.Beam && o.Structure == survey.Framed {
		return framedBeam
	}
	return kindRows[o.Kind]
}

func (t *trail) age(room *survey.Room) {
	t.move(ageRow(room.Built), []string{"/survey/built"}, finding.Word("built", strconv.Itoa(room.Built)))
}

func ageRow(built int) row {
	switch {
	case built == 0:
		return ageUnknown
	case built < middleAge:
		return ageOld
	case built < lateAge:
		return ageMiddle
	default:
		return ageLate
	}
}

// hints move the odds once each, however many parts show them.
func (t *trail) hints(c Cluster) {
	for _, h := range hints {
		if evidence := c.hinted(h.name); len(evidence) > 0 && !c.saysLess(h.name) {
			t.move(h.row, evidence)
		}
	}
}

// saysLess: a storey above is already counted where it is known what stands there.
func (c Cluster) saysLess(hint string) bool {
	return hint == "upper_floor" && (len(c.hinted("bath_above")) > 0 || len(c.hinted("kitchen_above")) > 0)
}
