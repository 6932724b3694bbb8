package decide

import (
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// Pick is a combination that was asked for.
type Pick struct {
	Options map[string]kitchen.Option // by group
	Gates   map[string][]Gate         // what stands before them
	Net     money.Amount              // worth less expected cost
	Told    money.Amount              // the same in whole coins, as the room's parts are told
}

// Gates says which options a combination may be made of.
type Gates int

// What a combination may be made of.
const (
	Ungated  Gates = iota // what may be advised as the gates stand
	Openable              // also what waits for gates that somebody can open
	Somebody              // whatever somebody can do, if only the licensed trade
)

// Among is the best combination in which every group has one of the options that it
// may have; false where the gates, or what can be done at all, leave a group none.
func (d *Decisions) Among(may func(group string, o kitchen.Option) bool, g Gates) (Pick, bool) {
	r := d.reckoning
	allowed := make([][]int, len(r.ms))
	for n := range r.ms {
		for _, i := range r.within(n, g) {
			if may(r.ms[n].group.ID, r.options[n][i].Option) {
				allowed[n] = append(allowed[n], i)
			}
		}
		if len(allowed[n]) == 0 {
			return Pick{}, false
		}
	}
	best := r.best(&r.priced, r.now, allowed)
	out := Pick{Options: map[string]kitchen.Option{}, Gates: map[string][]Gate{}, Net: best.net, Told: r.combination(best.picks).Net()}
	for n, i := range best.picks {
		out.Options[r.ms[n].group.ID] = r.options[n][i].Option
		out.Gates[r.ms[n].group.ID] = r.options[n][i].Gates
	}
	return out, true
}

// within are the options of a group behind no other gates than may be passed. Of one
// that was chosen about there is no other, and once everything that somebody can do
// counts, it is taken as it is.
func (r *reckoning) within(g int, gates Gates) []int {
	if choice, chosen := r.k.Choices[r.ms[g].group.ID]; chosen {
		i := r.place(g, choice.Option)
		if gates != Somebody && len(r.standing(g, r.options[g][i], r.now)) > 0 {
			return nil
		}
		return []int{i}
	}
	switch gates {
	case Ungated:
		return r.allowed(g, r.now, asTheyStand)
	case Openable:
		return r.allowed(g, r.now, opened)
	}
	var out []int
	for i := range r.options[g] {
		if r.measured[g][i].taken && r.measured[g][i].done {
			out = append(out, i)
		}
	}
	return out
}

// Before are the gates before an option of a group, and whether it is possible.
func (d *Decisions) Before(group string, o kitchen.Option) ([]Gate, bool) {
	for _, have := range d.Overheads {
		if have.Group.ID == group {
			one := of(have.Options, o)
			return one.Gates, one.Possible
		}
	}
	return nil, false
}
