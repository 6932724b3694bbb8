package space

import "railhead/internal/cabinet"

// fillers adds the closing pieces of the wall. One whose row nobody named is in the
// way only where no other row of the wall leaves its place free.
func (r *Row) fillers() {
	for i := range r.k.Plan.Fillers {
		f := &r.k.Plan.Fillers[i]
		if f.Wall == r.Wall && (f.AnyKind && !r.otherRowFree(f) || !f.AnyKind && meets(f.Kind, r.Kind)) {
			r.wholeHeight(over(f.From, f.To), f.Pointer, Filler)
		}
	}
}

// meets reports whether two kinds take up a common height; what is tall meets all.
func meets(a, b cabinet.Kind) bool { return a == b || a == cabinet.Tall || b == cabinet.Tall }

// otherRowFree reports whether a row that this one is none of has cabinets on the
// wall, and none of them in a filler's place.
func (r *Row) otherRowFree(f *cabinet.Filler) bool {
	for _, row := range []cabinet.Kind{cabinet.Wall, cabinet.Base} {
		if meets(row, r.Kind) {
			continue
		}
		there, taken := false, false
		for i := range r.k.Plan.Cabinets {
			c := &r.k.Plan.Cabinets[i]
			if c.Wall == f.Wall && meets(row, c.Kind) {
				there, taken = true, taken || c.From < f.To && f.From < c.To
			}
		}
		if there && !taken {
			return true
		}
	}
	return false
}
