package resolve

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
)

// usualBest is how many layouts are answered where nobody says.
const usualBest = 3

// readFill reads what is to be proposed for the walls.
func (b *body) readFill() {
	f := &b.filling
	f.Step = b.out.Tape
	f.Closed = b.fill.Closed
	b.fillEnds()
	if f.Best = b.fill.Best; f.Best == 0 {
		f.Best = usualBest
	}
	b.fillWalls()
	b.fillKinds()
	b.fillEqual()
	b.fillLengths()
	b.fillTall()
	b.fillPrices()
	b.fillWeights()
}

// fillEnds is what stands at ends of walls that join no other.
func (b *body) fillEnds() {
	if b.fill.WallEnds != "" {
		b.filling.SideWalls = oneOf[int](b, b.fill.WallEnds, "/fill/wall_ends", "as_surveyed", "side_wall") == 1
		return
	}
	for w := range b.walls {
		if b.walls[w].Prev < 0 || b.walls[w].Next < 0 {
			b.suppose("assume.fill.wall_ends", "as_surveyed", "/fill/wall_ends")
		}
	}
}

// fillWalls are the walls that are named, or all.
func (b *body) fillWalls() {
	named := make([]bool, len(b.walls))
	for i, name := range b.fill.Walls {
		pointer := element("/fill/walls", i)
		w, ok := refer(b, b.ids.walls, "wall", name, pointer)
		if ok && named[w] {
			b.fault("fill.wall.twice", pointer)
		}
		if ok {
			named[w] = true
		}
	}
	for w := range b.walls {
		if named[w] || b.fill.Walls == nil {
			b.filling.Walls = append(b.filling.Walls, w)
		}
	}
}

// fillKinds are the kinds that are named, or all that the system makes in widths that it states.
func (b *body) fillKinds() {
	var named [3]bool
	for i, word := range b.fill.Kinds {
		pointer := element("/fill/kinds", i)
		k, ok := b.kind(word, pointer)
		switch {
		case !ok:
			continue
		case named[k]:
			b.fault("fill.kind.twice", pointer)
		case b.made.none[k]:
			b.fault("fill.kind.not_made", pointer)
		case b.noWidths(k):
			b.fault("fill.kind.no_widths", widthsOf(k))
		}
		named[k] = true
	}
	if b.fill.Kinds == nil && b.made.none == [...]bool{true, true, true} {
		b.without("layouts", "not_assessed.no_sizes", "/system")
	}
	for k := range cabinet.Base + 1 {
		switch {
		case b.fill.Kinds == nil && b.noWidths(k):
			b.without("layouts", "not_assessed.no_widths", widthsOf(k))
		case named[k] || b.fill.Kinds == nil && !b.made.none[k]:
			b.filling.Kinds = append(b.filling.Kinds, k)
		}
	}
}

// idle lists a member that was sent and that nothing rests on.
func (b *body) idle(pointer string) { b.without("layouts", "not_assessed.unused", pointer) }

func widthsOf(k cabinet.Kind) string { return "/system/" + k.String() + "/widths" }

// noWidths reports whether the system makes a kind, but does not say how wide.
func (b *body) noWidths(k cabinet.Kind) bool {
	in := b.req.System.Inline
	if in == nil {
		return false // a built-in says it
	}
	switch k {
	case cabinet.Wall:
		return in.Wall != nil && len(in.Wall.Widths) == 0
	case cabinet.Tall:
		return in.Tall != nil && len(in.Tall.Widths) == 0
	default:
		return in.Base != nil && len(in.Base.Widths) == 0
	}
}

// fillEqual are the gaps whose neighbours must be equal.
func (b *body) fillEqual() {
	const window, hood, ductBox = 0, 1, 2
	var named [3]bool
	for i, word := range b.fill.EqualBeside {
		pointer := element("/fill/equal_beside", i)
		which, ok := among[int](b, word, pointer, "window", "hood", "duct_box")
		if ok && named[which] {
			b.fault("fill.equal.twice", pointer)
		}
		if ok {
			named[which] = true
		}
	}
	if len(b.fill.EqualBeside) > 0 && !b.filling.Asks(cabinet.Wall) {
		b.idle("/fill/equal_beside")
	}
	b.filling.Equal = kitchen.EqualBeside{Window: named[window], Hood: named[hood], DuctBox: named[ductBox]}
}
