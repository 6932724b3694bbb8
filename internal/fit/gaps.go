package fit

import (
	"cmp"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
)

// gaps minds what is left open along the wall: too little for the last cabinet
// of a row to be slid in between two walls, or gaps that call for a filler. A
// cabinet in something's way has to be placed anew first.
func (b *beside) gaps() {
	if b.c.Corner != nil || len(b.clashes) > 0 {
		return
	}
	p := b.c.Native(b.k.Room)[0]
	row := b.row(p)
	b.slideIn(p, row)
	b.open(p, row)
}

// row are the cabinets that share the cabinet's height and depth along its wall,
// those of joined walls that reach around the corner included, from left to right.
func (b *beside) row(p cabinet.Patch) []placedAt {
	out := []placedAt{{b.c, seen{p, fromOwnWall}, nil}}
	for _, s := range b.others {
		if s.side != fromFacing && s.Near < p.Far && p.Near < s.Far {
			out = append(out, s)
		}
	}
	slices.SortStableFunc(out, func(a, b placedAt) int {
		if a.From != b.From {
			return cmp.Compare(a.From, b.From)
		}
		return a.c.Index - b.c.Index
	})
	return out
}

// slideIn asks for the side clearance that the last cabinet of a row needs where
// walls close the row in on both sides. Against anything but walls there is
// always a way: the neighbour moves, and an appliance comes later. The finding goes with the row's last
// cabinet in the plan's order, once.
func (b *beside) slideIn(p cabinet.Patch, row []placedAt) {
	_, left := endsAtWall(b.k.Room, p.Wall, false)
	_, right := endsAtWall(b.k.Room, p.Wall, true)
	whole := b.k.Room.Walls[p.Wall].Length
	if !left || !right || b.filled(p.Wall, 0, whole) { // a filler is cut to what is left
		return
	}
	free, reached := length.Length(0), length.Length(0)
	for _, o := range row {
		if o.appliance != nil || o.side == fromOwnWall && o.c.Index > b.c.Index {
			return
		}
		free += max(min(o.From, whole)-reached, 0)
		reached = max(reached, o.To)
	}
	free += max(whole-reached, 0)
	if free >= b.k.System.SideClearance {
		return
	}
	b.findings = append(b.findings, finding.Finding{
		Code: "fit.row.no_play", Severity: finding.AsCaution, Pointer: b.k.Room.Walls[p.Wall].Pointer + "/length",
		Need: finding.Up(b.k.System.SideClearance.Exact()), Have: finding.Down(free.Exact()),
		Remedies: remedies(narrower, moveCabinet),
	})
}

// open notes a gap beside the cabinet that is wider than the play between
// cabinets and narrower than any cabinet: it is seen, and wants a filler. Of two
// neighbours the one that comes first in the plan notes it.
func (b *beside) open(p cabinet.Patch, row []placedAt) {
	for _, right := range []bool{false, true} {
		gap, by, ok := b.gap(p, row, right)
		if !ok || gap <= b.k.System.SideClearance || gap >= b.narrowest() {
			continue
		}
		at := p.From - gap
		if right {
			at = p.To
		}
		if b.filled(p.Wall, at, at+gap) {
			continue
		}
		b.findings = append(b.findings, finding.Finding{
			Code: "fit.gap.open", Severity: finding.AsNote, Pointer: by,
			Params:   []finding.Param{finding.Word("side", sideWord(right)), size("gap", gap), size("from", at)},
			Remedies: remedies(addFiller, moveCabinet),
		})
	}
}

// gap is the open stretch on one side of the cabinet up to its neighbour or the
// wall, where it is this cabinet's to note. Corners are for [beside.fronts].
func (b *beside) gap(p cabinet.Patch, row []placedAt, right bool) (length.Length, string, bool) {
	wall := &b.k.Room.Walls[p.Wall]
	end, by := length.Length(0), wall.Pointer+"/length"
	if right {
		end = wall.Length
	}
	gap, mine, first := gapTo(p, right, end, end), true, -1
	for _, o := range row {
		g := gapTo(p, right, o.From, o.To)
		if o.c == b.c || g < 0 || g > gap || g == gap && first >= 0 && first < o.c.Index {
			continue
		}
		if g < gap {
			mine = true
		}
		gap, by, first = g, o.c.Pointer, o.c.Index
		mine = mine && o.side == fromOwnWall && b.c.Index < o.c.Index
	}
	if _, surveyed := endsAtWall(b.k.Room, p.Wall, right); by == wall.Pointer+"/length" && !surveyed {
		return 0, "", false
	}
	return gap, by, mine && gap > 0
}

// narrowest is the narrowest cabinet of the system's kind; where it lists none,
// 150 mm (6 in), the narrowest in common use (common practice, no source).
func (b *beside) narrowest() length.Length {
	widths := b.k.System.Sizes(b.c.Kind).Widths
	if len(widths) == 0 {
		return 150 * length.Millimetre
	}
	return slices.Min(widths)
}

// filled reports whether a filler of the cabinet's row lies within a stretch.
func (b *beside) filled(wall int, from, to length.Length) bool {
	return slices.ContainsFunc(b.k.Plan.Fillers, func(f cabinet.Filler) bool {
		return f.Wall == wall && (f.AnyKind || meets(f.Kind, b.c.Kind)) && f.From < to && from < f.To
	})
}
