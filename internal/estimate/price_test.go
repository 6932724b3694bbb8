package estimate

import (
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// By hand: 4 m of bottom member refitted at 0.25 / 0.4 / 0.75 h/m are 1 / 1.6 / 3 h,
// at 46 / 56 / 74 EUR/h 46 / 89.6 / 222 EUR, on average (46 + 358.4 + 222)/6 = 104.4
// with a deviation of 176/6 = 29.3333; 1.5 / 3 / 6 EUR/m of material are 6 / 12 / 24.
func TestRefittingFourMetres(t *testing.T) {
	lines := euros().Price("s", []takeoff.Item{{
		Work: takeoff.FrameRefit, Pointer: "/survey/walls/0/overheads/0", Quantity: 4 * money.One,
		Inputs: []takeoff.Input{{Name: "length", Value: "4", Unit: "m"}},
	}})
	if len(lines) != 2 {
		t.Fatalf("%d lines: %+v", len(lines), lines)
	}
	labour, material := lines[0], lines[1]
	if labour.Kind != Labour || labour.Trade != Carpenter || labour.Unit != "h" || labour.Quantity != 1600 || labour.Code != "work.frame_refit" ||
		labour.Rate != amount(t, "56") || labour.RateCode != "wage.carpenter" || labour.HoursCode != "hours.frame_refit" || !labour.Assumed {
		t.Errorf("labour: %+v", labour)
	}
	want := money.Spread{Low: amount(t, "46"), Likely: amount(t, "89.6"), High: amount(t, "222")}
	if labour.Spread != want || labour.Cost != want || labour.Mean != amount(t, "104.4") || labour.Deviation != amount(t, "29.3333") {
		t.Errorf("labour: %+v", labour)
	}
	if in := labour.Inputs; len(in) != 3 || in[0].Name != "length" || in[1] != (takeoff.Input{Name: "quantity", Value: "4", Unit: "m"}) ||
		in[2] != (takeoff.Input{Name: "hours_per_unit", Value: "0.4", Unit: "h/m"}) {
		t.Errorf("labour's formula: %+v", in)
	}
	if material.Kind != Material || material.Trade != NoTrade || material.Unit != "m" || material.Quantity != 4000 ||
		material.Spread != units(6, 12, 24) || material.Mean != 13*money.Unit || len(material.Inputs) != 1 {
		t.Errorf("material: %+v", material)
	}
}

func TestWhatShorterFrontsSave(t *testing.T) {
	lines := euros().Price("s", []takeoff.Item{{Work: takeoff.ShorterFront, Quantity: 500}})
	if len(lines) != 1 || lines[0].Kind != Saving || lines[0].Spread != units(-130, -65, -30) || lines[0].Rate != amount(t, "-130") {
		t.Errorf("half a square metre less: %+v", lines)
	}
}

func TestAProbeAtTheClientsOwnPrice(t *testing.T) {
	b := NewBook(kitchen.Prices{Currency: euro, Rates: map[string]kitchen.Rate{
		"material.probe": {Spread: known(amount(t, "60")), Tax: 19_000, TaxSet: true},
	}})
	lines := b.Price("s", []takeoff.Item{{Work: takeoff.Probe, Quantity: 2 * money.One}})
	if len(lines) != 1 || lines[0].Spread != known(amount(t, "120")) || lines[0].Deviation != 0 || lines[0].Assumed || lines[0].Tax() != amount(t, "22.8") {
		t.Errorf("two probe holes: %+v", lines)
	}
}

// By hand: with a chance of 0.3, a pipe of 2 m costs 2·(0.9·72 + 15) = 159.60 most
// likely if it is there; most likely it is not.
func TestAPipeThatMayBeThere(t *testing.T) {
	e := Event{State: contents.PipeOrDuct, Chance: percent(30)}
	lines := euros().PriceAt("s", []takeoff.Item{{Work: takeoff.ReroutePipe, Quantity: 2 * money.One}}, e)
	if len(lines) != 2 {
		t.Fatalf("%d lines", len(lines))
	}
	for _, l := range lines {
		if l.Kind != Allowance || l.If != percent(30) || l.State != contents.PipeOrDuct || l.Spread.Low != 0 || l.Spread.Likely != 0 ||
			l.Spread.High != l.Cost.High || l.Mean != percent(30).Of(l.Cost.Mean()) || l.Deviation <= l.Cost.Deviation() {
			t.Errorf("%+v", l)
		}
	}
	if sum := lines[0].Cost.Likely.Plus(lines[1].Cost.Likely); sum != amount(t, "159.6") {
		t.Errorf("it costs %s if it is there", sum.Decimal())
	}
	if lines := euros().PriceAt("s", []takeoff.Item{{Work: takeoff.ReroutePipe, Quantity: 1}}, Event{}); lines != nil {
		t.Errorf("what cannot be there costs %+v", lines)
	}
	e.Chance = percent(60)
	if l := euros().PriceAt("s", []takeoff.Item{{Work: takeoff.ReroutePipe, Quantity: 1000}}, e)[0]; l.Spread.Likely != l.Cost.Likely {
		t.Errorf("more likely than not, and not in what is likely: %+v", l)
	}
}

func TestQuantityTimesRateIsWhatALineLikelyCosts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		for _, l := range someLines(t) {
			if got := l.Rate.Times(l.Quantity); got != l.Cost.Likely {
				t.Fatalf("%s times %s is %s, the line says %s", l.Quantity.Decimal(), l.Rate.Decimal(), got.Decimal(), l.Cost.Likely.Decimal())
			}
			if l.Spread.Low > l.Spread.Likely || l.Spread.Likely > l.Spread.High {
				t.Fatalf("out of order: %+v", l)
			}
		}
	})
}

func TestRatesWithoutASpreadGiveLinesWithout(t *testing.T) {
	b := euros()
	for _, code := range Codes() {
		b = b.With(code, known(b.Rate(code).Likely))
	}
	rapid.Check(t, func(t *rapid.T) {
		for _, l := range b.Price("s", someItems(t)) {
			if l.Spread != known(l.Spread.Likely) || l.Mean != l.Spread.Likely || l.Deviation != 0 {
				t.Fatalf("%+v", l)
			}
		}
	})
}

func TestSumsAreThoseOfTheLines(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, items, chance := someBook(t), someItems(t), belief.Chance(rapid.Int64Range(1, int64(belief.Certain)).Draw(t, "chance"))
		var sum Sum
		for _, l := range b.PriceAt("s", items, Event{Chance: chance}) {
			if l.hourly() {
				sum.Labour[l.Trade] = sum.Labour[l.Trade].Plus(l.Mean)
			} else {
				sum.Bought = sum.Bought.Plus(l.Mean)
			}
			sum.Needs[l.Trade] = l.Trade != NoTrade
			sum.Needs[Site] = sum.Needs[Site] || jobs[l.work()].dusty
		}
		var got Sum
		whole := b.Sum(items)
		if got.Add(&whole, chance); got != sum {
			t.Fatalf("%+v, the lines come to %+v", got, sum)
		}
	})
}

func TestARateChangesASumByWhatItHasAPartIn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b, items, code := someBook(t), someItems(t), rapid.SampledFrom(Codes()).Draw(t, "code")
		changed := b.With(code, someSpread(t))
		bill := b.Bill(items)
		if got, want := bill.sum(nil, none), b.Sum(items); got != want {
			t.Fatalf("%+v, want %+v", got, want)
		}
		if got, want := bill.SumWith(changed, code), changed.Sum(items); got != want {
			t.Fatalf("%+v, want %+v", got, want)
		}
		trial := b.Trial(code)
		for range 2 {
			spread := someSpread(t)
			if got, want := trial(spread).Sum(items), b.With(code, spread).Sum(items); got != want {
				t.Fatalf("%+v, want %+v", got, want)
			}
		}
	})
}

// An empty soffit costs 5 to 12 dollars a foot to take down. Source: a page on the
// removal of soffits, engineerfix.com (F). The soffit of the test is 300 mm high and
// 330 mm deep, of 12.5 mm board on 38 × 63 mm timber: along its length three members,
// and a hanger and a cross piece every 400 mm. Debris takes twice its volume loose;
// board weighs 8.7 kg/m², timber 0.5 kg/l (from memory).
func TestTakingDownAnEmptySoffitByTheFoot(t *testing.T) {
	dollars := NewBook(kitchen.Prices{Currency: money.Currency{Code: "USD", Digits: 2}, PerEuro: amount(t, "1.1")})
	const feet = 100
	length := feet * 0.3048                // m
	board := length * (0.3 + 0.33)         // m²
	frame := length * (3 + (0.3+0.33)/0.4) // m
	timber := frame * 38 * 63 / 1e3        // l
	item := func(w takeoff.Work, quantity float64) takeoff.Item {
		return takeoff.Item{Work: w, Quantity: money.Quantity(quantity * 1000)}
	}
	sum := dollars.Sum([]takeoff.Item{
		item(takeoff.BoardOff, board), item(takeoff.FrameOff, frame),
		item(takeoff.Waste, 2*(board*12.5+timber)), item(takeoff.WasteMass, board*8.7+timber*0.5),
	})
	foot := sum.Bought.Plus(sum.Labour[Helper]).Plus(sum.Labour[Carpenter]).Share(1, feet)
	t.Logf("%s dollars a foot", foot.Decimal())
	if foot < amount(t, "5") || foot > amount(t, "12") {
		t.Errorf("%s dollars a foot", foot.Decimal())
	}
}
