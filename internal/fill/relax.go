package fill

import (
	"slices"
	"strings"
)

// CodeInfeasible is the code of an Infeasible.
const CodeInfeasible = "fill.infeasible"

// Constraint is one thing that a run asks for: a cabinet that stays, one over a whole stretch, a pair that must be, a
// limit, an end's distance, the least filler or that no hole is left.
type Constraint struct {
	Member Member
	Index  int // -1 for the member as a whole
}

// Infeasible says that a run asks for what cannot be had together. Any one of Either makes it possible when it is given
// up. Where no single one does, All do together, and none of them can be kept.
type Infeasible struct {
	Either, All []Constraint
	Partly      bool // not everything was tried: Either may have missed some, and All may hold what could be kept
}

func (e *Infeasible) Error() string {
	var out []string
	for _, c := range slices.Concat(e.Either, e.All) {
		out = append(out, place(c.Member, c.Index))
	}
	return CodeInfeasible + ": " + strings.Join(out, ", ")
}

// relax finds what a run that cannot be filled would have to give up.
func (s *Solver) relax(r *Run) *Infeasible {
	e, all, left := &Infeasible{}, constraints(r), tries(r)
	for _, c := range all {
		if s.possible(e, r, []Constraint{c}, &left) {
			e.Either = append(e.Either, c)
		}
	}
	if len(e.Either) > 0 {
		return e
	}
	e.All = slices.Clone(all)
	left = tries(r)
	for s.keepSome(e, r, &left) {
	}
	return e
}

// keepSome takes out of All what can be kept, and says whether that was anything. What can be kept may change with what is kept already: beside a
// window that is there a row may be open.
func (s *Solver) keepSome(e *Infeasible, r *Run, left *int) bool {
	kept := len(e.All)
	for _, c := range slices.Clone(e.All) {
		if up := except(e.All, c); s.possible(e, r, up, left) {
			e.All = up
		}
	}
	return len(e.All) < kept
}

// possible tries to fill a run without some of its constraints, if a try is left.
func (s *Solver) possible(e *Infeasible, r *Run, without []Constraint, left *int) bool {
	if *left--; *left < 0 {
		e.Partly = true
		return false
	}
	b := reduce(r.without(without)).best(&s.memory)
	return b.gain[b.begin] != impossible
}

// tries is how often a run may be filled to find out what it asks too much of: about half a second's worth, counted in
// places for sizes, and always a few times.
func tries(r *Run) int {
	const places = 50_000_000
	return max(10, places/int(int64(r.Length/r.Grid+1)*int64(len(r.Sizes)+20)))
}

// except is all constraints but one.
func except(all []Constraint, c Constraint) []Constraint {
	return slices.DeleteFunc(slices.Clone(all), func(one Constraint) bool { return one == c })
}

// constraints lists what a run may give up.
func constraints(r *Run) []Constraint {
	var out []Constraint
	for i, p := range r.Pairs {
		if p.Must {
			out = append(out, Constraint{InPairs, i})
		}
	}
	if r.Closed {
		out = append(out, Constraint{InClosed, none})
	}
	if r.LeastFiller > 0 {
		out = append(out, Constraint{InLeastFiller, none})
	}
	for i, e := range r.Ends {
		if e.Least > 0 {
			out = append(out, Constraint{InEnds, i})
		}
	}
	for i := range r.Whole {
		out = append(out, Constraint{InWhole, i})
	}
	for i := range r.Fixed {
		out = append(out, Constraint{InFixed, i})
	}
	for i := range r.Limits {
		out = append(out, Constraint{InLimits, i})
	}
	return out
}
