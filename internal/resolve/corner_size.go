package resolve

import (
	"cmp"
	"slices"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
)

// cornerSizes reads the corner cabinets that a system makes of one kind: in order, each once.
func (b *body) cornerSizes(in []api.CornerSize, shallowest length.Length, pointer string) []cabinet.CornerSize {
	var out []cabinet.CornerSize
	for i := range in {
		out = append(out, b.cornerSize(&in[i], shallowest, item(pointer, "corners", i)))
	}
	slices.SortFunc(out, func(x, y cabinet.CornerSize) int {
		return cmp.Or(cmp.Compare(x.Shape, y.Shape), cmp.Compare(x.Width, y.Width), cmp.Compare(x.OtherWidth, y.OtherWidth))
	})
	return slices.Compact(out)
}

func (b *body) cornerSize(in *api.CornerSize, shallowest length.Length, pointer string) cabinet.CornerSize {
	shape, shapeOK := among[cabinet.CornerShape](b, in.Shape, pointer+"/shape", "l", "diagonal", "blind")
	width, widthOK := b.length(in.Width, pointer+"/width", positive)
	out := cabinet.CornerSize{Shape: shape, Width: width}
	beside := pointer + "/other_width"
	switch {
	case !shapeOK:
		b.optional(in.OtherWidth, beside, positive)
	case shape != cabinet.CornerBlind:
		other, otherOK := b.length(in.OtherWidth, beside, positive)
		out.OtherWidth = other
		b.deepEnough(width, widthOK, shallowest, pointer+"/width")
		b.deepEnough(other, otherOK, shallowest, beside)
	case in.OtherWidth.Given():
		b.fault("system.corner.other_width_of_blind", beside)
	}
	return out
}

// deepEnough refuses a leg of a corner cabinet that is no longer than the other one is deep: it would be no leg.
func (b *body) deepEnough(leg length.Length, legOK bool, depth length.Length, pointer string) {
	if legOK && leg <= depth {
		b.fault("system.corner.too_narrow", pointer, size("depth", depth))
	}
}

// cornerOnList mentions a corner cabinet that the system does not make. One that reaches as far along both walls as a
// listed one is that one, whichever wall it is said to stand on.
func (b *body) cornerOnList(corners []cabinet.CornerSize, c *cabinet.Placed) {
	widths, others := legs(corners, c.Corner.Shape, c.Width())
	if len(corners) > 0 && len(widths) == 0 {
		b.caution("plan.corner.not_made", c.Pointer+"/corner/shape", finding.Word("kind", c.Kind.String()))
	}
	b.onList(widths, c.Width(), c.Pointer+"/width")
	b.onList(others, c.Corner.OtherWidth, c.Pointer+"/corner/other_width")
}

// legs are the widths that corner cabinets of a shape have along their wall, and those that they have along the other
// wall where they have a width along this one.
func legs(corners []cabinet.CornerSize, shape cabinet.CornerShape, width length.Length) (widths, others []length.Length) {
	for _, s := range corners {
		switch {
		case s.Shape != shape:
			continue
		case shape == cabinet.CornerBlind:
			widths = append(widths, s.Width)
			continue
		}
		widths = append(widths, s.Width, s.OtherWidth)
		if s.Width == width {
			others = append(others, s.OtherWidth)
		}
		if s.OtherWidth == width {
			others = append(others, s.Width)
		}
	}
	slices.Sort(widths)
	slices.Sort(others)
	return widths, others
}
