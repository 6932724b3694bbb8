package decode

import (
	"slices"
	"strings"

	"railhead/api"
)

// Refusal is everything that is wrong with a body.
type Refusal[T any] struct {
	Faults []api.Fault
	// Rest is the body with stand-ins for what could not be used of it, so that
	// further checks can add what they find; nil where nothing is left.
	Rest *T

	holes []hole
}

// hole is something that is missing from the rest of a body, or has a stand-in.
type hole struct {
	pointer string
	tail    bool // of a list, only what is beyond the most that may be there
}

// Add adds what later checks found, but for what they say only because something
// is missing or could not be used: that is listed already.
func (r *Refusal[T]) Add(more []api.Fault) {
	r.Faults = slices.Clone(r.Faults)
	for _, fault := range inOrder(more) {
		if len(r.Faults) >= enoughFaults {
			break
		}
		if !slices.ContainsFunc(r.holes, func(h hole) bool { return h.causes(fault) }) {
			r.add(fault)
		}
	}
	r.Faults = inOrder(r.Faults)
}

func (r *Refusal[T]) add(fault api.Fault) {
	if fault.Params == nil {
		fault.Params = map[string]string{}
	}
	r.Faults = append(r.Faults, fault)
}

// causes reports whether a fault may be there only because of the hole: it speaks
// of what is not there, or it misses what may have stood there.
func (h hole) causes(fault api.Fault) bool {
	switch {
	case !h.tail && under(fault.Pointer, h.pointer):
		return true
	case fault.Code == "ref.unknown":
		return above(h.pointer, defined[fault.Params["kind"]])
	case fault.Code == "plan.corner.not_joined":
		return strings.HasSuffix(h.pointer, "/joins_next")
	}
	return false
}

// defined is where the things that references name stand, by kind.
var defined = map[string]path{
	"laser":    {"survey", "lasers", "*"},
	"wall":     {"survey", "walls", "*"},
	"overhead": {"survey", "walls", "*", "overheads", "*"},
	"duct_box": {"survey", "walls", "*", "overheads", "*"},
}

// above reports whether a pointer is to something that holds the things at a path
// whose lists may be at any item.
func above(pointer string, things path) bool {
	tokens := strings.Split(pointer, "/")[1:]
	if len(tokens) >= len(things) {
		return false
	}
	for i, token := range tokens {
		if things[i] != "*" && things[i] != token {
			return false
		}
	}
	return true
}

// unreadable refuses a body in which the contract finds no fault, but which the
// wire types do not take. The tests hold that there is none; should there be one,
// it must not pass for good.
func (r *Refusal[T]) unreadable() {
	if len(r.Faults) == 0 {
		r.add(oneFault(CodeUnreadable, "", "The body could not be read."))
	}
}

// NotJSON reports whether errors say that a body is no JSON at all.
func NotJSON(faults []api.Fault) bool {
	return len(faults) == 1 && strings.HasPrefix(faults[0].Code, "body.json.")
}
