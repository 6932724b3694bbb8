package estimate

import (
	"go/ast"
	"go/parser"
	"go/token"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/rules"
	"railhead/internal/takeoff"
)

func TestEveryBuiltInRateIsListedAsFromMemory(t *testing.T) {
	for _, code := range Codes() {
		rule, ok := rules.Of(code)
		if !ok || rule.Status != rules.FromMemory || !strings.Contains(rule.Says, "{value}") {
			t.Errorf("%s: %+v", code, rule)
		}
	}
}

func TestEveryRateOfTheCatalogueIsInTheBook(t *testing.T) {
	for _, rule := range rules.All() {
		prefix, _, _ := strings.Cut(rule.Code, ".")
		switch prefix {
		case "wage", "hours", "material", "setup", "call_out", "minimum", "worth":
			if !IsCode(rule.Code) {
				t.Errorf("%s is listed, and there is no such rate", rule.Code)
			}
		}
	}
}

func TestBuiltInRatesGoUp(t *testing.T) {
	for _, b := range builtins {
		if b.Low < 0 || b.Low > b.Likely || b.Likely > b.High || b.Per == "" {
			t.Errorf("%+v", b)
		}
	}
}

// kindsOfWork are the constants of package takeoff as its source has them.
func kindsOfWork(t *testing.T) []takeoff.Work {
	t.Helper()
	file, err := parser.ParseFile(token.NewFileSet(), "../takeoff/work.go", nil, parser.SkipObjectResolution)
	if err != nil {
		t.Fatal(err)
	}
	var all []takeoff.Work
	ast.Inspect(file, func(n ast.Node) bool {
		if spec, ok := n.(*ast.ValueSpec); ok && len(spec.Values) == 1 {
			if lit, ok := spec.Values[0].(*ast.BasicLit); ok {
				text, _ := strconv.Unquote(lit.Value)
				all = append(all, takeoff.Work(text))
			}
		}
		return true
	})
	return all
}

func TestEveryKindOfWorkHasAPrice(t *testing.T) {
	all := kindsOfWork(t)
	if len(all) < 20 || len(all) != len(jobs) {
		t.Fatalf("%d kinds of work, %d jobs", len(all), len(jobs))
	}
	for _, w := range all {
		j := jobs[w]
		switch {
		case j == nil || j.hours == none && j.material == none:
			t.Errorf("%s has no price", w)
		case (j.hours == none) != (j.trade == NoTrade) || (j.hours == none) != (j.wage == none):
			t.Errorf("%s has a trade without hours or hours without a wage: %+v", w, j)
		}
		if rule, ok := rules.Of("work." + string(w)); !ok || rule.Says == "" {
			t.Errorf("%s has no words", w)
		}
	}
}

func TestEveryRateHasAUse(t *testing.T) {
	used := map[string]bool{"worth.open_gap": true, "worth.stray_overhead": true} // of deciding
	for trade := range Trades {
		callOut, minimum := ChargeCodes(trade)
		used[callOut], used[minimum] = true, true
	}
	for _, code := range Codes() {
		for w := range jobs {
			used[code] = used[code] || Uses(code, w)
		}
		if !used[code] {
			t.Errorf("nothing is priced by %s", code)
		}
	}
}

func TestRatesInTheCurrencyOfTheRequest(t *testing.T) {
	b := NewBook(kitchen.Prices{Currency: money.Currency{Code: "USD", Digits: 2}, PerEuro: amount(t, "1.1"), Rates: map[string]kitchen.Rate{
		"wage.painter":    {Spread: known(amount(t, "61.25")), Pointer: "/money/rates/wage.painter"},
		"material.probe":  {Spread: known(amount(t, "60")), Pointer: "/money/probe"},
		"material.filler": {Spread: units(10, 20, 30), Tax: 19_000, TaxSet: true},
	}})
	for _, c := range []struct {
		name, code string
		spread     money.Spread
		tax        money.Quantity
		given      bool
		pointer    string
	}{
		{"a built-in wage, 10 % more in dollars", "wage.helper", units(33, 44, 0).Plus(money.Spread{High: amount(t, "57.2")}), 0, false, "/money/rates/wage.helper"},
		{"hours are hours in any currency", "hours.cut", money.Spread{Low: 1200, Likely: 2000, High: 4000}, 0, false, "/money/rates/hours.cut"},
		{"a given rate is in the currency already", "wage.painter", known(amount(t, "61.25")), 0, true, "/money/rates/wage.painter"},
		{"a rate with a member of its own", "material.probe", known(amount(t, "60")), 0, true, "/money/probe"},
		{"a rate with tax", "material.filler", units(10, 20, 30), 19_000, true, "/money/rates/material.filler"},
		{"no such rate", "wage.king", money.Spread{}, 0, false, ""},
	} {
		if got, want := b.Rate(c.code), (Rate{c.spread, c.tax, c.given, c.pointer}); got != want {
			t.Errorf("%s: %+v, want %+v", c.name, got, want)
		}
	}
}

func TestOneRateReplacedIsAsIfGiven(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		code, spread := rapid.SampledFrom(Codes()).Draw(t, "code"), someSpread(t)
		items, before := someItems(t), euros()
		plain := before.Price("s", items)
		with := before.With(code, spread)
		given := NewBook(kitchen.Prices{Currency: euro, PerEuro: money.Unit, Rates: map[string]kitchen.Rate{code: {Spread: spread}}})
		if !reflect.DeepEqual(with, given) {
			t.Fatalf("%+v, want %+v", with, given)
		}
		if !reflect.DeepEqual(before.Price("s", items), plain) {
			t.Fatal("the book itself has changed")
		}
		for i := range items {
			a, b := before.Sum(items[i:i+1]), with.Sum(items[i:i+1])
			if a != b && !Uses(code, items[i].Work) {
				t.Fatalf("%s changes the price of %s, and is said not to", code, items[i].Work)
			}
		}
	})
}
