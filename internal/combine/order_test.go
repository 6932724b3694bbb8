package combine

import (
	"slices"
	"testing"
)

// Things that share a joint are taken one after the other, and nothing else moves.
func TestOrder(t *testing.T) {
	bear := func(joints ...int) []Way {
		w := Way{}
		for _, j := range joints {
			w.Effects = append(w.Effects, Effect{Joint: j})
		}
		return []Way{{}, w}
	}
	for _, c := range []struct {
		name   string
		joints int
		things []Thing
		want   []int
	}{
		{"no joints", 0, things(bear(), bear(), bear()), []int{0, 1, 2}},
		{"no thing bears on the joint", 1, things(bear(), bear(), bear()), []int{0, 1, 2}},
		{"a joint of all", 1, things(bear(0), bear(0), bear(0)), []int{0, 1, 2}},
		{"first and last", 1, things(bear(0), bear(), bear(), bear(0)), []int{1, 2, 0, 3}},
		{"pairs across", 3, things(bear(0), bear(1), bear(2), bear(2), bear(0), bear(1)), []int{0, 4, 1, 5, 2, 3}},
		{"a chain sent in disorder", 3, things(bear(0, 1), bear(2), bear(0), bear(1, 2)), []int{1, 3, 0, 2}},
	} {
		p := &Problem{Things: c.things, Joints: make([]Joint, c.joints)}
		if got := p.order(); !slices.Equal(got, c.want) {
			t.Errorf("%s: %v, want %v", c.name, got, c.want)
		}
	}
}
