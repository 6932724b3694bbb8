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

// Call is how a trade is called for by the room's works.
type Call struct {
	Chance belief.Chance
	Labour money.Amount // of its hours, what is expected to count towards the least that it comes for
}

// Shared is the lines of what the room's works share, given how each trade is
// called and the lines of the works: for each trade its call-out, and what the
// labour that counts falls short of the least that it comes for, times the chance
// of the call.
func (b *Book) Shared(calls [Trades]Call, lines []Line) []Line {
	var shared []Line
	for t, call := range calls {
		if call.Chance <= 0 {
			continue
		}
		code, least := ChargeCodes(Trade(t))
		if rate := b.Rate(code); rate.Spread != (money.Spread{}) {
			shared = append(shared, charge(Trade(t), code, rate, call.Chance))
		}
		if rate := b.Rate(least); rate.Spread != (money.Spread{}) {
			shared = b.appendTopUp(shared, charge(Trade(t), least, rate, call.Chance), call.Labour, lines)
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

// appendTopUp adds the line of what labour falls short of a trade's minimum, if it
// may.
func (b *Book) appendTopUp(shared []Line, minimum Line, labour money.Amount, lines []Line) []Line {
	least := minimum.Mean // times the chance of the call
	mean, cost := max(0, least.Minus(labour)), short(minimum.Cost, countedHours(&minimum, labour, lines))
	if mean == 0 && cost == (money.Spread{}) {
		return shared
	}
	e := Event{Chance: minimum.If}
	minimum.Rate, minimum.Cost, minimum.Mean = cost.Likely, cost, mean
	minimum.Formula, minimum.Inputs = "max(0, minimum - labour)", []takeoff.Input{
		{Name: "minimum", Value: least.Decimal(), Unit: b.currency.Code}, {Name: "labour", Value: labour.Decimal(), Unit: b.currency.Code},
	}
	minimum.Spread, minimum.Deviation = e.spread(cost), e.deviation(cost)
	return append(shared, minimum)
}

// countedHours is what the labour that counts may come to: the hours of certain
// work, else what is expected to count if the trade is called.
func countedHours(minimum *Line, labour money.Amount, lines []Line) money.Spread {
	if minimum.If < belief.Certain {
		called := labour.Share(int64(belief.Certain), int64(minimum.If))
		return money.Spread{Low: called, Likely: called, High: called}
	}
	var hours money.Spread
	for i := range lines {
		if l := &lines[i]; l.Trade == minimum.Trade && l.hourly() && l.If >= belief.Certain {
			hours = hours.Plus(l.Spread)
		}
	}
	return hours
}

// short is what hours fall short of a minimum where both are low, likely or high
// together, in order of size around the likely.
func short(minimum, hours money.Spread) money.Spread {
	low, likely, high := max(0, minimum.Low.Minus(hours.Low)), max(0, minimum.Likely.Minus(hours.Likely)), max(0, minimum.High.Minus(hours.High))
	return money.Spread{Low: min(low, likely, high), Likely: likely, High: max(low, likely, high)}
}
