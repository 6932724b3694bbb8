package layout

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
)

// gridOf is the grid on which new cabinets stand: as fine as the marks that are made
// on site or finer, and a whole part of every width, so that cabinets that touch in
// one place touch in all.
func gridOf(k *kitchen.Kitchen, f *kitchen.Filling) length.Length {
	common := length.Length(0)
	for _, kind := range f.Kinds {
		sizes := k.System.Sizes(kind)
		for _, w := range sizes.Widths {
			common = length.GCD(common, w)
		}
		for _, c := range sizes.Corners {
			common = length.GCD(length.GCD(common, c.Width), c.OtherWidth)
		}
	}
	if common == 0 {
		return f.Step
	}
	return partOf(common, f.Step)
}

// partOf is the largest whole part of a length that is no longer than a step; itself
// where that is hard to find, since widths that have so little in common are few.
func partOf(common, step length.Length) length.Length {
	const far = 1000
	n := max(1, (common+step-1)/step)
	for i := n; i < n+far && i <= common; i++ {
		if common%i == 0 {
			return common / i
		}
	}
	return common
}

// down and up round to the grid.
func down(l, grid length.Length) length.Length { return l.RoundTo(grid, length.Down) }
func up(l, grid length.Length) length.Length   { return l.RoundTo(grid, length.Up) }
