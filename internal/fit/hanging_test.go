package fit

import (
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// A cabinet that tops out at 2120, lifted by 10 over its rail, with hangers that
// let it hang 8 low: an invented system (common practice, no source).
func TestHanging(t *testing.T) {
	um := length.Micrometre
	for _, c := range []struct {
		name  string
		given func(*kitchen.Kitchen)
		want  HangingVerdict
		have  length.Length
		by    string
	}{
		{"room for the lift exactly", ceilingAt(2130 * mm), Hooks, 10 * mm, "/survey/walls/0/ceiling"},
		{"a little less: hung low, screwed up", ceilingAt(2130*mm - um), HooksLow, 10*mm - um, "/survey/walls/0/ceiling"},
		{"the lift less the hanger's travel exactly", ceilingAt(2122 * mm), HooksLow, 2 * mm, "/survey/walls/0/ceiling"},
		{"less than that: held up and screwed", ceilingAt(2122*mm - um), ScrewUpOnly, 2*mm - um, "/survey/walls/0/ceiling"},
		{"no room at all, but no overlap", ceilingAt(2120 * mm), ScrewUpOnly, 0, "/survey/walls/0/ceiling"},
		{"does not fit", ceilingAt(2120*mm - um), HangBlocked, -um, "/survey/walls/0/ceiling"},
		{"a soffit over its back edge", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 0, 100*mm, 2125*mm)
		}, HooksLow, 5 * mm, "/survey/walls/0/overheads/0"},
		{"a beam just in front of it, lower than its top", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 400*mm, 100*mm, 2100*mm)
		}, HangBlocked, -20 * mm, "/survey/walls/0/overheads/0"},
		{"a beam in front that leaves room to lift behind it", func(k *kitchen.Kitchen) {
			hang(k, 0, 0, 3000*mm, 410*mm, 100*mm, 2100*mm)
		}, Hooks, 380 * mm, "/survey/walls/0/ceiling"},
		{"hangers with more travel than the lift", func(k *kitchen.Kitchen) {
			k.System.Rail.HangerDown = 15 * mm
			ceilingAt(2121 * mm)(k)
		}, HooksLow, 1 * mm, "/survey/walls/0/ceiling"},
	} {
		k := room(3000 * mm)
		c.given(k)
		got := hangingFound(k, add(k, cabinet.Wall, 0, 600*mm, 600*mm))
		if got.Verdict != c.want || !got.Have.Equal(c.have.Exact()) || got.By != c.by || !got.Need.Equal((10 * mm).Exact()) {
			t.Errorf("%s: %s with %s of %s by %s", c.name, got.Verdict, got.Have, got.Need, got.By)
		}
	}
}

func ceilingAt(height length.Length) func(*kitchen.Kitchen) {
	return func(k *kitchen.Kitchen) { k.Room.Walls[0].Ceiling = flat(height) }
}

func TestOnlyWhatIsHookedOnARailHangs(t *testing.T) {
	k := room(3000 * mm)
	if got := hangingFound(k, add(k, cabinet.Tall, 0, 0, 600*mm)); got != nil {
		t.Errorf("a tall cabinet is slid in, not hooked: %+v", got)
	}
	k.System.Rail = nil
	if got := hangingFound(k, add(k, cabinet.Wall, 0, 600*mm, 600*mm)); got != nil {
		t.Errorf("hanging strips need no lift: %+v", got)
	}
}
