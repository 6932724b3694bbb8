package decode

import (
	"slices"
	"strings"

	"railhead/api"
)

// Refusal is everything that is wrong with a body.
type Refusal struct {
	Faults []api.Fault
	// Rest is what can still be used of the body, so that further checks can
	// add what they find; nil where nothing can.
	Rest *api.Request

	holes []hole
}

// hole is a known member that is not in Rest: it was missing, or no use.
type hole struct {
	pointer string
	needed  bool
}

// Add adds what later checks found, but for what may only follow from an error
// that is listed already: one at the same place or around it, or a needed member
// of the same object (or of one around it) that could not be used. What is wrong
// with a member's own value follows from nothing.
func (r *Refusal) Add(more []api.Fault) {
	r.addUnless(more, func(fault api.Fault, h hole) bool {
		if ofOwnValue(fault.Code) {
			return h.pointer == fault.Pointer
		}
		if parent(h.pointer) == fault.Pointer {
			return true // of an object that a member could not be read of
		}
		return h.needed && (under(fault.Pointer, parent(h.pointer)) || under(h.pointer, fault.Pointer))
	})
}

// ofOwnValue reports whether a code speaks of one member's value, whatever stands
// beside it.
func ofOwnValue(code string) bool {
	switch code {
	case "id.duplicate", "ref.unknown":
		return true
	}
	return strings.HasPrefix(code, "length.") || strings.HasSuffix(code, ".not_positive") || strings.HasSuffix(code, ".negative")
}

// addRelations adds broken relations, but for those that an unusable member takes part in.
func (r *Refusal) addRelations(broken []api.Fault) {
	r.addUnless(broken, func(fault api.Fault, h hole) bool {
		return parent(h.pointer) == fault.Pointer || parent(h.pointer) == parent(fault.Pointer)
	})
}

func (r *Refusal) addUnless(more []api.Fault, follows func(fault api.Fault, h hole) bool) {
	earlier := r.Faults
	r.Faults = slices.Clone(earlier)
	for _, fault := range inOrder(more) {
		within := func(e api.Fault) bool { return under(fault.Pointer, e.Pointer) }
		from := func(h hole) bool { return follows(fault, h) }
		if len(r.Faults) >= enoughFaults {
			break
		}
		if !slices.ContainsFunc(earlier, within) && !slices.ContainsFunc(r.holes, from) {
			r.add(fault)
		}
	}
	r.Faults = inOrder(r.Faults)
}

func (r *Refusal) add(fault api.Fault) {
	if fault.Params == nil {
		fault.Params = map[string]string{}
	}
	r.Faults = append(r.Faults, fault)
}

// unreadable refuses a body in which the contract finds no fault, but which the
// wire types do not take. The tests hold that there is none; should there be one,
// it must not pass for good.
func (r *Refusal) unreadable() {
	if len(r.Faults) == 0 {
		r.add(oneFault(CodeUnreadable, "", "The body could not be read."))
	}
}

// NotJSON reports whether errors say that a body is no JSON at all.
func NotJSON(faults []api.Fault) bool {
	return len(faults) == 1 && strings.HasPrefix(faults[0].Code, "body.json.")
}
