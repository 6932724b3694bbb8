package resolve

import "testing"

const (
	onWall  = "/survey/walls/0"
	soffit  = onWall + "/overheads/0"
	ductBox = onWall + "/overheads/1"
)

// Each case is the room with one of everything, and one slip in it.
func TestWhatCannotBeIsRefused(t *testing.T) {
	for _, c := range []struct {
		name    string
		changes []change
		want    string
	}{
		{"the ceiling under the floor", []change{{onWall + "/ceiling/1/up", "-1211"}}, "survey.ceiling.under_floor /survey/walls/0/ceiling"},
		{"a dip of the ceiling to the floor between the ends", []change{{onWall + "/ceiling", `[{"at": 0, "up": 1297}, {"at": 1000, "down": 1300}, {"at": 2000, "up": 1297}]`}},
			"survey.ceiling.under_floor /survey/walls/0/ceiling"},
		{"an underside at the ceiling", []change{{soffit + "/underside", `[{"at": 0, "up": 1297}]`}}, "survey.overhead.above_ceiling " + soffit + "/underside"},
		{"an underside that rises through the ceiling", []change{{soffit + "/underside/1/up", "1302"}}, "survey.overhead.above_ceiling " + soffit + "/underside"},
		{"an underside under the floor", []change{{soffit + "/underside/0/up", "-1203"}}, "survey.overhead.under_floor " + soffit + "/underside"},
		{"a gap thicker than the room is high", []change{{ductBox + "/kind", `"closed_gap"`}, {ductBox + "/duct", ""}, {ductBox + "/underside", ""}, {ductBox + "/thickness", "2600"}, {"/plan/cooking", ""}},
			"survey.overhead.under_floor " + ductBox + "/thickness"},
		{"neither underside nor thickness", []change{{ductBox + "/underside", ""}}, "body.member.missing " + ductBox + "/underside"},
		{"an overhead past the wall's end", []change{{soffit + "/to", "3600.1"}}, "survey.overhead.off_wall " + soffit + "/to"},
		{"an overhead that starts before the wall", []change{{soffit + "/from", "-0.1"}}, "survey.overhead.off_wall " + soffit + "/from"},
		{"an overhead of no length", []change{{ductBox + "/to", "2620"}}, "survey.span.empty " + ductBox + "/to"},
		{"an underside read off the wall", []change{{soffit + "/underside/1/at", "3700"}}, "survey.profile.off_wall " + soffit + "/underside/1/at"},
		{"a ceiling read off the wall", []change{{onWall + "/ceiling/0/at", "-1"}}, "survey.profile.off_wall /survey/walls/0/ceiling/0/at"},
		{"the ceiling behind under the underside", []change{{soffit + "/behind/ceiling_level", `{"up": 897}`}}, "survey.behind.under_underside " + soffit + "/behind/ceiling_level"},
		{"a sill at the head", []change{{onWall + "/openings/0/sill", "2050"}}, "survey.opening.head_under_sill /survey/walls/0/openings/0/head"},
		{"a sill under the floor", []change{{onWall + "/openings/0/sill", `{"down": 1300}`}}, "survey.opening.sill_under_floor /survey/walls/0/openings/0/sill"},
		{"a head above the ceiling", []change{{onWall + "/openings/0/head", `{"up": 1300}`}}, "survey.opening.head_above_ceiling /survey/walls/0/openings/0/head"},
		{"a socket off the wall", []change{{onWall + "/points/0/at", "3601"}}, "survey.point.off_wall /survey/walls/0/points/0/at"},
		{"a first stud off the wall", []change{{onWall + "/studs/first", "-1"}}, "survey.stud.off_wall /survey/walls/0/studs/first"},
		{"a listed stud off the wall", []change{{onWall + "/studs", `{"at": [100, 5000]}`}}, "survey.stud.off_wall /survey/walls/0/studs/at/1"},
		{"studs that go back", []change{{onWall + "/studs", `{"at": [100, 600, 600]}`}}, "survey.studs.unordered /survey/walls/0/studs/at/2"},
		{"studs said twice", []change{{onWall + "/studs/at", "[100]"}}, "survey.studs.two_ways /survey/walls/0/studs/at"},
		{"studs nowhere", []change{{onWall + "/studs", "{}"}}, "body.member.missing /survey/walls/0/studs/first"},
		{"a forest of studs", []change{{onWall + "/studs/spacing", "0.000001"}}, "survey.studs.too_close /survey/walls/0/studs/spacing"},
		{"a bench mark off the wall", []change{{"/survey/bench/at", "4000"}}, "survey.bench.off_wall /survey/bench/at"},
		{"a service beside its overhead", []change{{ductBox + "/inside", `{"looked": "opened", "services": [{"kind": "duct", "from": 2600, "to": 2780, "underside": {"up": 700}}]}`}},
			"survey.service.off_overhead " + ductBox + "/inside/services/0/from"},
		{"a floor taped from itself", []change{{onWall + "/floor/0", `{"at": 0, "above_floor": 0}`}}, "survey.floor.above_floor /survey/walls/0/floor/0/above_floor"},
		{"levels from two zeros", []change{{onWall + "/ceiling/0", `{"at": 0, "height": 2500}`}}, "survey.laser_height.missing /survey/laser_height"},
		{"a probability too many", []change{{soffit + "/inside/priors", `{"empty": 0.6, "few_wires": "0.5"}`}}, "survey.priors.not_one " + soffit + "/inside/priors"},
		{"contents of another kind", []change{{soffit + "/inside/priors", `{"ghosts": 1}`}}, "body.member.name " + soffit + "/inside/priors/ghosts"},
		{"a new ceiling under an overhead", []change{{"/plan/ceiling_change", "-400"}}, "plan.ceiling_change.swallows_overhead /plan/ceiling_change"},
		{"a new floor up to an overhead", []change{{"/plan/floor_change", "1849"}}, "plan.floor_change.meets_overhead /plan/floor_change"},
		{"a new ceiling under the floor", []change{{"/plan/ceiling_change", "-2501"}}, "plan.change.ceiling_meets_floor /plan/ceiling_change"},
		{"a system nobody has", []change{{"/system", `"somebody"`}}, "system.id.unknown /system"},
		{"a top under the cabinet's height", []change{{"/plan/cabinets/0/top", "659"}}, "plan.cabinet.under_datum /plan/cabinets/0/top"},
		{"a top and an underside", []change{{"/plan/cabinets/0/top", "2120"}, {"/plan/cabinets/0/underside", "1460"}}, "plan.cabinet.top_and_underside /plan/cabinets/0/top"},
		{"a corner on a wall that joins nothing", []change{{"/plan/cabinets/0/corner", `{"other_wall": "long", "other_width": 600, "shape": "l"}`}},
			"plan.corner.not_joined /plan/cabinets/0/corner/other_wall"},
		{"a hood in a duct box that is none", []change{{"/plan/cooking/hood/duct_box", `"s1"`}}, "plan.hood.not_a_duct_box /plan/cooking/hood/duct_box"},
		{"a hood in a duct box that is not there", []change{{"/plan/cooking/hood/duct_box", `"d2"`}}, "ref.unknown /plan/cooking/hood/duct_box"},
		{"a cooker past the wall's end", []change{{"/plan/cooking/to", "3610"}}, "plan.cooking.off_wall /plan/cooking/to"},
		{"a choice about nothing", []change{{"/choices/zz", `"keep"`}}, "ref.unknown /choices/zz"},
		{"a choice about a part", []change{{"/choices/s1", `"keep"`}}, "choice.overhead.is_part /choices/s1"},
		{"a soffit moved elsewhere", []change{{"/choices/s", `"move"`}}, "choice.move.not_a_duct_box /choices/s"},
		{"an opening beyond the overhead", []change{{"/choices/d1", `{"option": "open_part", "spans": [{"wall": "long", "from": 2600, "to": 2700}]}`}},
			"choice.span.off_overhead /choices/d1/spans/0"},
		{"an opening of nothing", []change{{"/choices/d1", `{"option": "open_part", "spans": [{"wall": "long", "from": 2700, "to": 2700}]}`}},
			"choices.span.empty /choices/d1/spans/0/to"},
		{"a length finer than a nanometre", []change{{onWall + "/length", "3600.0000001"}}, "length.text.too_fine /survey/walls/0/length"},
		{"a length across town", []change{{onWall + "/length", `"101 m"`}}, "length.value.out_of_range /survey/walls/0/length"},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, faults := Request(decode(t, changed(t, contractRoom, c.changes...)))
			for _, f := range faults {
				worded(t, f.Code, f.Params, nil, nil)
				if f.Code+" "+f.Pointer == c.want {
					return
				}
			}
			t.Errorf("refused for %v, want %s", faults, c.want)
		})
	}
}

// A slip in one member is refused once, not once more for everything that rests on it.
func TestOneSlipIsSaidOnce(t *testing.T) {
	for _, c := range []struct {
		name   string
		change change
		want   string
	}{
		{"the wall's length", change{onWall + "/length", `"3600"`}, "length.text.syntax /survey/walls/0/length"},
		{"a floor point", change{onWall + "/floor/0/down", `"low"`}, "length.text.syntax /survey/walls/0/floor/0/down"},
		{"a ceiling's station", change{onWall + "/ceiling/1/at", `"right"`}, "length.text.syntax /survey/walls/0/ceiling/1/at"},
		{"an overhead's end", change{soffit + "/to", `"right"`}, "length.text.syntax " + soffit + "/to"},
		{"the tolerance", change{"/survey/tolerance", `"little"`}, "length.text.syntax /survey/tolerance"},
		{"the system", change{"/system", `{"legs": -1, "fit_gap": 2, "wall": {"heights": [660], "depths": [360], "underside": 1460}, "tall": {"heights": [2000], "depths": [600]}}`}, "system.length.negative /system/legs"},
		{"the cabinet's wall", change{"/plan/cabinets/1/wall", `"short"`}, "ref.unknown /plan/cabinets/1/wall"},
	} {
		t.Run(c.name, func(t *testing.T) {
			sameLines(t, "refused", refused(t, changed(t, contractRoom, c.change)), []string{c.want})
		})
	}
}

// The decoder refuses these before; here they must not do harm.
func TestMembersThatShouldBeThere(t *testing.T) {
	sameLines(t, "refused", refused(t, `{}`), []string{
		"body.member.missing /units",
		"body.member.missing /survey/walls",
		"body.member.missing /system",
	})
	sameLines(t, "refused", refused(t, `{"units": "mm", "survey": {"walls": [{}]}, "system": {}, "choices": {"": {}},
	  "plan": {"cabinets": [{}], "fillers": [{}], "old_cabinets": [{}], "datums": [{}], "cooking": {"hood": {}}}}`), []string{
		"body.member.missing /survey/walls/0/id",
		"body.member.missing /plan/cabinets/0/id",
		"body.member.missing /plan/old_cabinets/0/id",
		"body.member.missing /survey/walls/0/length",
		"body.member.missing /survey/walls/0/floor",
		"body.member.missing /survey/walls/0/ceiling",
		"body.member.missing /system/legs",
		"body.member.missing /system/fit_gap",
		"body.member.missing /plan/cabinets/0/kind",
		"body.member.missing /plan/cabinets/0/wall",
		"body.member.missing /plan/cabinets/0/from",
		"body.member.missing /plan/cabinets/0/width",
		"body.member.missing /plan/cabinets/0/height",
		"body.member.missing /plan/fillers/0/wall",
		"body.member.missing /plan/fillers/0/from",
		"body.member.missing /plan/fillers/0/width",
		"body.member.missing /plan/old_cabinets/0/kind",
		"body.member.missing /plan/old_cabinets/0/wall",
		"body.member.missing /plan/old_cabinets/0/from",
		"body.member.missing /plan/old_cabinets/0/width",
		"body.member.missing /plan/old_cabinets/0/top",
		"body.member.missing /plan/cooking/energy",
		"body.member.missing /plan/cooking/from",
		"body.member.missing /plan/cooking/to",
		"body.member.missing /plan/cooking/wall",
		"body.member.missing /plan/cooking/hood/kind",
		"body.member.missing /plan/datums/0/at",
		"body.member.missing /plan/datums/0/wall",
		"body.member.missing /plan/datums/0/level",
		"ref.unknown /choices/",
		"body.member.missing /choices//option",
	})
	if _, faults := Request(nil); len(faults) == 0 {
		t.Error("no request at all is not refused")
	}
}
