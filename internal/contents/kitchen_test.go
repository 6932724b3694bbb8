package contents

import (
	"fmt"

	"pgregory.net/rapid"

	"railhead/internal/belief"
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

func mm(n int) length.Length { return length.Length(n) * length.Millimetre }

// over is an overhead on a wall that nobody has looked into.
func over(id string, wall, from, to int, edits ...func(*survey.Overhead)) survey.Overhead {
	pointer := fmt.Sprintf("/survey/walls/%d/overheads/%s", wall, id)
	o := survey.Overhead{
		ID: id, Group: id, Pointer: pointer, Wall: wall, Kind: survey.Soffit, From: mm(from), To: mm(to),
		Structure: survey.Framed, Inside: survey.Inside{Pointer: pointer + "/inside"},
	}
	for _, edit := range edits {
		edit(&o)
	}
	return o
}

// corner is two walls, 3600 and 2400 long, that meet in a corner, in a house of
// 1965, with overheads on them.
func corner(overheads ...survey.Overhead) *kitchen.Kitchen {
	room := &survey.Room{Built: 1965, Walls: []survey.Wall{
		{Index: 0, Length: mm(3600), Prev: -1, Next: 1},
		{Index: 1, Length: mm(2400), Prev: 0, Next: -1},
	}}
	for _, o := range overheads {
		w := &room.Walls[o.Wall]
		o.Index = len(w.Overheads)
		w.Overheads = append(w.Overheads, o)
	}
	return &kitchen.Kitchen{Room: room, Plan: &cabinet.Plan{}}
}

// failer is a test or a property.
type failer interface {
	Helper()
	Fatalf(format string, args ...any)
}

// one is what is believed of the only cluster of a room.
func one(t failer, k *kitchen.Kitchen) (Odds, Cluster) {
	t.Helper()
	clusters := Clusters(k)
	if len(clusters) != 1 {
		t.Fatalf("%d clusters, want one", len(clusters))
	}
	return Of(k, clusters[0]), clusters[0]
}

func hinted(names ...string) func(*survey.Overhead) {
	return func(o *survey.Overhead) { o.Inside.Hints = append(o.Inside.Hints, names...) }
}

func looked(how survey.Looked, spans ...int) func(*survey.Overhead) {
	return func(o *survey.Overhead) {
		o.Inside.Looked = how
		for i := 0; i < len(spans); i += 2 {
			o.Inside.Seen = append(o.Inside.Seen, survey.Span{From: mm(spans[i]), To: mm(spans[i+1])})
		}
	}
}

func found(kinds ...survey.ServiceKind) func(*survey.Overhead) {
	return func(o *survey.Overhead) {
		for i, kind := range kinds {
			pointer := fmt.Sprintf("%s/services/%d", o.Inside.Pointer, i)
			o.Inside.Services = append(o.Inside.Services, survey.Service{Pointer: pointer, Kind: kind, From: o.From, To: o.To})
		}
	}
}

func kind(kind survey.OverheadKind) func(*survey.Overhead) {
	return func(o *survey.Overhead) { o.Kind = kind }
}

func group(group string) func(*survey.Overhead) {
	return func(o *survey.Overhead) { o.Group = group }
}

func shares(id string) func(*survey.Overhead) {
	return func(o *survey.Overhead) { o.Inside.SharesWith = id }
}

func bathAway(n int) func(*survey.Overhead) {
	return func(o *survey.Overhead) { d := mm(n); o.Inside.BathAway = &d }
}

func priors(chances ...belief.Chance) func(*survey.Overhead) {
	return func(o *survey.Overhead) {
		for _, c := range chances {
			o.Inside.Priors = append(o.Inside.Priors, c*belief.Certain/100)
		}
	}
}

// anyKitchen draws one to three overheads that share their contents, of any kind,
// with any hints and neighbours, looked into or not.
func anyKitchen(t *rapid.T) *kitchen.Kitchen {
	var overheads []survey.Overhead
	for i := range rapid.IntRange(1, 3).Draw(t, "parts") {
		from := 1000 * i
		o := over(fmt.Sprint("s", i), 0, from, from+rapid.IntRange(300, 1000).Draw(t, "length"), group("g"))
		o.Kind = rapid.SampledFrom([]survey.OverheadKind{survey.Soffit, survey.ClosedGap, survey.LoweredCeiling, survey.Beam, survey.DuctBox}).Draw(t, "kind")
		o.Structure = rapid.SampledFrom([]survey.Structure{survey.Framed, survey.Solid}).Draw(t, "structure")
		for _, h := range hints {
			if rapid.IntRange(0, 4).Draw(t, h.name) == 0 {
				o.Inside.Hints = append(o.Inside.Hints, h.name)
			}
		}
		if rapid.Bool().Draw(t, "somebody knows the bath") {
			bathAway(rapid.IntRange(0, 6000).Draw(t, "bath"))(&o)
		}
		overheads = append(overheads, o)
	}
	k := corner(overheads...)
	k.Room.Built = rapid.SampledFrom([]int{0, 1920, 1965, 2005}).Draw(t, "built")
	if rapid.Bool().Draw(t, "cooker") {
		from := rapid.IntRange(0, 3000).Draw(t, "cooker from")
		k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", From: mm(from), To: mm(from + 600)}
		if rapid.Bool().Draw(t, "hood") {
			k.Plan.Cooking.Hood = &cabinet.Hood{DuctBox: rapid.SampledFrom([]string{"", "s0", "elsewhere"}).Draw(t, "duct box")}
		}
	}
	if rapid.Bool().Draw(t, "panel") {
		at := rapid.IntRange(0, 2400).Draw(t, "panel at")
		k.Room.Walls[1].Fixtures = []survey.Fixture{{Pointer: "/survey/walls/1/points/0", Kind: survey.Panel, At: mm(at)}}
	}
	return k
}

// anyFigures draws what looks are weighed by, where the request gives it.
func anyFigures(t *rapid.T) kitchen.Figures {
	out := kitchen.Figures{}
	for f := kitchen.ThroughFewWires; f <= kitchen.WiresAreMany; f++ {
		if rapid.Bool().Draw(t, "gives "+f.String()) {
			least, most := f.Range()
			out[f] = money.Quantity(rapid.Int64Range(int64(least), int64(most)).Draw(t, f.String()))
		}
	}
	return out
}

// parts are the overheads of the first wall, to be changed in place.
func parts(k *kitchen.Kitchen) []survey.Overhead { return k.Room.Walls[0].Overheads }

// lookInto draws how far somebody looked into each part.
func lookInto(t *rapid.T, k *kitchen.Kitchen) {
	for i := range parts(k) {
		o := &parts(k)[i]
		o.Inside.Looked = rapid.SampledFrom([]survey.Looked{survey.NotLooked, survey.ProbeHole, survey.Opened}).Draw(t, "looked")
		if o.Inside.Looked != survey.NotLooked && rapid.Bool().Draw(t, "says how far") {
			size := int(o.To/length.Millimetre) - int(o.From/length.Millimetre)
			a := rapid.IntRange(0, size-1).Draw(t, "seen from")
			b := rapid.IntRange(a+1, size).Draw(t, "seen to")
			o.Inside.Seen = []survey.Span{{From: o.From + mm(a), To: o.From + mm(b)}}
		}
	}
}

// findIn draws services in parts that somebody looked into.
func findIn(t *rapid.T, k *kitchen.Kitchen) {
	for i := range parts(k) {
		o := &parts(k)[i]
		if o.Inside.Looked == survey.NotLooked {
			continue
		}
		for range rapid.IntRange(0, 3).Draw(t, "services") {
			found(survey.ServiceKind(rapid.IntRange(0, int(survey.StructureInside)).Draw(t, "service")))(o)
		}
	}
}

// copied is the same case again, so that a test can change it.
func copied(k *kitchen.Kitchen) *kitchen.Kitchen {
	out, r, p := *k, *k.Room, *k.Plan
	r.Walls = append([]survey.Wall{}, r.Walls...)
	for w := range r.Walls {
		r.Walls[w].Overheads = append([]survey.Overhead{}, r.Walls[w].Overheads...)
		for i := range r.Walls[w].Overheads {
			in := &r.Walls[w].Overheads[i].Inside
			in.Hints = append([]string{}, in.Hints...)
			in.Seen = append([]survey.Span{}, in.Seen...)
			in.Services = append([]survey.Service{}, in.Services...)
		}
	}
	out.Room, out.Plan = &r, &p
	return &out
}
