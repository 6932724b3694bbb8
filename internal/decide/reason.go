package decide

import (
	"slices"
	"strings"

	"railhead/internal/finding"
	"railhead/internal/kitchen"
)

// reasons are what bears on a group, factor by factor; every factor says
// something, if only that it does not pull.
//
// Three factors decide whether a soffit comes down: what is inside, the ceiling
// height and the footprint; saving the expense is a valid reason by itself
// (common practice, no source).
func (m *matter) reasons(options []Option, advice Advised, inMoney []Reason) []Reason {
	out := slices.Concat(
		m.contents(), m.ceilingHeight(advice.Once), m.footprint(), m.expense(),
		m.structure(), m.health(), m.preference(), inMoney,
	)
	if advice.Gated && !m.goesAnyhow() {
		out = append(out, m.once(of(options, advice.Once)))
	}
	for i := range out {
		out[i].Evidence = distinctText(out[i].Evidence)
	}
	slices.SortStableFunc(out, func(a, b Reason) int { return int(a.Factor) - int(b.Factor) })
	return out
}

// once says what would be advised once its gates are open, under the factor of
// the first of them.
func (m *matter) once(o Option) Reason {
	first := o.Gates[0]
	r := Reason{
		Factor: factorOf(first.Code), Leans: LeansKeep, Code: becauseOnce,
		Params: []finding.Param{finding.Word("option", o.Option.String())},
	}
	for _, g := range o.Gates {
		r.Evidence = append(r.Evidence, g.Pointer)
	}
	return r
}

// factorOf is the factor that a gate belongs to.
func factorOf(gate string) Factor {
	switch {
	case strings.HasPrefix(gate, "gate.asbestos.") || strings.HasPrefix(gate, "gate.lead."):
		return Health
	case strings.HasPrefix(gate, "gate.service.") || strings.HasPrefix(gate, "gate.hood.") || strings.HasPrefix(gate, "gate.duct."):
		return Contents
	case strings.HasPrefix(gate, "gate.row."):
		return CeilingHeight
	default:
		return Structure
	}
}

// leanOf is the lean that an option stands for.
func leanOf(o kitchen.Option) Lean {
	switch {
	case o == kitchen.Keep:
		return LeansKeep
	case o == kitchen.Trim:
		return LeansTrim
	case o == kitchen.OpenPart:
		return LeansOpenPart
	default:
		return LeansTakeDown
	}
}

// distinctText joins lists in order, each text once.
func distinctText(lists ...[]string) []string {
	var out []string
	seen := map[string]bool{}
	for _, s := range slices.Concat(lists...) {
		if !seen[s] {
			out = append(out, s)
		}
		seen[s] = true
	}
	return out
}
