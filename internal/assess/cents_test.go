package assess

import (
	"maps"
	"math"
	"math/big"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/api"
)

// purse reads amounts of one currency in its smallest coins, and minds that each is
// told with all of its places (ISO 4217: JPY 0, USD and EUR 2, KWD 3; published list
// of currencies, F, and KWD from memory).
type purse struct {
	t      tester
	digits int
}

func (p purse) coins(amount string) int64 {
	p.t.Helper()
	_, places, _ := strings.Cut(amount, ".")
	if len(places) != p.digits {
		p.t.Fatalf("%q has not %d places", amount, p.digits)
	}
	out, err := strconv.ParseInt(strings.Replace(amount, ".", "", 1), 10, 64)
	if err != nil {
		p.t.Fatal(err)
	}
	return out
}

// exact is a decimal in coins, whatever its places.
func (p purse) exact(decimal string) *big.Rat {
	p.t.Helper()
	out := rational(p.t, decimal)
	for range p.digits {
		out.Mul(out, big.NewRat(10, 1))
	}
	return out
}

// near reports whether an amount is an exact one but for less than so many coins.
func near(coins int64, exact *big.Rat, most int64) bool {
	off := new(big.Rat).Sub(new(big.Rat).SetInt64(coins), exact)
	return off.Abs(off).Cmp(big.NewRat(most, 1)) < 0
}

func (p purse) same(what string, got, want int64) {
	p.t.Helper()
	if got != want {
		p.t.Fatalf("%s: %d coins, want %d", what, got, want)
	}
}

var digits = map[string]int{"JPY": 0, "EUR": 2, "USD": 2, "KWD": 3}

// column is one figure of a line and of what the lines come to.
type column struct {
	name string
	line func(*api.CostLine) string
	sum  func(*api.Cost) string
}

var columns = []column{
	{"low", func(l *api.CostLine) string { return l.Low }, func(c *api.Cost) string { return c.Low }},
	{"likely", func(l *api.CostLine) string { return l.Likely }, func(c *api.Cost) string { return c.Likely }},
	{"high", func(l *api.CostLine) string { return l.High }, func(c *api.Cost) string { return c.High }},
	{"mean", func(l *api.CostLine) string { return l.Mean }, func(c *api.Cost) string { return c.Mean }},
}

// balances holds every amount of an answer against the others.
func balances(t tester, a *api.Assessment) {
	t.Helper()
	room := &a.Decisions.Room
	p := purse{t, digits[room.Currency]}
	p.estimate(a)
	p.room(a)
	for i := range a.Decisions.Overheads {
		for n := range a.Decisions.Overheads[i].Options {
			if o := &a.Decisions.Overheads[i].Options[n]; o.Cost != nil {
				p.option(o)
			}
		}
	}
}

// estimate: the lines add up to the total in every column, each line is its quantity
// at its rate, and its tax is that of the likely amount.
func (p purse) estimate(a *api.Assessment) {
	p.t.Helper()
	e := a.Estimate
	p.same("places", int64(p.digits), int64(digits[e.Currency]))
	var lines []*api.CostLine
	var tax int64
	for i := range e.Lines {
		l := &e.Lines[i]
		lines = append(lines, &l.CostLine)
		tax += p.coins(l.Tax)
		percent := new(big.Rat)
		if l.TaxPercent != "" {
			percent = rational(p.t, l.TaxPercent)
		}
		due := percent.Mul(percent, p.exact(l.Likely))
		if l.Kind != "allowance" && !near(p.coins(l.Tax), due.Quo(due, big.NewRat(100, 1)), 2) {
			p.t.Fatalf("%s: tax %s on %s at %s percent", l.Code, l.Tax, l.Likely, l.TaxPercent)
		}
	}
	p.columns("estimate", lines, &e.Total.Cost)
	p.same("tax", tax, p.coins(e.Total.Tax))
	low, p10, p50, p90, high := p.coins(e.Total.Low), p.coins(e.Total.P10), p.coins(e.Total.P50), p.coins(e.Total.P90), p.coins(e.Total.High)
	if low > p10 || p10 > p50 || p50 > p90 || p90 > high {
		p.t.Fatalf("from low to high: %d %d %d %d %d", low, p10, p50, p90, high)
	}
}

func (p purse) columns(what string, lines []*api.CostLine, sum *api.Cost) {
	p.t.Helper()
	for _, c := range columns {
		var all int64
		for _, l := range lines {
			all += p.coins(c.line(l))
		}
		p.same(what+" "+c.name, all, p.coins(c.sum(sum)))
	}
	for _, l := range lines {
		p.line(l)
	}
}

// line: what comes up anyhow likely comes to quantity times rate, and is expected to
// come to (low + 4·likely + high)/6 (PERT; published course notes, F); an allowance to
// its chance times what it then costs.
func (p purse) line(l *api.CostLine) {
	p.t.Helper()
	low, likely, high, mean := p.coins(l.Low), p.coins(l.Likely), p.coins(l.High), p.coins(l.Mean)
	if low > likely || likely > high {
		p.t.Fatalf("%s: %d %d %d", l.Code, low, likely, high)
	}
	rate := p.exact(l.Rate)
	switch l.Kind {
	case "allowance":
		if want := rate.Mul(rate, rational(p.t, l.Chance)); !near(mean, want, 2) {
			p.t.Fatalf("%s if %s: mean %s of %s at %s", l.Code, l.If, l.Mean, l.Rate, l.Chance)
		}
	case "shared":
	default:
		if want := rate.Mul(rate, rational(p.t, l.Quantity)); !near(likely, want, 2) {
			p.t.Fatalf("%s: likely %s of %s at %s", l.Code, l.Likely, l.Quantity, l.Rate)
		}
		if want := big.NewRat(low+4*likely+high, 6); !near(mean, want, 3) {
			p.t.Fatalf("%s: mean %s of %s, %s, %s", l.Code, l.Mean, l.Low, l.Likely, l.High)
		}
	}
}

// option: its lines add up to its cost and its gains to its gain, and its net is gain
// less mean.
func (p purse) option(o *api.Option) {
	p.t.Helper()
	var lines []*api.CostLine
	for i := range o.Lines {
		lines = append(lines, &o.Lines[i])
	}
	p.columns(o.Option, lines, o.Cost)
	p.same(o.Option+" net", p.coins(o.Net), p.coins(o.Gain)-p.coins(o.Cost.Mean))
	var gains int64
	for _, g := range o.Gains {
		gains += p.coins(g.Worth)
		rate, most := p.exact(g.Rate), int64(2)
		if g.Unit == "%" { // to the thousandth of a percent, at a rate to the ten-thousandth for each
			off, _ := rate.Float64()
			most += int64(math.Abs(off)/2000 + math.Pow10(p.digits)/200)
		}
		if want := rate.Mul(rate, rational(p.t, g.Quantity)); !near(p.coins(g.Worth), want, most) {
			p.t.Fatalf("%s: %s of %s at %s", g.Code, g.Worth, g.Quantity, g.Rate)
		}
	}
	p.same(o.Option+" gains", gains, p.coins(o.Gain))
}

// room: nets are gains less costs, what stands beside the advice is worse by the
// difference, and what is applied is what the estimate comes to.
func (p purse) room(a *api.Assessment) {
	p.t.Helper()
	r := &a.Decisions.Room
	net := p.coins(r.Net)
	p.same("room net", net, p.coins(r.Gain)-p.coins(r.ExpectedCost))
	for _, beside := range []*api.RunnerUp{r.RunnerUp, r.Once} {
		if beside != nil {
			p.same("worse by", p.coins(beside.WorseBy), net-p.coins(beside.Net))
		}
	}
	if r.RunnerUp != nil && p.coins(r.RunnerUp.WorseBy) < 0 {
		p.t.Fatalf("the runner-up is better by %s", r.RunnerUp.WorseBy)
	}
	p.same("applied worse by", p.coins(r.Applied.WorseBy), net-p.coins(r.Applied.Net))
	p.same("estimate and applied", p.coins(a.Estimate.Total.Mean), p.coins(r.Applied.ExpectedCost))
	if !maps.Equal(options(a.Applied), r.Advice) {
		return
	}
	p.byParts(a)
	p.same("applied and advice", p.coins(r.Applied.ExpectedCost), p.coins(r.ExpectedCost))
	p.same("the advice itself", p.coins(r.Applied.WorseBy), 0)
	p.shared(a)
}

// byParts: the room's net is those of the advised options, less what they share, with
// what belongs to several together; each of these is told by itself in whole coins.
func (p purse) byParts(a *api.Assessment) {
	p.t.Helper()
	r := &a.Decisions.Room
	var all int64
	for i := range a.Decisions.Overheads {
		d := &a.Decisions.Overheads[i]
		for _, o := range d.Options {
			if o.Option == d.Advice && o.Cost != nil {
				all += p.coins(o.Net)
			}
		}
	}
	for _, s := range r.Shared {
		all -= p.coins(s.CallOut) + p.coins(s.TopUp)
	}
	for _, t := range r.Together {
		all += p.coins(t.Worth)
	}
	if net := p.coins(r.Net); !near(net, new(big.Rat).SetInt64(all), int64(len(r.Together)+1)) {
		p.t.Fatalf("the parts net %d coins, the room %d", all, net)
	}
}

func options(applied map[string]api.Applied) map[string]string {
	out := map[string]string{}
	for group, o := range applied {
		out[group] = o.Option
	}
	return out
}

// shared: what the room shares is told alike in both parts.
func (p purse) shared(a *api.Assessment) {
	p.t.Helper()
	lines := map[string]int64{}
	for _, l := range a.Estimate.Lines {
		if l.Kind == "shared" {
			lines[l.Trade+" "+l.Code] += p.coins(l.Mean)
		}
	}
	for _, s := range a.Decisions.Room.Shared {
		code := "work.call_out"
		if s.Trade == "site" {
			code = "work.setup"
		}
		p.same(s.Trade+" comes", lines[s.Trade+" "+code], p.coins(s.CallOut))
		p.same(s.Trade+" lacks", lines[s.Trade+" work.minimum"], p.coins(s.TopUp))
		delete(lines, s.Trade+" "+code)
		delete(lines, s.Trade+" work.minimum")
	}
	for line, coins := range lines {
		p.same("only in the estimate: "+line, coins, 0)
	}
}

func TestAmountsOfTheCasesAddUp(t *testing.T) {
	folders, _ := filepath.Glob("../../testdata/cases/*")
	for _, folder := range folders {
		t.Run(filepath.Base(folder), func(t *testing.T) {
			body, err := os.ReadFile(filepath.Join(folder, "request.json"))
			if err != nil {
				t.Fatal(err)
			}
			balances(t, assessed(t, string(body), All))
		})
	}
}

func TestAmountsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) { balances(t, assessed(t, richRoom(t), All)) })
}

// What the planner chooses instead of the advice is never better than it, among what
// no gate stands against and what leaves the row as it is meant: what shorter cabinets
// are worth is not known where the request puts no price on them, and a taller row that
// needs another overhead down too is not had without. Whatever is chosen, the amounts
// add up.
func TestAChoiceAgainstTheAdviceCosts(t *testing.T) {
	few(t, "40", func(t *rapid.T) {
		body := richRoom(t)
		choices, free := map[string]any{}, true
		for _, o := range assessed(t, body, Decisions).Decisions.Overheads {
			if rapid.Bool().Draw(t, "left to the advice") {
				continue
			}
			one := rapid.SampledFrom(o.Options).Draw(t, o.Overhead)
			stands := one.Option == "keep" && slices.ContainsFunc(o.Reasons, func(r api.Reason) bool { return r.Code == "reason.preference.plan_stands" })
			choices[o.Overhead] = one.Option
			free = free && len(one.Gates) == 0 && len(one.Needs) == 0 && !stands
		}
		a := assessed(t, put(t, body, "/choices", choices), All)
		balances(t, a)
		room := a.Decisions.Room
		if p := (purse{t, digits[room.Currency]}); free && p.coins(room.Applied.WorseBy) < 0 {
			t.Fatalf("%v is better than the advice %v by %s", choices, room.Advice, room.Applied.WorseBy)
		}
	})
}
