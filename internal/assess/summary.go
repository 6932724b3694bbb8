package assess

import (
	"strconv"

	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// verdict is the room in one word, from best to worst.
type verdict int

const (
	goAhead verdict = iota
	goAfterTrim
	goAfterOpening
	answersNeeded
	blocked
)

func (v verdict) String() string {
	return [...]string{"go", "go_after_trim", "go_after_opening", "answers_needed", "blocked"}[v]
}

// code is the summary's entry in the catalogue.
func (v verdict) code() string { return "summary.room." + v.String() }

// summary is the worst of what stands in the way of starting.
func (r *result) summary() verdict {
	switch {
	case r.anyBlocked():
		return blocked
	case r.unanswered():
		return answersNeeded
	case r.opens():
		return goAfterOpening
	case r.cuts():
		return goAfterTrim
	default:
		return goAhead
	}
}

func (r *result) anyBlocked() bool {
	for _, a := range r.after {
		if a.Verdict == fit.Blocked {
			return true
		}
	}
	return false
}

// unanswered reports whether something must be known before work starts: a stop
// without its answer, an overhead that still needs a trim nobody has decided, a
// cut into one of unknown structure, or a reading whose doubt hides a block.
func (r *result) unanswered() bool {
	for i, f := range r.found {
		if r.after[i].Verdict == fit.NeedsTrim || f.Again && f.Worst == fit.Blocked || anyStop(f.Findings) || anyStop(r.after[i].Findings) {
			return true
		}
	}
	for _, one := range r.rails {
		if anyStop(one.Findings) {
			return true
		}
	}
	for _, t := range r.trims {
		if anyStop(t.Findings) || t.Overhead.MayCut == survey.CutAsk {
			return true
		}
	}
	return anyStop(r.Findings)
}

func anyStop(in []finding.Finding) bool {
	for _, f := range in {
		if f.Severity == finding.AsStop {
			return true
		}
	}
	return false
}

// opens reports whether an overhead is opened or taken down that does not go
// with the old cabinets anyway.
func (r *result) opens() bool {
	for _, g := range r.Kitchen.Groups() {
		if r.applied[g.ID].Option < kitchen.OpenPart {
			continue
		}
		for _, o := range g.Parts {
			if !o.GoesWithOldCabinets() {
				return true
			}
		}
	}
	for _, t := range r.trims {
		if t.Work == trim.TakeDown {
			return true
		}
	}
	return false
}

func (r *result) cuts() bool {
	for _, t := range r.trims {
		if t.Work != trim.None {
			return true
		}
	}
	return false
}

// summaryParams are the counts that the summary's words use.
func (r *result) summaryParams() []finding.Param {
	fits, cuts := 0, 0
	for _, a := range r.after {
		if a.Verdict <= fit.Snug {
			fits++
		}
	}
	for _, t := range r.trims {
		if t.Work != trim.None {
			cuts++
		}
	}
	return []finding.Param{
		finding.Word("cabinets", strconv.Itoa(len(r.after))),
		finding.Word("fit", strconv.Itoa(fits)),
		finding.Word("cuts", strconv.Itoa(cuts)),
	}
}
