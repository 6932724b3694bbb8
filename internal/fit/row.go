package fit

import "railhead/internal/length"

// Row compares what one row of the system needs with what there is.
type Row struct {
	WallHeight *length.Length // nil where no wall cabinet ends on this top line
	TallHeight *length.Length
	Top        length.Length // above the datum
	ForFits    length.Length // the lowest ceiling with the headroom left open
	Kept       RowRoom       // with the overheads as found
	Removed    RowRoom       // with every overhead gone that may be cut
}

// RowRoom is what a row has above it over the spans it would cover.
type RowRoom struct {
	Have    length.Exact // above the datum
	Margin  length.Exact
	Verdict Verdict
	By      string // pointer of what limits it
	Assumed bool   // it rests on what nobody has seen behind an overhead
}
