package decide

import (
	"slices"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/cabinet"
	"railhead/internal/estimate"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/money"
	"railhead/internal/survey"
)

var euro = money.Currency{Code: "EUR", Digits: 2}

// wildRoom draws up to three walls, some of them joined, whose overheads are of
// one or several groups and share contents or not, over rows of cabinets that may
// stand under several of them, under ceilings that are more or less in doubt, at
// rates and worths of every size.
func wildRoom(t *rapid.T) *kitchen.Kitchen {
	k := room(2500, noCabinets)
	k.Room.Built = rapid.SampledFrom([]int{0, 1940, 1965, 2001, 2001, 2001}).Draw(t, "built")
	k.Room.CodeSet = rapid.SampledFrom([]survey.CodeSet{survey.CodeUnspecified, survey.CodeNone, survey.CodeUSIRC}).Draw(t, "code")
	k.Room.Walls[0].Overheads = nil
	for w := 1; w < rapid.SampledFrom([]int{1, 1, 2, 2, 3}).Draw(t, "walls"); w++ {
		addWall(k, rapid.SampledFrom([]int{1800, 2400, 3600}).Draw(t, "wall"), 2500)
		if rapid.Bool().Draw(t, "joined") {
			k.Room.Walls[w-1].Next, k.Room.Walls[w].Prev = w, w-1
		}
	}
	for w := range k.Room.Walls {
		k.Room.Walls[w].Ceiling = wildCeiling(t, k.Room, w)
	}
	wildOverheads(t, k)
	for w := range k.Room.Walls {
		wildRow(t, k, w)
	}
	wildHood(t, k)
	k.Prices = wildPrices(t)
	return settled(k)
}

// wildCeiling is level or falls to one side, and known for sure or read with a
// half-width.
func wildCeiling(t *rapid.T, r *survey.Room, w int) level.Profile {
	point := func(at int) level.Point {
		high := mm(rapid.SampledFrom([]int{2150, 2250, 2340, 2355, 2360, 2365, 2380, 2450, 2600}).Draw(t, "ceiling"))
		doubt := mm(rapid.SampledFrom([]int{0, 0, 3, 20, 60}).Draw(t, "doubt"))
		if doubt == 0 {
			return level.Point{At: mm(at), Height: level.Fixed(high.Exact())}
		}
		id := level.ReadingID(len(r.Readings))
		r.Readings = append(r.Readings, level.Reading{Pointer: "/survey/walls/" + count(w) + "/ceiling/" + count(at), HalfWidth: doubt})
		return level.Point{At: mm(at), Height: level.Read(id, high)}
	}
	points := []level.Point{point(0)}
	if rapid.Bool().Draw(t, "ceiling falls") {
		points = append(points, point(int(r.Walls[w].Length/length.Millimetre)))
	}
	p, _ := level.NewProfile(points)
	return p
}

// mostGroups keeps the combinations few enough to try them all.
const mostGroups = 4

func wildOverheads(t *rapid.T, k *kitchen.Kitchen) {
	var groups, all []string
	for w := range k.Room.Walls {
		wall := &k.Room.Walls[w]
		long := int(wall.Length / length.Millimetre)
		from := rapid.SampledFrom([]int{0, 0, 150, 500}).Draw(t, "first from")
		for from < long-200 && len(wall.Overheads) < 3 && (len(all) == 0 || rapid.IntRange(0, 4).Draw(t, "one more") > 1) {
			to := min(long, from+rapid.SampledFrom([]int{300, 700, 900, 1450, 3600}).Draw(t, "overhead"))
			o := wildOverhead(t, "s"+count(len(all)), w, from, to)
			if len(groups) == mostGroups || len(groups) > 0 && rapid.IntRange(0, 3).Draw(t, "part of") == 3 {
				o.Group = rapid.SampledFrom(groups).Draw(t, "group")
			} else {
				groups = append(groups, o.Group)
			}
			if len(all) > 0 && rapid.IntRange(0, 3).Draw(t, "shares") == 3 {
				o.Inside.SharesWith = rapid.SampledFrom(all).Draw(t, "shares with")
			}
			all = append(all, o.ID)
			wall.Overheads = append(wall.Overheads, o)
			from = to + rapid.SampledFrom([]int{0, 0, 0, 40, 400}).Draw(t, "apart")
		}
	}
}

func wildOverhead(t *rapid.T, id string, w, from, to int) survey.Overhead {
	o := soffit(id, w, from, to, rapid.SampledFrom([]int{1700, 1950, 2030, 2090, 2110, 2118, 2122, 2140}).Draw(t, "underside"))
	o.Kind = rapid.SampledFrom([]survey.OverheadKind{
		survey.Soffit, survey.Soffit, survey.Soffit, survey.ClosedGap, survey.LoweredCeiling, survey.Beam, survey.DuctBox,
	}).Draw(t, "kind")
	o.Depth = mm(rapid.SampledFrom([]int{330, 330, 370, 650}).Draw(t, "depth"))
	rarely := func(name string) bool { return rapid.IntRange(0, 11).Draw(t, name) == 11 }
	if rarely("hard") {
		o.Structure = rapid.SampledFrom([]survey.Structure{survey.StructureUnknown, survey.Solid, survey.Bearing}).Draw(t, "structure")
		o.MayCut = rapid.SampledFrom([]survey.MayCut{survey.CutAsk, survey.CutYes, survey.CutNo}).Draw(t, "may cut")
	}
	if rarely("textured") {
		o.Textured = survey.Yes
	}
	if rarely("thin") {
		o.Make.LeastStub = mm(400)
	}
	if o.Kind == survey.ClosedGap && rapid.Bool().Draw(t, "carried") {
		o.Carrier = survey.CarriedByOldCabinets
	}
	o.Behind.Ceiling = rapid.SampledFrom([]survey.Tri{survey.Unknown, survey.Unknown, survey.Yes, survey.No}).Draw(t, "behind")
	wildInside(t, &o, from, to)
	return o
}

func wildInside(t *rapid.T, o *survey.Overhead, from, to int) {
	o.Inside.Looked = rapid.SampledFrom([]survey.Looked{survey.NotLooked, survey.NotLooked, survey.ProbeHole, survey.Opened}).Draw(t, "looked")
	if o.Inside.Looked == survey.ProbeHole && rapid.Bool().Draw(t, "part seen") {
		o.Inside.Seen = []survey.Span{{From: mm(from), To: mm(from + (to-from)/2)}}
	}
	if o.Inside.Looked != survey.NotLooked && rapid.IntRange(0, 2).Draw(t, "services") == 2 {
		s := anyService(t, from)
		s.Movable = rapid.SampledFrom([]survey.Movable{survey.MovableEasily, survey.MovableEasily, survey.MovableWithWork, survey.MovableUnknown, survey.NotMovable}).Draw(t, "movable at all")
		o.Inside.Services = append(o.Inside.Services, s)
	}
	if rapid.IntRange(0, 2).Draw(t, "priors") == 2 {
		for range 5 {
			o.Inside.Priors = append(o.Inside.Priors, belief.Chance(rapid.IntRange(0, 9).Draw(t, "prior")))
		}
		o.Inside.Priors[0]++
		o.Inside.Priors = belief.Of(o.Inside.Priors...)
	}
	o.Inside.Hints = rapid.SampledFrom([][]string{nil, nil, {"bath_above"}, {"sounds_hollow"}, {"cable_enters"}}).Draw(t, "hints")
}

// wildRow is wall and tall cabinets side by side, most of them on one top line, and
// perhaps one in the corner to the next wall.
func wildRow(t *rapid.T, k *kitchen.Kitchen, w int) {
	wall := &k.Room.Walls[w]
	add := func(c cabinet.Placed) { k.Plan.Cabinets = append(k.Plan.Cabinets, c) }
	id := func() string { return "c" + count(len(k.Plan.Cabinets)) }
	end := int(wall.Length / length.Millimetre)
	at := rapid.SampledFrom([]int{0, 0, 250}).Draw(t, "row from")
	if wall.Prev >= 0 {
		at = 650
	}
	if wall.Next >= 0 && rapid.Bool().Draw(t, "corner") {
		end -= 600
		c := wallCabinet(id(), w, end, 600, 660)
		c.Corner = &cabinet.Corner{OtherWall: wall.Next, OtherWidth: mm(600), AtRight: true}
		c.Corner.Shape = rapid.SampledFrom([]cabinet.CornerShape{cabinet.CornerL, cabinet.CornerDiagonal, cabinet.CornerBlind}).Draw(t, "shape")
		add(c)
	}
	for range rapid.IntRange(0, 4).Draw(t, "cabinets") {
		wide := rapid.SampledFrom([]int{300, 600, 900}).Draw(t, "width")
		if at+wide > end {
			break
		}
		switch rapid.IntRange(0, 9).Draw(t, "what") {
		case 0:
		case 1:
			add(tallCabinet(id(), w, at, wide, 2000))
		case 2:
			add(wallCabinet(id(), w, at, wide, rapid.SampledFrom([]int{340, 500, 900}).Draw(t, "height")))
		default:
			add(wallCabinet(id(), w, at, wide, 660))
		}
		at += wide
	}
}

// wildHood runs in the first duct box, if at all.
func wildHood(t *rapid.T, k *kitchen.Kitchen) {
	for _, o := range k.Overheads() {
		if o.Kind == survey.DuctBox && rapid.Bool().Draw(t, "hood") {
			k.Plan.Cooking = &cabinet.Cooking{
				Pointer: "/plan/cooking", Wall: o.Wall, From: o.From, To: o.To,
				Hood: &cabinet.Hood{DuctBox: o.ID, Moves: rapid.Bool().Draw(t, "hood moves")},
			}
			return
		}
	}
}

// wildPrices are worths and rates that make every option win sometimes.
func wildPrices(t *rapid.T) kitchen.Prices {
	worth := func(name string, from ...int) kitchen.Worthy {
		return kitchen.Worthy{Amount: money.Amount(rapid.SampledFrom(from).Draw(t, name)) * money.Unit / 100, Pointer: "/money/" + name}
	}
	p := kitchen.Prices{Currency: euro, PerEuro: money.Unit, Rates: map[string]kitchen.Rate{}}
	p.Worth.Litre = worth("storage_per_litre", 0, 40, 40, 300, 1234)
	p.Worth.ToCeiling = worth("to_ceiling_worth", 0, 30_000, 90_000, 200_000, 123_457)
	p.Worth.EvenLine = worth("even_line_worth", 0, 0, 5_000, 33_333, 150_000)
	if rapid.Bool().Draw(t, "shorter") {
		w := worth("shorter_cabinet", 0, 2_000, 15_000)
		p.Worth.Shorter = &w
	}
	for range rapid.IntRange(0, 12).Draw(t, "rates") {
		code := rapid.SampledFrom(estimate.Codes()).Draw(t, "code")
		p.Rates[code] = kitchen.Rate{Spread: wildSpread(t)}
	}
	return p
}

func wildSpread(t *rapid.T) money.Spread {
	parts := make([]money.Amount, 3)
	most := rapid.SampledFrom([]int64{2, 50, 400}).Draw(t, "size")
	for i := range parts {
		parts[i] = money.Amount(rapid.Int64Range(0, most*int64(money.Unit)).Draw(t, "rate"))
	}
	slices.Sort(parts)
	return money.Spread{Low: parts[0], Likely: parts[1], High: parts[2]}
}
