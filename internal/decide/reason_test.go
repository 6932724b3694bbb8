package decide

import (
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

func reasonsOf(k *kitchen.Kitchen) []Reason { return decided(k).Overheads[0].Reasons }

// Every group hears every factor, whatever the case.
func TestEveryFactorSpeaks(t *testing.T) {
	for _, c := range adviceCases() {
		t.Run(c.name, func(t *testing.T) {
			reasons := reasonsOf(room(c.ceiling, c.edits...))
			for f := Contents; f <= Preference; f++ {
				if !anyOf(reasons, func(r Reason) bool { return r.Factor == f }) {
					t.Errorf("nothing about %v", f)
				}
			}
			if !slices.IsSortedFunc(reasons, func(a, b Reason) int { return int(a.Factor) - int(b.Factor) }) {
				t.Error("factors out of order")
			}
		})
	}
}

// What each circumstance says, which way it pulls and what shows it. The three
// factors that decide whether a soffit comes down, and that saving the expense
// is a valid reason by itself, are common practice, no source.
func TestReasons(t *testing.T) {
	const s = "/survey/walls/0/overheads/0"
	cases := []struct {
		name     string
		ceiling  int
		code     string
		leans    Lean
		evidence string
		edits    []func(*kitchen.Kitchen)
	}{
		{"nobody looked inside", 2500, becauseUnseen, LeansKeep, s + "/inside", nil},
		{"nobody looked inside, but a bath above is a sign", 2500, becauseUnseen, LeansKeep, s + "/inside/hints", []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Inside.Hints = []string{"bath_above"} })}},
		{"a probe hole shows a part", 2500, becausePartSeen, LeansNone, s + "/inside", []func(*kitchen.Kitchen){probed}},
		{"seen empty", 2500, becauseEmpty, LeansTakeDown, s + "/inside", []func(*kitchen.Kitchen){empty}},
		{"rerouted wires need new board before a rail can hang", 2500, becauseWires, LeansKeep, s + "/inside/services/0", []func(*kitchen.Kitchen){holding(survey.Cable, 2300, survey.MovableEasily)}},
		{"a pipe to move", 2500, becausePipes, LeansKeep, s + "/inside/services/0", []func(*kitchen.Kitchen){holding(survey.PipeRun, 2300, survey.MovableWithWork)}},
		{"a stack that stays", 2500, becauseImmovable, LeansKeep, s + "/inside/services/0", []func(*kitchen.Kitchen){holding(survey.PipeRun, 2300, survey.NotMovable)}},
		{"gas", 2500, becauseLicensed, LeansKeep, s + "/inside/services/0", []func(*kitchen.Kitchen){on(gasLine)}},
		{"a duct box stays if the hood stays", 2500, becauseHoodStays, LeansKeep, "/plan/cooking/hood", []func(*kitchen.Kitchen){on(ductBox), hood(false)}},
		{"the hood moves", 2500, becauseHoodMoves, LeansTakeDown, "/plan/cooking/hood", []func(*kitchen.Kitchen){on(ductBox), hood(true)}},
		{"in the way, and a cut clears it", 2500, becauseInTheWay, LeansTrim, "/plan/cabinets/0", nil},
		{"in the way, and only opening clears it", 2122, becauseInTheWay, LeansOpenPart, s, nil},
		{"the taller row fits", 2500, becauseTaller, LeansTakeDown, "/survey/walls/0/ceiling", nil},
		{"taking it down for height would be wasted", 2300, becauseTooShort, LeansKeep, "/survey/walls/0/ceiling", nil},
		{"no taller row", 3000, becauseNoTaller, LeansKeep, "/system", []func(*kitchen.Kitchen){tallestRow}},
		{"no cabinet under it", 2500, becauseNoneUnder, LeansNone, s, []func(*kitchen.Kitchen){noCabinets}},
		{"nobody saw behind it", 2500, becauseNotBehind, LeansNone, s + "/behind", nil},
		{"over new cabinets", 2500, becauseOverNew, LeansKeep, "/plan/cabinets/0", nil},
		{"over what the old kitchen leaves bare", 2500, becauseOverOld, LeansKeep, "/plan/old_cabinets/0", []func(*kitchen.Kitchen){oldRun}},
		{"over nothing it would look lost", 2500, becauseOverNone, LeansTakeDown, s, nil},
		{"a lowered ceiling may stay, short and tall mixed", 2500, becauseLowered, LeansKeep, s, []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Kind = survey.LoweredCeiling })}},
		{"saving the expense is a reason by itself", 2500, becauseSaved, LeansKeep, s, nil},
		{"what the old cabinets carry costs only its closing", 2500, becauseGoesAnyhow, LeansNone, s, []func(*kitchen.Kitchen){on(carried)}},
		{"lowering the row on its legs spares the cut", 2500, becauseLowerRow, LeansKeep, "/plan/row_shift", []func(*kitchen.Kitchen){longLegs}},
		{"framed, in the way", 2500, becauseFramed, LeansTrim, s, nil},
		{"framed, not in the way", 2500, becauseFramed, LeansNone, s, []func(*kitchen.Kitchen){under(2122)}},
		{"bearing", 2500, becauseBearing, LeansKeep, s + "/structure", []func(*kitchen.Kitchen){on(cannot(survey.Soffit, survey.Bearing))}},
		{"solid", 2500, becauseSolid, LeansKeep, s + "/structure", []func(*kitchen.Kitchen){on(cannot(survey.Soffit, survey.Solid))}},
		{"beam", 2500, becauseBeam, LeansKeep, s + "/kind", []func(*kitchen.Kitchen){on(cannot(survey.Beam, survey.Solid))}},
		{"said not to be cut", 2500, becauseSaidNo, LeansKeep, s + "/may_cut", []func(*kitchen.Kitchen){on(cannot(survey.Soffit, survey.Framed))}},
		{"unknown structure", 2500, becauseAsk, LeansKeep, s + "/structure", []func(*kitchen.Kitchen){on(unknown)}},
		{"the cut leaves nothing, a part is enough", 2122, becauseCeiling, LeansOpenPart, s + "/make", nil},
		{"the cut leaves too little, all of it goes", 2160, becauseThin, LeansTakeDown, s + "/make", []func(*kitchen.Kitchen){over(0, 600)}},
		{"hung from trusses", 2500, becauseHung, LeansNone, s + "/make/hung_from", []func(*kitchen.Kitchen){on(func(o *survey.Overhead) { o.Make.HungFrom = survey.HungTrusses })}},
		{"a young house, nothing suspected", 2500, becauseHealthy, LeansNone, "/survey/built", nil},
		{"1980 and textured", 2500, becauseAsbestos, LeansKeep, s + "/finish", []func(*kitchen.Kitchen){built(1980), on(textured)}},
		{"1977 and painted", 2500, becauseLead, LeansKeep, s + "/painted", []func(*kitchen.Kitchen){built(1977), on(func(o *survey.Overhead) { o.Painted = survey.Yes })}},
		{"1980 and plain", 2500, becauseOldHouse, LeansNone, "/survey/built", []func(*kitchen.Kitchen){built(1980)}},
		{"chosen", 2500, becauseChosen, LeansOpenPart, "/choices/s", []func(*kitchen.Kitchen){func(k *kitchen.Kitchen) {
			k.Choices["s"] = kitchen.Choice{Option: kitchen.OpenPart, Pointer: "/choices/s"}
		}}},
		{"going to the ceiling is wanted", 2500, becauseToCeiling, LeansTakeDown, "/money/to_ceiling_worth", []func(*kitchen.Kitchen){wantsHeight}},
		{"gated: what would follow", 2500, becauseOnce, LeansKeep, s + "/structure", []func(*kitchen.Kitchen){on(unknown)}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			reasons := reasonsOf(room(c.ceiling, c.edits...))
			i := slices.IndexFunc(reasons, func(r Reason) bool { return r.Code == c.code })
			if i < 0 {
				t.Fatalf("no %s among %v", c.code, reasons)
			}
			if r := reasons[i]; r.Leans != c.leans || !slices.Contains(r.Evidence, c.evidence) {
				t.Errorf("leans %v on %v; want %v on %s", r.Leans, r.Evidence, c.leans, c.evidence)
			}
		})
	}
}

func probed(k *kitchen.Kitchen) { first(k).Inside.Looked = survey.ProbeHole }

func oldRun(k *kitchen.Kitchen) {
	k.Plan.Old = []cabinet.Old{
		{ID: "o", Kind: cabinet.Wall, From: 0, To: mm(1200), Depth: mm(320), Top: at(2100)},
		{ID: "b", Kind: cabinet.Base, From: 0, To: mm(3000), Depth: mm(600), Top: at(860)},
	}
}

func longLegs(k *kitchen.Kitchen) {
	k.System.LegTravel = &cabinet.LegTravel{Up: mm(20), Down: mm(30)}
}

// Lowering that cannot be done is no reason.
func TestLoweringThatIsShutIsNoReason(t *testing.T) {
	k := room(2500)
	found := fit.Check(k)
	for _, possible := range []bool{true, false} {
		lower := &fit.Lower{By: mm(22), Possible: possible, Spares: []string{"s"}}
		reasons := Decide(k, found, fit.Rows(k), lower).Overheads[0].Reasons
		if got := anyOf(reasons, func(r Reason) bool { return r.Code == becauseLowerRow }); got != possible {
			t.Errorf("possible %v, told %v", possible, got)
		}
	}
}

// A gate's kind says under which factor it is told.
func TestGateFactors(t *testing.T) {
	for gate, want := range map[string]Factor{
		gateGas: Contents, gateHoodStays: Contents, gateDuctServes: Contents, gateCeilingShort: CeilingHeight,
		gateUnknown: Structure, gateAskFirst: Structure, gateLeadArea: Health, gateAsbestos: Health,
	} {
		if got := factorOf(gate); got != want {
			t.Errorf("%s under %v, want %v", gate, got, want)
		}
	}
}

// The stretches over new cabinets, over old ones only and over nothing add up to
// the whole overhead.
func TestFootprintAddsUp(t *testing.T) {
	k := room(2500, oldRun)
	got := map[string]length.Length{}
	for _, r := range reasonsOf(k) {
		if r.Factor == Footprint {
			got[r.Code], _ = r.Params[0].Length.Value.Whole()
		}
	}
	want := map[string]length.Length{becauseOverNew: mm(600), becauseOverOld: mm(600), becauseOverNone: mm(2400)}
	for code, l := range want {
		if got[code] != l {
			t.Errorf("%s over %v, want %v", code, got[code], l)
		}
	}
}

// Every code has its words, and the words find their values.
func TestEveryCodeHasItsWords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		for _, missing := range wordless(decided(anyRoom(t))) {
			t.Error(missing)
		}
	})
	for _, c := range adviceCases() {
		for _, missing := range wordless(decided(room(c.ceiling, c.edits...))) {
			t.Errorf("%s: %s", c.name, missing)
		}
	}
}

func wordless(d Decisions) []string {
	var out []string
	note := func(code string, params []finding.Param) {
		if missing := named(code, params); missing != "" {
			out = append(out, missing)
		}
	}
	for _, o := range d.Overheads {
		for _, r := range o.Reasons {
			note(r.Code, r.Params)
		}
		for _, option := range o.Options {
			for _, g := range option.Gates {
				note(g.Code, g.Params)
			}
		}
	}
	for _, q := range d.Questions {
		note(q.Code, q.Params)
	}
	return out
}

func TestQuestions(t *testing.T) {
	const s = "/survey/walls/0/overheads/0"
	old := on(func(o *survey.Overhead) { o.Painted, o.Textured = survey.Unknown, survey.Unknown })
	cases := []struct {
		name  string
		edits []func(*kitchen.Kitchen)
		want  []string
	}{
		{"all is known", []func(*kitchen.Kitchen){empty}, nil},
		{"nothing in the way and nothing to gain: nothing to ask", []func(*kitchen.Kitchen){probed, noCabinets}, nil},
		{"a probe hole leaves the rest", []func(*kitchen.Kitchen){probed}, []string{askRest + " " + s + "/inside/seen"}},
		{"a pipe of which nobody knows whether it moves", []func(*kitchen.Kitchen){holding(survey.PipeRun, 2110, survey.MovableUnknown)},
			[]string{askMovable + " " + s + "/inside/services/0/movable"}},
		{"a duct box that no hood uses", []func(*kitchen.Kitchen){on(ductBox)}, []string{askDuct + " " + s + "/duct"}},
		{"year, texture, paint and code unknown", []func(*kitchen.Kitchen){empty, old, built(0), code(survey.CodeUnspecified)},
			[]string{askBuilt + " /survey/built", askTexture + " " + s + "/textured", askPaint + " " + s + "/painted", askCodeSet + " /survey/code_set"}},
		{"1979: too young for the lead rule", []func(*kitchen.Kitchen){empty, old, built(1979)}, []string{askTexture + " " + s + "/textured"}},
		{"1981: too young for both", []func(*kitchen.Kitchen){empty, old, built(1981)}, nil},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			var got []string
			for _, q := range decided(room(2500, c.edits...)).Questions {
				got = append(got, q.Code+" "+q.Pointer)
			}
			if !slices.Equal(got, c.want) {
				t.Errorf("asked\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(c.want, "\n"))
			}
		})
	}
}
