package trim

import (
	"reflect"
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// cutAt is one cut over a cabinet from 1000 to 1600 mm, at 2122 mm, out of a
// soffit that hangs at 2000 mm.
func cutAt(t *testing.T, change func(*survey.Overhead)) Trim {
	t.Helper()
	s := soffit(0, 3600*mm, profile(0, 2000*mm))
	s.Inside.Looked = survey.Opened
	change(&s)
	return one(t, trimmed(cook(room(wall(3600*mm, 2500*mm, s)), demo(), hung(1000*mm, 1600*mm, 2120*mm))))
}

func TestReturns(t *testing.T) {
	left := func(o *survey.Overhead) { o.From = 950 * mm } // the rest is too short to stay
	cases := map[string]struct {
		change func(*survey.Overhead)
		want   []Return
	}{
		"rests on both sides": {func(*survey.Overhead) {}, []Return{{997 * mm, 330 * mm, MeetsOverhead}, {1603 * mm, 330 * mm, MeetsOverhead}}},
		"left end at a wall":  {left, []Return{{1603 * mm, 330 * mm, MeetsOverhead}}},
		"left end free":       {func(o *survey.Overhead) { left(o); o.Left = survey.EndOpen }, []Return{{950 * mm, 330 * mm, MeetsOpen}, {1603 * mm, 330 * mm, MeetsOverhead}}},
		"left end at a cabinet": {func(o *survey.Overhead) { left(o); o.Left = survey.EndCabinet },
			[]Return{{950 * mm, 330 * mm, MeetsCabinet}, {1603 * mm, 330 * mm, MeetsOverhead}}},
		"corner with nothing beyond": {func(o *survey.Overhead) { left(o); o.Left = survey.EndCorner }, []Return{{1603 * mm, 330 * mm, MeetsOverhead}}},
		"strip runs out at the left": {func(o *survey.Overhead) { o.Underside = profile(997*mm, 2130*mm, 1603*mm, 2000*mm) }, []Return{{1603 * mm, 330 * mm, MeetsOverhead}}},
		"all of it comes down, no free end is left": {func(o *survey.Overhead) { left(o); o.Left, o.Make.LeastStub = survey.EndOpen, 400*mm },
			[]Return{{1603 * mm, 330 * mm, MeetsOverhead}}},
	}
	for name, c := range cases {
		if got := cutAt(t, c.change).Returns; !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

func TestConflicts(t *testing.T) {
	cases := map[string]struct {
		service survey.Service
		least   length.Length // a stub of more than 378 mm cannot be left
		short   length.Length
		code    string
	}{
		"pipe below the cut":          {survey.Service{Kind: survey.PipeRun, To: 3600 * mm, Underside: fixed(2100 * mm)}, 0, 22 * mm, "trim.service.in_the_way"},
		"pipe within its clearance":   {survey.Service{Kind: survey.PipeRun, To: 3600 * mm, Underside: fixed(2130 * mm), Clearance: 25 * mm}, 0, 17 * mm, "trim.service.in_the_way"},
		"pipe just clear":             {survey.Service{Kind: survey.PipeRun, To: 3600 * mm, Underside: fixed(2147 * mm), Clearance: 25 * mm}, 0, 0, ""},
		"pipe beside the cut":         {survey.Service{Kind: survey.PipeRun, To: 997 * mm, Underside: fixed(2100 * mm)}, 0, 0, ""},
		"gas pipe that cannot move":   {survey.Service{Kind: survey.Gas, To: 3600 * mm, Underside: fixed(2100 * mm), Movable: survey.NotMovable}, 0, 22 * mm, "trim.service.immovable"},
		"riser at one station":        {survey.Service{Kind: survey.PipeRun, From: 1200 * mm, To: 1200 * mm, Underside: fixed(2050 * mm)}, 0, 72 * mm, "trim.service.in_the_way"},
		"live wire well above":        {survey.Service{Kind: survey.Wire, To: 3600 * mm, Underside: fixed(2400 * mm), Live: true}, 0, 0, "trim.wire.live"},
		"wire proved dead":            {survey.Service{Kind: survey.Wire, To: 3600 * mm, Underside: fixed(2400 * mm)}, 0, 0, ""},
		"all of it comes down":        {survey.Service{Kind: survey.PipeRun, To: 3600 * mm, Underside: fixed(2400 * mm)}, 400 * mm, 100 * mm, "trim.service.in_the_way"},
		"live wire beside the cut":    {survey.Service{Kind: survey.Cable, From: 1700 * mm, To: 3600 * mm, Underside: fixed(2400 * mm), Live: true}, 0, 0, ""},
		"ends where the cut ends":     {survey.Service{Kind: survey.PipeRun, From: 1603 * mm, To: 3600 * mm, Underside: fixed(2100 * mm)}, 0, 0, ""},
		"sprinkler head in the strip": {survey.Service{Kind: survey.Sprinkler, From: 1500 * mm, To: 1540 * mm, Underside: fixed(1990 * mm)}, 0, 132 * mm, "trim.service.in_the_way"},
	}
	about := []string{"trim.service.in_the_way", "trim.service.immovable", "trim.wire.live"}
	for name, c := range cases {
		c.service.Pointer = "/service"
		tr := cutAt(t, func(o *survey.Overhead) {
			o.Inside.Services = []survey.Service{c.service}
			o.Make.LeastStub = max(o.Make.LeastStub, c.least)
		})
		var short length.Length
		for _, got := range tr.Conflicts {
			short = got.Short.Ceil()
			if got.Pointer != "/service" || got.At != max(c.service.From, 997*mm) {
				t.Errorf("%s: conflict %+v", name, got)
			}
		}
		if short != c.short {
			t.Errorf("%s: short by %v, want %v", name, short, c.short)
		}
		warned := slices.DeleteFunc(codes(tr), func(code string) bool { return !slices.Contains(about, code) })
		if c.code == "" && len(warned) > 0 || c.code != "" && !slices.Equal(warned, []string{c.code}) {
			t.Errorf("%s: findings %v, want %q", name, warned, c.code)
		}
	}
}

// Where the underside is above the cut nothing is cut, and a pipe there is in
// nobody's way.
func TestServiceWhereNothingIsCut(t *testing.T) {
	tr := cutAt(t, func(o *survey.Overhead) {
		o.Underside = profile(1300*mm, 2000*mm, 1300*mm, 2130*mm)
		o.Inside.Services = []survey.Service{{Kind: survey.PipeRun, From: 1400 * mm, To: 3600 * mm, Underside: fixed(2135 * mm), Clearance: 25 * mm}}
	})
	if len(tr.Conflicts) != 0 {
		t.Errorf("conflicts %+v", tr.Conflicts)
	}
}

func TestFraming(t *testing.T) {
	cases := map[string]struct {
		hung  survey.HungFrom
		under length.Length
		want  string
	}{
		"hung from trusses": {survey.HungTrusses, 2000 * mm, "trim.framing.never_notch"},
		"hung from joists":  {survey.HungJoists, 2100 * mm, "trim.framing.never_notch"},
		"nobody knows":      {survey.HungUnknown, 2000 * mm, "trim.framing.hung_from_unknown"},
		"from the wall":     {survey.HungWall, 2000 * mm, ""},
		"lining only":       {survey.HungTrusses, 2115 * mm, ""},
	}
	for name, c := range cases {
		tr := cutAt(t, func(o *survey.Overhead) { o.Make.HungFrom, o.Underside = c.hung, profile(0, c.under) })
		got := slices.DeleteFunc(codes(tr), func(code string) bool { return code == "trim.fireblock.restore" })
		if c.want == "" && len(got) > 0 || c.want != "" && !slices.Equal(got, []string{c.want}) {
			t.Errorf("%s: %v, want %q", name, got, c.want)
		}
	}
}

// IRC 2021, R302.11 asks for fireblocking at soffits and drop ceilings (status F
// by a mirrored copy of the 2021 text); elsewhere it is good practice.
func TestFireblocking(t *testing.T) {
	for set, want := range map[survey.CodeSet]finding.Severity{survey.CodeUSIRC: finding.AsCaution, survey.CodeNone: finding.AsNote} {
		k := cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2000*mm)))), demo(), hung(0, 600*mm, 2120*mm))
		k.Room.CodeSet = set
		tr := one(t, trimmed(k))
		i := slices.Index(codes(tr), "trim.fireblock.restore")
		if i < 0 || tr.Findings[i].Severity != want || tr.Findings[i].Pointer != "/survey/walls/0/overheads/0" {
			t.Errorf("code set %v: %+v", set, tr.Findings)
		}
	}
	if tr := cutAt(t, func(o *survey.Overhead) { o.Structure = survey.Solid }); has(tr, "trim.fireblock.restore") || slices.Contains(stepCodes(tr), "fireblock") {
		t.Errorf("nothing hollow in a solid box: %v", codes(tr))
	}
}

func TestSteps(t *testing.T) {
	free := func(o *survey.Overhead) { o.Underside = profile(0, 2110*mm) } // above the rail's upper edge, 2088
	cases := map[string]struct {
		change func(*survey.Overhead)
		want   []string
	}{
		"the usual order": {free, []string{
			"line_at_rail", "mark_up", "line_to_mark", "mark_ends", "cut_lining", "fireblock", "close_faces", "fit_rail", "hang"}},
		"contents unknown": {func(o *survey.Overhead) { free(o); o.Inside.Looked = survey.ProbeHole }, []string{
			"dead", "line_at_rail", "mark_up", "line_to_mark", "mark_ends", "open_and_look", "cut_lining", "fireblock", "close_faces", "fit_rail", "hang"}},
		"the rail only after the cut": {func(o *survey.Overhead) { o.Make.NewBottom = 12 * mm }, []string{
			"line_on_face", "mark_up_on_face", "line_to_mark", "mark_ends", "cut_lining", "reframe", "fireblock", "new_bottom", "close_faces",
			"board_behind", "line_back_to_rail", "fit_rail", "hang"}},
		"finished wall behind, into the bottom member": {func(o *survey.Overhead) { o.Underside, o.Behind.Wall = profile(0, 2080*mm), survey.Yes }, []string{
			"line_on_face", "mark_up_on_face", "line_to_mark", "mark_ends", "cut_lining", "refit_member", "fireblock", "close_faces",
			"line_back_to_rail", "fit_rail", "hang"}},
		"off the wall, the rail can go on first": {func(o *survey.Overhead) { o.Out = 10 * mm }, []string{
			"line_at_rail", "mark_up", "line_to_mark", "mark_ends", "cut_lining", "reframe", "fireblock", "close_faces", "fit_rail", "hang"}},
		"pipe in the way": {func(o *survey.Overhead) {
			free(o)
			o.Inside.Services = []survey.Service{{Kind: survey.PipeRun, To: 3600 * mm, Underside: fixed(2115 * mm)}}
		}, []string{"line_at_rail", "mark_up", "line_to_mark", "mark_ends", "move_services", "cut_lining", "fireblock", "close_faces", "fit_rail", "hang"}},
		"live wire well above": {func(o *survey.Overhead) {
			free(o)
			o.Inside.Services = []survey.Service{{Kind: survey.Wire, To: 3600 * mm, Underside: fixed(2400 * mm), Live: true}}
		}, []string{"dead", "line_at_rail", "mark_up", "line_to_mark", "mark_ends", "cut_lining", "fireblock", "close_faces", "fit_rail", "hang"}},
		"all of it comes down": {func(o *survey.Overhead) { o.Make.LeastStub = 400 * mm }, []string{
			"mark_ends", "take_down", "fireblock", "close_faces", "board_behind", "line_back_to_rail", "fit_rail", "hang"}},
	}
	for name, c := range cases {
		if got := stepCodes(cutAt(t, c.change)); !slices.Equal(got, c.want) {
			t.Errorf("%s:\n got %v\nwant %v", name, got, c.want)
		}
	}
}

func TestStepsWithoutRail(t *testing.T) {
	s := demo()
	s.Rail = nil
	over := soffit(0, 3600*mm, profile(0, 2110*mm))
	over.Inside.Looked = survey.Opened
	tr := one(t, trimmed(cook(room(wall(3600*mm, 2500*mm, over)), s, hung(0, 3600*mm, 2120*mm))))
	if want := []string{"line_at_top", "mark_up_from_top", "line_to_mark", "cut_lining", "fireblock", "hang"}; !slices.Equal(stepCodes(tr), want) {
		t.Errorf("steps %v, want %v", stepCodes(tr), want)
	}
	up := tr.Steps[1].Params[0]
	if up.Name != "headroom" || up.Length.Value.CmpLength(2*mm) != 0 {
		t.Errorf("marked up by %+v, want 2 mm", up)
	}
}

// The duct box between two cabinets: the neighbours are hung first and their top
// line is carried across.
func TestDuctBoxBetweenTwoCabinets(t *testing.T) {
	box := soffit(2620*mm, 2780*mm, profile(0, 2110*mm))
	box.Kind, box.ID, box.Left, box.Right = survey.DuctBox, "d1", survey.EndOpen, survey.EndOpen
	box.Inside.Looked = survey.Opened
	cook3 := func(cabinets ...cabinet.Placed) *kitchen.Kitchen {
		k := cook(room(wall(3600*mm, 2500*mm, box)), demo(), cabinets...)
		k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", From: 2400 * mm, To: 3001 * mm, Hood: &cabinet.Hood{DuctBox: "d1"}}
		return k
	}
	k := cook3(hung(1800*mm, 2400*mm, 2120*mm), hung(2400*mm, 3000*mm, 2120*mm), hung(3000*mm, 3300*mm, 2120*mm),
		hung(0, 600*mm, 2240*mm), hung(700*mm, 1300*mm, 2120*mm), hung(3300*mm, 3600*mm, 2120*mm))
	tr := one(t, trimmed(k))
	want := []string{"fit_rails_beside", "hang_neighbours", "check_tops", "carry_line", "mark_up_from_top", "cut_lining", "fireblock", "close_faces", "duct_stub", "fit_middle"}
	if !slices.Equal(stepCodes(tr), want) {
		t.Errorf("steps %v, want %v", stepCodes(tr), want)
	}
	if p := tr.Steps[1].Params; p[0].Text != "a" || p[1].Text != "c" {
		t.Errorf("neighbours %v, want a and c", p)
	}
	for _, f := range tr.Findings {
		switch f.Code {
		case "trim.duct.stub":
			if f.Have.Value.CmpLength(378*mm) != 0 {
				t.Errorf("stub %v, want the 378 mm between cut and ceiling", f.Have.Value)
			}
		case "trim.duct.hood": // middles at 2700 and 2700.5 mm
			if f.Params[0].Length.Value.CmpLength(500_000) != 0 {
				t.Errorf("middles %v apart, want 0.5 mm", f.Params[0].Length.Value)
			}
		}
	}
	if !has(tr, "trim.duct.neighbours_first") || !has(tr, "trim.duct.stub") || !has(tr, "trim.duct.hood") {
		t.Errorf("findings %v", codes(tr))
	}

	k.Room.Walls[0].Overheads[0].Inside.Services = []survey.Service{
		{Kind: survey.DuctRun, From: 2630 * mm, To: 2770 * mm, Underside: fixed(1900 * mm), Movable: survey.NotMovable}}
	tr = one(t, trimmed(k))
	if len(tr.Conflicts) != 1 || !has(tr, "trim.duct.shortened") || slices.Contains(stepCodes(tr), "move_services") {
		t.Errorf("the box's own duct: %v, %v", codes(tr), stepCodes(tr))
	}

	k.Room.Walls[0].Overheads[0].Underside = profile(0, 2060*mm) // in the rail's place
	tr = one(t, trimmed(k))
	if got := stepCodes(tr); !slices.Equal(got[len(got)-3:], []string{"board_behind", "fit_rail_between", "fit_middle"}) {
		t.Errorf("rail behind the box: %v", got)
	}

	tr = one(t, trimmed(cook3(hung(1800*mm, 2400*mm, 2120*mm), hung(2400*mm, 3000*mm, 2120*mm), hung(3000*mm, 3600*mm, 1960*mm))))
	if has(tr, "trim.duct.neighbours_first") || slices.Contains(stepCodes(tr), "carry_line") {
		t.Errorf("no neighbour of the row on the right: %v", stepCodes(tr))
	}
}

func TestSky(t *testing.T) {
	k := cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2000*mm)))), demo(), hung(1000*mm, 1600*mm, 2120*mm))
	o := &k.Room.Walls[0].Overheads[0]
	at := func(a kitchen.AppliedOptions) kitchen.Sky { return Sky(k, a, Plan(k, fit.Check(k), a)) }

	cut := at(chosen(kitchen.Trim))
	if len(cut.Hung) != 3 || len(cut.Gone) != 0 || cut.Hung[1].Cut == nil || cut.Hung[1].Cut.CmpLength(2122*mm) != 0 {
		t.Errorf("trimmed: %+v", cut)
	}
	if cut.Hung[0].To != 997*mm || cut.Hung[2].From != 1603*mm || cut.Hung[0].Cut != nil {
		t.Errorf("trimmed: rests %+v", cut)
	}
	if low, _ := cut.Hung[1].Lowest(1000*mm, 1600*mm); low.CmpLength(2122*mm) != 0 {
		t.Errorf("hangs at %v over the cabinet after the trim, want 2122 mm", low)
	}
	gone := at(chosen(kitchen.OpenPart))
	if len(gone.Hung) != 2 || len(gone.Gone) != 1 || gone.Gone[0] != (kitchen.Gone{Overhead: o, From: 997 * mm, To: 1603 * mm}) {
		t.Errorf("opened: %+v", gone)
	}
	for _, option := range []kitchen.Option{kitchen.RemoveTaller, kitchen.RemoveClose, kitchen.RemoveOpen, kitchen.Move} {
		if down := at(chosen(option)); len(down.Hung) != 0 || len(down.Gone) != 1 || down.Gone[0].To != 3600*mm {
			t.Errorf("%v: %+v", option, down)
		}
	}
	for _, a := range []kitchen.AppliedOptions{chosen(kitchen.Keep), {}} {
		if kept := at(a); len(kept.Hung) != 1 || kept.Hung[0] != (kitchen.Hung{Overhead: o, From: 0, To: 3600 * mm}) {
			t.Errorf("kept: %+v", kept)
		}
	}
	k.Plan.Cabinets[0].Top = 1960 * mm
	if nothing := at(chosen(kitchen.Trim)); len(nothing.Hung) != 1 || nothing.Hung[0].Cut != nil {
		t.Errorf("nothing to take: %+v", nothing)
	}
}
