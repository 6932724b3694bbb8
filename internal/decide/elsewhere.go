package decide

import (
	"cmp"
	"slices"

	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
	"railhead/internal/takeoff"
)

// elsewhere reckons a case that differs from the one decided in where cabinets or
// ceilings are, with the same rates and what is believed of the same contents.
// Nobody asks what else it is like.
func (r *reckoning) elsewhere(k *kitchen.Kitchen) *reckoning {
	ms := matters(k, fit.Above(k), fit.TopLines(k), nil)
	options := make([][]Option, len(ms))
	for g, m := range ms {
		options[g] = m.options()
	}
	out := reckoningOf(k, ms, options, r.given, asTheyStand)
	out.solver = r.solver
	return out
}

// Lowered is the best combination once every row is lower on its legs, the
// lowering itself among its costs; nil where the row cannot be lowered.
func (d *Decisions) Lowered() *Combination {
	if d.Lower == nil || !d.Lower.Possible {
		return nil
	}
	r := d.reckoning.elsewhere(d.reckoning.k.Lowered(d.Lower.By))
	out := r.combination(r.choose(&r.priced, r.now, asTheyStand).picks)
	standing := money.Quantity(len(r.k.Standing())) * money.One
	cost := r.book.Sum([]takeoff.Item{{Work: takeoff.LowerRow, Quantity: standing}})
	out.Expected = out.Expected.Plus(sumOf(&cost).Rounded(r.k.Prices.Currency))
	return out
}

// ceilingStep is how finely thresholds of the ceiling are told.
const ceilingStep = 10 * length.Micrometre

// ceilingFlips are the thresholds of the advice on the ceiling's level, as changes
// before fitting. Between the levels at which something begins to fit, or stops to
// be buildable, the advice is taken to change at most once.
func (r *reckoning) ceilingFlips(advice []int) []Flip {
	now := int64(r.k.Plan.CeilingChange / ceilingStep)
	if length.Length(now)*ceilingStep != r.k.Plan.CeilingChange {
		return nil // a change finer than the step
	}
	a := axis{
		pointer: "/plan/ceiling_change", now: now,
		text: func(v int64) string { return (length.Length(v) * ceilingStep).Text(length.MM) },
		best: func(v int64) []int {
			other := r.elsewhere(r.k.CeilingMoved(length.Length(v-now) * ceilingStep))
			return other.choose(&other.priced, other.now, asTheyStand).picks
		},
	}
	var out []Flip
	at := r.ceilingLevels()
	for _, towards := range [...][]length.Length{upwards(at), downwards(at, r.lowestCeiling())} {
		same := now
		for _, v := range stepsTowards(now, towards) {
			if to := a.best(v); !slices.Equal(to, advice) {
				step, to := a.search(advice, same, v, to)
				out = append(out, r.flip(&a, step, advice, to))
				break
			}
			same = v
		}
	}
	return out
}

// stepsTowards are the steps of levels, each after the step just before it, up to
// which what begins or ends there has not.
func stepsTowards(now int64, levels []length.Length) []int64 {
	var out []int64
	for _, by := range levels {
		v := now + int64(by/ceilingStep)
		if before := v - int64(cmp.Compare(v, now)); before != now {
			out = append(out, before)
		}
		out = append(out, v)
	}
	return slices.Compact(out)
}

// ceilingLevels are the changes of the ceiling at which some taller row surely
// fits or surely does not, with a group gone or with the others over its cabinets
// gone too, and at which a cut can just be built.
func (r *reckoning) ceilingLevels() []length.Length {
	var out []length.Length
	for _, m := range r.ms {
		out = append(out, m.rowLevels(m.only())...)
		if others := m.others(m.presentRow()); len(others) > 0 {
			out = append(out, m.rowLevels(append(others, m.group.ID))...)
		}
		for _, c := range m.cuts {
			out = append(out, c.stub.Neg().Plus(c.overhead.Make.LeastStub).Ceil(), c.stub.Neg().Plus(c.overhead.Make.LeastStub).Floor()-ceilingStep)
		}
	}
	for i := range out {
		out[i] = out[i].RoundTo(ceilingStep, length.Up)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// rowLevels are the changes of the ceiling at which the rows above the present one
// surely fit, fit, and surely do not, with some groups gone.
func (m *matter) rowLevels(gone []string) []length.Length {
	present := m.presentRow()
	if len(present) == 0 {
		return nil
	}
	var out []length.Length
	rooms := m.roomsWithout(present, gone)
	for i := range m.rows {
		if t, ok := m.with(present, &m.rows[i], rooms); ok {
			u := t.doubt().Expanded
			short := t.have.Minus(t.need).Neg()
			out = append(out, short.Minus(u).Floor(), short.Ceil(), short.Plus(u).Ceil())
		}
	}
	return out
}

// highestCeiling is how far up thresholds of the ceiling are looked for.
const highestCeiling = length.Metre

// upwards are the changes above 0, lowest first, and a last one at the end of the
// range: the more there is to take down, the dearer it is.
func upwards(at []length.Length) []length.Length {
	out := slices.DeleteFunc(append(slices.Clone(at), highestCeiling), func(l length.Length) bool { return l <= 0 || l > highestCeiling })
	slices.Sort(out)
	return slices.Compact(out)
}

// downwards are the changes below 0 that leave every overhead hanging, highest
// first, and a last one at the end of the range.
func downwards(at []length.Length, lowest length.Length) []length.Length {
	out := slices.DeleteFunc(append(slices.Clone(at), lowest), func(l length.Length) bool { return l >= 0 || l < lowest })
	slices.SortFunc(out, func(a, b length.Length) int { return cmp.Compare(b, a) })
	return slices.Compact(out)
}

// lowestCeiling is how far the ceiling may come down before it swallows an
// overhead.
func (r *reckoning) lowestCeiling() length.Length {
	room := length.Metre.Exact()
	for _, o := range r.k.Overheads() {
		if o.GoesWithOldCabinets() {
			continue
		}
		wall := &r.k.Room.Walls[o.Wall]
		room = length.Smaller(room, clearance(wall, o))
	}
	return -max(0, room.Floor()-length.Millimetre).RoundTo(ceilingStep, length.Down)
}

// clearance is the least that is certain between an overhead's underside and the ceiling.
func clearance(w *survey.Wall, o *survey.Overhead) length.Exact {
	return w.Ceiling.Lowest(o.From, o.To).Value.Sub(o.Underside.Highest(o.From, o.To).Value)
}
