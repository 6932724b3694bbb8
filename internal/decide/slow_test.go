package decide

import (
	"math"
	"slices"

	"railhead/internal/belief"
	"railhead/internal/cabinet"
	"railhead/internal/contents"
	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
	"railhead/internal/takeoff"
)

// slow works a room out another way than the reckoning: combination by
// combination, in floating point and in the currency's unit, from what was measured
// of each option and what is believed of the unknowns.
type slow struct {
	k                *kitchen.Kitchen
	d                *Decisions
	book             *estimate.Book
	groups           []kitchen.OverheadGroup
	ways             [][]slowWay // by group and option
	shared           []sharedCabinet
	callOut, minimum [estimate.Trades]float64
}

// slowWay is one option of one group by itself.
type slowWay struct {
	gain, bought          float64
	labour, call, counted [estimate.Trades]float64
}

// slowSum is what items come to if they come up, and who has to come for them.
type slowSum struct {
	bought float64
	labour [estimate.Trades]float64
	needs  [estimate.Trades]bool
}

// sharedCabinet stands under several groups.
type sharedCabinet struct {
	*cabinet.Placed
	groups []int
	taller length.Length // 0: no taller row for it
}

// crew is who works and who is paid for each kind of work, and whether it makes
// dust, so that the room has to be set up for it.
var crew = map[takeoff.Work]struct {
	works, paid estimate.Trade
	dusty       bool
}{
	takeoff.BoardOff:      {estimate.Helper, 0, true},
	takeoff.FrameOff:      {estimate.Carpenter, 0, true},
	takeoff.Cut:           {estimate.Drywaller, 0, true},
	takeoff.FrameRefit:    {estimate.Carpenter, 0, true},
	takeoff.Hangers:       {estimate.Carpenter, 0, true},
	takeoff.BoardOn:       {estimate.Drywaller, 0, true},
	takeoff.CeilingBoard:  {estimate.Drywaller, 0, true},
	takeoff.Patch:         {estimate.Drywaller, 0, true},
	takeoff.Paint:         {estimate.Painter, 0, true},
	takeoff.CloseAgain:    {estimate.Drywaller, 0, true},
	takeoff.Waste:         {0, estimate.WasteHaul, false},
	takeoff.WasteMass:     {estimate.Helper, estimate.WasteHaul, false},
	takeoff.RerouteWire:   {estimate.Electrician, 0, false},
	takeoff.ReroutePipe:   {estimate.Plumber, 0, false},
	takeoff.RerouteDuct:   {estimate.DuctFitter, 0, false},
	takeoff.BackingBoard:  {estimate.Carpenter, 0, false},
	takeoff.ClosingPanel:  {estimate.Fitter, 0, false},
	takeoff.Filler:        {estimate.Fitter, 0, false},
	takeoff.TallerFront:   {},
	takeoff.ShorterFront:  {},
	takeoff.ExchangeOrder: {},
}

func slowly(k *kitchen.Kitchen, d *Decisions) *slow {
	s := &slow{k: k, d: d, book: estimate.NewBook(k.Prices), groups: k.Groups()}
	for t := range estimate.Trades {
		if t == estimate.Site {
			s.callOut[t] = s.mean("setup.site")
		} else {
			s.callOut[t], s.minimum[t] = s.mean("call_out."+t.String()), s.mean("minimum."+t.String())
		}
	}
	s.findShared()
	for g := range d.Overheads {
		var ways []slowWay
		for i := range d.Overheads[g].Options {
			ways = append(ways, s.way(g, i))
		}
		s.ways = append(s.ways, ways)
	}
	return s
}

// mean is a rate's mean by PERT; nothing where there is no such rate.
func (s *slow) mean(code string) float64 {
	r := s.book.Rate(code)
	return float64(r.Low+4*r.Likely+r.High) / 6 / 1e4
}

// price adds up quantity times rate, hours to the thousandth as they are told.
func (s *slow) price(items []takeoff.Item) slowSum {
	var out slowSum
	for _, item := range items {
		who, known := crew[item.Work]
		if !known {
			panic("nobody does " + item.Work)
		}
		q := int64(item.Quantity)
		if q <= 0 {
			continue
		}
		if code := "hours." + string(item.Work); estimate.IsCode(code) {
			h, w := s.book.Rate(code), s.book.Rate("wage."+who.works.String())
			hours := func(each int64) float64 { return math.RoundToEven(float64(q*each)/1e4) / 1e3 }
			low, likely, high := hours(int64(h.Low))*float64(w.Low), hours(int64(h.Likely))*float64(w.Likely), hours(int64(h.High))*float64(w.High)
			out.labour[who.works] += (low + 4*likely + high) / 6 / 1e4
			out.needs[who.works] = true
		}
		if code := "material." + string(item.Work); estimate.IsCode(code) {
			cost := float64(q) / 1e3 * s.mean(code)
			if item.Work == takeoff.ShorterFront {
				cost = -cost
			}
			out.bought += cost
			out.needs[who.paid] = true
		}
		out.needs[estimate.Site] = out.needs[estimate.Site] || who.dusty
	}
	out.needs[estimate.NoTrade] = false
	return out
}

// findShared finds the cabinets that stand under several groups.
func (s *slow) findShared() {
	for i := range s.k.Plan.Cabinets {
		c := &s.k.Plan.Cabinets[i]
		groups := s.over(c)
		if len(groups) < 2 {
			continue
		}
		shared := sharedCabinet{Placed: c, groups: groups}
		for _, g := range groups {
			if h := swapOf(of(s.d.Overheads[g].Options, kitchen.RemoveTaller), c); h > 0 && (shared.taller == 0 || h < shared.taller) {
				shared.taller = h
			}
		}
		s.shared = append(s.shared, shared)
	}
}

// over are the groups over a wall or tall cabinet.
func (s *slow) over(c *cabinet.Placed) []int {
	var out []int
	for g, group := range s.groups {
		for _, o := range group.Parts {
			if c.Kind != cabinet.Base && meets(c.Patches(s.k.Room), o) {
				out = append(out, g)
				break
			}
		}
	}
	return out
}

// swapOf is the height that an option gives a cabinet; 0 where it leaves it.
func swapOf(o Option, c *cabinet.Placed) length.Length {
	for _, w := range o.Swaps {
		if w.Cabinet == c {
			return w.Height
		}
	}
	return 0
}

func (s *slow) isShared(c *cabinet.Placed) bool {
	return slices.ContainsFunc(s.shared, func(h sharedCabinet) bool { return h.Placed == c })
}

func goesWithOld(o *survey.Overhead) bool { return o.GoesWithOldCabinets() }

// way weighs what may turn up: something immovable leaves the group as it is, a
// taller row that does not fit has its gap closed, and the rest only costs.
func (s *slow) way(g, i int) slowWay {
	r := s.d.reckoning
	m, o := &r.measured[g][i], s.d.Overheads[g].Options[i]
	seen, found, behind := s.believed(g)
	misfit := 0.0
	var closing []takeoff.Item
	if o.Option == kitchen.RemoveTaller {
		misfit = 1 - fraction(r.now.fits[g])
		if misfit > 0 && misfit < 1 {
			closing = closingItems(r.measured[g][r.place(g, kitchen.RemoveClose)].Items)
		}
	}
	reach := fraction(m.Reach)
	gain := s.gain(g, i)
	gain += misfit * (s.gain(g, r.place(g, kitchen.RemoveClose)) - gain)
	halt := 0.0
	if !seen {
		halt = found[contents.Immovable] * reach
	}
	gain += halt * (s.gain(g, 0) - gain)

	certain := s.price(m.Items)
	out := slowWay{gain: gain, bought: certain.bought, labour: certain.labour, counted: certain.labour}
	var spared [3][estimate.Trades]float64
	for n := range spared {
		for t := range spared[n] {
			spared[n][t] = 1
		}
	}
	add := func(unknown int, items []takeoff.Item, chance float64) {
		sum := s.price(items)
		out.bought += chance * sum.bought
		for t := range sum.labour {
			out.labour[t] += chance * sum.labour[t]
			if !certain.needs[t] { // what may turn up counts where the trade comes for nothing else
				out.counted[t] += chance * min(s.minimum[t], sum.labour[t])
			}
			if sum.needs[t] {
				spared[unknown][t] -= chance
			}
		}
	}
	if !seen {
		for state := contents.FewWires; state < contents.States; state++ {
			add(0, m.Found[state], found[state]*reach)
		}
	}
	add(1, m.Behind, behind)
	add(2, closing, misfit)
	for t := range out.call {
		out.call[t] = 1 - spared[0][t]*spared[1][t]*spared[2][t]
		if certain.needs[t] {
			out.call[t] = 1
		}
	}
	return out
}

func fraction(c belief.Chance) float64 { return float64(c) / 1e9 }

func closingItems(items []takeoff.Item) (out []takeoff.Item) {
	for _, i := range items {
		if i.Work == takeoff.ClosingPanel || i.Work == takeoff.Filler {
			out = append(out, i)
		}
	}
	return out
}

// believed is what is thought of a group's contents, and the chance that the
// ceiling's board is missing behind what it shares contents with.
func (s *slow) believed(g int) (seen bool, found [contents.States]float64, behind float64) {
	odds, _, unseen := s.d.Odds(g)
	for state := range found {
		found[state] = fraction(odds.Now[state])
	}
	for _, c := range contents.Clusters(s.k) {
		if !slices.Contains(c.Groups, g) {
			continue
		}
		for _, o := range c.Parts {
			if chance, assumed := contents.BehindMissing(o); assumed && !o.GoesWithOldCabinets() {
				return !unseen, found, fraction(chance)
			}
		}
	}
	return !unseen, found, 0
}

// gain is what an option gains if nothing stops it; what nobody can do gains
// nothing.
func (s *slow) gain(g, i int) float64 {
	m := s.d.Money(g, i)
	if m == nil {
		return 0
	}
	o := s.d.Overheads[g].Options[i]
	var swaps []cabinet.Swap
	for _, w := range o.Swaps {
		if !s.isShared(w.Cabinet) {
			swaps = append(swaps, w)
		}
	}
	out := s.gainOf(swaps, o.Option == kitchen.RemoveTaller && s.closes(g))
	out += float64(s.d.reckoning.ms[g].plannedUp(o.Option)) / s.run() * float64(s.k.Prices.Worth.ToCeiling.Amount) / 1e4
	for _, part := range m.Gains {
		switch part.Code {
		case gainOpenGap:
			out += float64(part.Quantity) / 1e3 * s.mean("worth.open_gap")
		case gainStray:
			out += float64(part.Quantity) / 1e3 * s.mean("worth.stray_overhead")
		}
	}
	return out
}

// closes reports whether the taller row of a group leaves less than 300 to the ceiling.
func (s *slow) closes(g int) bool {
	taller := &s.d.reckoning.ms[g].taller
	return taller.row != nil && taller.have.Minus(taller.need).CmpLength(300*length.Millimetre) < 0
}

// run is the width of all wall and tall cabinets; one where there are none.
func (s *slow) run() float64 {
	run := 0.0
	for i := range s.k.Plan.Cabinets {
		if c := &s.k.Plan.Cabinets[i]; c.Kind != cabinet.Base {
			run += float64(c.Width())
		}
	}
	return max(run, 1)
}

// gainOf is what exchanged cabinets are worth; litres go to the thousandth, as they
// are told.
func (s *slow) gainOf(swaps []cabinet.Swap, toCeiling bool) float64 {
	worth := s.k.Prices.Worth
	wide, litres, shorter := 0.0, 0.0, 0.0
	for _, w := range swaps {
		wide += float64(w.Cabinet.Width())
		litres += squareMetres(w.Cabinet) * float64(w.Height-w.Cabinet.Height) / 1e6
		if w.Height < w.Cabinet.Height {
			shorter++
		}
	}
	out := math.RoundToEven(litres*1e3) / 1e3 * float64(worth.Litre.Amount) / 1e4
	if toCeiling && len(swaps) > 0 {
		out += wide / s.run() * float64(worth.ToCeiling.Amount) / 1e4
	}
	if worth.Shorter != nil {
		out -= shorter * float64(worth.Shorter.Amount) / 1e4
	}
	return out
}

// squareMetres is a cabinet's floor: of a corner one both wings, of a diagonal one
// the triangle between them too.
func squareMetres(c *cabinet.Placed) float64 {
	width, depth := float64(c.Width())/1e9, float64(c.Depth)/1e9
	if c.Corner == nil || c.Corner.Shape == cabinet.CornerBlind {
		return width * depth
	}
	other := float64(c.Corner.OtherWidth) / 1e9
	out := width*depth + (other-depth)*depth
	if c.Corner.Shape == cabinet.CornerDiagonal {
		out += (width - depth) * (other - depth) / 2
	}
	return out
}

// becomes is the height of a shared cabinet after a combination; false where a
// taller one is wanted and another group does not let it through.
func (s *slow) becomes(c *sharedCabinet, picks []int) (h length.Length, wanted, possible bool) {
	limit := length.Length(math.MaxInt64)
	for _, g := range c.groups {
		switch o := s.d.Overheads[g].Options[picks[g]]; {
		case o.Option.TakesDown() || all(s.groups[g].Parts, goesWithOld):
			wanted = wanted || o.Option == kitchen.RemoveTaller && swapOf(o, c.Placed) > 0
		case o.Option == kitchen.Keep:
			limit = min(limit, s.tallestUnder(c.Placed, g))
		default: // it is cut for the cabinet as planned
			limit = min(limit, max(s.tallestUnder(c.Placed, g), c.Height))
		}
	}
	h = c.Height
	if wanted {
		h = c.taller
	}
	if limit == 0 && !wanted {
		return c.Height, false, true // no height helps: it stays as planned
	}
	return min(h, limit), wanted, !wanted || h <= limit
}

// tallestUnder is the tallest that a cabinet can be under a group as found.
func (s *slow) tallestUnder(c *cabinet.Placed, g int) length.Length {
	best := length.Length(0)
	for _, h := range append([]length.Length{c.Height}, s.k.System.Sizes(c.Kind).Heights...) {
		spares := all(s.groups[g].Parts, func(o *survey.Overhead) bool {
			return goesWithOld(o) || !meets(c.Patches(s.k.Room), o) || o.Underside.Lowest(o.From, o.To).Value.CmpLength(c.Underside+h) >= 0
		})
		if spares {
			best = max(best, h)
		}
	}
	return best
}

// net is what a combination nets; false where it cannot be had.
func (s *slow) net(picks []int) (float64, bool) {
	net := 0.0
	var labour, counted, none [estimate.Trades]float64
	for t := range none {
		none[t] = 1
	}
	for g, i := range picks {
		w := &s.ways[g][i]
		net += w.gain - w.bought
		for t := range labour {
			labour[t] += w.labour[t]
			counted[t] += w.counted[t]
			none[t] *= 1 - w.call[t]
		}
	}
	for t := range labour {
		called := 1 - none[t]
		net -= called*s.callOut[t] + labour[t] + max(0, called*s.minimum[t]-counted[t])
	}
	heights := map[*cabinet.Placed]length.Length{}
	for n := range s.shared {
		c := &s.shared[n]
		h, wanted, possible := s.becomes(c, picks)
		if !possible {
			return 0, false
		}
		heights[c.Placed] = h
		if h != c.Height {
			swaps := []cabinet.Swap{{Cabinet: c.Placed, Height: h}}
			sum := s.price(takeoff.NewSite(s.k).Of(takeoff.Job{Option: kitchen.RemoveTaller, Swaps: swaps}).Items)
			up := wanted
			for _, g := range c.groups {
				up = up && (swapOf(of(s.d.Overheads[g].Options, kitchen.RemoveTaller), c.Placed) == 0 || s.closes(g))
			}
			net += s.gainOf(swaps, up) - sum.bought
			for _, l := range sum.labour {
				net -= l
			}
		}
	}
	if s.even(picks, heights) {
		net += float64(s.k.Prices.Worth.EvenLine.Amount) / 1e4
	}
	return net, true
}

// even reports whether all wall and tall cabinets end on one line.
func (s *slow) even(picks []int, shared map[*cabinet.Placed]length.Length) bool {
	tops := map[length.Length]bool{}
	for i := range s.k.Plan.Cabinets {
		c := &s.k.Plan.Cabinets[i]
		if c.Kind == cabinet.Base {
			continue
		}
		h := c.Height
		if to, ok := shared[c]; ok {
			h = to
		} else {
			for _, g := range s.over(c) {
				if to := swapOf(s.d.Overheads[g].Options[picks[g]], c); to > 0 {
					h = to
				}
			}
		}
		tops[c.Underside+h] = true
	}
	return len(tops) == 1
}

// allowed are the options that no gate stands in front of; that a group stays while
// a cabinet of the plan reaches into it counts only where shorter ones have a
// price and the system makes them. What goes with the old cabinets goes whatever
// stands in front of it. Where nothing is left it stays.
func (s *slow) allowed(g int) []int {
	var out, trade []int
	for i, o := range s.d.Overheads[g].Options {
		m := s.d.reckoning.ms[g]
		exchanged := all(m.overlaps, func(over overlap) bool { return swapOf(o, over.cabinet) > 0 })
		stays := o.Option == kitchen.Keep && m.inTheWay() && (s.k.Prices.Worth.Shorter == nil || !exchanged)
		switch goes := all(s.groups[g].Parts, goesWithOld); {
		case stays:
		case len(o.Gates) == 0, goes && open(o.Gates): // its gates stop the work, not the choice
			out = append(out, i)
		case goes && licensed(o.Gates):
			trade = append(trade, i)
		}
	}
	if len(out) == 0 {
		out = trade
	}
	if len(out) == 0 {
		return []int{0}
	}
	return out
}

// each calls for every combination of allowed options.
func (s *slow) each(try func(picks []int)) {
	picks := make([]int, len(s.groups))
	var next func(g int)
	next = func(g int) {
		if g == len(picks) {
			try(picks)
			return
		}
		for _, i := range s.allowed(g) {
			picks[g] = i
			next(g + 1)
		}
	}
	next(0)
}
