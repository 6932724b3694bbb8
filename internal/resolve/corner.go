package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// readCorner reads what makes a cabinet a corner cabinet: which corner it stands in follows from the wall around it.
func (b *body) readCorner(in *api.Corner, c *cabinet.Placed, w *wall, onWall, placed bool) {
	if in == nil {
		return
	}
	pointer := c.Pointer + "/corner"
	shape, shapeOK := among[cabinet.CornerShape](b, in.Shape, pointer+"/shape", "l", "diagonal", "blind")
	corner := &cabinet.Corner{OtherWidth: b.must(in.OtherWidth, pointer+"/other_width", positive), Shape: shape}
	other, found := b.onWall(in.OtherWall, pointer+"/other_wall")
	if !onWall || !found {
		return
	}
	corner.OtherWall, corner.AtRight = other.Index, other.Index == w.Next
	c.Corner = corner
	switch {
	case !corner.AtRight && other.Index != w.Prev:
		b.fault("plan.corner.not_joined", pointer+"/other_wall")
	case placed && (w.lengthOK || !corner.AtRight) && shapeOK && shape != cabinet.CornerBlind && b.gap(c, w) > b.made.play:
		b.fault("plan.corner.not_in_corner", c.Pointer+"/from", size("gap", b.gap(c, w)))
	}
}

// gap is how far a corner cabinet stands off its corner, or reaches past it.
func (b *body) gap(c *cabinet.Placed, w *wall) length.Length {
	if c.Corner.AtRight {
		return (w.Length - c.To).Abs()
	}
	return c.From.Abs()
}
