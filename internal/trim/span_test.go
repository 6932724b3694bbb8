package trim

import (
	"reflect"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

type run struct{ from, to, line length.Length }

func runs(trims []Trim) []run {
	var out []run
	for _, t := range trims {
		out = append(out, run{t.From, t.To, t.CutLine})
	}
	return out
}

func TestSpans(t *testing.T) {
	long := profile(0, 2000*mm)
	cases := map[string]struct {
		over     survey.Overhead
		cabinets []cabinet.Placed
		want     []run
	}{
		"widened by the side clearance": {
			soffit(0, 3600*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm)},
			[]run{{997 * mm, 1603 * mm, 2122 * mm}},
		},
		"clipped to the overhead": {
			soffit(1200*mm, 1500*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm)},
			[]run{{1200 * mm, 1500 * mm, 2122 * mm}},
		},
		"one row": {
			soffit(0, 3600*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm), hung(1600*mm, 2200*mm, 2120*mm)},
			[]run{{997 * mm, 2203 * mm, 2122 * mm}},
		},
		"the shortest sensible run stays": {
			soffit(0, 3600*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm), hung(1756*mm, 2200*mm, 2120*mm)},
			[]run{{997 * mm, 1603 * mm, 2122 * mm}, {1753 * mm, 2203 * mm, 2122 * mm}},
		},
		"a shorter run is taken along": {
			soffit(0, 3600*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm), hung(1755*mm, 2200*mm, 2120*mm)},
			[]run{{997 * mm, 2203 * mm, 2122 * mm}},
		},
		"merged at the higher line": {
			soffit(0, 3600*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2240*mm), hung(1600*mm, 2200*mm, 2120*mm)},
			[]run{{997 * mm, 2203 * mm, 2242 * mm}},
		},
		"two top lines apart": {
			soffit(0, 3600*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2240*mm), hung(1900*mm, 2200*mm, 2120*mm)},
			[]run{{997 * mm, 1603 * mm, 2242 * mm}, {1897 * mm, 2203 * mm, 2122 * mm}},
		},
		"rests too short at both ends": {
			soffit(900*mm, 1700*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm)},
			[]run{{900 * mm, 1700 * mm, 2122 * mm}},
		},
		"rest just long enough": {
			soffit(847*mm, 3600*mm, long), []cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm)},
			[]run{{997 * mm, 1603 * mm, 2122 * mm}},
		},
		"a lower row beside it stays under the soffit": {
			soffit(0, 3600*mm, profile(0, 2100*mm)), []cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm), hung(1600*mm, 2200*mm, 1960*mm)},
			[]run{{997 * mm, 1603 * mm, 2122 * mm}},
		},
		"in front of the cabinets": {
			func() survey.Overhead { o := soffit(0, 3600*mm, long); o.Out = 360 * mm; return o }(),
			[]cabinet.Placed{hung(1000*mm, 1600*mm, 2120*mm)}, nil,
		},
	}
	for name, c := range cases {
		got := runs(trimmed(cook(room(wall(3600*mm, 2500*mm, c.over)), demo(), c.cabinets...)))
		if !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}

// Cabinets of the row that only stand snug are cut over with their neighbours;
// a snug run of its own is cut only by choice.
func TestRowUnderASlopingSoffit(t *testing.T) {
	slope := soffit(0, 3600*mm, profile(0, 2112*mm, 3600*mm, 2130*mm)) // 1 mm in 200
	k := cook(room(wall(3600*mm, 2500*mm, slope)), demo(),
		hung(0, 1200*mm, 2120*mm), hung(1200*mm, 1800*mm, 2120*mm), hung(1990*mm, 2600*mm, 2120*mm))
	if got, want := runs(Plan(k, fit.Check(k), advised(kitchen.Trim))), []run{{0, 1803 * mm, 2122 * mm}}; !reflect.DeepEqual(got, want) {
		t.Errorf("advised %v, want %v", got, want)
	}
	want := []run{{0, 1803 * mm, 2122 * mm}, {1987 * mm, 2603 * mm, 2122 * mm}}
	got := trimmed(k)
	if !reflect.DeepEqual(runs(got), want) || !got[0].Needed || got[1].Needed || got[1].ID != "s1#2" {
		t.Errorf("chosen %v, want %v", runs(got), want)
	}
}

// A lower cabinet between two higher ones is cut over with them.
func TestCabinetWithinACut(t *testing.T) {
	k := cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2100*mm)))), demo(),
		hung(0, 600*mm, 2120*mm), hung(600*mm, 740*mm, 1960*mm), hung(740*mm, 1340*mm, 2120*mm))
	tr := one(t, trimmed(k))
	if len(tr.Cabinets) != 3 || tr.RowTop != 2120*mm || !has(tr, "trim.row.lower") {
		t.Errorf("cabinets %v, row %v, %v", len(tr.Cabinets), tr.RowTop, codes(tr))
	}
}

// A higher cabinet within a cut, under a part that hangs above it anyway, is not
// served: the cut line lies below its top.
func TestHigherCabinetWithinACut(t *testing.T) {
	notch := profile(0, 2100*mm, 601*mm, 2100*mm, 601*mm, 2300*mm, 739*mm, 2300*mm, 739*mm, 2100*mm)
	s := demo()
	s.SideClearance = 0
	k := cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, notch))), s,
		hung(0, 600*mm, 2120*mm), hung(610*mm, 730*mm, 2240*mm), hung(740*mm, 1340*mm, 2120*mm))
	tr := one(t, trimmed(k))
	if len(tr.Cabinets) != 2 || tr.RowTop != 2120*mm || tr.CutLine != 2122*mm {
		t.Errorf("cabinets %v, row %v, cut %v", len(tr.Cabinets), tr.RowTop, tr.CutLine)
	}
}

func TestBaseCabinetCountsOnlyUnderWhatReachesIt(t *testing.T) {
	base := cabinet.Placed{Kind: cabinet.Base, To: 600 * mm, Depth: 600 * mm, Height: 740 * mm, Top: 860 * mm}
	k := cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 2100*mm)))), demo(), base)
	if got := trimmed(k); len(got) != 0 {
		t.Errorf("soffit above a base cabinet: %+v", got)
	}
	k = cook(room(wall(3600*mm, 2500*mm, soffit(0, 3600*mm, profile(0, 850*mm)))), demo(), base)
	if tr := one(t, trimmed(k)); tr.CutLine != 862*mm || tr.RailEdge != nil {
		t.Errorf("box down to the base cabinet: cut %v, rail %v", tr.CutLine, tr.RailEdge)
	}
}

func TestOpenPart(t *testing.T) {
	s := soffit(0, 3600*mm, profile(0, 2100*mm, 3600*mm, 2064*mm)) // falls 1 mm in 100
	w := wall(3600*mm, 0, s)
	w.Ceiling = profile(0, 2500*mm, 700*mm, 2500*mm, 700*mm, 2520*mm)
	k := cook(room(w), demo(), hung(0, 600*mm, 2120*mm), hung(600*mm, 1200*mm, 1960*mm))

	tr := one(t, Plan(k, fit.Check(k), chosen(kitchen.OpenPart, survey.WallSpan{From: 200 * mm, To: 1000 * mm}, survey.WallSpan{Wall: 1, To: 500 * mm})))
	if tr.Work != TakeDown || tr.From != 200*mm || tr.To != 1000*mm || tr.CutLine != 2520*mm || tr.FrameLine != nil {
		t.Errorf("named part: %v from %v to %v at %v", tr.Work, tr.From, tr.To, tr.CutLine)
	}
	if want := []strip{{200 * mm, 402 * mm}, {700 * mm, 407 * mm}, {700 * mm, 427 * mm}, {1000 * mm, 430 * mm}}; !reflect.DeepEqual(strips(t, tr), want) {
		t.Errorf("strips %v, want the whole height %v", strips(t, tr), want)
	}
	if len(tr.Cabinets) != 2 || !tr.Needed || has(tr, "trim.cut.removal") || len(tr.Returns) != 2 {
		t.Errorf("named part: %+v", tr)
	}

	tr = one(t, Plan(k, fit.Check(k), advised(kitchen.OpenPart)))
	if tr.Work != TakeDown || tr.From != 0 || tr.To != 603*mm {
		t.Errorf("over the cabinet in the way: %v from %v to %v", tr.Work, tr.From, tr.To)
	}

	tr = one(t, Plan(k, fit.Check(k), chosen(kitchen.OpenPart, survey.WallSpan{From: 2000 * mm, To: 4000 * mm})))
	if len(tr.Cabinets) != 0 || tr.Needed || tr.RailEdge != nil || tr.To != 3600*mm {
		t.Errorf("over no cabinet: %+v", tr)
	}
}

// Two parts of one soffit around an inside corner: no end in the corner, and one
// line where they meet.
func TestSoffitAroundAnInsideCorner(t *testing.T) {
	a, b := soffit(0, 3000*mm, profile(0, 2100*mm)), soffit(0, 2000*mm, profile(0, 2100*mm))
	a.Right, b.Left, b.ID = survey.EndCorner, survey.EndCorner, "s2"
	onB := hung(600*mm, 2000*mm, 2240*mm)
	onB.Wall = 1
	k := cook(corner(wall(3000*mm, 2500*mm, a), wall(2000*mm, 2500*mm, b)), demo(), hung(0, 3000*mm, 2120*mm), onB)
	got := trimmed(k)
	// On wall b the corner square is cut for the cabinet on wall a, up to 363 mm.
	// The cabinet at 600 mm is further away than the shortest run.
	want := []run{{0, 3000 * mm, 2122 * mm}, {0, 363 * mm, 2122 * mm}, {597 * mm, 2000 * mm, 2242 * mm}}
	if !reflect.DeepEqual(runs(got), want) {
		t.Fatalf("cuts %v, want %v", runs(got), want)
	}
	if len(got[0].Returns) != 0 {
		t.Errorf("faces %v, want none: walls and the corner are no ends", got[0].Returns)
	}
	if r := got[1].Returns; len(r) != 1 || r[0] != (Return{363 * mm, 330 * mm, MeetsOverhead}) {
		t.Errorf("faces %v, want one against the rest", r)
	}

	k.Plan.Cabinets[1].From = 400 * mm // now the two cuts on wall b merge, and wall a follows
	got = trimmed(k)
	want = []run{{0, 3000 * mm, 2242 * mm}, {0, 2000 * mm, 2242 * mm}}
	if !reflect.DeepEqual(runs(got), want) || !has(got[0], "trim.line.evened") || has(got[1], "trim.line.evened") {
		t.Errorf("cuts %v, want one even line %v", runs(got), want)
	}
}

// A cabinet shallower than the soffit ends in the corner: the part on the next
// wall starts beyond it and shows a new face.
func TestUncutPartBehindTheCorner(t *testing.T) {
	for name, c := range map[string]struct {
		under length.Length
		want  []Return
	}{
		"hangs lower than the cut":  {2100 * mm, []Return{{3000 * mm, 250 * mm, MeetsOverhead}}},
		"hangs higher than the cut": {2200 * mm, nil},
	} {
		a, b := soffit(0, 3000*mm, profile(0, 2100*mm)), soffit(330*mm, 2000*mm, profile(0, c.under))
		a.Right, b.Left, b.ID, b.Depth = survey.EndCorner, survey.EndCorner, "s2", 250*mm
		cab := hung(0, 3000*mm, 2120*mm)
		cab.Depth = 300 * mm
		k := cook(corner(wall(3000*mm, 2500*mm, a), wall(2000*mm, 2500*mm, b)), demo(), cab)
		if tr := one(t, trimmed(k)); !reflect.DeepEqual(tr.Returns, c.want) {
			t.Errorf("%s: faces %v, want %v", name, tr.Returns, c.want)
		}
	}
}

// A soffit of the next wall stands over a cabinet of this one: it is cut where
// it was measured, on its own wall.
func TestSoffitOfTheNextWall(t *testing.T) {
	b := soffit(0, 2000*mm, profile(0, 2100*mm))
	k := cook(corner(wall(3000*mm, 2500*mm), wall(2000*mm, 2500*mm, b)), demo(), hung(2400*mm, 3000*mm, 2120*mm))
	tr := one(t, trimmed(k))
	if want := []run{{0, 363 * mm, 2122 * mm}}; !reflect.DeepEqual(runs([]Trim{tr}), want) || !tr.Needed {
		t.Errorf("cut %v, want %v", runs([]Trim{tr}), want)
	}
}

// Two parts end to end along one wall meet at one line too.
func TestPartsEndToEnd(t *testing.T) {
	a, b := soffit(0, 1800*mm, profile(0, 2100*mm)), soffit(1800*mm, 3600*mm, profile(0, 2050*mm))
	a.Right, b.Left, b.ID = survey.EndCorner, survey.EndCorner, "s2"
	k := cook(room(wall(3600*mm, 2500*mm, a, b)), demo(), hung(0, 1800*mm, 2120*mm), hung(1800*mm, 2400*mm, 2240*mm))
	got := trimmed(k)
	want := []run{{0, 1800 * mm, 2242 * mm}, {1800 * mm, 2403 * mm, 2242 * mm}}
	if !reflect.DeepEqual(runs(got), want) || got[1].ID != "s2#1" {
		t.Errorf("cuts %v, want %v", runs(got), want)
	}
	if len(got[0].Returns) != 0 || len(got[1].Returns) != 1 {
		t.Errorf("faces %v and %v, want only one against the rest", got[0].Returns, got[1].Returns)
	}

	k.Room.Walls[0].Overheads[0].Right = survey.EndOpen // now they only stand beside each other
	if got := runs(trimmed(k)); got[0].line != 2122*mm || got[1].line != 2242*mm {
		t.Errorf("parts that do not go on: cuts %v", got)
	}
}
