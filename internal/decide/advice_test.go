package decide

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

type adviceCase struct {
	name    string
	ceiling int
	edits   []func(*kitchen.Kitchen)
	want    kitchen.Option
	gated   bool
	once    kitchen.Option
}

// The three factors that decide whether a soffit comes down (contents, ceiling
// height, footprint) are common practice, no source; so is that the expense is a
// reason by itself. Amounts are of the built-in rates, from memory. Heights are of the invented demo system: the 900 row needs a ceiling
// of 2360, at which it is squeezed in.
func adviceCases() []adviceCase {
	c := func(name string, ceiling int, want kitchen.Option, edits ...func(*kitchen.Kitchen)) adviceCase {
		return adviceCase{name, ceiling, edits, want, false, want}
	}
	g := func(name string, ceiling int, once kitchen.Option, edits ...func(*kitchen.Kitchen)) adviceCase {
		return adviceCase{name, ceiling, edits, kitchen.Keep, true, once}
	}
	free, thin := under(2122), on(func(o *survey.Overhead) { o.Make.LeastStub = mm(400) })
	gap := on(func(o *survey.Overhead) { o.Kind, o.Carrier = survey.ClosedGap, survey.CarriedByOldCabinets })
	return []adviceCase{
		c("nothing in the way, nobody looked: stays", 2500, kitchen.Keep, free, wantsHeight),
		c("nothing in the way, seen empty, taller row fits and is wanted: comes down for it", 2500, kitchen.RemoveTaller, free, empty, wantsHeight),
		c("the ceiling into which the taller row can just be squeezed", 2360, kitchen.RemoveTaller, free, empty, wantsHeight),
		c("a millimetre less: taking it down is wasted, the gap has to be closed again", 2359, kitchen.Keep, free, empty, wantsHeight),
		c("seen empty but nobody wants the height: the expense is saved", 2500, kitchen.Keep, free, empty),
		c("height wanted, a wire inside: stays where it empty would come down", 2500, kitchen.Keep, free, holding(survey.Wire, 2200, survey.MovableEasily), wants(750)),
		g("height wanted, empty, but the surface is not cleared: stays until it is", 2500, kitchen.RemoveTaller, free, empty, wantsHeight, built(1970), on(textured)),
		c("a probe hole alone does not show it empty from end to end", 2500, kitchen.Keep, free, wants(800),
			on(func(o *survey.Overhead) { o.Inside.Looked = survey.ProbeHole })),
		c("a camera through the probe hole showed it empty from end to end", 2500, kitchen.RemoveTaller, free, wants(800),
			on(func(o *survey.Overhead) {
				o.Inside.Looked = survey.ProbeHole
				o.Inside.Seen = []survey.Span{{From: mm(1500), To: mm(3600)}, {From: 0, To: mm(1500)}}
			})),
		c("a snug cabinet never calls for a cut", 2500, kitchen.Keep, under(2120)),
		c("in the way and the cut can be built: trim", 2500, kitchen.Trim),
		c("the taller row is wanted, but for less than it costs over the cut", 2500, kitchen.Trim, empty, wants(100)),
		c("the cut would reach the ceiling: the part over the cabinet is opened", 2122, kitchen.OpenPart),
		c("the cut would leave a stub nobody can build", 2171, kitchen.OpenPart),
		c("the least stub that can be built", 2172, kitchen.Trim),
		c("no cut, and no rest worth keeping: down and closed again over a narrow gap", 2160, kitchen.RemoveClose, over(0, 600)),
		c("a rest of less than the least run goes too", 2160, kitchen.RemoveClose, over(0, 752)),
		c("a rest of the least run could stay, but a narrow gap is closed", 2160, kitchen.RemoveClose, over(0, 753)),
		c("no cut, a high gap above the row: down and left open", 2500, kitchen.RemoveOpen, thin, over(0, 600)),
		c("no cut, the taller row fits and is wanted: down for the taller row", 2500, kitchen.RemoveTaller, thin, over(0, 600), wantsHeight),
		c("no cut, the taller row is wanted and does not fit", 2300, kitchen.RemoveClose, thin, over(0, 600), wantsHeight),
		c("a bearing one is never cut", 2500, kitchen.Keep, on(cannot(survey.Soffit, survey.Bearing))),
		c("a solid one is never cut", 2500, kitchen.Keep, on(cannot(survey.Soffit, survey.Solid))),
		c("a beam is never cut", 2500, kitchen.Keep, on(cannot(survey.Beam, survey.Solid))),
		c("the survey says no", 2500, kitchen.Keep, on(cannot(survey.Soffit, survey.Framed))),
		g("nobody knows the structure: ask", 2500, kitchen.Trim, on(unknown)),
		g("bearing, and the survey says to cut it: an engineer confirms first", 2500, kitchen.Trim,
			on(func(o *survey.Overhead) { o.Structure = survey.Bearing })),
		g("gas inside: the fitter first", 2500, kitchen.Trim, holding(survey.Gas, 2400, survey.MovableUnknown)),
		g("a sprinkler head shows: the sprinkler fitter first", 2500, kitchen.Trim,
			on(func(o *survey.Overhead) { o.Inside.Hints = []string{"sprinkler_head"} })),
		g("a joist runs through where the cut would go", 2500, kitchen.Trim, holding(survey.StructureInside, 2110, survey.NotMovable)),
		c("a joist above the cut is left alone", 2500, kitchen.Trim, holding(survey.StructureInside, 2122, survey.NotMovable)),
		c("an immovable pipe in the way of the cut", 2500, kitchen.Keep, holding(survey.PipeRun, 2121, survey.NotMovable)),
		c("an immovable pipe just clear of the cut", 2500, kitchen.Trim, holding(survey.PipeRun, 2122, survey.NotMovable)),
		c("an immovable pipe nearer to the cut than its clearance", 2500, kitchen.Keep, holding(survey.PipeRun, 2130, survey.NotMovable),
			on(func(o *survey.Overhead) { o.Inside.Services[0].Clearance = mm(9) })),
		g("nobody knows whether the pipe in the way can be moved", 2500, kitchen.Trim, holding(survey.PipeRun, 2110, survey.MovableUnknown)),
		c("a wire in the way is rerouted", 2500, kitchen.Trim, holding(survey.Wire, 2110, survey.MovableUnknown)),
		c("a gap the old cabinets carry goes with them: closed again where narrow", 2359, kitchen.RemoveClose, gap),
		c("a gap the old cabinets carry makes room for the taller row", 2419, kitchen.RemoveTaller, gap),
		c("a gap the old cabinets carry goes with them: left open where high", 2420, kitchen.RemoveOpen, gap),
		c("a gap the old cabinets carry, no new cabinets under it", 2200, kitchen.RemoveOpen, gap, noCabinets),
		c("a duct box is trimmed between its neighbours while the hood stays", 2500, kitchen.Trim, on(ductBox), hood(false)),
		c("a duct box stays if the hood stays where it is", 2500, kitchen.Keep, free, empty, wantsHeight, on(ductBox), hood(false)),
		c("the hood moves: its empty box may go for the taller row", 2500, kitchen.RemoveTaller, free, empty, wantsHeight, on(ductBox), hood(true)),
		c("a tall cabinet in the way", 2500, kitchen.Trim, func(k *kitchen.Kitchen) {
			k.Plan.Cabinets = []cabinet.Placed{tallCabinet("t", 0, 0, 600, 2000)}
		}),
	}
}

func textured(o *survey.Overhead) { o.Textured = survey.Yes }

func cannot(kind survey.OverheadKind, structure survey.Structure) func(*survey.Overhead) {
	return func(o *survey.Overhead) { o.Kind, o.Structure, o.MayCut = kind, structure, survey.CutNo }
}

func unknown(o *survey.Overhead) { o.Structure, o.MayCut = survey.StructureUnknown, survey.CutAsk }

func noCabinets(k *kitchen.Kitchen) { k.Plan.Cabinets = nil }

func ductBox(o *survey.Overhead) { o.Kind, o.Duct = survey.DuctBox, &survey.Duct{Diameter: mm(150)} }

func hood(moves bool) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) {
		k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", Hood: &cabinet.Hood{DuctBox: "s", Moves: moves}}
	}
}

func TestAdviceFollowsTheTrade(t *testing.T) {
	for _, c := range adviceCases() {
		t.Run(c.name, func(t *testing.T) {
			got := decided(room(c.ceiling, c.edits...)).Advice[0]
			if want := (Advised{"s", c.want, c.gated, c.once}); got != want {
				t.Errorf("advised %v gated %v once %v; want %v gated %v once %v",
					got.Option, got.Gated, got.Once, want.Option, want.Gated, want.Once)
			}
		})
	}
}

// A soffit in two parts around an inside corner is one thing: one decision, and
// the worst part rules it.
func TestPartsAreDecidedTogether(t *testing.T) {
	corner := func(edit func(*survey.Overhead)) *kitchen.Kitchen {
		return room(2500, func(k *kitchen.Kitchen) {
			addWall(k, 2400, 2500)
			k.Room.Walls[0].Next, k.Room.Walls[1].Prev = 1, 0
			second := soffit("s2", 1, 0, 2400, 2300)
			second.Group = "s"
			edit(&second)
			k.Room.Walls[1].Overheads = []survey.Overhead{second}
		})
	}
	cases := map[string]struct {
		edit func(*survey.Overhead)
		want Advised
	}{
		"both framed":                        {func(*survey.Overhead) {}, Advised{"s", kitchen.Trim, false, kitchen.Trim}},
		"nobody knows the other part":        {unknown, Advised{"s", kitchen.Keep, true, kitchen.Trim}},
		"the other part bears":               {cannot(survey.Soffit, survey.Bearing), Advised{"s", kitchen.Keep, false, kitchen.Keep}},
		"the other part holds a gas line":    {gasLine, Advised{"s", kitchen.Keep, true, kitchen.Trim}},
		"the other part is a separate thing": {func(o *survey.Overhead) { o.Group = "s2"; unknown(o) }, Advised{"s", kitchen.Trim, false, kitchen.Trim}},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if got := decided(corner(c.edit)).Advice[0]; got != c.want {
				t.Errorf("got %+v, want %+v", got, c.want)
			}
		})
	}
}

func gasLine(o *survey.Overhead) {
	o.Inside.Services = []survey.Service{{Kind: survey.Gas, To: mm(100), Underside: at(2400)}}
}

func TestWhatHoldsIsTheChoiceThenTheAdviceThenThatItStays(t *testing.T) {
	chosen := func(k *kitchen.Kitchen) {
		k.Choices["s"] = kitchen.Choice{Option: kitchen.OpenPart, Spans: []survey.WallSpan{{To: mm(700)}}, Pointer: "/choices/s"}
	}
	cases := map[string]struct {
		edits []func(*kitchen.Kitchen)
		want  kitchen.Option
		by    kitchen.By
		spans int
	}{
		"advice":                                 {nil, kitchen.Trim, kitchen.ByAdvice, 0},
		"choice":                                 {[]func(*kitchen.Kitchen){chosen}, kitchen.OpenPart, kitchen.ByChoice, 1},
		"choice before a gate":                   {[]func(*kitchen.Kitchen){chosen, on(unknown)}, kitchen.OpenPart, kitchen.ByChoice, 1},
		"a gated advice leaves it":               {[]func(*kitchen.Kitchen){on(unknown)}, kitchen.Keep, kitchen.ByDefault, 0},
		"what may not be cut is advised to stay": {[]func(*kitchen.Kitchen){on(cannot(survey.Beam, survey.Solid))}, kitchen.Keep, kitchen.ByAdvice, 0},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			k := room(2500, c.edits...)
			got := decided(k).Applied(k)["s"]
			if got.Option != c.want || got.By != c.by || len(got.Spans) != c.spans {
				t.Errorf("got %v by %v over %d spans", got.Option, got.By, len(got.Spans))
			}
		})
	}
}

// The ceiling need of squeezing in 40 in wall cabinets is 94 1/2 in (common
// practice, no source): what comes down for that row must leave as much.
func TestTallerRowNeedsItsCeiling(t *testing.T) {
	for name, c := range map[string]struct {
		off  length.Length
		want kitchen.Option
	}{
		"94 1/2 in":                   {0, kitchen.RemoveTaller},
		"a sixteenth of an inch less": {-length.Inch / 16, kitchen.Keep},
	} {
		t.Run(name, func(t *testing.T) {
			sixteenths := func(n int) length.Length { return length.Length(n) * length.Inch / 16 }
			k := room(2500, empty, wantsHeight, func(k *kitchen.Kitchen) {
				// underside 54 1/2 in: 30 in cabinets end at 84 1/2 in, 40 in ones at 94 1/2 in
				k.System = demo()
				k.System.Wall.Heights = []length.Length{30 * length.Inch, 40 * length.Inch}
				k.System.WallUnderside, k.System.Tall.Heights = sixteenths(872), nil
				a := &k.Plan.Cabinets[0]
				a.Height, a.Underside, a.Top = 30*length.Inch, sixteenths(872), sixteenths(872)+30*length.Inch
				k.Room.Walls[0].Ceiling = level.Level(level.Fixed((sixteenths(1512) + c.off).Exact()))
				first(k).Underside = level.Level(level.Fixed((sixteenths(1360)).Exact()))
			})
			if got := decided(k).Advice[0].Option; got != c.want {
				t.Errorf("advised %v, want %v", got, c.want)
			}
		})
	}
}
