package decide

import (
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// Decide says what to do with each overhead group of a kitchen: found are its
// cabinets in the room as found, rows the system's rows against the room, and
// lower is lowering the rows (nil where that helps nothing). The advice is for
// the plan as sent; lowering the rows is an alternative beside it.
//
// The advice is the combination whose worth less expected cost is highest among
// those that no gate stands against.
func Decide(k *kitchen.Kitchen, found []fit.Result, rows []fit.Row, lower *fit.Lower) Decisions {
	ms := matters(k, found, rows, lower)
	options := make([][]Option, len(ms))
	for g, m := range ms {
		options[g] = m.options()
	}
	r := reckoningOf(k, ms, options, givenIn(k), opened)
	now := r.choose(&r.priced, r.now, asTheyStand)
	proven := r.solver.Proven()
	once := r.choose(&r.priced, r.now, opened)
	out := Decisions{Lower: lower, reckoning: r, best: now, once: once, Proven: proven && r.solver.Proven()}
	for g, m := range ms {
		advice := r.advised(g, now, once)
		out.Advice = append(out.Advice, advice)
		var inMoney []Reason
		if out.Proven {
			inMoney = r.inMoney(g, now)
		}
		out.Overheads = append(out.Overheads, Overhead{
			Group: m.group, Advice: advice.Option, Options: options[g], Reasons: m.reasons(options[g], advice, inMoney),
		})
	}
	out.Questions = questions(ms)
	out.Findings = append(out.againstChoices(k), out.goingBehindGates(k)...)
	return out
}

// Applied is what holds for each group: the choice, else the advice, else,
// where the advice is gated, that it stays.
func (d Decisions) Applied(k *kitchen.Kitchen) kitchen.AppliedOptions {
	out := make(kitchen.AppliedOptions, len(d.Advice))
	for i, a := range d.Advice {
		out[a.Group] = applied(k, a, d.Overheads[i].goesAnyhow())
	}
	return out
}

func applied(k *kitchen.Kitchen, a Advised, goes bool) kitchen.Applied {
	if c, ok := k.Choices[a.Group]; ok {
		return kitchen.Applied{Option: c.Option, By: kitchen.ByChoice, Spans: c.Spans}
	}
	if a.Gated && !goes {
		return kitchen.Applied{Option: kitchen.Keep, By: kitchen.ByDefault}
	}
	return kitchen.Applied{Option: a.Option, By: kitchen.ByAdvice}
}

func (o *Overhead) goesAnyhow() bool {
	return all(o.Group.Parts, (*survey.Overhead).GoesWithOldCabinets)
}
