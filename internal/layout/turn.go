package layout

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/fill"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// turn is what a way to turn a corner does to one wall's end there.
type turn struct {
	keep length.Length // nothing may stand nearer to the corner
	end  fill.End      // what a cabinet meets there: at the wall's own end, or where the stretch kept free begins
	wide length.Length // of a corner cabinet along this wall; 0 for none
	high length.Length // its height
}

// corner is a way for two rows of one kind to turn an inside corner.
type corner struct {
	turns   [2]turn         // of the wall whose right end it is, and of the wall whose left end
	cabinet *cabinet.Placed // in the corner; nil where none is
	worth   worth
	sum     money.Amount // what turning so is worth by itself
	name    uint64       // of its cabinet; 0 without one
	open    *Open        // where a row stays away from the other one's fronts; nil where none does
}

// corners are the ways to turn the corner at a wall's right end: it stays dead, and
// both rows end before each other; one row runs on into the corner, and the other
// begins where the first one's fronts can open; or a corner cabinet of the system
// stands there, on either wall.
func (s *solver) corners(left, right *row) []*corner {
	f := s.room.Filling
	depth, step := left.Depth, left.grid
	against := fill.End{Least: f.CornerFiller}
	dead := turn{keep: up(depth, step), end: against}
	through := turn{end: fill.End{Least: f.WallFiller}}
	aside := turn{keep: up(2*depth, step), end: fill.End{Open: true}}
	out := []*corner{
		{turns: [2]turn{dead, dead}},
		{turns: [2]turn{through, aside}, open: right.unused(dead.keep, aside.keep)},
		{turns: [2]turn{aside, through}, open: left.unused(left.whole-aside.keep, left.whole-dead.keep)},
	}
	for _, c := range out {
		c.sum = s.cornerWorth(c)
	}
	for _, size := range s.room.Kitchen.System.Sizes(left.Kind).Corners {
		out = append(out, s.tallEnough(left, right, size, true)...)
		if size.Shape == cabinet.CornerBlind || size.Width != size.OtherWidth {
			out = append(out, s.tallEnough(left, right, size, false)...)
		}
	}
	return out
}

// unused is a stretch that stays open in front of another row's fronts, as far as the
// wall goes; nil where it does not go so far.
func (r *row) unused(from, to length.Length) *Open {
	from, to = max(0, from), min(to, r.whole)
	if from >= to {
		return nil
	}
	return &Open{r.Kind, r.Wall, survey.Span{From: from, To: to}}
}

// tallEnough are the heights of a corner cabinet that may be part of the best way to
// fill the room.
func (s *solver) tallEnough(left, right *row, size cabinet.CornerSize, onLeft bool) (out []*corner) {
	var most money.Amount
	for _, h := range slices.Backward(left.offered) {
		one, ok := s.standIn(left, right, size, h, onLeft)
		if ok && (len(out) == 0 || s.mayGain(one.sum, most, left, right)) {
			most, out = max(most, one.sum), append(out, one)
		}
	}
	return out
}

// standIn is a corner cabinet of a height in the corner, on the wall whose right end
// it is or on the other; false where it may not stand there.
func (s *solver) standIn(left, right *row, size cabinet.CornerSize, height length.Length, onLeft bool) (*corner, bool) {
	own, other := left, right
	if !onLeft {
		own, other = right, left
	}
	c := own.cabinet(0, size.Width, height)
	if onLeft {
		c.From, c.To = own.Length-size.Width, own.Length
	}
	c.Corner = &cabinet.Corner{OtherWall: other.Wall, OtherWidth: size.OtherWidth, Shape: size.Shape, AtRight: onLeft}
	turns := [2]turn{{wide: size.Width, high: height}, {wide: size.OtherWidth, high: height}}
	if size.Shape == cabinet.CornerBlind {
		c.Corner.OtherWidth = own.Depth // it reaches no further along the other wall
		turns[1] = turn{keep: up(own.Depth, own.grid), end: fill.End{Least: s.room.Filling.CornerFiller}}
	}
	if !fits(own, c.From, c.To, height) || turns[1].wide > 0 && !fits(other, otherSpan(&c, other).From, otherSpan(&c, other).To, height) {
		return nil, false
	}
	if !onLeft {
		turns[0], turns[1] = turns[1], turns[0]
	}
	one := &corner{turns: turns, cabinet: &c, worth: s.worthOf(&c)}
	one.name = hashOf("corner", c.Wall, onLeft, size.Shape, size.Width, size.OtherWidth, height)
	one.sum = s.cornerWorth(one)
	return one, true
}

func otherSpan(c *cabinet.Placed, other *row) survey.Span {
	if c.Corner.AtRight {
		return survey.Span{To: c.Corner.OtherWidth}
	}
	return survey.Span{From: other.Length - c.Corner.OtherWidth, To: other.Length}
}

// fits reports whether a corner cabinet's part along a wall may stand, with nothing
// in its place that stays.
func fits(r *row, from, to, height length.Length) bool {
	return to-from <= r.whole && r.free(from, to, height) && !r.kept(from, to)
}
