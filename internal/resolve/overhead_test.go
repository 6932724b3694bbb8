package resolve

import (
	"testing"

	"railhead/internal/length"
	"railhead/internal/survey"
)

func TestMayItBeCut(t *testing.T) {
	words := map[survey.MayCut]string{survey.CutAsk: "ask", survey.CutYes: "yes", survey.CutNo: "no"}
	for _, c := range []struct{ name, kind, structure, said, want, asked string }{
		{"a framed soffit", "soffit", "framed", "", "yes", ""},
		{"a framed duct box", "duct_box", "framed", "", "yes", ""},
		{"a framed closed gap", "closed_gap", "framed", "", "yes", ""},
		{"a framed lowered ceiling", "lowered_ceiling", "framed", "", "yes", ""},
		{"a beam, framed or not", "beam", "framed", "", "no", ""},
		{"a beam and nobody knows", "beam", "", "", "no", ""},
		{"a solid soffit", "soffit", "solid", "", "no", ""},
		{"a bearing one", "lowered_ceiling", "bearing", "", "no", ""},
		{"a soffit and nobody knows", "soffit", "", "", "ask", "ask.overhead.structure /survey/walls/0/overheads/0/structure"},
		{"unknown said out loud", "duct_box", "unknown", "", "ask", "ask.overhead.structure /survey/walls/0/overheads/0/structure"},
		{"the request says yes", "beam", "bearing", "yes", "yes", ""},
		{"the request says no", "soffit", "framed", "no", "no", ""},
		{"the request says ask", "soffit", "framed", "ask", "ask", "ask.overhead.may_cut /survey/walls/0/overheads/0/may_cut"},
	} {
		t.Run(c.name, func(t *testing.T) {
			o := `{"id": "s", "kind": "` + c.kind + `", "from": 0, "to": 3000, "depth": 330, "underside": [{"at": 0, "up": 900}],
			  "behind": {"ceiling": "continues", "wall": "finished"}, "inside": {"looked": "opened"}`
			if c.structure != "" {
				o += `, "structure": "` + c.structure + `"`
			}
			if c.said != "" {
				o += `, "may_cut": "` + c.said + `"`
			}
			if c.kind == "closed_gap" {
				o += `, "carried_by": "ceiling"`
			}
			got := resolved(t, changed(t, plainRoom, change{wallA + "/overheads", "[" + o + "}]"},
				change{"/plan/floor_change", "0"}, change{"/plan/ceiling_change", "0"}))
			if cut := words[got.Kitchen.Room.Walls[0].Overheads[0].MayCut]; cut != c.want {
				t.Errorf("may be cut: %s, want %s", cut, c.want)
			}
			var asked []string
			if c.asked != "" {
				asked = []string{c.asked}
			}
			sameLines(t, "questions", questions(got), asked)
		})
	}
}

// aCorner has a soffit around an inside corner, in two parts.
const aCorner = `{"units": "mm", "survey": {"tolerance": 1, "walls": [
  {"id": "a", "length": 3000, "joins_next": true, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}],
   "overheads": [{"id": "s1", "part_of": "s", "kind": "soffit", "structure": "framed", "from": 500, "to": 3000, "depth": 330, "underside": [{"at": 500, "up": 900}]}]},
  {"id": "b", "length": 2000, "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}],
   "overheads": [{"id": "s2", "part_of": "s", "kind": "soffit", "structure": "framed", "from": 0, "to": 1500, "depth": 330, "underside": [{"at": 0, "up": 900}]}]}]},
 "system": "demo-rail"}`

func TestEndsOfOverheads(t *testing.T) {
	const one, two = wallA + "/overheads/0", wallB + "/overheads/0"
	for _, c := range []struct {
		name    string
		changes []change
		want    [4]string // left and right of the first part, left and right of the second
	}{
		{"around the corner, both up to it", nil, [4]string{"open", "corner", "corner", "open"}},
		{"the second part butts against the first one's face", []change{{two + "/from", "330"}}, [4]string{"open", "corner", "corner", "open"}},
		{"the first part butts against the second one's face", []change{{one + "/to", "2670"}}, [4]string{"open", "corner", "corner", "open"}},
		{"the second part starts past the first one's face", []change{{two + "/from", "400"}}, [4]string{"open", "wall", "open", "open"}},
		{"two things that meet are not one", []change{{two + "/part_of", ""}}, [4]string{"open", "wall", "wall", "open"}},
		{"from wall to wall", []change{{one + "/from", "0"}, {two + "/to", "2000"}}, [4]string{"wall", "corner", "corner", "wall"}},
		{"walls that do not join", []change{{wallA + "/joins_next", "false"}}, [4]string{"open", "wall", "wall", "open"}},
		{"said otherwise", []change{{one + "/ends", `{"left": "cabinet", "right": "open"}`}}, [4]string{"cabinet", "open", "corner", "open"}},
		{"one part goes on along the wall", []change{{wallA + "/overheads/-", `{"id": "s0", "part_of": "s", "kind": "soffit", "structure": "framed", "from": 100, "to": 500, "depth": 200, "underside": [{"at": 100, "up": 950}]}`}},
			[4]string{"corner", "corner", "corner", "open"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			room := resolved(t, changed(t, aCorner, c.changes...)).Kitchen.Room
			first, second := room.Walls[0].Overheads[0], room.Walls[1].Overheads[0]
			got := [4]string{first.Left.String(), first.Right.String(), second.Left.String(), second.Right.String()}
			if got != c.want {
				t.Errorf("ends %v, want %v", got, c.want)
			}
		})
	}
}

func TestAClosedGapHangsItsThicknessUnderTheCeiling(t *testing.T) {
	c := resolved(t, changed(t, plainRoom, change{wallA + "/ceiling", `[{"at": 0, "up": 1300}, {"at": 3000, "up": 1290}]`},
		change{wallA + "/overheads", `[{"id": "g", "kind": "closed_gap", "carried_by": "old_cabinets", "from": 0, "to": 3000, "depth": 330, "thickness": 300}]`}))
	o := c.Kitchen.Room.Walls[0].Overheads[0]
	if got := o.Underside.At(1500*length.Millimetre, 0); got.CmpLength(995*length.Millimetre) != 0 {
		t.Errorf("underside in the middle at %s, want 995", got)
	}
	sameLines(t, "assumptions: it goes with the old cabinets, so how it is built is of no account", assumptions(c), []string{
		"assume.survey.tolerance 2 /survey/tolerance",
		"assume.plan.floor_change 0 /plan/floor_change",
		"assume.plan.ceiling_change 0 /plan/ceiling_change",
		"assume.plan.counter 900 /plan/counter",
		"assume.plan.least_counter 860 /plan/least_counter",
		"assume.money.currency EUR /money/currency",
		"assume.money.litre 0.4 /money/storage_per_litre",
	})
	sameLines(t, "questions", questions(c), []string{
		"ask.plan.floor_change /plan/floor_change",
		"ask.plan.ceiling_change /plan/ceiling_change",
		"ask.overhead.behind /survey/walls/0/overheads/0/behind",
		"ask.overhead.contents /survey/walls/0/overheads/0/inside",
	})
	c = resolved(t, changed(t, plainRoom, change{wallA + "/overheads", `[{"id": "g", "kind": "closed_gap", "structure": "framed", "from": 0, "to": 3000, "depth": 330, "thickness": 300}]`}))
	if c.Questions[2].Code != "ask.overhead.carrier" || c.Questions[2].Pointer != "/survey/walls/0/overheads/0/carried_by" {
		t.Errorf("who carries it is asked, got %v", questions(c))
	}
}

func TestHowAnOverheadIsBuilt(t *testing.T) {
	metric := resolved(t, changed(t, aCorner, change{wallB + "/overheads/0/make", `{"lining": 15, "bottom_member": 60, "least_run": 200, "new_bottom": 10}`})).Kitchen.Room
	for i, want := range []survey.Make{
		{Lining: 12500 * length.Micrometre, BottomMember: 38 * length.Millimetre, LeastStub: 50500 * length.Micrometre, LeastRun: 150 * length.Millimetre},
		{Lining: 15 * length.Millimetre, BottomMember: 60 * length.Millimetre, NewBottom: 10 * length.Millimetre, LeastStub: 75 * length.Millimetre, LeastRun: 200 * length.Millimetre},
	} {
		if got := metric.Walls[i].Overheads[0].Make; got != want {
			t.Errorf("part %d is built %+v, want %+v", i, got, want)
		}
	}
	inch := resolved(t, changed(t, aCorner, change{"/units", `"in"`}, change{"/survey/walls", `[{"id": "a", "length": 120, "floor": [{"at": 0, "down": 48}], "ceiling": [{"at": 0, "up": 48}],
	  "overheads": [{"id": "s", "kind": "soffit", "from": 0, "to": 120, "depth": 13, "underside": [{"at": 0, "up": 36}]}]}]`}))
	want := survey.Make{Lining: length.Inch / 2, BottomMember: length.Inch * 3 / 2, LeastStub: 2 * length.Inch, LeastRun: 6 * length.Inch}
	if got := inch.Kitchen.Room.Walls[0].Overheads[0].Make; got != want {
		t.Errorf("in inches it is built %+v, want %+v", got, want)
	}
	if inch.Tape != length.Inch/16 || inch.Units != length.IN {
		t.Errorf("tape step %s, want 1/16 in", inch.Tape)
	}
}

func TestServicesCountAsLiveUntilProvedDead(t *testing.T) {
	room := resolved(t, changed(t, aCorner, change{wallA + "/overheads/0/inside", `{"looked": "probe_hole", "seen": [{"from": 600, "to": 900}], "hints": ["bath_above", "bath_above", "cable_enters"],
	  "services": [{"kind": "wire", "from": 600, "to": 900, "underside": {"up": 1000}}, {"kind": "wire", "from": 600, "to": 900, "underside": 2220, "live": false, "movable": "easily", "clearance": 5}]}`})).Kitchen.Room
	in := room.Walls[0].Overheads[0].Inside
	if len(in.Services) != 2 || !in.Services[0].Live || in.Services[1].Live || in.Services[1].Movable != survey.MovableEasily {
		t.Errorf("services %+v", in.Services)
	}
	if got := in.Services[1].Underside.Value; got.CmpLength(1020*length.Millimetre) != 0 {
		t.Errorf("taped 2220 from the floor: %s, want 1020 over the line", got)
	}
	if len(in.Hints) != 2 || len(in.Seen) != 1 || in.Looked != survey.ProbeHole {
		t.Errorf("inside %+v", in)
	}
}
