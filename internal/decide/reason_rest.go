package decide

import (
	"slices"
	"strconv"

	"railhead/internal/finding"
	"railhead/internal/hazard"
	"railhead/internal/survey"
)

// expense: whatever stays costs nothing, and lowering the row may spare the cut.
func (m *matter) expense() []Reason {
	out := []Reason{{Factor: Expense, Leans: LeansKeep, Code: becauseSaved, Evidence: m.pointers()}}
	if m.goesAnyhow() {
		out[0] = Reason{Factor: Expense, Leans: LeansNone, Code: becauseGoesAnyhow, Evidence: m.pointers()}
	}
	if m.lower != nil && m.lower.Possible && slices.Contains(m.lower.Spares, m.group.ID) {
		out = append(out, Reason{
			Factor: Expense, Leans: LeansKeep, Code: becauseLowerRow,
			Params: []finding.Param{finding.Size("by", finding.Up(m.lower.By.Exact()))}, Evidence: []string{"/plan/row_shift"},
		})
	}
	return out
}

// structure: what each part is made of, and what a cut would leave of it.
func (m *matter) structure() []Reason {
	var out []Reason
	for _, p := range m.group.Parts {
		r := structureReason(p)
		if m.inTheWay() && r.Code == becauseFramed {
			r.Leans = LeansTrim
		}
		out = together(out, r)
		if p.Make.HungFrom == survey.HungTrusses || p.Make.HungFrom == survey.HungJoists {
			out = together(out, Reason{Structure, LeansNone, becauseHung, nil, []string{p.Pointer + "/make/hung_from"}})
		}
	}
	for _, c := range m.cuts {
		if r, ok := m.cutReason(c); ok {
			out = together(out, r)
		}
	}
	return out
}

func structureReason(p *survey.Overhead) Reason {
	structure := []string{p.Pointer + "/structure"}
	switch {
	case p.MayCut == survey.CutAsk:
		return Reason{Structure, LeansKeep, becauseAsk, nil, structure}
	case p.Structure == survey.Bearing:
		return Reason{Structure, LeansKeep, becauseBearing, nil, structure}
	case p.MayCut == survey.CutYes:
		return Reason{Structure, LeansNone, becauseFramed, nil, []string{p.Pointer}}
	case p.Kind == survey.Beam:
		return Reason{Structure, LeansKeep, becauseBeam, nil, []string{p.Pointer + "/kind"}}
	case p.Structure == survey.Solid:
		return Reason{Structure, LeansKeep, becauseSolid, nil, structure}
	default:
		return Reason{Structure, LeansKeep, becauseSaidNo, nil, []string{p.Pointer + "/may_cut"}}
	}
}

// cutReason: a cut that leaves nothing, or a stub nobody can fix, is no cut.
func (m *matter) cutReason(c cut) (Reason, bool) {
	if c.buildable() {
		return Reason{}, false
	}
	r := Reason{Factor: Structure, Leans: LeansTakeDown, Code: becauseCeiling, Evidence: []string{c.overhead.Pointer + "/make"}}
	if m.restStay {
		r.Leans = LeansOpenPart
	}
	if c.tooThin() {
		r.Code = becauseThin
	}
	return r, true
}

// together adds a reason, or its evidence where the reason stands there already.
func together(list []Reason, r Reason) []Reason {
	for i := range list {
		if list[i].Code == r.Code && list[i].Leans == r.Leans {
			list[i].Evidence = append(list[i].Evidence, r.Evidence...)
			return list
		}
	}
	return append(list, r)
}

// health: what the house's age and the finish make likely.
func (m *matter) health() []Reason {
	var out []Reason
	for _, p := range m.group.Parts {
		asbestos, lead := hazard.Asbestos(m.k.Room, p), hazard.Lead(m.k.Room, p)
		if asbestos == hazard.Presumed {
			out = together(out, Reason{Health, LeansKeep, becauseAsbestos, nil, []string{p.Pointer + "/finish"}})
		}
		if lead == hazard.Presumed {
			out = together(out, Reason{Health, LeansKeep, becauseLead, m.year(), []string{"/survey/built", p.Pointer + "/painted"}})
		}
		if asbestos == hazard.Possible || lead == hazard.Possible {
			out = together(out, Reason{Health, LeansNone, becauseOldHouse, nil, []string{"/survey/built"}})
		}
	}
	if len(out) == 0 {
		out = append(out, Reason{Health, LeansNone, becauseHealthy, nil, m.cleared()})
	}
	return out
}

// cleared is what shows that nothing harmful is reckoned with.
func (m *matter) cleared() []string {
	var out []string
	if m.k.Room.Built > 0 {
		out = append(out, "/survey/built")
	}
	if c := m.k.Room.Cleared; c.Asbestos || c.Lead {
		out = append(out, "/survey/cleared")
	}
	return out
}

// preference: what the planner chose and what going to the ceiling is worth.
func (m *matter) preference() []Reason {
	var out []Reason
	if c, ok := m.k.Choices[m.group.ID]; ok {
		option := []finding.Param{finding.Word("option", c.Option.String())}
		out = append(out, Reason{Preference, leanOf(c.Option), becauseChosen, option, []string{c.Pointer}})
	}
	if m.k.Prices.Worth.ToCeiling.Amount > 0 {
		out = append(out, Reason{Preference, LeansTakeDown, becauseToCeiling, nil, []string{m.k.Prices.Worth.ToCeiling.Pointer}})
	}
	if len(out) == 0 {
		out = append(out, Reason{Preference, LeansNone, becauseNotStated, nil, nil})
	}
	return out
}

// count writes a number for a text.
func count(n int) string { return strconv.Itoa(n) }
