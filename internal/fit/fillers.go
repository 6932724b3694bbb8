package fit

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
)

// fillers holds a patch against the closing pieces of its wall. One whose row
// nobody named belongs to a row that leaves its place free; it is in the way
// only where every row there has a cabinet in its place.
func (b *beside) fillers(p cabinet.Patch) {
	for i := range b.k.Plan.Fillers {
		f := &b.k.Plan.Fillers[i]
		if f.Wall != p.Wall || !meets(f.Kind, b.c.Kind) && !f.AnyKind || f.AnyKind && b.hasFreeRow(f) {
			continue
		}
		b.along(f.Pointer, p, f.From, f.To, finding.Finding{
			Code: "fit.filler.overlap", Remedies: remedies(cutFiller, moveCabinet),
		})
	}
}

// meets reports whether two kinds take up a common height; what is tall meets all.
func meets(a, b cabinet.Kind) bool { return a == b || a == cabinet.Tall || b == cabinet.Tall }

// hasFreeRow reports whether the upper or the lower row of a wall has cabinets
// and leaves a filler's place free, or whether there is only one row to go by.
func (b *beside) hasFreeRow(f *cabinet.Filler) bool {
	for _, row := range []cabinet.Kind{cabinet.Wall, cabinet.Base} {
		if b.rowOn(f.Wall, row) && !b.rowMeets(f, row) {
			return true
		}
	}
	return false
}

func (b *beside) rowOn(wall int, row cabinet.Kind) bool {
	return slices.ContainsFunc(b.k.Plan.Cabinets, func(c cabinet.Placed) bool {
		return c.Wall == wall && meets(row, c.Kind)
	})
}

func (b *beside) rowMeets(f *cabinet.Filler, row cabinet.Kind) bool {
	return slices.ContainsFunc(b.k.Plan.Cabinets, func(c cabinet.Placed) bool {
		return c.Wall == f.Wall && meets(row, c.Kind) && c.From < f.To && f.From < c.To
	})
}
