package rail

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// touching is what hangs down right at a wall, over a stretch of that wall.
type touching struct {
	over  *survey.Overhead
	span  survey.Span
	under level.Profile
	cut   *length.Exact
}

// atWall is what of a sky touches a wall: overheads of the wall itself that
// start at it, and overheads of the joined walls that end against it. Around a
// 90° corner (at, out) becomes (out, L − at), so such an overhead meets this
// wall with its end, which has one level.
func atWall(room *survey.Room, wall *survey.Wall, sky kitchen.Sky) []touching {
	var out []touching
	for _, h := range sky.Hung {
		o := h.Overhead
		if o.Wall == wall.Index && o.Out == 0 {
			out = append(out, touching{o, survey.Span{From: h.From, To: h.To}, o.Underside, h.Cut})
		}
		if o.Wall == wall.Next && h.From <= 0 {
			end := o.Underside.HeightAt(0, level.Right)
			span := survey.Span{From: wall.Length - o.Face(), To: wall.Length - o.Out}
			out = append(out, touching{o, span, level.Level(end), h.Cut})
		}
		if o.Wall == wall.Prev && h.To >= room.Walls[o.Wall].Length {
			end := o.Underside.HeightAt(room.Walls[o.Wall].Length, level.Left)
			out = append(out, touching{o, survey.Span{From: o.Out, To: o.Face()}, level.Level(end), h.Cut})
		}
	}
	for i := range out {
		out[i].span = out[i].span.Clip(survey.Span{To: wall.Length})
	}
	return out
}

// below are the stretches where it hangs below a level of the survey's frame.
func (t touching) below(y length.Exact) []survey.Span {
	if t.cut != nil && !t.cut.Less(y) || t.span.From >= t.span.To {
		return nil
	}
	return below(t.under, t.span, y)
}

// below are the stretches of a span where a profile lies below y, with ends
// rounded outwards to whole nanometres.
func below(p level.Profile, span survey.Span, y length.Exact) []survey.Span {
	var out []survey.Span
	spots := p.Spots(span.From, span.To)
	for i := 0; i < len(spots); i += 2 { // right side of one station, left side of the next
		if s, ok := belowBetween(spots[i], spots[i+1], y); ok {
			out = append(out, s)
		}
	}
	return survey.Union(out)
}

func belowBetween(a, b level.Spot, y length.Exact) (survey.Span, bool) {
	left, right := a.Value.Less(y), b.Value.Less(y)
	out := survey.Span{From: a.At, To: b.At}
	if left != right {
		x := length.Crossing(a.At, a.Value, b.At, b.Value, y)
		if left {
			out.To = x.Ceil()
		} else {
			out.From = x.Floor()
		}
	}
	return out, left || right
}
