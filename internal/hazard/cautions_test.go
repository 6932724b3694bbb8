package hazard

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/rules"
	"railhead/internal/survey"
)

const soffit = "/survey/walls/0/overheads/0"

func mm(v int) length.Length { return length.Length(v) * length.Millimetre }

// floor is where the floor lies in the survey's frame.
const floor = 1000 * length.Millimetre

// base is a young house with one plain framed soffit that was opened and is
// empty, and no cabinets: work on it is dusty, high and can fall, no more.
func base(edits ...func(*kitchen.Kitchen)) *kitchen.Kitchen {
	flat := level.Level(level.Fixed(floor.Exact()))
	wall := survey.Wall{Pointer: "/survey/walls/0", Length: mm(3600), Prev: -1, Next: -1, Floor: flat}
	wall.Overheads = []survey.Overhead{{
		ID: "s", Group: "s", Pointer: soffit, To: mm(3600), Depth: mm(330),
		Structure: survey.Framed, MayCut: survey.CutYes, Finish: "gypsum_board", Painted: survey.No, Textured: survey.No,
		Inside: survey.Inside{Pointer: soffit + "/inside", Looked: survey.Opened},
	}}
	k := &kitchen.Kitchen{
		Room:   &survey.Room{Built: 2010, CodeSet: survey.CodeUSIRC, Walls: []survey.Wall{wall}, Groups: []survey.Group{{Walls: []int{0}}}},
		System: &cabinet.System{}, Plan: &cabinet.Plan{},
	}
	for _, edit := range edits {
		edit(k)
	}
	k.Datums = kitchen.Datums(k.Room, k.Plan, nil)
	return k
}

func on(edit func(*survey.Overhead)) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { edit(&k.Room.Walls[0].Overheads[0]) }
}

func service(kind survey.ServiceKind, live bool) func(*kitchen.Kitchen) {
	return on(func(o *survey.Overhead) {
		o.Inside.Services = []survey.Service{{Pointer: soffit + "/inside/services/0", Kind: kind, Live: live}}
	})
}

func planned(kind cabinet.Kind, width, height int) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) {
		i := len(k.Plan.Cabinets)
		c := cabinet.Placed{Index: i, Pointer: "/plan/cabinets/" + string(rune('0'+i)), Kind: kind, To: mm(width), Depth: mm(360), Height: mm(height)}
		c.Underside = mm(120)
		if kind == cabinet.Wall {
			c.Underside = mm(1460)
		}
		c.Top = c.Underside + c.Height
		k.Plan.Cabinets = append(k.Plan.Cabinets, c)
	}
}

func gasValve(at, height int) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) {
		k.Room.Walls[0].Fixtures = []survey.Fixture{{
			Pointer: "/survey/walls/0/points/0", Kind: survey.GasValve, At: mm(at), Width: mm(80), Height: mm(80),
			Level: level.Fixed((floor + mm(height)).Exact()),
		}}
	}
}

func written(in []finding.Caution) []string {
	var out []string
	for _, c := range in {
		out = append(out, c.Code+" "+c.Pointer)
	}
	return out
}

var (
	opening = kitchen.AppliedOptions{"s": {Option: kitchen.Trim}}
	keeping = kitchen.AppliedOptions{"s": {Option: kitchen.Keep}}
)

// What each circumstance warns of beside what every opening does; the triggers
// are common practice, no source, but where a document is named.
func TestTriggers(t *testing.T) {
	inside, first := soffit+"/inside", soffit+"/inside/services/0"
	unseen := []string{"caution.wires.unseen " + inside, "caution.gas.unseen " + inside}
	cases := []struct {
		name  string
		want  []string
		edits []func(*kitchen.Kitchen)
	}{
		{"nothing but the work itself", nil, nil},
		{"nobody looked inside", unseen, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Inside.Looked = survey.NotLooked })}},
		{"a probe hole only", unseen, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Inside.Looked = survey.ProbeHole })}},
		{"a wire", []string{"caution.wires.live " + first}, []func(*kitchen.Kitchen){service(survey.Wire, true)}},
		{"a cable", []string{"caution.wires.live " + first}, []func(*kitchen.Kitchen){service(survey.Cable, true)}},
		{"a wire proved dead", nil, []func(*kitchen.Kitchen){service(survey.Wire, false)}},
		{"gas", []string{"caution.gas.inside " + first}, []func(*kitchen.Kitchen){service(survey.Gas, false)}},
		{"a sprinkler line", []string{"caution.sprinkler.line " + first}, []func(*kitchen.Kitchen){service(survey.Sprinkler, false)}},
		{"a sprinkler head shows", []string{"caution.sprinkler.line " + inside + "/hints"}, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Inside.Hints = []string{"upper_floor", "sprinkler_head"} })}},
		{"a joist inside", []string{"caution.structure.inside " + first}, []func(*kitchen.Kitchen){service(survey.StructureInside, false)}},
		{"bearing", []string{"caution.structure.bearing " + soffit + "/structure"}, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Structure = survey.Bearing })}},
		{"unknown structure", []string{"caution.structure.unknown " + soffit + "/structure"}, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Structure = survey.StructureUnknown })}},
		{"hung from trusses", []string{"caution.structure.notch " + soffit + "/make/hung_from"}, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Make.HungFrom = survey.HungTrusses })}},
		{"1980, textured", []string{"caution.asbestos.presumed " + soffit}, []func(*kitchen.Kitchen){year(1980), on(func(o *survey.Overhead) { o.Textured = survey.Yes })}},
		{"1980, plain wallboard", []string{"caution.asbestos.possible " + soffit}, []func(*kitchen.Kitchen){year(1980)}},
		{"1981, textured", nil, []func(*kitchen.Kitchen){year(1981), on(func(o *survey.Overhead) { o.Textured = survey.Yes })}},
		{"1977, painted", []string{"caution.asbestos.possible " + soffit, "caution.lead.renovation " + soffit}, []func(*kitchen.Kitchen){year(1977), painted}},
		{"1978, painted", []string{"caution.asbestos.possible " + soffit}, []func(*kitchen.Kitchen){year(1978), painted}},
		{"year unknown, painted", []string{"caution.asbestos.possible " + soffit, "caution.lead.possible " + soffit}, []func(*kitchen.Kitchen){year(0), painted}},
		{"1977, painted, no code set known here", []string{"caution.asbestos.local " + soffit, "caution.lead.local " + soffit}, []func(*kitchen.Kitchen){year(1977), painted, elsewhere}},
		{"two people for a tall cabinet", []string{"caution.lift.two_people /plan/cabinets/0"}, []func(*kitchen.Kitchen){planned(cabinet.Tall, 600, 2000)}},
		{"one person for a small wall cabinet", []string{"caution.falling.cabinets /plan/cabinets/0"}, []func(*kitchen.Kitchen){planned(cabinet.Wall, 799, 899)}},
		{"two people for a wide wall cabinet", []string{"caution.falling.cabinets /plan/cabinets/0", "caution.lift.two_people /plan/cabinets/0"}, []func(*kitchen.Kitchen){planned(cabinet.Wall, 800, 500)}},
		{"two people for a high wall cabinet", []string{"caution.falling.cabinets /plan/cabinets/0", "caution.lift.two_people /plan/cabinets/0"}, []func(*kitchen.Kitchen){planned(cabinet.Wall, 300, 900)}},
		{"old wall cabinets come down", []string{"caution.falling.old_cabinets /plan/old_cabinets"}, []func(*kitchen.Kitchen){old(cabinet.Wall)}},
		{"old base cabinets do not fall", nil, []func(*kitchen.Kitchen){old(cabinet.Base)}},
		{"cooking with gas", []string{"caution.cooking.gas /plan/cooking"}, []func(*kitchen.Kitchen){cooking(cabinet.Gas)}},
		{"cooking by induction", []string{"caution.cooking.electric /plan/cooking"}, []func(*kitchen.Kitchen){cooking(cabinet.Induction)}},
		{"a gas valve behind a base cabinet", []string{"caution.gas.valve_covered /survey/walls/0/points/0"}, []func(*kitchen.Kitchen){planned(cabinet.Base, 600, 740), gasValve(300, 60)}},
		{"a gas valve beside it", nil, []func(*kitchen.Kitchen){planned(cabinet.Base, 600, 740), gasValve(640, 60)}},
		{"a gas valve over it", nil, []func(*kitchen.Kitchen){planned(cabinet.Base, 600, 740), gasValve(300, 900)}},
		{"a gas valve under a wall cabinet", []string{"caution.falling.cabinets /plan/cabinets/0"}, []func(*kitchen.Kitchen){planned(cabinet.Wall, 600, 500), gasValve(300, 1420)}},
		{"a boxed beam of boards bears nothing", nil, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Kind = survey.Beam })}},
		{"a beam of which nobody knows", []string{"caution.structure.bearing " + soffit + "/structure"}, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Kind, o.Structure = survey.Beam, survey.StructureUnknown })}},
		{"a gap that the old cabinets carry bears nothing", nil, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) {
			o.Kind, o.Carrier, o.Structure = survey.ClosedGap, survey.CarriedByOldCabinets, survey.StructureUnknown
		})}},
		{"drilling masonry for the rail", []string{"caution.dust.silica /survey/walls/0/backing", "caution.falling.cabinets /plan/cabinets/0"}, []func(*kitchen.Kitchen){planned(cabinet.Wall, 600, 500), masonry}},
	}
	always := written(Cautions(base(), opening))
	if want := []string{
		"caution.dust.silica " + soffit, "caution.falling.overhead " + soffit, "caution.ladder.work " + soffit,
		"caution.fire.blocking " + soffit, "caution.local_code.rules /survey/code_set",
	}; !slices.Equal(always, want) {
		t.Fatalf("any opening warns of %v, want %v", always, want)
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := slices.DeleteFunc(written(Cautions(base(c.edits...), opening)), func(s string) bool { return slices.Contains(always, s) })
			if !slices.Equal(got, c.want) {
				t.Errorf("warns of\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(c.want, "\n"))
			}
		})
	}
}

func year(y int) func(*kitchen.Kitchen) { return func(k *kitchen.Kitchen) { k.Room.Built = y } }

func painted(k *kitchen.Kitchen) { k.Room.Walls[0].Overheads[0].Painted = survey.Yes }

func elsewhere(k *kitchen.Kitchen) { k.Room.CodeSet = survey.CodeNone }

func masonry(k *kitchen.Kitchen) { k.Room.Walls[0].Backing = survey.Masonry }

func old(kind cabinet.Kind) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { k.Plan.Old = []cabinet.Old{{Kind: kind}, {Kind: kind}} }
}

func cooking(e cabinet.Energy) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", Energy: e} }
}

// What stays closed warns of nothing inside it; what goes with the old cabinets
// is opened whatever was chosen.
func TestOnlyWhatIsOpenedWarns(t *testing.T) {
	gas := service(survey.Gas, false)
	if got := written(Cautions(base(gas, year(1950), painted), keeping)); !slices.Equal(got, []string{"caution.local_code.rules /survey/code_set"}) {
		t.Errorf("a kept soffit warns of %v", got)
	}
	gap := on(func(o *survey.Overhead) { o.Kind, o.Carrier = survey.ClosedGap, survey.CarriedByOldCabinets })
	if got := written(Cautions(base(gas, gap), keeping)); !slices.Contains(got, "caution.gas.inside "+soffit+"/inside/services/0") {
		t.Errorf("a gap that goes with the old cabinets warns of %v", got)
	}
}

// A solid body gives off dust whatever it is faced with; boards and metal alone
// do not. A beam has no hollow to block.
func TestWhatAnOpeningDoesNotWarnOf(t *testing.T) {
	wood := on(func(o *survey.Overhead) { o.Finish = "wood" })
	cases := map[string]struct {
		edit  func(*survey.Overhead)
		dusty bool
		block bool
	}{
		"framed":       {func(*survey.Overhead) {}, false, true},
		"solid":        {func(o *survey.Overhead) { o.Structure = survey.Solid }, true, false},
		"bearing":      {func(o *survey.Overhead) { o.Structure = survey.Bearing }, true, false},
		"a boxed beam": {func(o *survey.Overhead) { o.Kind = survey.Beam }, false, false},
		"nobody knows": {func(o *survey.Overhead) { o.Structure = survey.StructureUnknown }, false, true},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			got := written(Cautions(base(wood, on(c.edit)), opening))
			if dusty := slices.Contains(got, "caution.dust.silica "+soffit); dusty != c.dusty {
				t.Errorf("dust: %v", dusty)
			}
			if block := slices.Contains(got, "caution.fire.blocking "+soffit); block != c.block {
				t.Errorf("fireblocking: %v", block)
			}
		})
	}
}

func TestTwoPeopleAreCountedOnce(t *testing.T) {
	k := base(planned(cabinet.Wall, 600, 500), planned(cabinet.Wall, 900, 500), planned(cabinet.Tall, 600, 2000))
	got := Cautions(k, keeping)
	i := slices.IndexFunc(got, func(c finding.Caution) bool { return c.Code == "caution.lift.two_people" })
	if i < 0 || got[i].Pointer != "/plan/cabinets/1" || got[i].Params[0].Text != "2" {
		t.Errorf("got %+v", got)
	}
}

// circumstances are all that a caution can hang on.
var circumstances = []func(*kitchen.Kitchen){
	service(survey.Wire, true), service(survey.Gas, false), service(survey.Sprinkler, false), service(survey.StructureInside, false),
	on(func(o *survey.Overhead) { o.Inside.Looked = survey.NotLooked }), on(func(o *survey.Overhead) { o.Structure = survey.Bearing }),
	on(func(o *survey.Overhead) { o.Structure = survey.StructureUnknown }), on(func(o *survey.Overhead) { o.Make.HungFrom = survey.HungJoists }),
	on(func(o *survey.Overhead) { o.Textured = survey.Yes }), year(1977), year(0), painted, elsewhere, masonry,
	old(cabinet.Wall), cooking(cabinet.Gas), cooking(cabinet.Electric),
	planned(cabinet.Tall, 600, 2000), planned(cabinet.Base, 600, 740), planned(cabinet.Wall, 900, 500), gasValve(300, 500),
}

// Every warning is in the catalogue with its words, its source and who may deal
// with it; none stands there twice; local code always has the last word; and
// keeping never warns of more than opening.
func TestEveryCautionIsComplete(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := base(rapid.SliceOfN(rapid.SampledFrom(circumstances), 0, 8).Draw(t, "circumstances")...)
		got := Cautions(k, opening)
		texts := written(got)
		if slices.Sort(texts); len(slices.Compact(texts)) != len(got) {
			t.Fatalf("twice the same: %v", texts)
		}
		if last := got[len(got)-1]; last.Code != "caution.local_code.rules" {
			t.Fatalf("%s has the last word", last.Code)
		}
		for _, c := range got {
			if r, ok := rules.Of(c.Code); !ok || r.Says == "" || r.Who == "" || r.Source == "" || r.Status == "" {
				t.Fatalf("%s is incomplete: %+v", c.Code, r)
			}
		}
		if kept := written(Cautions(k, keeping)); len(kept) > len(got) {
			t.Fatalf("keeping warns of more than opening: %v", kept)
		}
	})
}

// The catalogue holds no caution that no pair of circumstances calls for.
func TestEveryCautionIsCalledFor(t *testing.T) {
	said := map[string]bool{}
	for _, a := range circumstances {
		for _, b := range circumstances {
			for _, c := range Cautions(base(a, b, painted), opening) {
				said[c.Code] = true
			}
		}
	}
	for _, r := range rules.All() {
		if strings.HasPrefix(r.Code, "caution.") && !said[r.Code] {
			t.Errorf("nothing calls for %s", r.Code)
		}
	}
}
