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
	c := cabinet.Placed{ID: in.ID, Pointer: pointer, Index: i, Kind: b.kind(in.Kind, pointer+"/kind")}
	w, onWall := b.onWall(in.Wall, pointer+"/wall")
	from, fromOK := b.length(in.From, pointer+"/from", anySign)
	width, widthOK := b.length(in.Width, pointer+"/width", positive)
	height, heightOK := b.length(in.Height, pointer+"/height", positive)
	c.From, c.To, c.Height = from, from+width, height
	c.Depth = b.depth(in, &c)
	b.readLevels(in, &c, heightOK)
	if in.Built != "" {
		c.Upright = oneOf[int](b, in.Built, pointer+"/built", "lying", "upright") == 1
	}
	c.Door = b.door(in.Door, pointer+"/door")
	if onWall {
		c.Wall = w.Index
		b.readCorner(in.Corner, &c, w, fromOK && widthOK)
	}
	b.offList(in, &c)
	b.plan.Cabinets = append(b.plan.Cabinets, c)
}

// depth defaults to the smallest that the system makes.
func (b *body) depth(in *api.Cabinet, c *cabinet.Placed) length.Length {
	pointer := c.Pointer + "/depth"
	if in.Depth.Given() || b.system == nil {
		return b.lengthOr(in.Depth, pointer, positive, length.Millimetre)
	}
	depths := b.system.Sizes(c.Kind).Depths
	if len(depths) == 0 {
		b.fault("plan.cabinet.no_depth", pointer)
		return length.Millimetre
	}
	return depths[0]
}

// readLevels works out underside and top: either may be given, else the system's row with the row shift.
func (b *body) readLevels(in *api.Cabinet, c *cabinet.Placed, heightOK bool) {
	top, under := c.Pointer+"/top", c.Pointer+"/underside"
	c.OwnLevel = in.Top.Given() || in.Underside.Given()
	if in.Top.Given() && in.Underside.Given() {
		b.fault("plan.cabinet.top_and_underside", top)
	}
	if in.Underside.Given() && c.Stands() {
		b.fault("plan.cabinet.underside_of_standing", under)
	}
	switch {
	case in.Top.Given():
		c.Top = b.must(in.Top, top, positive)
		c.Underside = c.Top - c.Height
		if heightOK && c.Top > 0 && c.Underside < 0 {
			b.fault("plan.cabinet.under_datum", top, size("height", c.Height))
		}
		return
	case in.Underside.Given():
		c.Underside = b.must(in.Underside, under, notNegative)
	default:
		c.Underside = b.rowUnderside(c, under)
	}
	c.Top = c.Underside + c.Height
}

// rowUnderside is where the system's row puts a cabinet's underside.
func (b *body) rowUnderside(c *cabinet.Placed, pointer string) length.Length {
	switch {
	case b.system == nil:
		return 0
	case c.Stands():
		return b.system.Legs + b.plan.RowShift
	case len(b.system.Wall.Heights) == 0:
		b.fault("plan.cabinet.no_underside", pointer)
		return 0
	}
	return b.system.WallUnderside + b.plan.RowShift
}
