package decide

import (
	"slices"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// inMoney are the reasons that the reckoning gives for a group: by how much its
// advice is ahead of the best combination that treats it otherwise, what may be
// inside, and that the plan stands as sent.
func (r *reckoning) inMoney(g int, best plan) []Reason {
	var out []Reason
	if other, behind, ok := r.otherwise(g, best); ok {
		out = append(out, Reason{
			Factor: Expense, Leans: leanOf(r.optionOf(best, g)), Code: becauseAhead, Evidence: r.ms[g].pointers(),
			Params: []finding.Param{
				finding.Word("option", r.optionOf(best, g).String()), finding.Word("other", other.String()),
				finding.Word("ahead", r.told(behind)),
			},
		})
	}
	if c := r.cluster[g]; r.ms[g].blind() {
		odds := r.now.odds[c]
		out = append(out, Reason{
			Factor: Contents, Leans: LeansNone, Code: becauseOdds, Evidence: []string{r.odds[c].Given},
			Params: []finding.Param{
				finding.Word("empty", inPercent(odds[contents.Empty])), finding.Word("immovable", inPercent(odds[contents.Immovable])),
				finding.Word("trouble", r.told(r.trouble(g, best.picks[g]))), finding.Word("option", r.optionOf(best, g).String()),
			},
		})
	}
	if r.ms[g].inTheWay() && !r.ms[g].exchangeable() {
		out = append(out, Reason{Factor: CeilingHeight, Leans: LeansNone, Code: becauseNoneLower, Evidence: r.ms[g].overlapped()})
	} else if r.planStands(g) {
		out = append(out, Reason{Factor: Preference, Leans: LeansNone, Code: becausePlanStands, Evidence: r.ms[g].overlapped()})
	}
	return out
}

// otherwise is the best combination that treats a group in another way, and how
// much less it nets; false where there is no other way.
func (r *reckoning) otherwise(g int, best plan) (kitchen.Option, money.Amount, bool) {
	allowed := r.allAllowed(r.now, asTheyStand)
	allowed[g] = slices.DeleteFunc(slices.Clone(allowed[g]), func(i int) bool { return i == best.picks[g] })
	if len(allowed[g]) == 0 || best.net == -money.Most {
		return 0, 0, false
	}
	other := r.best(&r.priced, r.now, allowed)
	if other.net == -money.Most {
		return 0, 0, false
	}
	ahead, behind := r.combination(best.picks), r.combination(other.picks)
	return r.optionOf(other, g), ahead.Net().Minus(behind.Net()), true
}

// trouble is what contents that nobody has seen are expected to cost an option.
func (r *reckoning) trouble(g, i int) money.Amount {
	kn := r.now.believing(r.cluster[g], belief.Point(int(contents.States), int(contents.Empty)), r.now.missing[r.cluster[g]])
	with, without := r.expected(&r.priced, r.now, g, i), r.expected(&r.priced, kn, g, i)
	return with.mean().Minus(with.gain).Minus(without.mean().Minus(without.gain))
}

// overlapped are the cabinets in whose way the group is.
func (m *matter) overlapped() []string {
	var out []string
	for _, o := range m.overlaps {
		out = append(out, o.cabinet.Pointer)
	}
	return distinctText(out)
}

// told is an amount with its currency.
func (r *reckoning) told(a money.Amount) string {
	c := r.k.Prices.Currency
	return a.Text(c) + " " + c.Code
}

// inPercent is a chance in percent, to a tenth.
func inPercent(c belief.Chance) string {
	return (money.Amount(c).Share(1000, int64(belief.Certain)) * (money.Unit / 10)).Decimal()
}
