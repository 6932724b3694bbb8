package resolve

import (
	"slices"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
)

// offList mentions sizes that the system does not make.
func (b *body) offList(in *api.Cabinet, c *cabinet.Placed) {
	if b.system == nil {
		return
	}
	sizes := b.system.Sizes(c.Kind)
	if len(sizes.Heights) == 0 {
		b.caution("plan.cabinet.kind_not_made", c.Pointer+"/kind", finding.Word("kind", c.Kind.String()))
		return
	}
	b.onList(sizes.Heights, c.Height, c.Pointer+"/height")
	switch {
	case in.Corner == nil:
		b.onList(sizes.Widths, c.Width(), c.Pointer+"/width")
	case c.Corner != nil:
		b.cornerOnList(sizes.Corners, c)
	}
	if in.Depth.Given() {
		b.onList(sizes.Depths, c.Depth, c.Pointer+"/depth")
	}
}

func (b *body) onList(list []length.Length, l length.Length, pointer string) {
	if len(list) > 0 && !slices.Contains(list, l) {
		b.caution("plan.size.off_list", pointer, size("size", l), size("nearest", nearest(list, l)))
	}
}

// nearest is the size closest to one that is not made; the smaller of two.
func nearest(list []length.Length, l length.Length) length.Length {
	best := list[0]
	for _, s := range list[1:] {
		if (s - l).Abs() < (best - l).Abs() {
			best = s
		}
	}
	return best
}
