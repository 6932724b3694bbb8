package resolve

import (
	"slices"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/finding"
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
	if in.Corner == nil {
		b.onList(sizes.Widths, c.Width(), c.Pointer+"/width")
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

// door reads a front. Its thickness and its pull are taken as ordinary where nobody gave them (common practice, no
// source).
func (b *body) door(in *api.Door, pointer string) *cabinet.Door {
	if in == nil {
		return nil
	}
	thickness := b.metricOr(20*length.Millimetre, length.Inch*3/4)
	pull := b.metricOr(40*length.Millimetre, length.Inch*3/2)
	d := &cabinet.Door{
		Opens:     oneOf[cabinet.Opens](b, in.Opens, pointer+"/opens", "none", "left", "right", "pair", "up", "drawer"),
		Rise:      b.lengthOr(in.Rise, pointer+"/rise", notNegative, 0),
		Thickness: b.lengthOr(in.Thickness, pointer+"/thickness", positive, thickness),
		Pull:      b.lengthOr(in.Pull, pointer+"/pull", notNegative, pull),
	}
	if !in.Thickness.Given() {
		b.assume("assume.door.thickness", thickness, pointer+"/thickness")
	}
	if !in.Pull.Given() {
		b.assume("assume.door.pull", pull, pointer+"/pull")
	}
	return d
}
