package layout

import (
	"encoding/binary"
	"slices"

	"railhead/internal/fill"
	"railhead/internal/length"
)

// ends are the ways to turn the corners at both ends of a row; nil where the row does
// not turn.
type ends [2]*corner

// turnAt is what the row meets at an end; nil where it does not turn there.
func (e ends) turnAt(right bool) *turn {
	switch {
	case right && e[1] != nil:
		return &e[1].turns[0]
	case !right && e[0] != nil:
		return &e[0].turns[1]
	default:
		return nil
	}
}

// run is a row with its ends settled, and with the tall cabinets that stand in it.
func (r *row) run(e ends, tall []standing, lines []length.Length, best int) *fill.Run {
	f := r.filling
	out := &fill.Run{
		Length: r.whole, Grid: r.grid, Sizes: r.sizes, Ends: r.ends, Pairs: r.pairs, Whole: r.needs, Lines: lines,
		LeastFiller: f.LeastFiller, LeastOpen: f.LeastOpen, Panel: up(f.Panel, r.grid), Closed: f.Closed,
		Weights: weights(f, r.grid, len(lines) > 0), Best: best, AnyOrder: true,
		Limits: append([]fill.Limit{}, r.limits...), Fixed: append([]fill.Piece{}, r.fixed...),
	}
	for i, right := range []bool{false, true} {
		if t := e.turnAt(right); t != nil {
			r.turn(out, i, t)
		}
	}
	for i := range tall {
		at := tall[i].whole()
		out.Fixed = append(out.Fixed, fill.Piece{At: at.From, Width: at.To - at.From, Height: max(r.rise(&tall[i].cabinet), r.grid), Size: fill.Stays})
	}
	return out
}

func (r *row) turn(out *fill.Run, side int, t *turn) {
	keep := min(t.keep, r.whole)
	limit, piece := fill.Limit{To: keep}, fill.Piece{Width: t.wide, Height: t.high, Size: fill.Stays}
	if side == 1 {
		limit.From, limit.To, piece.At = r.whole-keep, r.whole, r.whole-t.wide
	}
	switch {
	case t.wide > 0:
		out.Fixed = append(out.Fixed, piece)
	case keep > 0:
		limit.Sides[1-side] = t.end
		out.Limits = append(out.Limits, limit)
	default:
		out.Ends[side] = t.end
	}
}

// crowded reports whether what turns the corners at both ends of a row, or a tall
// cabinet, would be in the same place. Stretches that are kept free may be.
func (r *row) crowded(e ends, tall []standing) bool {
	least, most, wide, aside := length.Length(0), r.whole, false, 0
	for _, right := range []bool{false, true} {
		t := e.turnAt(right)
		if t == nil {
			continue
		}
		if wide = wide || t.wide > 0; t.wide == 0 && t.end.Open {
			aside++
		}
		if right {
			most -= t.reach(r.whole)
		} else {
			least = t.reach(r.whole)
		}
	}
	return least > most && (wide || aside == 2) ||
		slices.ContainsFunc(tall, func(t standing) bool {
			at := t.whole()
			return at.From < least || at.To > most
		})
}

// reach is how far from the corner nothing else of the row stands, at most all along
// the wall; a corner cabinet may be wider than that.
func (t *turn) reach(whole length.Length) length.Length {
	return max(t.wide, min(whole, t.keep+t.end.Least))
}

// key tells runs apart that are filled in different ways.
func key(r *fill.Run) string {
	b := make([]byte, 0, 512)
	add := func(in ...int64) {
		for _, n := range in {
			b = binary.AppendVarint(b, n)
		}
	}
	flag := func(on bool) int64 {
		if on {
			return 1
		}
		return 0
	}
	end := func(e fill.End) { add(int64(e.Least), flag(e.Open)) }
	add(int64(r.Length), int64(r.Grid), int64(r.Weights.LineMiss), int64(len(r.Sizes)), int64(len(r.Limits)), int64(len(r.Fixed)))
	add(int64(len(r.Lines)), int64(len(r.Pairs)), int64(len(r.Whole)), int64(r.Best))
	for _, s := range r.Sizes {
		add(int64(s.Width), int64(s.Height), int64(s.Worth))
	}
	for _, l := range r.Limits {
		add(int64(l.From), int64(l.To), int64(l.Height))
		end(l.Sides[0])
		end(l.Sides[1])
	}
	for _, p := range r.Fixed {
		add(int64(p.At), int64(p.Width), int64(p.Height))
	}
	for _, l := range r.Lines {
		add(int64(l))
	}
	for _, p := range r.Pairs {
		add(int64(p.From), int64(p.To), flag(p.Must), int64(p.Worth))
	}
	for _, w := range r.Whole {
		add(int64(w.From), int64(w.To))
	}
	end(r.Ends[0])
	end(r.Ends[1])
	return string(b)
}
