package report

import (
	"maps"
	"slices"
	"strings"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/layout"
	"railhead/internal/money"
	"railhead/internal/propose"
	"railhead/internal/rules"
)

// Proposed is a proposal with the request that it answers, whose cabinets, fillers and
// choices are told as they were sent.
type Proposed struct {
	Scale
	*propose.Proposal
	Request *api.Request
}

// Answer writes what was proposed; the rest of the answer is what was noticed.
func (p *Proposed) Answer() api.LayoutAnswer {
	out := api.LayoutAnswer{Layouts: []api.Layout{}, Overheads: each(p.Overheads, p.overhead), Relax: p.relax()}
	for i := range p.Layouts {
		against := p.first()
		if i == 0 {
			against = p.second()
		}
		out.Layouts = append(out.Layouts, p.layout(&p.Layouts[i], i+1, against))
	}
	if p.Once != nil {
		out.Once = ptr(p.layout(p.Once, 1, p.first()))
	}
	return out
}

// first is the best layout, second the one after it; nil where there is none.
func (p *Proposed) first() *propose.Layout {
	if len(p.Layouts) == 0 {
		return nil
	}
	return &p.Layouts[0]
}

func (p *Proposed) second() *propose.Layout {
	if len(p.Layouts) < 2 {
		return nil
	}
	return &p.Layouts[1]
}

func (p *Proposed) layout(l *propose.Layout, rank int, against *propose.Layout) api.Layout {
	datums := p.Datums(l.Kitchen)
	trades := p.trades(l, against)
	return api.Layout{
		Rank: rank, Value: p.value(l), Proven: l.Proven, Assumed: l.Assumed, Hindered: l.HeldUp(), Datum: datums[0], Datums: datums,
		Choices: p.choices(l), Gates: each(l.Gates, func(g propose.Gate) api.LayoutGate { return p.gate(g) }),
		Cabinets: p.cabinets(l), Fillers: p.fillers(l), Panels: p.panels(l),
		Trades: trades, Because: p.because(l, against, trades),
	}
}

// value writes a layout's worth so that its parts add up.
func (p *Proposed) value(l *propose.Layout) api.LayoutValue {
	worths := make([]money.Amount, len(l.Parts))
	for i, part := range l.Parts {
		worths[i] = part.Worth
	}
	worths = money.SplitTo(p.Currency, worths)
	out := api.LayoutValue{Total: p.money(total(worths)), StorageLitres: l.Litres.Decimal(), Parts: []api.LayoutPart{}}
	for i, part := range l.Parts {
		out.Parts = append(out.Parts, api.LayoutPart{
			Name: part.Name.String(), Quantity: part.Quantity.Decimal(), Unit: part.Name.Unit(), Worth: p.money(worths[i]),
		})
	}
	return out
}

func total(in []money.Amount) (out money.Amount) {
	for _, a := range in {
		out = out.Plus(a)
	}
	return out
}

// choices writes what happens to each overhead; what was chosen as it was sent.
func (p *Proposed) choices(l *propose.Layout) map[string]api.Choice {
	out := maps.Clone(p.Request.Choices)
	if out == nil {
		out = map[string]api.Choice{}
	}
	for group, o := range l.Options {
		if _, chosen := out[group]; !chosen {
			out[group] = api.Choice{Option: o.String(), Bare: true}
		}
	}
	return out
}

func (p *Proposed) gate(g propose.Gate) api.LayoutGate {
	rule, _ := rules.Of(g.Code)
	return api.LayoutGate{
		Overhead: g.Group, Code: g.Code, Pointer: g.Pointer, Forbids: g.Forbids, Says: p.says(g.Code, g.Params), Who: rule.Who, Params: p.params(g.Params),
	}
}

// cabinets writes all cabinets of a layout: those that stay as they were sent.
func (p *Proposed) cabinets(l *propose.Layout) []api.Cabinet {
	out := []api.Cabinet{}
	for _, i := range p.Stays.Cabinets {
		out = append(out, p.Request.Plan.Cabinets[i])
	}
	for _, c := range l.Kitchen.Plan.Cabinets[len(out):] {
		out = append(out, p.cabinet(l.Kitchen, &c))
	}
	return out
}

func (p *Proposed) cabinet(k *kitchen.Kitchen, c *cabinet.Placed) api.Cabinet {
	out := api.Cabinet{
		ID: c.ID, Kind: c.Kind.String(), Wall: k.Room.Walls[c.Wall].ID,
		From: p.requestLength(c.From), Width: p.requestLength(c.Width()), Height: p.requestLength(c.Height),
	}
	if c.Corner != nil {
		out.Corner = &api.Corner{
			OtherWall: k.Room.Walls[c.Corner.OtherWall].ID, OtherWidth: p.requestLength(c.Corner.OtherWidth),
			Shape: c.Corner.Shape.String(),
		}
	}
	return out
}

func (p *Proposed) fillers(l *propose.Layout) []api.Filler {
	out := []api.Filler{}
	for _, i := range p.Stays.Fillers {
		out = append(out, p.Request.Plan.Fillers[i])
	}
	for _, f := range l.Kitchen.Plan.Fillers[len(out):] {
		out = append(out, api.Filler{
			Kind: f.Kind.String(), Wall: l.Kitchen.Room.Walls[f.Wall].ID, From: p.requestLength(f.From), Width: p.requestLength(f.To - f.From),
		})
	}
	return out
}

func (p *Proposed) panels(l *propose.Layout) []api.LayoutPanel {
	return each(l.Panels, func(one layout.Panel) api.LayoutPanel {
		side := "left"
		if one.Right {
			side = "right"
		}
		return api.LayoutPanel{
			Cabinet: l.Kitchen.Plan.Cabinets[one.Cabinet].ID, Side: side, Wall: l.Kitchen.Room.Walls[one.Wall].ID,
			From: p.plan(one.From), Thickness: p.plan(one.To - one.From),
		}
	})
}

// trades writes in which parts a layout differs from another one.
func (p *Proposed) trades(l, against *propose.Layout) []api.LayoutTrade {
	out := []api.LayoutTrade{}
	if against == nil {
		return out
	}
	for n := range layout.PartNames {
		here, there := l.Part(n), against.Part(n)
		more, worth := here.Quantity-there.Quantity, here.Worth.Minus(there.Worth)
		if more != 0 || worth.Rounded(p.Currency) != 0 {
			out = append(out, api.LayoutTrade{Name: n.String(), Quantity: more.Decimal(), Unit: n.Unit(), Worth: p.money(worth)})
		}
	}
	return out
}

// because puts the trades into words.
func (p *Proposed) because(l, against *propose.Layout, trades []api.LayoutTrade) string {
	words := make([]string, len(trades))
	for i, t := range trades {
		words[i] = p.trade(t)
	}
	told := strings.Join(words, ", ")
	if told == "" {
		told = p.says("layout.because.alike", nil)
	}
	by := money.Amount(0)
	if against != nil {
		by = l.Total.Minus(against.Total).Rounded(p.Currency)
	}
	code := "layout.because.level"
	switch {
	case against == nil:
		code = "layout.because.only"
	case l == p.first() && by > 0:
		code = "layout.because.first"
	case l == p.first():
		code = "layout.because.tied"
	case against.Same(l):
		code = "layout.because.itself"
	case by < 0:
		code, by = "layout.because.behind", by.Neg()
	case by > 0:
		code = "layout.because.ahead"
	}
	return p.says(code, []finding.Param{
		finding.Word("total", p.money(l.Total)), finding.Word("by", p.money(by)), finding.Word("trades", told),
	})
}

// trade is one difference in words.
func (p *Proposed) trade(t api.LayoutTrade) string {
	out := p.says("layout.part."+t.Name, nil)
	if t.Name != layout.Overheads.String() && t.Name != layout.EvenLine.String() {
		out += " " + strings.TrimSpace(signed(t.Quantity)+" "+strings.TrimPrefix(t.Unit, "1"))
	}
	return out + " (" + signed(t.Worth) + ")"
}

func signed(number string) string {
	if strings.HasPrefix(number, "-") {
		return number
	}
	return "+" + number
}

// overhead writes the ways to treat an overhead, each with its best layout.
func (p *Proposed) overhead(o propose.Overhead) api.LayoutOverhead {
	var kept *propose.Layout
	for i := range o.Options {
		if o.Options[i].Option == kitchen.Keep {
			kept = o.Options[i].Layout
		}
	}
	ranks := ranksOf(o.Options)
	out := api.LayoutOverhead{Overhead: o.Group, Options: []api.LayoutOption{}}
	for i, one := range o.Options {
		option := api.LayoutOption{Option: one.Option.String(), Possible: one.Possible, Gates: []api.LayoutGate{}}
		for _, g := range one.Gates {
			option.Gates = append(option.Gates, p.gate(propose.Gate{Group: o.Group, Gate: g}))
		}
		if l := one.Layout; l != nil {
			option.Storage, option.Cost, option.Total = l.Litres.Decimal(), p.money(l.Cost()), p.money(l.Total)
			option.Layout = ptr(p.layout(l, ranks[i], p.first()))
			if kept != nil {
				option.Gain = p.money(l.Cabinets().Minus(kept.Cabinets()))
			}
		}
		out.Options = append(out.Options, option)
	}
	return out
}

// ranksOf are the places of options by their layouts' totals.
func ranksOf(in []propose.Option) []int {
	out := make([]int, len(in))
	for i, one := range in {
		out[i] = 1
		for j, other := range in {
			if one.Layout != nil && other.Layout != nil &&
				(other.Layout.Total > one.Layout.Total || other.Layout.Total == one.Layout.Total && j < i) {
				out[i]++
			}
		}
	}
	return out
}

// relax writes what would have to be given up.
func (p *Proposed) relax() []api.Relax {
	out := []api.Relax{}
	for _, c := range p.Clashes {
		kind := finding.Word("kind", c.Kind.String())
		for _, bar := range c.What {
			code := "layout.relax." + bar.What.String()
			out = append(out, api.Relax{
				Code: code, Pointer: bar.Pointer, Alone: c.Alone, Wall: p.Request.Survey.Walls[c.Wall].ID, Kind: c.Kind.String(),
				Says: p.says(code, []finding.Param{kind}), Params: p.params([]finding.Param{kind}),
			})
		}
	}
	return slices.CompactFunc(out, func(a, b api.Relax) bool {
		return a.Code == b.Code && a.Pointer == b.Pointer && a.Wall == b.Wall && a.Kind == b.Kind
	})
}
