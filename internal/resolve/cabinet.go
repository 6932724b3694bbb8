package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// readCabinet places one planned cabinet. One that reaches off its wall is not refused: that it does not fit is an
// answer.
func (b *body) readCabinet(i int) {
	in, pointer := &b.req.Plan.Cabinets[i], item("/plan", "cabinets", i)
	c := cabinet.Placed{ID: in.ID, Pointer: pointer, Index: i, Keep: in.Keep}
	kind, kindOK := b.kind(in.Kind, pointer+"/kind")
	w, onWall := b.onWall(in.Wall, pointer+"/wall")
	from, fromOK := b.length(in.From, pointer+"/from", anySign)
	width, widthOK := b.length(in.Width, pointer+"/width", positive)
	height, heightOK := b.length(in.Height, pointer+"/height", positive)
	c.Kind, c.Wall, c.From, c.To, c.Height = kind, w.Index, from, from+width, height
	c.Depth = b.depth(in, &c, kindOK)
	b.readLevels(in, &c, kindOK, heightOK)
	if in.Built != "" {
		c.Upright = oneOf[int](b, in.Built, pointer+"/built", "lying", "upright") == 1
	}
	c.Door = b.door(in.Door, pointer+"/door")
	b.readCorner(in.Corner, &c, w, onWall, fromOK && widthOK)
	b.offList(in, &c)
	b.plan.Cabinets = append(b.plan.Cabinets, c)
}

// depth defaults to the smallest that the system makes.
func (b *body) depth(in *api.Cabinet, c *cabinet.Placed, kindOK bool) length.Length {
	pointer := c.Pointer + "/depth"
	if in.Depth.Given() {
		return b.lengthOr(in.Depth, pointer, positive, length.Millimetre)
	}
	if kindOK && b.made.none[c.Kind] {
		b.fault("plan.cabinet.no_depth", pointer)
	}
	if b.system == nil || len(b.system.Sizes(c.Kind).Depths) == 0 {
		return length.Millimetre
	}
	return b.system.Sizes(c.Kind).Depths[0]
}

// readLevels works out underside and top: either may be given, else the system's row with the row shift.
func (b *body) readLevels(in *api.Cabinet, c *cabinet.Placed, kindOK, heightOK bool) {
	top, topOK := b.optional(in.Top, c.Pointer+"/top", positive)
	under, _ := b.optional(in.Underside, c.Pointer+"/underside", notNegative)
	c.OwnLevel = in.Top.Given() || in.Underside.Given()
	b.related(in, c.Pointer, "plan.cabinet.top_and_underside")
	if in.Underside.Given() && kindOK && c.Stands() {
		b.fault("plan.cabinet.underside_of_standing", c.Pointer+"/underside")
	}
	switch {
	case in.Top.Given():
		c.Top, c.Underside = top, top-c.Height
		if heightOK && topOK && c.Underside < 0 {
			b.fault("plan.cabinet.under_datum", c.Pointer+"/top", size("height", c.Height))
		}
		return
	case in.Underside.Given():
		c.Underside = under
	default:
		c.Underside = b.rowUnderside(c, kindOK)
	}
	c.Top = c.Underside + c.Height
}

// rowUnderside is where the system's row puts a cabinet's underside.
func (b *body) rowUnderside(c *cabinet.Placed, kindOK bool) length.Length {
	if kindOK && !c.Stands() && b.made.none[cabinet.Wall] {
		b.fault("plan.cabinet.no_underside", c.Pointer+"/underside")
	}
	switch {
	case b.system == nil:
		return 0
	case c.Stands():
		return b.system.Legs + b.plan.RowShift
	}
	return b.system.WallUnderside + b.plan.RowShift
}
