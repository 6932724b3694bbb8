package decide

import (
	"slices"

	"railhead/internal/combine"
	"railhead/internal/money"
)

// attempt is a search over the room. Where some cabinet stands under several groups,
// where it ends hangs on all of them, and so does whether all tops of the room end
// on one line: each line is then tried by itself, with only what ends on it allowed,
// beside a room whose tops end wherever they do.
type attempt struct {
	problem *combine.Problem
	allowed [][]int
	bonus   money.Amount // for the line that all of it ends on
}

func (r *reckoning) attempts(p *priced, kn knowledge, allowed [][]int) []attempt {
	out := []attempt{{r.problem(p, kn, allowed), allowed, 0}}
	if len(r.joints) == 0 || p.values.EvenLine.Amount <= 0 {
		return out
	}
	for i := range r.tops {
		if a, ok := r.along(combine.Line(i+1), &out[0]); ok {
			a.bonus = p.values.EvenLine.Amount
			out = append(out, a)
		}
	}
	return out
}

// along is a search among what ends on one line; false where something cannot.
func (r *reckoning) along(line combine.Line, all *attempt) (attempt, bool) {
	on := func(l combine.Line) bool { return l == line || l == combine.NoLine }
	if !on(r.others) {
		return attempt{}, false
	}
	out := attempt{problem: &combine.Problem{Trades: all.problem.Trades}}
	for g, thing := range all.problem.Things {
		var some []int
		var ways []combine.Way
		for n, i := range all.allowed[g] {
			if on(r.measured[g][i].line) {
				some, ways = append(some, i), append(ways, thing.Ways[n])
			}
		}
		if len(some) == 0 {
			return attempt{}, false
		}
		out.allowed, out.problem.Things = append(out.allowed, some), append(out.problem.Things, combine.Thing{Ways: ways})
	}
	for n, j := range all.problem.Joints {
		out.problem.Joints = append(out.problem.Joints, combine.Joint{
			Unlimited: j.Unlimited,
			Outcome: func(limit uint8, wish bool) (money.Amount, bool) {
				worth, possible := j.Outcome(limit, wish)
				return worth, possible && r.exchanges[n][index(wish)][limit].line == line
			},
		})
	}
	return out, true
}

// at is where picks stand among what an attempt allows; nil where they do not.
func (a *attempt) at(picks []int) []int {
	out := make([]int, len(picks))
	for g, i := range picks {
		if out[g] = slices.Index(a.allowed[g], i); out[g] < 0 {
			return nil
		}
	}
	return out
}

// ends is the line at which all wall and tall cabinets of the room end.
func (r *reckoning) ends(picks []int) combine.Line {
	line := r.others
	meet := func(l combine.Line) {
		switch {
		case l == combine.NoLine || l == line:
		case line == combine.NoLine:
			line = l
		default:
			line = combine.Several
		}
	}
	for g, i := range picks {
		meet(r.measured[g][i].line)
	}
	for n := range r.joints {
		meet(r.settled(n, picks).line)
	}
	return line
}

// settled is what a joint cabinet becomes: a wish that is not granted is none.
func (r *reckoning) settled(joint int, picks []int) *exchange {
	limit, wish := r.bearing(joint, picks)
	if e := &r.exchanges[joint][index(wish)][limit]; e.possible {
		return e
	}
	return &r.exchanges[joint][0][limit]
}
