package rail

import (
	"reflect"
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// The lower edge is the row's top less the rail drop: 82 3/16 in for 30 in wall
// and 80 in tall cabinets that top out at 84 1/2 in (common practice, no source).
func TestLowerEdgeOfInchCabinets(t *testing.T) {
	s := &cabinet.System{FitGap: in / 16, Rail: &cabinet.Rail{Drop: 2*in + 5*in/16}}
	high := 54*in + in/2
	k := cook(room(wall(120*in)), s,
		cabinet.Placed{Kind: cabinet.Wall, To: 30 * in, Height: 30 * in, Underside: high, Top: high + 30*in},
		cabinet.Placed{Kind: cabinet.Tall, From: 90 * in, To: 120 * in, Height: 80 * in, Underside: 4*in + in/2, Top: 84*in + in/2},
	)
	r := one(t, planned(k))
	if want := 82*in + 3*in/16; r.LowerEdge != want {
		t.Errorf("lower edge %v, want %v", r.LowerEdge, want)
	}
	if got := len(r.Pieces); got != 2 {
		t.Errorf("%d pieces for a wall and a tall cabinet apart, want 2", got)
	}
}

func TestRows(t *testing.T) {
	tall := cabinet.Placed{Kind: cabinet.Tall, From: 3000 * mm, To: 3600 * mm, Depth: 600 * mm, Top: 2360 * mm}
	base := cabinet.Placed{Kind: cabinet.Base, From: 0, To: 600 * mm, Depth: 600 * mm, Top: 860 * mm}
	k := cook(room(wall(3600*mm)), demo(), hung(600*mm, 1200*mm), tall, base, hung(0, 600*mm))
	rails := planned(k)
	if len(rails) != 2 {
		t.Fatalf("%d rails, want one for each top line", len(rails))
	}
	if rails[0].LowerEdge != 2296*mm || rails[1].LowerEdge != 2056*mm {
		t.Errorf("lower edges %v and %v, want 2296 and then 2056", rails[0].LowerEdge, rails[1].LowerEdge)
	}
	if got := rails[1].Cabinets; len(got) != 2 || got[0].From != 0 {
		t.Errorf("cabinets are not from the left: %v", got)
	}
	if want := []survey.Span{{From: 0, To: 1200 * mm}}; !reflect.DeepEqual(spans(rails[1].Pieces), want) {
		t.Errorf("pieces %v, want %v: cabinets that touch share one", rails[1].Pieces, want)
	}
}

func TestCornerCabinetHangsOnBothWalls(t *testing.T) {
	a, b := wall(3000*mm), wall(2000*mm)
	a.Next, b.Prev, b.ID = 1, 0, "b"
	c := hung(2100*mm, 3000*mm)
	c.Corner = &cabinet.Corner{OtherWall: 1, OtherWidth: 900 * mm, Shape: cabinet.CornerL, AtRight: true}
	rails := planned(cook(room(a, b), demo(), c))
	if len(rails) != 2 || rails[1].Wall != 1 || rails[1].Pieces[0].To != 900*mm {
		t.Fatalf("rails %+v, want one on each wall", rails)
	}
	if !slices.Contains(codes(t, rails[1]), "rail.corner.butts") || slices.Contains(codes(t, rails[0]), "rail.corner.butts") {
		t.Errorf("the second rail stops against the first: %v, %v", codes(t, rails[0]), codes(t, rails[1]))
	}
}

func TestFillers(t *testing.T) {
	for name, c := range map[string]struct {
		filler cabinet.Filler
		want   int
	}{
		"of the row":        {cabinet.Filler{Kind: cabinet.Wall, From: 600 * mm, To: 640 * mm}, 1},
		"of any row":        {cabinet.Filler{AnyKind: true, Kind: cabinet.Base, From: 600 * mm, To: 640 * mm}, 1},
		"of the base row":   {cabinet.Filler{Kind: cabinet.Base, From: 600 * mm, To: 640 * mm}, 2},
		"narrower than gap": {cabinet.Filler{Kind: cabinet.Wall, From: 600 * mm, To: 630 * mm}, 2},
		"on another wall":   {cabinet.Filler{Wall: 1, Kind: cabinet.Wall, From: 600 * mm, To: 640 * mm}, 2},
	} {
		k := cook(room(wall(3600*mm), wall(3600*mm)), demo(), hung(0, 600*mm), hung(640*mm, 1240*mm))
		k.Plan.Fillers = []cabinet.Filler{c.filler}
		if got := one(t, planned(k)).Pieces; len(got) != c.want {
			t.Errorf("filler %s: pieces %v, want %d", name, got, c.want)
		}
	}
}

func TestNoRailWithHangingStrips(t *testing.T) {
	s := demo()
	s.Rail = nil
	k := cook(room(wall(3600*mm)), s, hung(0, 600*mm))
	if got := planned(k); got == nil || len(got) != 0 {
		t.Errorf("rails %v, want an empty list", got)
	}
	if plan, missing := Stock(k, planned(k)); plan != nil || missing != nil {
		t.Errorf("stock %v %v where there is no rail", plan, missing)
	}
}

// A soffit that hangs below the rail: kept it interrupts the rail, cut it does
// not, but the rail waits for the cut.
func TestSoffitInTheRailsPlace(t *testing.T) {
	w := wall(3600 * mm)
	w.Overheads = []survey.Overhead{soffit(1000*mm, 3600*mm, profile(1000*mm, 2050*mm))}
	k := cook(room(w), demo(), hung(0, 1800*mm))
	o := &k.Room.Walls[0].Overheads[0]

	kept := one(t, planned(k))
	if want := []survey.Span{{From: 0, To: 1000 * mm}}; !reflect.DeepEqual(spans(kept.Pieces), want) {
		t.Errorf("kept: pieces %v, want %v", kept.Pieces, want)
	}
	if !kept.BeforeCut || !slices.Contains(codes(t, kept), "rail.cabinet.part_without") {
		t.Errorf("kept: before cut %v, %v", kept.BeforeCut, codes(t, kept))
	}

	line := (2122 * mm).Exact()
	cut := kitchen.Sky{Hung: []kitchen.Hung{{Overhead: o, From: o.From, To: o.To, Cut: &line}}}
	r := one(t, Plan(k, k.Found(), cut))
	if want := []survey.Span{{From: 0, To: 1800 * mm}}; !reflect.DeepEqual(spans(r.Pieces), want) {
		t.Errorf("cut: pieces %v, want %v", r.Pieces, want)
	}
	if r.BeforeCut || !slices.Contains(codes(t, r), "rail.wall.unseen") {
		t.Errorf("cut: before cut %v, %v", r.BeforeCut, codes(t, r))
	}
	o.Behind.Wall = survey.No
	if r := one(t, Plan(k, k.Found(), cut)); !slices.Contains(codes(t, r), "rail.wall.unfinished") {
		t.Errorf("unfinished wall behind: %v", codes(t, r))
	}
	o.Behind.Wall = survey.Yes
	if r := one(t, Plan(k, k.Found(), cut)); slices.Contains(codes(t, r), "rail.wall.unseen") || r.BeforeCut {
		t.Errorf("finished wall behind: %v", codes(t, r))
	}
}

// A closed gap that goes with the old cabinets does not hold the rail up, but
// nobody has seen the wall behind it.
func TestClosedGapCarriedByOldCabinets(t *testing.T) {
	w := wall(3600 * mm)
	gap := soffit(0, 3600*mm, profile(0, 2050*mm))
	gap.Kind, gap.Carrier = survey.ClosedGap, survey.CarriedByOldCabinets
	w.Overheads = []survey.Overhead{gap}
	r := one(t, planned(cook(room(w), demo(), hung(0, 1800*mm))))
	if !r.BeforeCut || len(r.Pieces) != 1 || !slices.Contains(codes(t, r), "rail.wall.unseen") {
		t.Errorf("before cut %v, pieces %v, %v", r.BeforeCut, r.Pieces, codes(t, r))
	}
}

// Where a sloping soffit comes down to the rail's upper edge the rail stops; a
// soffit that stands off the wall lets it pass behind.
func TestSlopingSoffit(t *testing.T) {
	w := wall(3000 * mm)
	w.Overheads = []survey.Overhead{soffit(0, 3000*mm, profile(0, 2100*mm, 3000*mm, 2070*mm))}
	k := cook(room(w), demo(), hung(0, 3000*mm))
	// The rail's upper edge is 2088 mm; the underside falls 1 mm in 100 mm from 2100 mm.
	r := one(t, planned(k))
	if want := []survey.Span{{From: 0, To: 1200 * mm}}; !reflect.DeepEqual(spans(r.Pieces), want) {
		t.Errorf("pieces %v, want %v", r.Pieces, want)
	}
	k.Room.Walls[0].Overheads[0].Out = 20 * mm
	if r := one(t, planned(k)); r.Pieces[len(r.Pieces)-1].To != 3000*mm {
		t.Errorf("a soffit off the wall stops the rail: %v", r.Pieces)
	}
}

// A soffit of the next wall ends against this wall and stops this wall's rail.
func TestSoffitOfTheNextWall(t *testing.T) {
	for _, side := range []string{"next", "previous"} {
		a, b := wall(3000*mm), wall(2000*mm)
		b.ID = "b"
		want := survey.Span{From: 0, To: 2670 * mm}
		if side == "next" {
			a.Next, b.Prev = 1, 0
			b.Overheads = []survey.Overhead{soffit(0, 2000*mm, profile(0, 2000*mm))}
		} else {
			a.Prev, b.Next = 1, 0
			want = survey.Span{From: 330 * mm, To: 3000 * mm}
			b.Overheads = []survey.Overhead{soffit(0, 2000*mm, profile(0, 2000*mm))}
		}
		s := demo()
		s.Rail.Stock = nil
		r := one(t, planned(cook(room(a, b), s, hung(0, 3000*mm))))
		if got := spans(r.Pieces); !reflect.DeepEqual(got, []survey.Span{want}) {
			t.Errorf("%s wall: pieces %v, want %v", side, got, want)
		}
	}
}

func TestOpeningsAndFixtures(t *testing.T) {
	window := func(head length.Length) survey.Opening {
		return survey.Opening{From: 1400 * mm, To: 2200 * mm, Sill: fixed(1050 * mm), Head: fixed(head), Casing: 70 * mm}
	}
	point := func(level, out length.Length) survey.Fixture {
		return survey.Fixture{Pointer: "/p", At: 700 * mm, Level: fixed(level), Width: 81 * mm, Height: 80 * mm, Out: out}
	}
	cases := map[string]struct {
		openings []survey.Opening
		fixtures []survey.Fixture
		want     []survey.Span
		code     string
	}{
		"window whose casing ends under the rail": {openings: []survey.Opening{window(1986 * mm)}, want: []survey.Span{{To: 3600 * mm}}},
		"window whose casing reaches the rail":    {openings: []survey.Opening{window(1987 * mm)}, want: []survey.Span{{To: 1330 * mm}, {From: 2270 * mm, To: 3600 * mm}}},
		"door":                                    {openings: []survey.Opening{{From: 0, To: 900 * mm, ToFloor: true, Head: fixed(2050 * mm), Casing: 60 * mm}}, want: []survey.Span{{From: 960 * mm, To: 3600 * mm}}},
		"hatch above the rail":                    {openings: []survey.Opening{{From: 100 * mm, To: 500 * mm, Sill: fixed(2088 * mm), Head: fixed(2400 * mm)}}, want: []survey.Span{{To: 3600 * mm}}},
		"pipe before the wall":                    {fixtures: []survey.Fixture{point(2070*mm, 30*mm)}, want: []survey.Span{{To: 659*mm + mm/2}, {From: 740*mm + mm/2, To: 3600 * mm}}},
		"socket flush in the wall":                {fixtures: []survey.Fixture{point(2070*mm, 0)}, want: []survey.Span{{To: 3600 * mm}}, code: "rail.fixture.behind"},
		"socket below the rail":                   {fixtures: []survey.Fixture{point(2016*mm, 0)}, want: []survey.Span{{To: 3600 * mm}}},
	}
	for name, c := range cases {
		w := wall(3600 * mm)
		w.Openings, w.Fixtures = c.openings, c.fixtures
		s := demo()
		s.Rail.Stock = nil
		r := one(t, planned(cook(room(w), s, hung(0, 3600*mm))))
		if got := spans(r.Pieces); !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: pieces %v, want %v", name, got, c.want)
		}
		if got := slices.Contains(codes(t, r), "rail.fixture.behind"); got != (c.code != "") {
			t.Errorf("%s: findings %v", name, codes(t, r))
		}
	}
}

func TestCabinetWithoutRail(t *testing.T) {
	w := wall(3600 * mm)
	w.Openings = []survey.Opening{{From: 600 * mm, To: 1200 * mm, ToFloor: true, Head: fixed(2400 * mm)}}
	r := one(t, planned(cook(room(w), demo(), hung(600*mm, 1200*mm))))
	if len(r.Pieces) != 0 || !slices.Contains(codes(t, r), "rail.cabinet.without") {
		t.Errorf("pieces %v, findings %v", r.Pieces, codes(t, r))
	}
}

func TestStationsAreChecksAboveTheFloor(t *testing.T) {
	w := wall(3600 * mm)
	w.Floor = profile(0, 0, 300*mm, -3*mm, 300*mm, -13*mm, 3600*mm, -13*mm)
	r := one(t, planned(cook(room(w), demo(), hung(0, 600*mm))))
	type check struct{ at, above length.Length }
	var got []check
	for _, s := range r.Stations {
		got = append(got, check{s.At, s.AboveFloor.Floor()})
	}
	// The datum is the floor's highest point, 0; the screws are at 40, 300 and 560 mm.
	want := []check{{0, 2056 * mm}, {40 * mm, 2056*mm + 400_000}, {300 * mm, 2059 * mm}, {300 * mm, 2069 * mm}, {560 * mm, 2069 * mm}, {600 * mm, 2069 * mm}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("stations %v, want %v", got, want)
	}
}
