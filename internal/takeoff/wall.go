package takeoff

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// walls makes good what the overhead hid of the wall behind it and of the walls
// at its ends: filled where nobody has seen it finished, and painted to the next
// corner either way.
func (s *sheet) walls(st *stretch) {
	var works []Work
	if s.o.Behind.Wall != survey.Yes {
		works = append(works, Patch)
	}
	works = append(works, Paint)
	bare, ends := s.bareWall(), s.bareEnds(st)
	for _, w := range works {
		a := s.account(w)
		a.addFaces(within(st.runs, bare), "height")
		a.addEnds(ends, "height")
	}
	s.toCorners(st, bare)
}

// bareWall are the stretches of the wall behind that are seen afterwards.
func (s *sheet) bareWall() []survey.Span {
	if s.o.Out > 0 {
		return nil
	}
	var hidden []survey.Span
	for _, p := range s.hides() {
		if p.Near <= 0 {
			hidden = append(hidden, survey.Span{From: p.From, To: p.To})
		}
	}
	return survey.Without([]survey.Span{{From: s.o.From, To: s.o.To}}, hidden)
}

// bareEnds are what is seen afterwards of the walls that its ends were against.
func (s *sheet) bareEnds(st *stretch) []end {
	var out []end
	add := func(at length.Length, kind survey.EndKind, wallEnd bool) {
		if kind != survey.EndWall && (kind != survey.EndCorner || !wallEnd) {
			return
		}
		for _, d := range s.bareEnd(at) {
			out = append(out, end{d.To - d.From, heightAt(st.runs, at)})
		}
	}
	add(s.o.From, s.o.Left, s.o.From == 0)
	add(s.o.To, s.o.Right, s.o.To == s.k.Room.Walls[s.o.Wall].Length)
	return withHeight(out)
}

// bareEnd are the stretches of an end, counted from the wall, behind which no other
// part hung and no cabinet hangs.
func (s *sheet) bareEnd(at length.Length) []survey.Span {
	hidden := slices.Clone(s.hides())
	for _, p := range s.job.Group.Parts {
		if p != s.o {
			hidden = append(hidden, on(s.k.Room, s.o.Wall, cabinet.Under(p))...)
		}
	}
	var spans []survey.Span
	for _, p := range hidden {
		if p.From <= at && at <= p.To {
			spans = append(spans, survey.Span{From: p.Near, To: p.Far})
		}
	}
	return survey.Without([]survey.Span{{From: s.o.Out, To: s.o.Face()}}, spans)
}

// toCorners paints the wall beyond a free end up to its next corner: the wall's
// end, or the next thing that hangs there.
func (s *sheet) toCorners(st *stretch, bare []survey.Span) {
	if len(bare) == 0 {
		return
	}
	a := s.account(Paint)
	left, right := s.corners()
	if isFree(s.o.Left) && bare[0].From == s.o.From && left < s.o.From {
		a.add(times(a.length("to_corner", s.o.From-left), a.metre("height", heightAt(st.runs, s.o.From))))
	}
	if isFree(s.o.Right) && bare[len(bare)-1].To == s.o.To && right > s.o.To {
		a.add(times(a.length("to_corner", right-s.o.To), a.metre("height", heightAt(st.runs, s.o.To))))
	}
}

// corners are the nearest ends of the wall's surface on both sides.
func (s *sheet) corners() (left, right length.Length) {
	w := &s.k.Room.Walls[s.o.Wall]
	right = w.Length
	for i := range w.Overheads {
		p := &w.Overheads[i]
		if p == s.o || p.Out > 0 {
			continue
		}
		if p.To <= s.o.From {
			left = max(left, p.To)
		}
		if p.From >= s.o.To {
			right = min(right, p.From)
		}
	}
	return left, right
}
