package fit

import (
	"slices"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Counter to wall cabinet: 15 to 18 in (lsuagcenter.com, kitchen design and
// space guidelines, F). 36 counter + 18 gap + 30 upper = 84 in (C).
func TestCounterToWallCabinet(t *testing.T) {
	for _, c := range []struct {
		gap  string
		base bool
		want []string
	}{
		{"18", true, nil},
		{"17", true, []string{"fit.work_zone.tight note need 450 have 431.8"}},
		{"15", true, []string{"fit.work_zone.tight note need 450 have 381"}},
		{"17.716535", true, []string{"fit.work_zone.tight note need 450 have 449.999989"}},
		{"14", true, []string{"fit.work_zone.low caution need 380 have 355.6"}},
		{"14", false, nil},
	} {
		k := room(3000 * mm)
		k.Plan.Counter = inch(t, "36")
		a := add(k, cabinet.Wall, 0, 600*mm, inch(t, "24"), func(p *cabinet.Placed) {
			p.Underside, p.Height = inch(t, "36")+inch(t, c.gap), inch(t, "30")
			p.Top = p.Underside + p.Height
		})
		if c.gap == "18" && a.Top != inch(t, "84") {
			t.Errorf("the stack tops out at %s in", a.Top.Inches())
		}
		if c.base {
			add(k, cabinet.Base, 0, 900*mm, 600*mm)
		}
		if got := toldAll(WorkZone(k)); !slices.Equal(got, c.want) {
			t.Errorf("%s in over the counter: %q, want %q", c.gap, got, c.want)
		}
	}
}

// From the cooking surface to what can burn: 30 in unprotected, IRC M1901.1
// (inspectionnews.net t-33178, F), 24 in protected (plumbingwebconnection.com
// gas ranges, F). The appliance's instructions rule.
func TestAboveTheCookingSurface(t *testing.T) {
	k30, k24 := 30*length.Inch, 24*length.Inch
	for _, c := range []struct {
		name  string
		above length.Length
		given func(*kitchen.Kitchen)
		want  []string
	}{
		{"30 in exactly", k30, nil, nil},
		{"a hair less", k30 - 1, nil, []string{"fit.cooking.combustible stop need 762 have 761.999999"}},
		{"24 in, protected", k24, protected, nil},
		{"a hair less, protected", k24 - 1, protected, []string{"fit.cooking.combustible stop need 609.6 have 609.599999"}},
		{"where other codes hold the number is a guide", k30 - 1, func(k *kitchen.Kitchen) { k.Room.CodeSet = survey.CodeNone },
			[]string{"fit.cooking.combustible caution need 762 have 761.999999"}},
		{"where nobody said which code holds, too", k30 - 1, func(k *kitchen.Kitchen) { k.Room.CodeSet = survey.CodeUnspecified },
			[]string{"fit.cooking.combustible caution need 762 have 761.999999"}},
		{"instructions that ask for more", k30, func(k *kitchen.Kitchen) { k.Plan.Cooking.Clearance = 800 * mm },
			[]string{"fit.cooking.instructions stop need 800 have 762"}},
		{"instructions that allow less", 650 * mm, func(k *kitchen.Kitchen) { k.Plan.Cooking.Clearance = 650 * mm },
			[]string{"fit.cooking.below_usual caution need 762 have 650"}},
	} {
		k := cooking(c.above)
		k.Room.CodeSet = survey.CodeUSIRC
		if c.given != nil {
			c.given(k)
		}
		if got := toldAll(WorkZone(k)); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

func protected(k *kitchen.Kitchen) { k.Plan.Cooking.Hood = &cabinet.Hood{Protected: true} }

// cooking is a room with a cooking surface at 910 and a wall cabinet over it.
func cooking(above length.Length) *kitchen.Kitchen {
	k := room(3600 * mm)
	k.Plan.Cooking = &cabinet.Cooking{Pointer: "/plan/cooking", Wall: 0, From: 1200 * mm, To: 1800 * mm, Surface: 910 * mm}
	add(k, cabinet.Wall, 0, 1200*mm, 600*mm, func(c *cabinet.Placed) { c.Underside = 910*mm + above })
	add(k, cabinet.Wall, 0, 600*mm, 600*mm) // beside it, not above
	return k
}

// 450 and 380 mm are enough to a nanometre (metric practice, no source).
func TestWorkHeightExactly(t *testing.T) {
	for have, want := range map[length.Length]int{450 * mm: 0, 450*mm - 1: 1, 380 * mm: 1, 380*mm - 1: 2} {
		k := room(3000*mm, 2000*mm)
		add(k, cabinet.Wall, 0, 600*mm, 600*mm, func(c *cabinet.Placed) { c.Underside = 900*mm + have })
		add(k, cabinet.Base, 0, 600*mm, 600*mm)
		add(k, cabinet.Base, 1, 1400*mm, 600*mm)
		got := WorkZone(k)
		if codes := []string{"", "fit.work_zone.tight", "fit.work_zone.low"}; want == 0 && len(got) != 0 || want > 0 && (len(got) != 1 || got[0].Code != codes[want]) {
			t.Errorf("%s over the counter: %q", have, toldAll(got))
		}
	}
}

func TestSoffitAndFillerAboveTheCookingSurface(t *testing.T) {
	k := cooking(800 * mm)
	k.Room.CodeSet = survey.CodeUSIRC
	k.Plan.RowShift = -30 * mm
	k.Plan.Fillers = []cabinet.Filler{{Pointer: "/plan/fillers/0", Kind: cabinet.Wall, Wall: 0, From: 1180 * mm, To: 1210 * mm}}
	hang(k, 0, 1300*mm, 1500*mm, 0, 300*mm, 1500*mm)
	k.Plan.Fillers = append(k.Plan.Fillers, // beside the surface, and of the base row
		cabinet.Filler{Kind: cabinet.Wall, Wall: 0, From: 1150 * mm, To: 1200 * mm},
		cabinet.Filler{Kind: cabinet.Wall, Wall: 0, From: 1800 * mm, To: 1850 * mm},
		cabinet.Filler{Kind: cabinet.Base, Wall: 0, From: 1200 * mm, To: 1250 * mm})
	add(k, cabinet.Base, 0, 1800*mm, 600*mm, func(c *cabinet.Placed) { c.Depth = 700 * mm }) // beside it and deeper
	hang(k, 0, 1300*mm, 1500*mm, 600*mm, 300*mm, 1500*mm)                                    // in front of the surface
	want := []string{"fit.cooking.combustible stop need 762 have 520", "fit.cooking.combustible stop need 762 have 590"}
	if got := toldAll(WorkZone(k)); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// 24 in is what IRC M1503.2.1 asks over open-top broilers (up.codes, domestic
// cooking exhaust equipment, F), here a guide where nobody stated the hood's own.
func TestHoodHeight(t *testing.T) {
	for _, c := range []struct {
		name string
		hood cabinet.Hood
		want []string
	}{
		{"24 in", cabinet.Hood{Underside: 910*mm + 24*length.Inch}, nil},
		{"a hair less", cabinet.Hood{Underside: 910*mm + 24*length.Inch - 1}, []string{"fit.hood.low caution need 609.6 have 609.599999"}},
		{"less than its instructions", cabinet.Hood{Underside: 1559 * mm, Clearance: 650 * mm}, []string{"fit.hood.too_low stop need 650 have 649"}},
		{"as its instructions allow", cabinet.Hood{Underside: 1410 * mm, Clearance: 500 * mm}, nil},
		{"a downdraft has no height", cabinet.Hood{Kind: cabinet.Downdraft, Underside: 1000 * mm}, nil},
		{"nobody stated its height", cabinet.Hood{}, nil},
	} {
		k := cooking(800 * mm)
		k.Plan.Cooking.Hood = &c.hood
		if got := toldAll(WorkZone(k)); !slices.Equal(got, c.want) {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}
