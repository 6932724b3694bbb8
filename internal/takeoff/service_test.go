package takeoff

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/contents"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Wires along 2 m, of which 0.8 are over the opening; they go into the wall, which
// is boarded 0.30 high. A pipe is only beside it. Structure is not moved. A service
// that the work does not come to stays.
func TestServicesThatWereSeen(t *testing.T) {
	o := soffit(0, 3000, flat(2100))
	service := func(kind survey.ServiceKind, from, to int) survey.Service {
		return survey.Service{Kind: kind, From: length.Length(from) * mm, To: length.Length(to) * mm, Underside: fixed(2200)}
	}
	o.Inside = survey.Inside{Looked: survey.Opened, Services: []survey.Service{
		service(survey.Wire, 0, 2000), service(survey.Cable, 1600, 3000), service(survey.PipeRun, 2000, 2500),
		service(survey.StructureInside, 0, 3000), service(survey.DuctRun, 0, 3000),
	}}
	k := cook([]survey.Wall{wall(3000, 2400, o)})
	open := job(k, kitchen.OpenPart, survey.WallSpan{From: 900 * mm, To: 1700 * mm})
	open.Reached = func(_ *survey.Overhead, s *survey.Service) bool { return s.Kind != survey.DuctRun }
	have := sums(NewSite(k).Of(open).Items)
	if have[RerouteWire] != "0.9" || have[ReroutePipe] != "" || have[RerouteDuct] != "" || have[BackingBoard] != "0.24" {
		t.Errorf("opened: %v", have) // wire 0.8, cable 0.1, over 0.8 together
	}
	have = sums(take(k, kitchen.RemoveOpen).Items)
	if have[RerouteWire] != "3.4" || have[ReroutePipe] != "0.5" || have[RerouteDuct] != "3" || have[BackingBoard] != "0.9" {
		t.Errorf("removed: %v", have)
	}
}

// A wire of 1.5 m and a pipe of 1 m that move only with work, beside a wire of 2 m
// and one of 1 m of which nobody knows: 2 + 1 + 1.5 × 2 = 6 and 1 × 2 = 2, by the
// common practice, no source, of counting them double; 7.5 and 3 at three times.
func TestWhatMovesOnlyWithWork(t *testing.T) {
	o := soffit(0, 3000, flat(2100))
	service := func(kind survey.ServiceKind, long int, movable survey.Movable) survey.Service {
		return survey.Service{Kind: kind, To: length.Length(long) * mm, Underside: fixed(2200), Movable: movable}
	}
	o.Inside = survey.Inside{Looked: survey.Opened, Services: []survey.Service{
		service(survey.Wire, 2000, survey.MovableEasily), service(survey.Wire, 1000, survey.MovableUnknown),
		service(survey.Cable, 1500, survey.MovableWithWork), service(survey.PipeRun, 1000, survey.MovableWithWork),
	}}
	k := cook([]survey.Wall{wall(3000, 2400, o)})
	for _, c := range []struct {
		given       kitchen.Figures
		wires, pipe string
	}{{nil, "6", "2"}, {kitchen.Figures{kitchen.WithWork: 3000}, "7.5", "3"}} {
		k.Prices.Figures = c.given
		items := take(k, kitchen.RemoveOpen).Items
		if have := sums(items); have[RerouteWire] != c.wires || have[ReroutePipe] != c.pipe {
			t.Errorf("%v: wires %s, pipe %s, want %s and %s", c.given, have[RerouteWire], have[ReroutePipe], c.wires, c.pipe)
		}
		for _, i := range items {
			reworked(t, i)
			if i.Work == ReroutePipe && (i.Formula != "length*with_work" || i.Inputs[1].Name != "with_work") {
				t.Errorf("%q of %v", i.Formula, i.Inputs)
			}
		}
	}
}

// The duct of a box, seen, moves only with work: twice the 0.7 m of the box, and
// twice 0.7 + 1 m where it moves aside.
func TestDuctThatMovesOnlyWithWork(t *testing.T) {
	k := ductBox(true)
	o := &k.Room.Walls[0].Overheads[0]
	o.Inside = survey.Inside{Looked: survey.Opened, Services: []survey.Service{{Kind: survey.DuctRun, From: o.From, To: o.To, Movable: survey.MovableWithWork}}}
	for option, want := range map[kitchen.Option]string{kitchen.RemoveOpen: "1.4", kitchen.Move: "3.4"} {
		items := take(k, option).Items
		if have := sums(items)[RerouteDuct]; have != want {
			t.Errorf("%s: duct %s, want %s", option, have, want)
		}
		for _, i := range items {
			reworked(t, i)
		}
	}
}

// ductBox is 350 wide, 300 deep and 700 high, open at both ends, with a hood's duct.
func ductBox(moves bool) *kitchen.Kitchen {
	o := soffit(1000, 1350, flat(1700))
	o.Kind, o.Depth, o.Left, o.Right = survey.DuctBox, 300*mm, survey.EndCabinet, survey.EndCabinet
	k := cook([]survey.Wall{wall(3000, 2400, o)}, hung(0, 1000, 1350, 2120))
	k.Plan.Cooking = &cabinet.Cooking{Hood: &cabinet.Hood{DuctBox: "s", Moves: moves}}
	return k
}

func TestDuctOfABox(t *testing.T) {
	have := sums(take(ductBox(false), kitchen.Trim).Items)
	if have[RerouteDuct] != "0.422" { // cut back with the box, from 1700 to 2122
		t.Errorf("trimmed: duct %s", have[RerouteDuct])
	}
	gone := take(ductBox(true), kitchen.RemoveOpen)
	if have := sums(gone.Items); have[RerouteDuct] != "0.7" {
		t.Errorf("removed: duct %s", have[RerouteDuct])
	}
	want(t, gone.Found[contents.PipeOrDuct], nil) // it is counted for sure

	// Nobody knows of a duct in it: only if there is one.
	k := ductBox(true)
	k.Plan.Cooking = nil
	gone = take(k, kitchen.RemoveOpen)
	if have := sums(gone.Items); have[RerouteDuct] != "" {
		t.Errorf("removed without a hood: duct %s", have[RerouteDuct])
	}
	want(t, gone.Found[contents.PipeOrDuct], map[Work]string{RerouteDuct: "0.7"})
	want(t, gone.Found[contents.FewWires], map[Work]string{RerouteWire: "1.4", BackingBoard: "0.105"})
	cut := take(k, kitchen.Trim)
	if have := sums(cut.Items); have[RerouteDuct] != "" {
		t.Errorf("trimmed without a hood: duct %s", have[RerouteDuct])
	}
	want(t, cut.Found[contents.PipeOrDuct], map[Work]string{RerouteDuct: "0.422"})
}

// The box moves: board 0.35 × 0.30 + 0.35 × 0.70 + 2 × 0.30 × 0.70 = 0.77 m2 comes
// off and goes on again; framing 3 × 0.35 and 2 hangers of 0.30 + 0.70; the duct goes
// its 0.70 up elsewhere and 1 m aside.
func TestBoxThatMoves(t *testing.T) {
	have := sums(take(ductBox(true), kitchen.Move).Items)
	if have[BoardOff] != "0.77" || have[BoardOn] != "0.77" || have[FrameOff] != "3.05" || have[FrameRefit] != "3.05" || have[RerouteDuct] != "1.7" {
		t.Errorf("have %v", have)
	}
}
