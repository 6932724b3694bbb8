package resolve

import (
	"testing"

	"railhead/internal/length"
)

// denseRoom has two walls around a corner, read closely enough that nothing is odd about them.
const denseRoom = `{"units": "mm", "survey": {"tolerance": 1, "lasers": [{"id": "A"}, {"id": "B", "above": 100}],
  "walls": [
    {"id": "a", "length": 3000, "joins_next": true,
     "floor": [{"at": 0, "down": 1200}, {"at": 1500, "down": 1202}, {"at": 3000, "down": 1204}],
     "ceiling": [{"at": 0, "up": 1300}, {"at": 1500, "up": 1301}, {"at": 3000, "up": 1302}],
     "overheads": [{"id": "s", "kind": "soffit", "structure": "framed", "from": 0, "to": 3000, "depth": 330,
       "underside": [{"at": 0, "up": 900}, {"at": 1500, "up": 901}, {"at": 3000, "up": 902}],
       "behind": {"ceiling": "continues", "wall": "finished"}, "inside": {"looked": "opened"}}]},
    {"id": "b", "length": 2000, "laser": "B",
     "floor": [{"at": 0, "down": 1304}, {"at": 1000, "down": 1304}, {"at": 2000, "down": 1304}],
     "ceiling": [{"at": 0, "up": 1202}, {"at": 1000, "up": 1202}, {"at": 2000, "up": 1202}]}]},
 "system": "demo-rail",
 "plan": {"floor_change": 0, "ceiling_change": 0, "cabinets": [
   {"id": "c1", "kind": "wall", "wall": "a", "from": 0, "width": 600, "height": 660},
   {"id": "c2", "kind": "base", "wall": "a", "from": 600, "width": 600, "height": 740},
   {"id": "c3", "kind": "tall", "wall": "b", "from": 1400, "width": 600, "height": 2000}]}}`

func TestNothingOddIsSaidOfAnOrdinaryRoom(t *testing.T) {
	c := resolved(t, denseRoom)
	sameLines(t, "findings", findings(c), nil)
	sameLines(t, "questions", questions(c), nil)
}

const wallA, wallB = "/survey/walls/0", "/survey/walls/1"

func TestOddities(t *testing.T) {
	for _, c := range []struct {
		name    string
		changes []change
		want    []string
	}{
		{"a floor read at one place only", []change{{wallA + "/floor", `[{"at": 3000, "down": 1204}]`}}, []string{"survey.profile.sparse /survey/walls/0/floor"}},
		{"a ceiling read at its ends only", []change{{wallA + "/ceiling", `[{"at": 0, "up": 1300}, {"at": 3000, "up": 1302}]`}}, []string{"survey.profile.sparse /survey/walls/0/ceiling"}},
		{"a soffit read at its ends only", []change{{wallA + "/overheads/0/underside", `[{"at": 0, "up": 900}, {"at": 3000, "up": 902}]`}},
			[]string{"survey.profile.sparse /survey/walls/0/overheads/0/underside"}},
		{"a long gap where no cabinet comes", []change{{wallA + "/length", "4000"}, {wallA + "/joins_next", "false"}, {wallB + "/laser", ""},
			{wallA + "/ceiling", `[{"at": 0, "up": 1300}, {"at": 700, "up": 1302}]`}}, nil},
		{"a steep floor", []change{{wallA + "/floor/1/down", "1283"}}, []string{"survey.profile.steep /survey/walls/0/floor/1"}},
		{"a steep ceiling", []change{{wallB + "/ceiling/2/up", "1270"}}, []string{"survey.profile.steep /survey/walls/1/ceiling/2"}},
		{"a step is not steep", []change{{wallB + "/ceiling/-", `{"at": 2000, "up": 1400}`}}, nil},
		{"a ceiling for dwarfs", []change{{wallB + "/ceiling", `[{"at": 0, "up": 1202}, {"at": 1000, "up": 1202}, {"at": 1000, "up": 694}, {"at": 2000, "up": 694}]`}},
			[]string{"survey.ceiling.low /survey/walls/1/ceiling"}},
		{"a ceiling for giants", []change{{wallB + "/ceiling", `[{"at": 0, "up": 1202}, {"at": 1000, "up": 1202}, {"at": 1000, "up": 3700}, {"at": 2000, "up": 3700}]`}},
			[]string{"survey.ceiling.high /survey/walls/1/ceiling"}},
		{"ceilings that do not meet in the corner", []change{{wallB + "/ceiling/0/up", "1212"}}, []string{"survey.corner.ceiling_differs /survey/walls/1/ceiling"}},
		{"floors that do not meet in the corner", []change{{wallB + "/floor/0/down", "1298"}}, []string{"survey.corner.floor_differs /survey/walls/1/floor"}},
		{"two laser lines that are tied wrongly", []change{{"/survey/lasers/1/above", "115"}}, []string{"survey.laser.disagrees /survey/lasers/1/above"}},
		{"a corner off by less than the doubt", []change{{wallB + "/ceiling/0/up", "1204"}}, nil},
		{"a doubt as wide as a thumb", []change{{"/survey/tolerance", "11"}}, []string{"survey.tolerance.wide /survey/tolerance"}},
		{"one reading through a doorway", []change{{wallB + "/ceiling/2/tolerance", "12"}}, []string{"survey.tolerance.wide /survey/walls/1/ceiling/2/up"}},
		{"two soffits in one place", []change{{wallA + "/overheads/-", `{"id": "x", "kind": "beam", "from": 1000, "to": 1200, "out": 200, "depth": 200, "underside": [{"at": 1100, "up": 800}],
			"behind": {"ceiling": "continues", "wall": "finished"}, "inside": {"looked": "opened"}}`}}, []string{"survey.overhead.overlaps /survey/walls/0/overheads/1"}},
		{"a beam in front of a soffit", []change{{wallA + "/overheads/-", `{"id": "x", "kind": "beam", "from": 1000, "to": 1200, "out": 330, "depth": 200, "underside": [{"at": 1100, "up": 800}],
			"behind": {"ceiling": "continues", "wall": "finished"}, "inside": {"looked": "opened"}}`}}, nil},
		{"an end said to meet a wall that is not there", []change{{wallA + "/overheads/0/to", "2900"}, {wallA + "/overheads/0/ends", `{"left": "wall", "right": "wall"}`}},
			[]string{"survey.profile.outside_overhead /survey/walls/0/overheads/0/underside/2/at", "survey.ends.no_wall /survey/walls/0/overheads/0/ends/right"}},
		{"an end said to go round a corner that is not there", []change{{wallA + "/overheads/0/ends", `{"left": "corner"}`}}, []string{"survey.ends.no_corner /survey/walls/0/overheads/0/ends/left"}},
		{"a free end in the wall's corner", []change{{wallA + "/overheads/0/ends", `{"right": "open"}`}}, []string{"survey.ends.at_wall /survey/walls/0/overheads/0/ends/right"}},
		{"ends that are right", []change{{wallA + "/overheads/0/ends", `{"left": "wall", "right": "corner"}`}}, nil},
		{"a pipe that hangs out of the soffit", []change{{wallA + "/overheads/0/inside/services", `[{"kind": "pipe", "from": 100, "to": 200, "underside": {"up": 880}}]`}},
			[]string{"survey.service.under_overhead /survey/walls/0/overheads/0/inside/services/0/underside"}},
		{"a pipe in the storey above", []change{{wallA + "/overheads/0/inside/services", `[{"kind": "pipe", "from": 100, "to": 200, "underside": {"up": 1400}}]`}},
			[]string{"survey.service.above_ceiling /survey/walls/0/overheads/0/inside/services/0/underside"}},
		{"seen without looking", []change{{wallA + "/overheads/0/inside", `{"looked": "no", "seen": [{"from": 0, "to": 100}]}`}}, []string{"survey.inside.not_looked /survey/walls/0/overheads/0/inside/looked"}},
		{"a duct wider than its box", []change{{wallA + "/overheads/0/kind", `"duct_box"`}, {wallA + "/overheads/0/duct", `{"diameter": 331}`}},
			[]string{"survey.duct.wider_than_box /survey/walls/0/overheads/0/duct/diameter"}},
		{"taped from the floor right on a step", []change{{wallA + "/floor/-", `{"at": 3000, "down": 1214}`}, {wallA + "/points", `[{"id": "p", "kind": "socket", "at": 3000, "level": 300}]`}},
			[]string{"survey.reading.on_floor_step /survey/walls/0/points/0/level"}},
		{"sizes that nobody sells", []change{{"/plan/cabinets/0/height", "650"}, {"/plan/cabinets/0/depth", "320"}, {"/plan/cabinets/1/width", "555"}},
			[]string{"plan.size.off_list /plan/cabinets/0/height", "plan.size.off_list /plan/cabinets/0/depth", "plan.size.off_list /plan/cabinets/1/width"}},
		{"a kind that the system does not make", []change{{"/system", `{"legs": 100, "fit_gap": 2, "wall": {"heights": [660], "depths": [360], "underside": 1460}, "base": {"heights": [740], "widths": [600], "depths": [600]}}`},
			{"/plan/cabinets/2/depth", "600"}}, []string{"plan.cabinet.kind_not_made /plan/cabinets/2/kind"}},
		{"an old cabinet off its wall", []change{{"/plan/old_cabinets", `[{"id": "o", "kind": "wall", "wall": "b", "from": 1800, "width": 600, "top": 2100, "depth": 320}]`}},
			[]string{"plan.old.off_wall /plan/old_cabinets/0"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := resolved(t, changed(t, denseRoom, c.changes...))
			sameLines(t, "findings", findings(got), c.want)
			for _, f := range got.Findings {
				worded(t, f.Code, f.Params, f.Need, f.Have)
			}
		})
	}
}

func TestATapedFloorIsNotLevel(t *testing.T) {
	const taped = `{"units": "mm", "survey": {"walls": [
	  {"id": "a", "length": 3000, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "above_floor": 2500}]},
	  {"id": "b", "length": 3000, "floor": [{"at": 0, "height": 0}, {"at": 3000, "height": 0}], "ceiling": [{"at": 0, "height": 2500}]}]},
	  "system": "demo-rail", "plan": {"floor_change": 0, "ceiling_change": 0}}`
	for _, c := range []struct {
		name    string
		changes []change
		groups  []bool
	}{
		{"two runs, both taped", nil, []bool{true, true}},
		{"both tied", []change{{wallB + "/level_with", `"a"`}}, []bool{true}},
		{"one read for its fall", []change{{wallB + "/floor/1/height", "-4"}}, []bool{true, false}},
		{"a laser on one of two tied runs", []change{{wallB + "/level_with", `"a"`}, {"/survey/laser_height", "1200"}, {wallB + "/ceiling/0", `{"at": 0, "up": 1300}`}}, []bool{false}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := resolved(t, changed(t, taped, c.changes...))
			var want, asked []string
			for g, not := range c.groups {
				group := got.Kitchen.Room.Groups[g]
				if group.NotLevelled != not {
					t.Errorf("group %d: not levelled %v, want %v", g, group.NotLevelled, not)
				}
				if not {
					at := got.Kitchen.Room.Walls[group.Walls[0]].Pointer + "/floor"
					want, asked = append(want, "survey.floor.not_levelled "+at), append(asked, "ask.survey.level_floor "+at)
				}
			}
			sameLines(t, "findings", findings(got), want)
			sameLines(t, "questions", questions(got), asked)
		})
	}
}

// The sag that is ordinary over the gap stands in the finding: row 6 of the published table at 3 m.
func TestASparseProfileSaysWhatIsOrdinary(t *testing.T) {
	c := resolved(t, changed(t, denseRoom, change{wallA + "/ceiling", `[{"at": 0, "up": 1300}, {"at": 3000, "up": 1302}]`}))
	f := c.Findings[0]
	if got := millimetres(f.Params[2]); f.Params[2].Name != "usual" || got != "8" {
		t.Errorf("%s %s, want usual 8", f.Params[2].Name, got)
	}
	if have, _ := f.Have.Value.Whole(); have != 3000*length.Millimetre {
		t.Errorf("gap %s, want 3000", have)
	}
}
