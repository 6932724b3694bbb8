package kitchen

import (
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Hung is a stretch of an overhead as it hangs at some stage of the work.
type Hung struct {
	Overhead *survey.Overhead
	From, To length.Length
	// Cut is the level, in the survey's frame, to which the stretch was cut; nil
	// where it hangs as found.
	Cut *length.Exact
}

// Sky is everything that hangs under the ceiling at some stage of the work.
type Sky struct {
	Hung []Hung
	// Gone are the overheads (or parts of one) that were taken away; what they
	// hid may be unseen.
	Gone []Gone
}

// Gone is a stretch of an overhead that was taken away.
type Gone struct {
	Overhead *survey.Overhead
	From, To length.Length
}

// Away is the stretch once it was taken away.
func (h Hung) Away() Gone { return Gone{Overhead: h.Overhead, From: h.From, To: h.To} }

// Found is the sky as found, less what goes with the old cabinets.
func (k *Kitchen) Found() Sky {
	var out Sky
	for _, o := range k.Overheads() {
		if o.GoesWithOldCabinets() {
			out.Gone = append(out.Gone, Gone{Overhead: o, From: o.From, To: o.To})
		} else {
			out.Hung = append(out.Hung, Hung{Overhead: o, From: o.From, To: o.To})
		}
	}
	return out
}

// Lowest is the lowest underside of the stretch over a span, and the station;
// a cut raises whatever hung lower.
func (h Hung) Lowest(from, to length.Length) (length.Exact, length.Length) {
	low := h.Overhead.Underside.Lowest(from, to)
	if h.Cut != nil && low.Value.Less(*h.Cut) {
		return *h.Cut, low.At
	}
	return low.Value, low.At
}
