package estimate

import (
	"railhead/internal/belief"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// ChargeCodes are the codes of what a trade charges for coming, and of the least
// that it comes for; empty where it charges no such thing.
func ChargeCodes(t Trade) (callOut, minimum string) {
	if t == Site {
		return "setup.site", ""
	}
	if callOut = prefixCallOut + t.String(); !IsCode(callOut) {
		callOut = ""
	}
	if minimum = prefixMinimum + t.String(); !IsCode(minimum) {
		minimum = ""
	}
	return callOut, minimum
}

// Charges are what a trade charges beside its hours: for coming at all, and the
// least that its hours come to. For the site it is setting up and protecting.
func (b *Book) Charges(t Trade) (callOut, minimum money.Spread) {
	code, least := ChargeCodes(t)
	return b.Rate(code).Spread, b.Rate(least).Spread
}

// Shared is the lines of what the room's works share, given the chance that each
// trade is called and the lines of the works: for each trade its call-out, and what
// its hours fall short of the least that it comes for. With these, a trade is
// expected to come to its call-out times the chance, and to the larger of its hours
// and its minimum times the chance.
func (b *Book) Shared(called [Trades]belief.Chance, lines []Line) []Line {
	var shared []Line
	for t := range Trades {
		if called[t] <= 0 {
			continue
		}
		code, least := ChargeCodes(t)
		if rate := b.Rate(code); rate.Spread != (money.Spread{}) {
			shared = append(shared, charge(t, code, rate, called[t]))
		}
		if rate := b.Rate(least); rate.Spread != (money.Spread{}) {
			shared = appendTopUp(shared, charge(t, least, rate, called[t]), lines)
		}
	}
	return shared
}

// charge is the line of a charge that is paid once, with the chance of the call.
func charge(t Trade, code string, rate Rate, called belief.Chance) Line {
	e := Event{Chance: called}
	return Line{
		Kind: Shared, Code: chargeWork(t, code), Trade: t, Unit: "1", Quantity: money.One, RateCode: code,
		Rate: rate.Likely, Cost: rate.Spread, Spread: e.spread(rate.Spread),
		Mean: called.Of(rate.Mean()), Deviation: e.deviation(rate.Spread),
		TaxPercent: rate.Tax, Assumed: !rate.Given, If: called,
	}
}

// chargeWork is what a charge is for.
func chargeWork(t Trade, code string) string {
	switch {
	case t == Site:
		return "work.setup"
	case code == prefixMinimum+t.String():
		return "work.minimum"
	default:
		return "work.call_out"
	}
}

// appendTopUp adds the line of what hours fall short of a trade's minimum, if they
// may.
func appendTopUp(shared []Line, minimum Line, lines []Line) []Line {
	mean, cost := topUp(&minimum, lines)
	if mean == 0 && cost == (money.Spread{}) {
		return shared
	}
	e, least := Event{Chance: minimum.If}, minimum.Mean // the minimum times the chance of the call
	minimum.Rate, minimum.Cost, minimum.Mean = cost.Likely, cost, mean
	minimum.Formula, minimum.Inputs = "minimum - labour", []takeoff.Input{
		{Name: "minimum", Value: least.Decimal(), Unit: "1"}, {Name: "labour", Value: least.Minus(mean).Decimal(), Unit: "1"},
	}
	minimum.Spread, minimum.Deviation = e.spread(cost), e.deviation(cost)
	return append(shared, minimum)
}

// topUp is what a trade's hours are expected to fall short of its minimum, and
// what they may fall short of it. Where it is not certain that the trade comes, the
// hours are what they are expected to be if it does.
func topUp(minimum *Line, lines []Line) (mean money.Amount, cost money.Spread) {
	var hours money.Spread
	var expected money.Amount
	for i := range lines {
		if l := &lines[i]; l.Trade == minimum.Trade && l.hourly() {
			hours, expected = hours.Plus(l.Spread), expected.Plus(l.Mean)
		}
	}
	if minimum.If < belief.Certain {
		called := expected.Share(int64(belief.Certain), int64(minimum.If))
		hours = money.Spread{Low: called, Likely: called, High: called}
	}
	return max(0, minimum.Mean.Minus(expected)), short(minimum.Cost, hours)
}

// short is what hours fall short of a minimum where both are low, likely or high
// together, in order of size around the likely.
func short(minimum, hours money.Spread) money.Spread {
	low, likely, high := max(0, minimum.Low.Minus(hours.Low)), max(0, minimum.Likely.Minus(hours.Likely)), max(0, minimum.High.Minus(hours.High))
	return money.Spread{Low: min(low, likely, high), Likely: likely, High: max(low, likely, high)}
}
