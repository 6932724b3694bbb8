package estimate

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"railhead/internal/belief"
	"railhead/internal/contents"
	"railhead/internal/money"
	"railhead/internal/takeoff"
)

// draw is a value of the beta distribution between the ends of a spread that has
// PERT's mean and deviation. It is what Price, Total and shape know nothing of.
func draw(r *rand.Rand, s money.Spread) float64 {
	low, wide := inUnits(s.Low), inUnits(s.High)-inUnits(s.Low)
	if wide == 0 {
		return low
	}
	u := ((low+4*inUnits(s.Likely)+low+wide)/6 - low) / wide
	n := u*(1-u)*36 - 1
	x, y := gamma(r, u*n), gamma(r, (1-u)*n)
	return low + wide*x/(x+y)
}

// gamma is a value of the gamma distribution. Method: Marsaglia & Tsang, A simple
// method for generating gamma variables, 2000 (from memory).
func gamma(r *rand.Rand, a float64) float64 {
	if a < 1 {
		return gamma(r, a+1) * math.Pow(r.Float64(), 1/a)
	}
	d := a - 1.0/3
	c := 1 / math.Sqrt(9*d)
	for {
		x := r.NormFloat64()
		v := math.Pow(1+c*x, 3)
		if v > 0 && math.Log(r.Float64()) < x*x/2+d-d*v+d*math.Log(v) {
			return d * v
		}
	}
}

// world is lines and one way in which they may turn out, drawn.
type world struct {
	name  string
	lines []Line
	draw  func(*rand.Rand) float64
	off   float64 // how far percentiles may be off, in deviations
}

// inside draws one of states by their chances; -1 for none of them.
func inside(r *rand.Rand, chances ...float64) int {
	at := r.Float64()
	for i, c := range chances {
		if at -= c; at < 0 {
			return i
		}
	}
	return -1
}

func worlds() []world {
	b := euros()
	// Work without doubt about how much: 10 m² of board on two overheads, one crew,
	// 30 m of framing out, paint and debris. A rate without a spread for the hours
	// leaves the wage to be drawn, one for the whole crew.
	for _, code := range []string{"hours.board_on", "hours.frame_off", "hours.paint"} {
		b = b.With(code, known(b.Rate(code).Likely))
	}
	items := []takeoff.Item{
		{Work: takeoff.BoardOn, Quantity: 6000}, {Work: takeoff.BoardOn, Quantity: 4000}, {Work: takeoff.FrameOff, Quantity: 30_000},
		{Work: takeoff.Paint, Quantity: 12_000}, {Work: takeoff.Waste, Quantity: 300_000},
	}
	certain := func(r *rand.Rand) float64 {
		rate := func(code string) float64 { return draw(r, b.Rate(code).Spread) }
		return 10*(.9*rate("wage.drywaller")+rate("material.board_on")) + 30*.04*rate("wage.carpenter") +
			12*(.2*rate("wage.painter")+rate("material.paint")) + 300*rate("material.waste")
	}
	few, many, pipe := units(50, 80, 160), units(200, 300, 520), units(300, 500, 1100)
	ceiling := units(40, 70, 150)
	at := func(s contents.State, chance belief.Chance) Event { return Event{State: s, Chance: percent(chance)} }
	allowances := []Line{
		maybe("few", few, at(contents.FewWires, 25)), maybe("many", many, at(contents.ManyWires, 15)),
		maybe("pipe", pipe, at(contents.PipeOrDuct, 12)), maybe("ceiling", ceiling, at(contents.Empty, 40)),
	}
	unseen := func(r *rand.Rand) float64 {
		cost := 0.0
		if i := inside(r, .25, .15, .12); i >= 0 {
			cost += draw(r, []money.Spread{few, many, pipe}[i])
		}
		if inside(r, .4) == 0 {
			cost += draw(r, ceiling)
		}
		return cost
	}
	sureLines := b.Price("s", items)
	return []world{
		{"all seen", sureLines, certain, .04},
		{"nothing seen", append(sureLines[:len(sureLines):len(sureLines)], allowances...), func(r *rand.Rand) float64 { return certain(r) + unseen(r) }, .03},
		{"one dear and skewed line", []Line{sure("a", units(100, 110, 900))}, func(r *rand.Rand) float64 { return draw(r, units(100, 110, 900)) }, .11},
	}
}

func TestTotalsAgreeWithSimulation(t *testing.T) {
	for _, w := range worlds() {
		r := rand.New(rand.NewPCG(1, 2))
		drawn := make([]float64, 200_000)
		mean, square := 0.0, 0.0
		for i := range drawn {
			drawn[i] = w.draw(r)
			mean += drawn[i] / float64(len(drawn))
		}
		for _, d := range drawn {
			square += (d - mean) * (d - mean) / float64(len(drawn))
		}
		slices.Sort(drawn)
		total, sigma := TotalOf(w.lines), math.Sqrt(square)
		t.Logf("%s: mean %.1f sd %.1f, simulated %.1f, %.1f; %.1f %.1f %.1f, simulated %.1f %.1f %.1f", w.name, inUnits(total.Mean), inUnits(total.Deviation), mean, sigma,
			inUnits(total.P10), inUnits(total.P50), inUnits(total.P90), drawn[20_000], drawn[100_000], drawn[180_000])
		near(t, w.name+", mean", inUnits(total.Mean), mean, .01*sigma)
		near(t, w.name+", deviation", inUnits(total.Deviation), sigma, .01*sigma)
		near(t, w.name+", P10", inUnits(total.P10), drawn[20_000], w.off*sigma)
		near(t, w.name+", P50", inUnits(total.P50), drawn[100_000], w.off*sigma)
		near(t, w.name+", P90", inUnits(total.P90), drawn[180_000], w.off*sigma)
	}
}
