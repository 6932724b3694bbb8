package takeoff

import (
	"slices"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// wildKitchen draws three walls around a room with whatever may hang and stand
// there, sensible or not, some of it part of one thing.
func wildKitchen(t *rapid.T) *kitchen.Kitchen {
	var walls []survey.Wall
	var cabinets []cabinet.Placed
	for i := range 3 {
		long := drawn(t, "wall", 800, 3000)
		w := wall(long, drawn(t, "ceiling", 2000, 2500))
		if rapid.Bool().Draw(t, "faces") {
			w.Facing = &survey.Facing{Wall: (i + 2) % 3, Distance: length.Length(drawn(t, "distance", 500, 3000)) * mm}
		}
		for n := range drawn(t, "overheads", 0, 3) {
			w.Overheads = append(w.Overheads, wildOverhead(t, long, strconv.Itoa(i)+strconv.Itoa(n)))
		}
		walls = append(walls, w)
		for range drawn(t, "cabinets", 0, 3) {
			from := drawn(t, "at", -50, 2000)
			c := hung(i, from, from+drawn(t, "width", 200, 1000), drawn(t, "top", 1500, 2600))
			c.Kind, c.Depth = cabinet.Kind(drawn(t, "kind", 0, 2)), length.Length(drawn(t, "depth", 300, 650))*mm
			if i < 2 && rapid.Bool().Draw(t, "in the corner") {
				c.Corner = &cabinet.Corner{OtherWall: i + 1, OtherWidth: 600 * mm, Shape: cabinet.CornerShape(drawn(t, "shape", 0, 2)), AtRight: true}
			}
			cabinets = append(cabinets, c)
		}
	}
	k := cook(corner(walls...), cabinets...)
	k.Plan.Cooking = &cabinet.Cooking{Hood: &cabinet.Hood{DuctBox: "00"}}
	return k
}

func wildOverhead(t *rapid.T, long int, id string) survey.Overhead {
	from := drawn(t, "from", 0, long-100)
	to := drawn(t, "to", from+50, long)
	o := soffit(from, to, profile(from, drawn(t, "underside", 1700, 2500), to, drawn(t, "underside", 1700, 2500)))
	o.ID, o.Group = id, rapid.SampledFrom([]string{id, "one", "two"}).Draw(t, "group")
	o.Kind, o.Structure = survey.OverheadKind(drawn(t, "overhead", 0, 4)), survey.Structure(drawn(t, "structure", 0, 3))
	o.Out, o.Depth = length.Length(drawn(t, "out", -300, 800))*mm, length.Length(drawn(t, "overhead depth", 50, 700))*mm
	o.Out = max(o.Out, 0)
	o.Carrier, o.MayCut, o.Painted = survey.Carrier(drawn(t, "carrier", 0, 3)), survey.MayCut(drawn(t, "may cut", 0, 2)), survey.Tri(drawn(t, "painted", 0, 2))
	o.Finish = rapid.SampledFrom([]string{"unknown", "none", "plaster", "tile", "wood", "metal"}).Draw(t, "finish")
	o.Left, o.Right = survey.EndKind(drawn(t, "left", 0, 3)), survey.EndKind(drawn(t, "right", 0, 3))
	o.Make.Spacing = length.Length(drawn(t, "spacing", -100, 900)) * mm
	o.Make.LeastStub, o.Make.BottomMember = length.Length(drawn(t, "stub", 0, 100))*mm, length.Length(drawn(t, "member", 0, 60))*mm
	return o
}

// Whatever hangs there, everything can be worked out again, an overhead's items
// stand in the order of the works, and all overheads together take no more off than
// they have.
func TestWildKitchens(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := wildKitchen(t)
		found := fit.Check(k)
		o := anyOption(t)
		for _, g := range k.Groups() {
			applied := kitchen.AppliedOptions{g.ID: {Option: o, By: kitchen.ByChoice}}
			got := NewSite(k).Of(Job{Group: g, Option: o, Cuts: trim.Plan(k, found, applied)})
			for i, item := range everything(got) {
				reworked(t, item)
				if item.Quantity <= 0 {
					t.Fatalf("%+v", item)
				}
				if i > 0 && i < len(got.Items) && got.Items[i-1].Pointer == item.Pointer &&
					slices.Index(Works(), got.Items[i-1].Work) >= slices.Index(Works(), item.Work) {
					t.Fatalf("%s after %s", item.Work, got.Items[i-1].Work)
				}
			}
			if most := most(k, g); quantities(got.Items)[BoardOff] > most {
				t.Fatalf("%v m2 off, of %v at most", quantities(got.Items)[BoardOff], most)
			}
		}
	})
}

// most is the area of all sides of a group's overheads, each a box to its highest.
func most(k *kitchen.Kitchen, g kitchen.OverheadGroup) float64 {
	out := 0.01
	for _, o := range g.Parts {
		long, depth := float64(o.To-o.From)/1e9, float64(o.Depth)/1e9
		high := k.Room.CeilingOver(o).Highest(o.From, o.To).Value.Sub(o.Underside.Lowest(o.From, o.To).Value)
		up := max(0, float64(high.Nearest())/1e9)
		out += long*depth + 2*(long+depth)*up
	}
	return out
}

// Equal kitchens are measured equal, down to the order of the inputs.
func TestMeasuringTwiceIsMeasuringOnce(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k, o := anyKitchen(t), anyOption(t)
		a, b := everything(take(k, o)), everything(take(k, o))
		if !slices.EqualFunc(a, b, func(x, y Item) bool {
			return x.Formula == y.Formula && x.Quantity == y.Quantity && x.Pointer == y.Pointer && slices.Equal(x.Inputs, y.Inputs)
		}) {
			t.Fatalf("%+v, then %+v", a, b)
		}
	})
}
