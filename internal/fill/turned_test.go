package fill

import (
	"slices"

	"pgregory.net/rapid"

	"railhead/internal/length"
)

// mirror is a run seen in a mirror.
func mirror(r *Run) *Run {
	m := *r
	m.Limits, m.Fixed, m.Whole, m.Pairs, m.Lines = nil, nil, nil, nil, nil
	m.Ends = [2]End{r.Ends[1], r.Ends[0]}
	for _, l := range r.Limits {
		m.Limits = append(m.Limits, Limit{r.Length - l.To, r.Length - l.From, l.Height, [2]End{l.Sides[1], l.Sides[0]}})
	}
	for _, f := range r.Fixed {
		m.Fixed = append(m.Fixed, Piece{At: r.Length - f.At - f.Width, Width: f.Width, Height: f.Height})
	}
	for _, s := range r.Whole {
		m.Whole = append(m.Whole, Span{r.Length - s.To, r.Length - s.From})
	}
	for _, p := range r.Pairs {
		m.Pairs = append(m.Pairs, Pair{r.Length - p.To, r.Length - p.From, p.Must, p.Worth})
	}
	for _, l := range r.Lines {
		m.Lines = append(m.Lines, r.Length-l)
	}
	return &m
}

// withItsMirror is a run, a gap and its mirror image.
func withItsMirror(r *Run) *Run {
	m, out := mirror(r), *r
	shift := r.Length + r.Grid
	out.Length, out.Ends[1] = shift+r.Length, r.Ends[0]
	gap := Limit{From: r.Length, To: shift, Sides: [2]End{r.Ends[1], r.Ends[1]}}
	out.Limits = append(slices.Clone(r.Limits), gap)
	for _, l := range m.Limits {
		l.From, l.To = l.From+shift, l.To+shift
		out.Limits = append(out.Limits, l)
	}
	out.Fixed = slices.Clone(r.Fixed)
	for _, f := range m.Fixed {
		f.At += shift
		out.Fixed = append(out.Fixed, f)
	}
	out.Whole = slices.Clone(r.Whole)
	for _, s := range m.Whole {
		out.Whole = append(out.Whole, Span{s.From + shift, s.To + shift})
	}
	out.Lines = slices.Clone(r.Lines)
	for _, l := range m.Lines {
		out.Lines = append(out.Lines, l+shift)
	}
	return &out
}

// scale is a run so many times as long.
func scale(r *Run, times length.Length) *Run {
	s := *r
	s.Length, s.Grid, s.Panel = r.Length*times, r.Grid*times, r.Panel*times
	s.LeastFiller, s.LeastOpen = r.LeastFiller*times, r.LeastOpen*times
	s.Sizes, s.Limits, s.Fixed = slices.Clone(r.Sizes), slices.Clone(r.Limits), slices.Clone(r.Fixed)
	s.Whole, s.Pairs, s.Lines = slices.Clone(r.Whole), slices.Clone(r.Pairs), slices.Clone(r.Lines)
	scaleEnds(&s.Ends, times)
	for i := range s.Sizes {
		s.Sizes[i].Width *= times
	}
	for i := range s.Limits {
		s.Limits[i].From *= times
		s.Limits[i].To *= times
		scaleEnds(&s.Limits[i].Sides, times)
	}
	for i := range s.Fixed {
		s.Fixed[i].At *= times
		s.Fixed[i].Width *= times
	}
	for i := range s.Whole {
		s.Whole[i].From *= times
		s.Whole[i].To *= times
	}
	for i := range s.Pairs {
		s.Pairs[i].From *= times
		s.Pairs[i].To *= times
	}
	for i := range s.Lines {
		s.Lines[i] *= times
	}
	return &s
}

func scaleEnds(ends *[2]End, times length.Length) {
	for i := range ends {
		ends[i].Least *= times
	}
}

// nudge may move one thing by a Grid.
func nudge(t *rapid.T, r *Run) {
	r.Lines, r.Fixed, r.Limits = slices.Clone(r.Lines), slices.Clone(r.Fixed), slices.Clone(r.Limits)
	r.Whole = slices.Clone(r.Whole)
	switch which := rapid.IntRange(0, 9).Draw(t, "nudged"); {
	case which == 1 && len(r.Lines) > 0:
		r.Lines[0] += r.Grid
	case which == 2 && len(r.Fixed) > 0 && r.Fixed[0].At > 0:
		r.Fixed[0].At -= r.Grid
	case which == 3 && len(r.Fixed) > 0 && r.Fixed[0].At > 0:
		r.Fixed[0].Width -= r.Grid
	case which == 4 && len(r.Limits) > 0 && len(r.Pairs) == 0:
		r.Limits[0].To -= r.Grid
	case which == 5:
		r.Ends[0].Least += r.Grid
	case which == 6:
		r.LeastFiller += r.Grid / 2
	case which == 7 && len(r.Limits) > 0:
		r.Limits[0].Sides[1].Least += r.Grid
	case which == 8 && len(r.Whole) > 0 && r.Whole[0].From > r.Grid:
		r.Whole[0].From -= r.Grid
	case which == 9 && len(r.Whole) > 0 && r.Whole[0].To < r.Length-r.Grid:
		r.Whole[0].To += r.Grid
	}
	if len(reduce(r).checkPairs()) > 0 {
		r.Pairs = nil
	}
}
