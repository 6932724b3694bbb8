package resolve

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/api"
)

func TestEverySlipIsToldAlone(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	sameLines(t, "the good body", said(d, good), nil)
	for _, s := range slips {
		sameLines(t, s.name, said(d, changed(t, good, s.changes...)), []string{s.want})
	}
}

// What a request for layouts says of the room, the system and the plan is read as any other request is.
func TestRequestsAreReadAlike(t *testing.T) {
	d, layouts, good := readerOf[api.Request](t), reader(t), wholeRequest(t)
	alike := func(name, text string) {
		t.Helper()
		sameLines(t, name, saidBy(d, text, func(req *api.Request) []Fault { _, faults := Request(req); return faults }), said(layouts, text))
	}
	alike("the good body", good)
	for _, s := range slips {
		if !strings.Contains(s.want, " /fill") {
			alike(s.name, changed(t, good, slices.DeleteFunc(slices.Clone(s.changes), func(c change) bool { return inside(c.pointer, "/fill") })...))
		}
	}
	alike("nothing", "{}")
	alike("everything wrong", everythingWrong)
}

// One thing wrong is told once: nothing that only follows from it is told beside it.
func TestEveryBlotIsToldAlone(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	for _, blot := range blots(t, d, good) {
		told := said(d, changed(t, good, blot))
		if len(told) != 1 || !strings.Contains(told[0]+"/", " "+blot.pointer+"/") {
			t.Errorf("%s for %s: told %q", blot.value, blot.pointer, told)
		}
	}
}

// Nor does anything follow from several together.
func TestBlotsAreToldAlone(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	all := blots(t, d, good)
	rapid.Check(t, func(t *rapid.T) {
		var changes []change
		for range rapid.IntRange(2, 4).Draw(t, "blots") {
			blot := rapid.SampledFrom(all).Draw(t, "blot")
			if !slices.ContainsFunc(changes, func(c change) bool { return inside(c.pointer, blot.pointer) || inside(blot.pointer, c.pointer) }) {
				changes = append(changes, blot)
			}
		}
		told := said(d, changed(t, good, changes...))
		for _, fault := range told {
			_, at, _ := strings.Cut(fault, " ")
			if !slices.ContainsFunc(changes, func(c change) bool { return inside(at, c.pointer) }) {
				t.Fatalf("%v: told %q", changes, told)
			}
		}
	})
}

// Neither the units nor a level are known: what follows from the one in one unit must not look as if it followed from
// nothing because in another unit it follows from the other.
func TestNothingFollowsFromUnitsAndALevel(t *testing.T) {
	sameLines(t, "told", said(reader(t), changed(t, wholeBody(t), change{"/survey/laser_height", "null"}, change{"/units", ""})),
		[]string{"body.value.null /survey/laser_height", "body.member.missing /units"})
}

// Whatever else is wrong in an object, a slip in it is told.
func TestSlipsAreToldTogether(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	all := blots(t, d, good)
	for i, s := range slips {
		for _, blot := range all {
			if parent, _, _ := cutLast(blot.pointer); blot.value != "null" || parent != s.holder() || s.touches(blot.pointer) {
				continue
			}
			told := said(d, changed(t, good, append([]change{blot}, s.changes...)...))
			if !slices.Contains(told, s.want) || !slices.Contains(told, "body.value.null "+blot.pointer) {
				t.Errorf("%s, and a null at %s: told %q", s.name, blot.pointer, told)
			}
		}
		for _, other := range slips[i+1:] {
			if s.holder() != other.holder() || slices.ContainsFunc(other.changes, func(c change) bool { return s.touches(c.pointer) }) ||
				slices.ContainsFunc(s.changes, func(c change) bool { return other.touches(c.pointer) }) {
				continue
			}
			told := said(d, changed(t, good, slices.Concat(s.changes, other.changes)...))
			if !slices.Contains(told, s.want) || !slices.Contains(told, other.want) {
				t.Errorf("%s, and %s: told %q", s.name, other.name, told)
			}
		}
	}
}

// Wherever in the body something else is wrong, a slip is told.
func TestSlipsAreToldWithWhateverElseIsWrong(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	all := blots(t, d, good)
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.SampledFrom(slips).Draw(t, "slip")
		changes := slices.Clone(s.changes)
		for range rapid.IntRange(1, 3).Draw(t, "others") {
			blot := rapid.SampledFrom(all).Draw(t, "blot")
			if free := !s.touches(blot.pointer) && !slices.ContainsFunc(changes, func(c change) bool { return inside(c.pointer, blot.pointer) || inside(blot.pointer, c.pointer) }); free {
				changes = append(changes, blot)
			}
		}
		if told := said(d, changed(t, good, changes...)); !slices.Contains(told, s.want) {
			t.Fatalf("%s, with %v: told %q", s.name, changes[len(s.changes):], told)
		}
	})
}

// A body with more wrong in it than anybody reads is refused with as much as somebody might.
func TestNobodyIsToldMoreThanIsRead(t *testing.T) {
	points := "[" + strings.Repeat(`{"at":1},`, 999) + `{"at":1}]`
	wall := `{"id":"w","length":1,"floor":` + points + `,"ceiling":` + points + `}`
	body := `{"units":"ft","system":"s","survey":{"walls":[` + strings.Repeat(wall+",", 49) + wall + `]}}`
	if told := said(reader(t), body); len(told) < 1000 || len(told) > 1002 {
		t.Errorf("%d errors", len(told))
	}
}
