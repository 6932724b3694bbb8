package resolve

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/go-json-experiment/json"
	"pgregory.net/rapid"

	"railhead/api"
	"railhead/internal/kitchen"
	"railhead/internal/rules"
	"railhead/internal/survey"
)

// FuzzRequest: whatever can be decoded is either refused, with words and pointers, or resolved to a case whose profiles
// can be read everywhere, and to what can be proposed for it.
func FuzzRequest(f *testing.F) {
	for _, body := range []string{contractRoom, denseRoom, plainRoom, fourWalls, aCorner, everythingWrong, wholeBody(f), "{}"} {
		f.Add([]byte(body))
	}
	f.Fuzz(func(t *testing.T, body []byte) {
		var req api.LayoutRequest
		if json.Unmarshal(body, &req) != nil {
			return
		}
		if complaint := sound(&req); complaint != "" {
			t.Fatal(complaint)
		}
	})
}

// sound is what is wrong with how a request was resolved; empty for nothing.
func sound(req *api.LayoutRequest) string {
	c, faults := Request(&req.Request)
	if complaint := soundCase(c, faults); complaint != "" {
		return complaint
	}
	laid, filling, more := LayoutRequest(req)
	switch {
	case len(more) < len(faults):
		return fmt.Sprintf("%d faults, and for layouts %d", len(faults), len(more))
	case (laid == nil) != (filling == nil):
		return fmt.Sprintf("case %v, filling %v", laid != nil, filling != nil)
	case filling != nil:
		if complaint := soundFilling(laid.Kitchen, filling); complaint != "" {
			return complaint
		}
	}
	return soundCase(laid, more)
}

// soundFilling is what cannot be with what is to be proposed for a kitchen.
func soundFilling(k *kitchen.Kitchen, f *kitchen.Filling) string {
	for _, w := range f.Walls {
		if w < 0 || w >= len(k.Room.Walls) {
			return fmt.Sprintf("no wall %d", w)
		}
	}
	if !slices.IsSorted(f.Walls) || !slices.IsSorted(f.Kinds) || len(slices.Compact(slices.Clone(f.Walls))) < len(f.Walls) || len(slices.Compact(slices.Clone(f.Kinds))) < len(f.Kinds) {
		return fmt.Sprintf("out of order, or twice: %v, %v", f.Walls, f.Kinds)
	}
	for _, kind := range f.Kinds {
		if s := k.System.Sizes(kind); len(s.Heights) == 0 || len(s.Widths) == 0 || len(s.Depths) == 0 {
			return fmt.Sprintf("nothing to propose of kind %v", kind)
		}
	}
	w := f.Weights
	if least := min(w.Cabinet, w.Filler, w.FillerPerMM, w.OpenPerMM, w.Panel, w.HeightChange, w.BaseLineMiss, w.Symmetry, w.DuctPair, w.CounterPerMM); least < 0 {
		return "a weight below nothing: " + least.Decimal()
	}
	if least := min(f.LeastFiller, f.WallFiller, f.CornerFiller, f.Panel, f.LeastOpen); least < 0 || f.Step <= 0 {
		return "a length below nothing: " + least.MM()
	}
	return ""
}

// soundCase is what is wrong with a case, and with the faults of a request that has none.
func soundCase(c *Case, faults []Fault) string {
	if (c == nil) != (len(faults) > 0) {
		return fmt.Sprintf("case %v with %d faults", c != nil, len(faults))
	}
	for _, fault := range faults {
		if _, ok := rules.Of(fault.Code); !ok || len(fault.Pointer) == 0 || fault.Pointer[0] != '/' {
			return fmt.Sprintf("%s at %q", fault.Code, fault.Pointer)
		}
	}
	if c == nil {
		return ""
	}
	for i := range c.Kitchen.Room.Walls {
		w := &c.Kitchen.Room.Walls[i]
		if closest(w.Ceiling, w.RoomFloor, survey.Span{To: w.Length}).Value.Sign() <= 0 {
			return fmt.Sprintf("wall %d: the ceiling is under the floor", i)
		}
	}
	if len(c.Kitchen.Datums) != len(c.Kitchen.Room.Groups) {
		return "a level group without a datum"
	}
	return ""
}

// Members taken out, or set to what a slip of the finger makes of them, are refused or answered; nothing breaks.
func TestSlipsOfTheFinger(t *testing.T) {
	bodies := []string{contractRoom, denseRoom, fourWalls, aCorner, wholeBody(t)}
	values := []string{"", "-1", "0", "1", "600", "99999", "1e9", "0.0000001", `""`, `"x"`, `"A"`, `"a"`, `"31 5/8 in"`, `"-2'"`, `"100 m"`, "[]", "{}", "true", "false"}
	rapid.Check(t, func(t *rapid.T) {
		var doc any
		if err := json.Unmarshal([]byte(rapid.SampledFrom(bodies).Draw(t, "body")), &doc); err != nil {
			t.Fatal(err)
		}
		for range rapid.IntRange(1, 4).Draw(t, "slips") {
			pointer := rapid.SampledFrom(pointers(doc, "")).Draw(t, "pointer")
			doc = set(t, doc, strings.Split(pointer, "/")[1:], rapid.SampledFrom(values).Draw(t, "value"))
		}
		body, err := json.Marshal(doc)
		if err != nil {
			t.Fatal(err)
		}
		var req api.LayoutRequest
		if json.Unmarshal(body, &req) != nil {
			return // the decoder's to refuse
		}
		if complaint := sound(&req); complaint != "" {
			t.Fatalf("%s\n%s", complaint, body)
		}
	})
}

// pointers are all members of a body but itself, in order.
func pointers(node any, base string) (out []string) {
	add := func(pointer string, child any) { out = append(append(out, pointer), pointers(child, pointer)...) }
	switch n := node.(type) {
	case map[string]any:
		for _, name := range slices.Sorted(maps.Keys(n)) {
			add(base+"/"+name, n[name])
		}
	case []any:
		for i := range n {
			add(element(base, i), n[i])
		}
	}
	return out
}

func BenchmarkRequest(b *testing.B) {
	req := decode(b, contractRoom)
	for b.Loop() {
		Request(req)
	}
}
