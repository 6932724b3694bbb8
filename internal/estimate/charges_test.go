package estimate

import (
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

func find(lines []Line, code string) (Line, bool) {
	for _, l := range lines {
		if l.RateCode == code {
			return l, true
		}
	}
	return Line{}, false
}

func callFor(trades ...Trade) [Trades]belief.Chance {
	var called [Trades]belief.Chance
	for _, t := range trades {
		called[t] = belief.Certain
	}
	return called
}

// By hand: 1 m² of paint takes 0.2 h at 48 EUR/h, 9.60 EUR; a painter comes for 95
// at least and charges 40 for coming: 85.40 on top, and 40.
func TestAPainterForOneSquareMetre(t *testing.T) {
	b := euros()
	lines := b.Price("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: money.One}})
	shared := b.Shared(callFor(Painter, Site), lines)
	if call, ok := find(shared, "call_out.painter"); !ok || call.Spread != units(25, 40, 70) || call.Group != "" || call.Code != "work.call_out" {
		t.Errorf("call-out: %+v", call)
	}
	least, ok := find(shared, "minimum.painter")
	if !ok || least.Spread.Likely != amount(t, "85.4") || least.Code != "work.minimum" {
		t.Errorf("minimum: %+v", least)
	}
	if sum, want := least.Mean.Plus(lines[0].Mean), b.Rate("minimum.painter").Mean(); sum != want {
		t.Errorf("with its minimum it comes to %s, not to %s", sum.Decimal(), want.Decimal())
	}
	if site, ok := find(shared, "setup.site"); !ok || site.Code != "work.setup" || site.Trade != Site {
		t.Errorf("setting up: %+v", site)
	}
	if len(shared) != 3 {
		t.Errorf("%d lines: %+v", len(shared), shared)
	}
}

func TestTwoSmallJobsShareOneMinimum(t *testing.T) {
	b := euros()
	one := b.Price("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: 4 * money.One}})
	two := append(one[:len(one):len(one)], b.Price("t", []takeoff.Item{{Work: takeoff.Paint, Quantity: 4 * money.One}})...)
	alone, _ := find(b.Shared(callFor(Painter), one), "minimum.painter")
	both, ok := find(b.Shared(callFor(Painter), two), "minimum.painter")
	if hours := one[0].Mean; !ok || alone.Mean.Minus(both.Mean) != hours {
		t.Errorf("one job falls %s short, two %s; the hours of one are %s", alone.Mean.Decimal(), both.Mean.Decimal(), hours.Decimal())
	}
}

func TestAMinimumWithoutASpreadStaysWithinItsHours(t *testing.T) {
	b := euros().With("minimum.painter", known(amount(t, "110")))
	lines := b.Price("s", []takeoff.Item{{Work: takeoff.Paint, Quantity: 5 * money.One}}) // 22.8 / 48 / 108.5
	least, _ := find(b.Shared(callFor(Painter), lines), "minimum.painter")
	if want := (money.Spread{Low: amount(t, "1.5"), Likely: amount(t, "62"), High: amount(t, "87.2")}); least.Spread != want {
		t.Errorf("%+v, want %+v", least.Spread, want)
	}
}

// A trade is expected to come to C·call-out + max(its hours, C·minimum).
func TestATradeComesToItsCallOutAndItsHoursOrItsMinimum(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := someBook(t)
		lines := b.Price("s", someItems(t))
		lines = append(lines, b.PriceAt("s", someItems(t), someEvent(t))...)
		called := Called(lines)
		shared := b.Shared(called, lines)
		for trade := range Trades {
			var hours, all money.Amount
			for _, l := range append(lines[:len(lines):len(lines)], shared...) {
				if l.Trade != trade || l.Kind != Shared && !l.hourly() {
					continue
				}
				all = all.Plus(l.Mean)
				if l.Kind != Shared {
					hours = hours.Plus(l.Mean)
				}
			}
			callOut, minimum := b.Charges(trade)
			want := called[trade].Of(callOut.Mean()).Plus(max(hours, called[trade].Of(minimum.Mean())))
			if all != want {
				t.Fatalf("%s: %s, want %s", trade, all.Decimal(), want.Decimal())
			}
		}
	})
}

// By hand: wires are there with 0.2 (few) or 0.1 (many), and the ceiling's board is
// missing with 0.5. The electrician comes with 0.3; the drywaller, who also closes
// again with 0.1 what cannot be moved, with 1 - 0.9·0.5 = 0.55. The site is set up
// whenever the drywaller comes, and the helper comes anyhow.
func TestWhoIsCalled(t *testing.T) {
	b := euros()
	item := func(w takeoff.Work) []takeoff.Item { return []takeoff.Item{{Work: w, Quantity: money.One}} }
	lines := b.Price("s", item(takeoff.WasteMass))
	for _, more := range [][]Line{
		b.PriceAt("s", item(takeoff.RerouteWire), Event{State: contents.FewWires, Chance: percent(20)}),
		b.PriceAt("s", item(takeoff.RerouteWire), Event{State: contents.ManyWires, Chance: percent(10)}),
		b.PriceAt("s", item(takeoff.CloseAgain), Event{State: contents.Immovable, Chance: percent(10)}),
		b.PriceAt("s", item(takeoff.CeilingBoard), Event{Chance: percent(50)}),
	} {
		lines = append(lines, more...)
	}
	var want [Trades]belief.Chance
	want[Helper], want[WasteHaul], want[Electrician] = belief.Certain, belief.Certain, percent(30)
	want[Drywaller], want[Site] = percent(55), percent(55)
	if got := Called(lines); got != want {
		t.Errorf("%v, want %v", got, want)
	}
}
