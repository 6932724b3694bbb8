package propose

import (
	"cmp"
	"slices"
	"strconv"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/layout"
)

// planned is a way to fill the room as a plan: what stays, and then the new cabinets
// wall by wall, from the left.
func (p *proposer) planned(a *layout.Answer) *Layout {
	out := &Layout{Parts: a.Parts}
	order := make([]int, len(a.Cabinets))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, j int) int { return before(&a.Cabinets[i], &a.Cabinets[j]) })
	k, plan := *p.k, *p.k.Plan
	plan.Cabinets = slices.Clone(p.kept.Plan.Cabinets)
	place := make([]int, len(order))
	ids := p.ids()
	for _, i := range order {
		place[i] = len(plan.Cabinets)
		c := a.Cabinets[i]
		c.ID = ids(c.Kind)
		plan.Cabinets = append(plan.Cabinets, c)
	}
	for i := range plan.Cabinets {
		plan.Cabinets[i].Index, plan.Cabinets[i].Pointer = i, "/plan/cabinets/"+strconv.Itoa(i)
	}
	for _, panel := range a.Panels {
		panel.Cabinet = place[panel.Cabinet]
		out.Panels = append(out.Panels, panel)
	}
	plan.Fillers = append(slices.Clone(p.kept.Plan.Fillers), a.Fillers...)
	slices.SortStableFunc(plan.Fillers[len(p.kept.Plan.Fillers):], func(a, b cabinet.Filler) int {
		return cmp.Or(cmp.Compare(a.Wall, b.Wall), cmp.Compare(a.From, b.From), cmp.Compare(a.Kind, b.Kind))
	})
	for i := range plan.Fillers {
		plan.Fillers[i].Pointer = "/plan/fillers/" + strconv.Itoa(i)
	}
	k.Plan = &plan
	k.Datums = kitchen.Datums(k.Room, k.Plan, p.k.GivenDatums())
	out.Kitchen, out.name = &k, nameOf(k.Plan)
	return out
}

func before(a, b *cabinet.Placed) int {
	return cmp.Or(cmp.Compare(a.Wall, b.Wall), cmp.Compare(a.Kind, b.Kind), cmp.Compare(a.From, b.From))
}

// ids gives new cabinets the names w1, t1, b1 and so on, as far as nothing that was
// planned has them: who compares plans would else take one for the other.
func (p *proposer) ids() func(cabinet.Kind) string {
	taken := map[string]bool{}
	for i := range p.k.Plan.Cabinets {
		taken[p.k.Plan.Cabinets[i].ID] = true
	}
	var count [3]int
	return func(kind cabinet.Kind) string {
		for {
			count[kind]++
			if id := kind.String()[:1] + strconv.Itoa(count[kind]); !taken[id] {
				return id
			}
		}
	}
}

// nameOf tells plans apart by their cabinets.
func nameOf(plan *cabinet.Plan) string {
	var b []byte
	for i := range plan.Cabinets {
		c := &plan.Cabinets[i]
		for _, n := range []int64{int64(c.Wall), int64(c.Kind), int64(c.From), int64(c.To), int64(c.Height)} {
			b = append(strconv.AppendInt(b, n, 36), ' ')
		}
	}
	return string(b)
}
