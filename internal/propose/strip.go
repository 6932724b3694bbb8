package propose

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
)

// Stays are the cabinets and fillers of the plan that stay, by their places there.
type Stays struct{ Cabinets, Fillers []int }

// stripped is a kitchen with only those cabinets that stay: what is marked so, what is
// of a kind that is not asked for, and what stands on other walls. Fillers stay with
// what they were cut for.
func stripped(k *kitchen.Kitchen, f *kitchen.Filling) (*kitchen.Kitchen, Stays) {
	out, plan, stays := *k, *k.Plan, Stays{}
	goes := func(wall int, kind cabinet.Kind) bool { return f.Asks(kind) && slices.Contains(f.Walls, wall) }
	plan.Cabinets, plan.Fillers = nil, nil
	for i, c := range k.Plan.Cabinets {
		if c.Keep || !goes(c.Wall, c.Kind) {
			plan.Cabinets, stays.Cabinets = append(plan.Cabinets, c), append(stays.Cabinets, i)
		}
	}
	for i, one := range k.Plan.Fillers {
		unasked := one.AnyKind && !slices.Contains(f.Walls, one.Wall) || !one.AnyKind && !goes(one.Wall, one.Kind)
		if unasked || closesWhatStays(k, &k.Plan.Fillers[i], stays.Cabinets) {
			plan.Fillers, stays.Fillers = append(plan.Fillers, one), append(stays.Fillers, i)
		}
	}
	out.Plan = &plan
	return &out, stays
}

// closesWhatStays reports whether every cabinet of its row that a filler touches stays,
// and some does.
func closesWhatStays(k *kitchen.Kitchen, f *cabinet.Filler, stay []int) bool {
	some := false
	for i := range k.Plan.Cabinets {
		c := &k.Plan.Cabinets[i]
		row := f.AnyKind || c.Kind == f.Kind || c.Kind == cabinet.Tall || f.Kind == cabinet.Tall
		touches := slices.ContainsFunc(c.Native(k.Room), func(q cabinet.Patch) bool {
			return q.Wall == f.Wall && (q.From == f.To || q.To == f.From)
		})
		if !row || !touches {
			continue
		}
		if some = true; !slices.Contains(stay, i) {
			return false
		}
	}
	return some
}
