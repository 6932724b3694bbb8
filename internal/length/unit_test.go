package length

import "testing"

func TestUnitsOfARequest(t *testing.T) {
	for _, c := range []struct {
		name       string
		unit       Unit
		size, step string
	}{
		{"mm", MM, "1 mm", "1 mm"},
		{"cm", CM, "0.01 m", "1 mm"},
		{"in", IN, "25.4 mm", "1.5875 mm"}, // 1 in exact (F); 1/16 in (C)
	} {
		got, ok := ParseUnit(c.name)
		sizes := got.Size() == must(t, c.size) && got.DefaultStep() == must(t, c.step)
		if !ok || got != c.unit || got.String() != c.name || !sizes {
			t.Errorf("%s: %v, %t, one is %v, a step is %v", c.name, got, ok, got.Size(), got.DefaultStep())
		}
	}
	for _, name := range []string{"", "MM", "m", "ft", "inch", " mm"} {
		if _, ok := ParseUnit(name); ok {
			t.Errorf("%q is taken for a unit", name)
		}
	}
}

func TestFootAndInchInMillimetres(t *testing.T) {
	if Foot.MM() != "304.8" || Inch.MM() != "25.4" { // exact since 1959 (F)
		t.Errorf("a foot is %s mm, an inch %s mm", Foot.MM(), Inch.MM())
	}
	if got := must(t, "36 ft").MM(); got != "10972.8" { // NIST SP 811 (2008), B.7.2: 36 ft × 0.3048 m/ft = 10.9728 m (F)
		t.Errorf("36 ft are %s mm", got)
	}
	// NIST LC 1137, metric style guide: 36 in are 91.44 cm, 40.1 in are 101.854 cm (F).
	for in, cm := range map[string]string{"36 in": "91.44 cm", "40.1 in": "101.854 cm"} {
		if got := must(t, in).Text(CM); got != cm {
			t.Errorf("%s are %s, want %s", in, got, cm)
		}
	}
}

func TestLengthForMessages(t *testing.T) {
	if got := (Inch / 16).String(); got != "1.5875 mm" {
		t.Errorf("a length is %q", got)
	}
	if got := FromRat(rat(10, 3)).String(); got != "10/3 nm" {
		t.Errorf("an exact length is %q", got)
	}
	if (-Inch).Abs() != Inch || Inch.Abs() != Inch {
		t.Error("Abs keeps a sign")
	}
}
