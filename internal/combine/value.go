package combine

import (
	"railhead/internal/belief"
	"railhead/internal/money"
)

// Charge is what the things that call for one trade share.
type Charge struct {
	Chance  belief.Chance // that any of them calls for it
	Labour  money.Amount  // theirs together
	CallOut money.Amount  // Trade.CallOut times the chance
	TopUp   money.Amount  // what their labour falls short of Trade.Minimum times the chance
}

// Value is what doing each thing in the way picked for it is worth; false where a
// joint makes that impossible, or where pick is no choice of ways.
func (p *Problem) Value(pick []int) (money.Amount, bool) {
	if !p.fits(pick) {
		return 0, false
	}
	joints, ok := p.jointWorth(pick)
	if !ok {
		return 0, false
	}
	most := p.most()
	value := joints + p.evenWorth(pick)
	for i, w := range pick {
		value += clamp(p.Things[i].Ways[w].Worth, most)
	}
	for _, c := range p.Charges(pick) {
		value -= int64(c.CallOut + c.Labour + c.TopUp)
	}
	return money.Amount(clamp(money.Amount(value), int64(money.Most))), true
}

// Charges is what each trade comes to for the ways picked; none where pick is no
// choice of ways. The chance that a trade is called is one less the product of
// the chances that each thing does not call it, taken in the order in which the
// solver takes the things (as they stand, but where joints bind them) and rounded
// to the billionth at each step.
func (p *Problem) Charges(pick []int) []Charge {
	if !p.fits(pick) {
		return nil
	}
	most := p.most()
	left := make([]int64, len(p.Trades))
	for t := range left {
		left[t] = certain
	}
	charges := make([]Charge, len(p.Trades))
	for _, i := range p.order() {
		for _, c := range p.Things[i].Ways[pick[i]].Calls {
			left[c.Trade] = miss(left[c.Trade], unmoved(c.Chance))
			charges[c.Trade].Labour += money.Amount(charge(c.Labour, most))
		}
	}
	for t, trade := range p.Trades {
		c, called := &charges[t], certain-left[t]
		c.Chance = belief.Chance(called)
		c.CallOut = money.Amount(part(charge(trade.CallOut, most), called))
		c.TopUp = max(0, money.Amount(part(charge(trade.Minimum, most), called))-c.Labour)
	}
	return charges
}

// fits reports whether pick has a way for each thing.
func (p *Problem) fits(pick []int) bool {
	if len(pick) != len(p.Things) {
		return false
	}
	for i, w := range pick {
		if w < 0 || w >= len(p.Things[i].Ways) {
			return false
		}
	}
	return true
}

// jointWorth is what all joints are worth together; false where one is
// impossible.
func (p *Problem) jointWorth(pick []int) (int64, bool) {
	var sum int64
	most := p.most()
	for j := range p.Joints {
		worth, ok := p.Joints[j].settle(p.gather(pick, j))
		if !ok {
			return 0, false
		}
		sum += clamp(worth, most)
	}
	return sum, true
}

// gather is what the ways picked do to a joint together.
func (p *Problem) gather(pick []int, joint int) (limit uint8, wish bool) {
	limit, bearing := p.Joints[joint].Unlimited, false
	for i, w := range pick {
		for _, e := range p.Things[i].Ways[w].Effects {
			if e.Joint != joint {
				continue
			}
			if !bearing || e.Limit < limit {
				limit = e.Limit
			}
			bearing, wish = true, wish || e.Wish
		}
	}
	return limit, wish
}

// settle is the joint's outcome; a joint without one is worth nothing.
func (j *Joint) settle(limit uint8, wish bool) (money.Amount, bool) {
	if j.Outcome == nil {
		return 0, true
	}
	return j.Outcome(limit, wish)
}

// evenWorth is what the line that the ways picked leave is worth.
func (p *Problem) evenWorth(pick []int) int64 {
	line := p.Even.Others
	for i, w := range pick {
		line = line.with(p.Things[i].Ways[w].Line)
	}
	if line <= NoLine {
		return 0
	}
	return clamp(p.Even.Worth, p.most())
}

// with is the line that two lines make together.
func (l Line) with(other Line) Line {
	switch {
	case l == NoLine:
		return other
	case other == NoLine || other == l:
		return l
	default:
		return Several
	}
}

// most is as large as one amount may be so that no sum of them leaves an int64:
// a senseless rate gives a senseless value and never a wrapped one.
func (p *Problem) most() int64 {
	amounts := int64(len(p.Things)*(1+len(p.Trades)) + 2*len(p.Trades) + len(p.Joints) + 1)
	return min(int64(money.Most), (1<<60)/amounts)
}

// clamp is an amount within ±most.
func clamp(a money.Amount, most int64) int64 { return max(-most, min(most, int64(a))) }

// charge is an amount that somebody charges: nobody pays for being called.
func charge(a money.Amount, most int64) int64 { return max(0, min(most, int64(a))) }

// unmoved is the chance that a call does not come.
func unmoved(c belief.Chance) int64 { return certain - max(0, min(certain, int64(c))) }
