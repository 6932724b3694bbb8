package rail

import (
	"reflect"
	"slices"
	"testing"

	"railhead/internal/length"
	"railhead/internal/survey"
)

func TestDivide(t *testing.T) {
	cases := map[string]struct {
		to, stock length.Length
		studs     []length.Length
		want      []length.Length
	}{
		"shorter than the stock":              {2000 * mm, 2400 * mm, nil, []length.Length{2000 * mm}},
		"just the stock":                      {2400 * mm, 2400 * mm, nil, []length.Length{2400 * mm}},
		"a little longer: no short rest":      {2410 * mm, 2400 * mm, nil, []length.Length{1205 * mm, 2410 * mm}},
		"three pieces":                        {6000 * mm, 2400 * mm, nil, []length.Length{2000 * mm, 4000 * mm, 6000 * mm}},
		"joint into the nearest bay":          {3500 * mm, 2400 * mm, studs(200*mm, 400*mm, 3500*mm), []length.Length{1600 * mm, 3500 * mm}},
		"no room to move the joint":           {4790 * mm, 2400 * mm, studs(210*mm, 400*mm, 4790*mm), []length.Length{2395 * mm, 4790 * mm}},
		"a bay that leaves too short a piece": {401 * mm, 400 * mm, []length.Length{310 * mm, 390 * mm}, []length.Length{200*mm + mm/2, 401 * mm}},
		"no stock stated":                     {9000 * mm, 0, nil, []length.Length{9000 * mm}},
		"stock of scraps":                     {9000 * mm, 10 * mm, nil, []length.Length{9000 * mm}},
	}
	for name, c := range cases {
		w := wall(c.to)
		w.Studs, w.StudsKnown = c.studs, c.studs != nil
		pieces := divide(survey.Span{To: c.to}, &w, []length.Length{c.stock})
		var got []length.Length
		for i, p := range pieces {
			got = append(got, p.To)
			if p.Joint != (i < len(pieces)-1) {
				t.Errorf("%s: joint of piece %d is %v", name, i, p.Joint)
			}
		}
		if !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: pieces end at %v, want %v", name, got, c.want)
		}
	}
}

func TestFixings(t *testing.T) {
	every400 := studs(200*mm, 400*mm, 4000*mm)
	cases := map[string]struct {
		backing survey.Backing
		studs   []length.Length
		span    length.Length
		p       Piece
		want    []Fixing
		code    string
	}{
		"a screw to each stud and blocking at the ends": {
			survey.WoodStud, every400, 610 * mm, Piece{To: 900 * mm},
			[]Fixing{{40 * mm, Blocking}, {200 * mm, Stud}, {600 * mm, Stud}, {860 * mm, Blocking}}, "rail.blocking.needed",
		},
		"ends on studs": {
			survey.SteelStud, every400, 610 * mm, Piece{From: 170 * mm, To: 630 * mm},
			[]Fixing{{200 * mm, Stud}, {600 * mm, Stud}}, "",
		},
		"stud a little beyond the inset": {
			survey.WoodStud, every400, 610 * mm, Piece{From: 152 * mm, To: 648 * mm},
			[]Fixing{{192 * mm, Stud}, {608 * mm, Stud}}, "",
		},
		"two studs by the end": {
			survey.WoodStud, []length.Length{190 * mm, 555 * mm, 575 * mm}, 610 * mm, Piece{From: 170 * mm, To: 600 * mm},
			[]Fixing{{190 * mm, Stud}, {555 * mm, Stud}, {575 * mm, Stud}}, "",
		},
		"stud too near the end": {
			survey.WoodStud, every400, 610 * mm, Piece{From: 185 * mm, To: 630 * mm},
			[]Fixing{{225 * mm, Blocking}, {600 * mm, Stud}}, "rail.blocking.needed",
		},
		"studs further apart than the longest span": {
			survey.WoodStud, every400, 150 * mm, Piece{From: 170 * mm, To: 630 * mm},
			[]Fixing{{200 * mm, Stud}, {333_333_333, Blocking}, {466_666_667, Blocking}, {600 * mm, Stud}}, "rail.blocking.needed",
		},
		"one stud behind a short piece": {
			survey.WoodStud, every400, 610 * mm, Piece{From: 170 * mm, To: 230 * mm},
			[]Fixing{{185 * mm, Blocking}, {200 * mm, Stud}, {215 * mm, Blocking}}, "rail.blocking.needed",
		},
		"one stud a little beyond both insets, nearer to the right one's": {
			survey.WoodStud, []length.Length{47 * mm}, 610 * mm, Piece{To: 90 * mm},
			[]Fixing{{22_500_000, Blocking}, {50 * mm, Stud}}, "rail.blocking.needed",
		},
		"one stud a little beyond both insets, nearer to the left one's": {
			survey.WoodStud, []length.Length{43 * mm}, 610 * mm, Piece{To: 90 * mm},
			[]Fixing{{40 * mm, Stud}, {67_500_000, Blocking}}, "rail.blocking.needed",
		},
		"one stud just as far beyond both insets": {
			survey.WoodStud, []length.Length{45 * mm}, 610 * mm, Piece{To: 90 * mm},
			[]Fixing{{22_500_000, Blocking}, {45 * mm, Stud}, {67_500_000, Blocking}}, "rail.blocking.needed",
		},
		"masonry": {
			survey.Masonry, every400, 610 * mm, Piece{To: 1310 * mm},
			[]Fixing{{40 * mm, Masonry}, {450 * mm, Masonry}, {860 * mm, Masonry}, {1270 * mm, Masonry}}, "",
		},
		"only board": {
			survey.Board, nil, 610 * mm, Piece{To: 600 * mm},
			[]Fixing{{40 * mm, BoardOnly}, {560 * mm, BoardOnly}}, "rail.backing.none",
		},
		"studs not found yet": {
			survey.WoodStud, nil, 610 * mm, Piece{To: 600 * mm},
			[]Fixing{{40 * mm, Unknown}, {560 * mm, Unknown}}, "rail.backing.unknown",
		},
	}
	for name, c := range cases {
		w := wall(4000 * mm)
		w.Backing, w.Studs, w.StudsKnown = c.backing, c.studs, c.studs != nil
		got := limits{40 * mm, c.span}.fixings(c.p, &w)
		if !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
		r := Rail{Pieces: []Piece{c.p}, Fixings: got}
		r.noticeBacking(&w)
		r.Questions = nil // TestQuestionsAboutTheWall
		warned := codes(t, r)
		if c.code == "" && len(warned) > 0 || c.code != "" && !slices.Equal(warned, []string{c.code}) {
			t.Errorf("%s: findings %v, want %q", name, warned, c.code)
		}
	}
}

func TestQuestionsAboutTheWall(t *testing.T) {
	for name, c := range map[string]struct {
		backing survey.Backing
		known   bool
		want    []string
	}{
		"backing unknown":      {survey.BackingUnknown, false, []string{"ask.wall.backing"}},
		"studs without a kind": {survey.BackingUnknown, true, []string{"ask.wall.backing"}},
		"studs unknown":        {survey.WoodStud, false, []string{"ask.wall.studs"}},
		"all known":            {survey.WoodStud, true, nil},
		"masonry":              {survey.Masonry, false, nil},
	} {
		w := wall(1000 * mm)
		w.Backing, w.StudsKnown, w.Studs = c.backing, c.known, studs(30*mm, 470*mm, 1000*mm)
		r := one(t, planned(cook(room(w), demo(), hung(0, 1000*mm))))
		var got []string
		for _, q := range r.Questions {
			got = append(got, q.Code)
		}
		if !reflect.DeepEqual(got, c.want) {
			t.Errorf("%s: asks %v, want %v", name, got, c.want)
		}
	}
}

// What a system leaves out is said once, with the first rail.
func TestValuesNobodyStated(t *testing.T) {
	s := demo()
	s.Rail.Profile, s.Rail.EndInset, s.Rail.LongestSpan = 0, 0, 0
	tall := hung(3000*mm, 3600*mm)
	tall.Top = 2360 * mm
	rails := planned(cook(room(wall(3600*mm)), s, hung(0, 1200*mm), tall))
	for _, code := range []string{"rail.profile.not_stated", "rail.end_inset.not_stated", "rail.longest_span.not_stated"} {
		if !slices.Contains(codes(t, rails[0]), code) || slices.Contains(codes(t, rails[1]), code) {
			t.Errorf("%s: %v, %v", code, codes(t, rails[0]), codes(t, rails[1]))
		}
	}
	if got := rails[1].Fixings[0].At; got != UsualInset {
		t.Errorf("first screw at %v, want %v", got, UsualInset)
	}
}

// A span of a nanometre must not make a screw of every nanometre.
func TestSpanTooShortToMean(t *testing.T) {
	s := demo()
	s.Rail.LongestSpan = 1
	r := one(t, planned(cook(room(wall(3600*mm)), s, hung(0, 2000*mm))))
	if len(r.Fixings) > 60 || !slices.Contains(codes(t, r), "rail.longest_span.too_short") {
		t.Errorf("%d screws, %v", len(r.Fixings), codes(t, r))
	}
}

func TestStock(t *testing.T) {
	w := wall(3600 * mm)
	k := cook(room(w), demo(), hung(0, 1200*mm), hung(2401*mm, 3598*mm))
	plan, missing := Stock(k, planned(k))
	if plan == nil || missing != nil {
		t.Fatalf("no plan: %v", missing)
	}
	// 1200 + 3 + 1197 mm is just one bar.
	if len(plan.Bars) != 1 || plan.Bought != 2400*mm || plan.Kerf != 3*mm || plan.Waste != 0 {
		t.Errorf("plan %+v", plan)
	}
	k.System.Rail.Stock = nil
	plan, missing = Stock(k, planned(k))
	if plan != nil || len(missing) != 0 {
		t.Errorf("no stock stated, which the resolved system has said: %v %v", plan, missing)
	}
	k.System.Rail.Stock = []length.Length{10 * mm}
	if _, missing = Stock(k, planned(k)); missing[0].Pointer != "/system/rail/stock" {
		t.Errorf("an inline system is named by its member: %v", missing)
	}
	k.System.ID = "demo-rail"
	if _, missing = Stock(k, planned(k)); missing[0].Pointer != "/system" {
		t.Errorf("a built-in is named by its id: %v", missing)
	}
	if _, missing = Stock(k, planned(k)); missing[0].Code != "rail.stock.cannot_cut" || !slices.Contains(codes(t, planned(k)[0]), "rail.stock.too_short") {
		t.Errorf("stock of scraps: %v", missing)
	}
	worded(t, "rail.stock.cannot_cut", nil, nil, nil)
}

// A sliver of rail between two windows is said to be too short.
func TestSliverOfRail(t *testing.T) {
	w := wall(3600 * mm)
	opening := func(from, to length.Length) survey.Opening {
		return survey.Opening{From: from, To: to, Sill: fixed(1000 * mm), Head: fixed(2200 * mm)}
	}
	w.Openings = []survey.Opening{opening(600*mm, 1200*mm), opening(1300*mm, 1900*mm)}
	r := one(t, planned(cook(room(w), demo(), hung(0, 2400*mm))))
	if len(r.Pieces) != 3 || !slices.Contains(codes(t, r), "rail.piece.short") {
		t.Errorf("pieces %v, %v", r.Pieces, codes(t, r))
	}
}
