package contents

import (
	"fmt"
	"strings"
	"testing"

	"railhead/internal/belief"
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// percent writes a belief in tenths of a percent, to compare with a sum on paper.
func percent(b belief.Belief) string {
	out := make([]string, len(b))
	for s, c := range b {
		out[s] = fmt.Sprintf("%.1f", float64(c)/1e7)
	}
	return strings.Join(out, " ")
}

// The built-in numbers have no source outside; what is checked is that a person
// who multiplies the listed factors on paper comes to the same odds (C). The order
// is empty, few wires, many wires, pipe or duct, immovable.
func TestOddsAsOnPaper(t *testing.T) {
	panel := func(wall, at int) func(*kitchen.Kitchen) {
		return func(k *kitchen.Kitchen) {
			k.Room.Walls[wall].Fixtures = []survey.Fixture{{Pointer: "/p", Kind: survey.Panel, At: mm(at)}}
		}
	}
	cooker := func(hood *cabinet.Hood) func(*kitchen.Kitchen) {
		return func(k *kitchen.Kitchen) {
			k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", From: mm(2400), To: mm(3000), Hood: hood}
		}
	}
	built := func(year int) func(*kitchen.Kitchen) { return func(k *kitchen.Kitchen) { k.Room.Built = year } }
	for _, c := range []struct {
		name  string
		o     survey.Overhead
		edits []func(*kitchen.Kitchen)
		now   string
		steps string
	}{
		{"a soffit of the sixties, and nothing is known", over("s", 0, 0, 3600), nil,
			"45.0 25.0 8.0 17.0 5.0", "kind_soffit age_middle"},
		{"of a house of unknown age", over("s", 0, 0, 3600), []func(*kitchen.Kitchen){built(0)},
			"45.0 25.0 8.0 17.0 5.0", "kind_soffit age_unknown"},
		// 45, 25·1.2 = 30, 8·1.2 = 9.6, 17·1.6 = 27.2, 5·1.4 = 7; of 118.8
		{"in a house from before the war", over("s", 0, 0, 3600), []func(*kitchen.Kitchen){built(1935)},
			"37.9 25.3 8.1 22.9 5.9", "kind_soffit age_old"},
		// 45, 25, 9.6, 23.8, 5; of 108.4
		{"in a house of 1990, the first of the later ones", over("s", 0, 0, 3600), []func(*kitchen.Kitchen){built(1990)},
			"41.5 23.1 8.9 22.0 4.6", "kind_soffit age_late"},
		// 45, 25, 8, 17·4 = 68, 5·1.5 = 7.5; of 153.5
		{"a bath above", over("s", 0, 0, 3600, hinted("bath_above")), nil,
			"29.3 16.3 5.2 44.3 4.9", "kind_soffit age_middle hint_bath_above"},
		{"a bath above counts the storey and the way to it already", over("s", 0, 0, 3600, hinted("upper_floor", "bath_above"), bathAway(800)), nil,
			"29.3 16.3 5.2 44.3 4.9", "kind_soffit age_middle hint_bath_above"},
		// 45, 30, 9.6, 51, 7.5; of 143.1
		{"a kitchen above counts the storey already", over("s", 0, 0, 3600, hinted("upper_floor", "kitchen_above")), nil,
			"31.4 21.0 6.7 35.6 5.2", "kind_soffit age_middle hint_kitchen_above"},
		// 45, 25·1.2 = 30, 8·1.2 = 9.6, 17·1.5 = 25.5, 5·1.2 = 6; of 116.1
		{"some storey above", over("s", 0, 0, 3600, hinted("upper_floor")), nil,
			"38.8 25.8 8.3 22.0 5.2", "kind_soffit age_middle hint_upper_floor"},
		// 45, 25, 8, 34, 6.5; of 118.5
		{"a bath next door", over("s", 0, 0, 3600, bathAway(1500)), nil,
			"38.0 21.1 6.8 28.7 5.5", "kind_soffit age_middle near_bath"},
		{"a bath some way off says nothing", over("s", 0, 0, 3600, bathAway(4000)), nil,
			"45.0 25.0 8.0 17.0 5.0", "kind_soffit age_middle"},
		// 45, 25, 8, 10.2, 4; of 92.2
		{"no bath for a long way", over("s", 0, 0, 3600, bathAway(4001)), nil,
			"48.8 27.1 8.7 11.1 4.3", "kind_soffit age_middle far_from_bath"},
		// 45, 37.5, 20, 17, 5; of 124.5
		{"the panel around the corner: 600 + 900 away", over("s", 0, 0, 3000), []func(*kitchen.Kitchen){panel(1, 900)},
			"36.1 30.1 16.1 13.7 4.0", "kind_soffit age_middle near_panel"},
		{"the panel a little further", over("s", 0, 0, 3000), []func(*kitchen.Kitchen){panel(1, 901)},
			"45.0 25.0 8.0 17.0 5.0", "kind_soffit age_middle"},
		// 45, 30, 8, 34, 6; of 123
		{"over the cooker", over("s", 0, 0, 3600), []func(*kitchen.Kitchen){cooker(nil)},
			"36.6 24.4 6.5 27.6 4.9", "kind_soffit age_middle near_hood"},
		{"600 from the cooker", over("s", 0, 0, 1800), []func(*kitchen.Kitchen){cooker(&cabinet.Hood{})},
			"36.6 24.4 6.5 27.6 4.9", "kind_soffit age_middle near_hood"},
		{"more than 600 from the cooker", over("s", 0, 0, 1799), []func(*kitchen.Kitchen){cooker(&cabinet.Hood{})},
			"45.0 25.0 8.0 17.0 5.0", "kind_soffit age_middle"},
		{"a hood that moves does not tell where the old one was", over("s", 0, 0, 3600), []func(*kitchen.Kitchen){cooker(&cabinet.Hood{Moves: true})},
			"45.0 25.0 8.0 17.0 5.0", "kind_soffit age_middle"},
		{"the hood's duct runs elsewhere", over("s", 0, 0, 3600), []func(*kitchen.Kitchen){cooker(&cabinet.Hood{DuctBox: "d"})},
			"45.0 25.0 8.0 17.0 5.0", "kind_soffit age_middle"},
		// 0.05, 0.05, 0.02, 80, 0.4; of 80.52
		{"the box of the hood's duct", over("d", 0, 2500, 2900, kind(survey.DuctBox)), []func(*kitchen.Kitchen){cooker(&cabinet.Hood{DuctBox: "d"})},
			"0.1 0.1 0.0 99.4 0.5", "kind_duct_box age_middle duct_known"},
		{"a box of which the duct was told", over("d", 0, 2500, 2900, kind(survey.DuctBox), func(o *survey.Overhead) { o.Duct = &survey.Duct{} }), nil,
			"0.1 0.1 0.0 99.4 0.5", "kind_duct_box age_middle duct_known"},
		// 0.9, 25, 6.4, 8.5, 2.5; of 43.3
		{"a light is built in: there is a wire", over("s", 0, 0, 3600, hinted("light_in_it")), nil,
			"2.1 57.7 14.8 19.6 5.8", "kind_soffit age_middle hint_light_in_it"},
		{"a beam that is a box of light framing", over("b", 0, 0, 3600, kind(survey.Beam)), nil,
			"45.0 20.0 5.0 20.0 10.0", "kind_framed_beam age_middle"},
		{"a beam that is none", over("b", 0, 0, 3600, kind(survey.Beam), func(o *survey.Overhead) { o.Structure = survey.Bearing }), nil,
			"30.0 15.0 3.0 7.0 45.0", "kind_beam age_middle"},
		// half seen: few wires 0.6·0.1 + 0.4·0.5 = 0.26, many and pipes 0.7·0.1 + 0.3·0.5 = 0.22,
		// immovable 0.5·0.1 + 0.5·0.5 = 0.3; 45, 6.5, 1.76, 3.74, 1.5; of 58.5
		{"opened over half of it, and empty there", over("s", 0, 0, 3600, looked(survey.Opened, 0, 1800)), nil,
			"76.9 11.1 3.0 6.4 2.6", "kind_soffit age_middle seen_empty"},
		// a hole shows 1500 of 3000, as good as the half
		{"a hole that showed nothing, nobody said how far", over("s", 0, 0, 3000, looked(survey.ProbeHole)), nil,
			"76.9 11.1 3.0 6.4 2.6", "kind_soffit age_middle seen_empty"},
		// 45·0.3 = 13.5, 10, 3.2, 17, 3; of 46.7
		{"a pipe seen in a part", over("s", 0, 0, 3600, looked(survey.ProbeHole, 0, 900), found(survey.PipeRun)), nil,
			"28.9 21.4 6.9 36.4 6.4", "kind_soffit age_middle seen_pipe_or_duct"},
		{"opened all over, and empty", over("s", 0, 0, 3600, hinted("bath_above"), looked(survey.Opened)), nil,
			"100.0 0.0 0.0 0.0 0.0", "kind_soffit age_middle hint_bath_above look.all"},
		{"opened all over, two wires", over("s", 0, 0, 3600, looked(survey.Opened), found(survey.Wire, survey.Cable)), nil,
			"0.0 100.0 0.0 0.0 0.0", "kind_soffit age_middle look.all"},
		{"opened all over, a wire that cannot be moved", over("s", 0, 0, 3600, looked(survey.Opened), found(survey.Wire),
			func(o *survey.Overhead) { o.Inside.Services[0].Movable = survey.NotMovable }), nil,
			"0.0 0.0 0.0 0.0 100.0", "kind_soffit age_middle look.all"},
		{"opened all over, three wires", over("s", 0, 0, 3600, looked(survey.Opened), found(survey.Wire, survey.Cable, survey.Wire)), nil,
			"0.0 0.0 100.0 0.0 0.0", "kind_soffit age_middle look.all"},
		{"opened all over, a duct and wires", over("s", 0, 0, 3600, looked(survey.Opened), found(survey.Wire, survey.DuctRun)), nil,
			"0.0 0.0 0.0 100.0 0.0", "kind_soffit age_middle look.all"},
		{"seen from end to end through holes, a gas line", over("s", 0, 0, 3600, looked(survey.ProbeHole, 0, 2000, 2000, 3600), found(survey.Gas)), nil,
			"0.0 0.0 0.0 0.0 100.0", "kind_soffit age_middle look.all"},
		{"the sender's own odds, whatever hints say", over("s", 0, 0, 3600, hinted("bath_above"), priors(10, 20, 30, 40, 0)), nil,
			"10.0 20.0 30.0 40.0 0.0", "odds.given"},
		// 10, 20·0.26 = 5.2, 30·0.22 = 6.6, 40·0.22 = 8.8; of 30.6
		{"the sender's own odds, and half seen empty", over("s", 0, 0, 3600, priors(10, 20, 30, 40, 0), looked(survey.ProbeHole, 0, 1800)), nil,
			"32.7 17.0 21.6 28.8 0.0", "odds.given seen_empty"},
	} {
		t.Run(c.name, func(t *testing.T) {
			k := corner(c.o)
			for _, edit := range c.edits {
				edit(k)
			}
			odds, _ := one(t, k)
			if got := percent(odds.Now); got != c.now {
				t.Errorf("odds %s, want %s", got, c.now)
			}
			if got := codes(odds.Steps); got != c.steps {
				t.Errorf("steps %s, want %s", got, c.steps)
			}
		})
	}
}

// codes are the codes of steps without what they have in common.
func codes(steps []Step) string {
	out := make([]string, len(steps))
	for i, s := range steps {
		out[i] = strings.TrimPrefix(strings.TrimPrefix(s.Code, "assume.contents."), "contents.")
	}
	return strings.Join(out, " ")
}

// The posteriors of the oil wildcatter, printed in camvac.hugin.com, Oil_Wildcatter
// (published-checks 8.1; F for the tables, C for the posteriors).
func TestPublishedPosteriors(t *testing.T) {
	prior := belief.Of(50, 30, 20, 0, 0)
	for _, c := range []struct {
		name    string
		factors Factors
		want    string
	}{
		{"no structure", weights(60, 30, 10, 100, 100), "0.731707 0.219512 0.048780"},
		{"open structure", weights(30, 40, 40, 100, 100), "0.428571 0.342857 0.228571"},
		{"closed structure", weights(10, 30, 50, 100, 100), "0.208333 0.375000 0.416667"},
	} {
		got := c.factors.on(prior)
		text := fmt.Sprintf("%.6f %.6f %.6f", float64(got[0])/1e9, float64(got[1])/1e9, float64(got[2])/1e9)
		if text != c.want {
			t.Errorf("%s: %s, want %s", c.name, text, c.want)
		}
	}
}

// The face over the range is looked into first (published-checks 14, F): a cooker
// below makes pipes and ducts likelier.
func TestOverTheRangeMoreIsExpected(t *testing.T) {
	plain, _ := one(t, corner(over("s", 0, 0, 3600)))
	k := corner(over("s", 0, 0, 3600))
	k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", From: mm(1200), To: mm(1800)}
	if atRange, _ := one(t, k); atRange.Now[PipeOrDuct] <= plain.Now[PipeOrDuct] || atRange.Now[Empty] >= plain.Now[Empty] {
		t.Errorf("over the range %s, elsewhere %s", Text(atRange.Now), Text(plain.Now))
	}
}

func TestWhoseOddsHold(t *testing.T) {
	k := corner(over("a", 0, 0, 1200, group("g")), over("b", 0, 1200, 2400, group("g"), priors(50, 50, 0, 0, 0)),
		over("c", 0, 2400, 3600, group("g"), priors(100, 0, 0, 0, 0)), over("d", 1, 0, 600, group("g"), priors(50, 50, 0, 0, 0)))
	odds, c := one(t, k)
	if percent(odds.Prior) != "50.0 50.0 0.0 0.0 0.0" || odds.Assumed {
		t.Errorf("odds %s, assumed %v; the first given ones are half and half", Text(odds.Prior), odds.Assumed)
	}
	if want := "/survey/walls/0/overheads/b/inside/priors"; odds.Given != want || c.PriorPointer() != want {
		t.Errorf("given at %s, want %s", odds.Given, want)
	}
	vain := odds.NotAssessed()
	if len(vain) != 1 || vain[0].Pointer != "/survey/walls/0/overheads/c/inside/priors" {
		t.Errorf("in vain: %+v; want the odds of c, which differ", vain)
	}
	if again := With(c, odds.Prior); percent(again.Now) != percent(odds.Now) {
		t.Errorf("with the same odds put in %s, want %s", Text(again.Now), Text(odds.Now))
	}
}

func TestEvidenceOfEachStep(t *testing.T) {
	k := corner(over("a", 0, 0, 1200, group("g"), hinted("bath_above")),
		over("b", 0, 1200, 2400, group("g"), hinted("bath_above", "cable_enters"), kind(survey.LoweredCeiling)),
		over("c", 1, 0, 600, group("g"), looked(survey.ProbeHole, 0, 300)))
	odds, _ := one(t, k)
	at := "/survey/walls/0/overheads/"
	for i, want := range []string{
		at + "b/kind",
		"/survey/built",
		at + "a/inside/hints " + at + "b/inside/hints",
		at + "b/inside/hints",
		"/survey/walls/1/overheads/c/inside/looked",
	} {
		if got := strings.Join(odds.Steps[i].Evidence, " "); got != want {
			t.Errorf("step %d, %s, rests on %s, want %s", i, odds.Steps[i].Code, got, want)
		}
	}
}

// Of several parts, baths and panels the nearest counts, wherever it stands in the
// request.
func TestTheNearestCounts(t *testing.T) {
	for _, order := range [][2]int{{800, 3000}, {3000, 800}} {
		k := corner(over("a", 0, 0, 1200, group("g"), bathAway(order[0])), over("b", 0, 1200, 2400, group("g"), bathAway(order[1])))
		if odds, _ := one(t, k); codes(odds.Steps) != "kind_soffit age_middle near_bath" {
			t.Errorf("baths %v away: %s", order, codes(odds.Steps))
		}
	}
	for _, order := range [][2]int{{100, 2000}, {2000, 100}} {
		k := corner(over("a", 0, 0, 1200, group("g")), over("b", 0, 1200, 3500, group("g")))
		k.Room.Walls[1].Fixtures = []survey.Fixture{
			{Pointer: "/first", Kind: survey.Panel, At: mm(order[0])}, {Kind: survey.Socket}, {Pointer: "/second", Kind: survey.Panel, At: mm(order[1])},
		}
		odds, _ := one(t, k)
		last, want := odds.Steps[len(odds.Steps)-1], map[bool]string{true: "/first", false: "/second"}[order[0] == 100]
		if last.Code != panelNear.code || last.Evidence[0] != want {
			t.Errorf("panels at %v: %s by %v, want the one at 100", order, last.Code, last.Evidence)
		}
	}
}

// A sliver that nobody has seen is unseen, and a sliver that was seen is seen.
func TestSharesUnseen(t *testing.T) {
	for _, c := range []struct{ from, to, want int }{{0, 3600, 0}, {0, 3599, 1}, {0, 900, 750}, {0, 1, 999}} {
		odds, _ := one(t, corner(over("s", 0, 0, 3600, looked(survey.Opened, c.from, c.to))))
		if odds.Unseen != money.Quantity(c.want) {
			t.Errorf("seen to %d of 3600: %s unseen, want %d thousandths", c.to, odds.Unseen.Decimal(), c.want)
		}
	}
	if odds, _ := one(t, corner(over("s", 0, 0, 3600))); odds.Unseen != money.One {
		t.Errorf("nobody looked: %s unseen", odds.Unseen.Decimal())
	}
}
