package fill

import (
	"cmp"
	"slices"

	"railhead/internal/length"
)

// sort puts the sizes in order, the wider first, then the taller; of equal ones the best is kept.
func (t *task) sort() {
	order := make([]int, len(t.r.Sizes))
	for i, s := range t.r.Sizes {
		order[i] = i
		t.heights = append(t.heights, s.Height)
	}
	for _, p := range t.r.Fixed {
		t.heights = append(t.heights, p.Height)
	}
	slices.Sort(t.heights)
	t.heights = slices.Compact(t.heights)
	slices.SortStableFunc(order, func(i, j int) int {
		a, b := t.r.Sizes[i], t.r.Sizes[j]
		return cmp.Or(cmp.Compare(b.Width, a.Width), cmp.Compare(b.Height, a.Height), cmp.Compare(b.Worth, a.Worth))
	})
	for _, i := range order {
		s := t.r.Sizes[i]
		one := size{t.in(s.Width), t.heightClass(s.Height), int64(s.Worth-t.r.Weights.Cabinet)*t.share - 1, i}
		if n := len(t.sizes); n == 0 || t.sizes[n-1].width != one.width || t.sizes[n-1].height != one.height {
			t.sizes = append(t.sizes, one)
		}
	}
}

func (t *task) heightClass(h length.Length) int32 {
	i, _ := slices.BinarySearch(t.heights, h)
	return int32(i)
}

// classes groups the sizes by height.
func (t *task) classes() {
	for h := range t.heights {
		from, narrowest := int32(len(t.byClass)), t.steps+1
		for i, s := range t.sizes {
			if s.height == int32(h) {
				t.byClass = append(t.byClass, int32(i))
				narrowest = min(narrowest, s.width)
			}
		}
		t.class = append(t.class, [2]int32{from, int32(len(t.byClass))})
		t.narrowest = append(t.narrowest, narrowest)
	}
}

// size finds a size by its width and height.
func (t *task) size(width, height int32) int32 {
	for i, s := range t.sizes {
		if s.width == width && s.height == height {
			return int32(i)
		}
	}
	return none
}
