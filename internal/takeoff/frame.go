package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// frame is the framing of one part of the group that a stretch works on, or its body
// where it is solid.
type frame struct {
	of     *survey.Overhead
	whole  bool // from one of the part's ends to the other
	pieces []piece
}

// piece is a length of it, over some or all of its depth.
type piece struct {
	runs  []run
	depth length.Length
}

// framesOf are the framing over a stretch's own area.
func (s *sheet) framesOf(st *stretch) []frame {
	own := frame{of: s.o, whole: st.From == s.o.From && st.To == s.o.To}
	var out []frame
	area := st.area
	if st.cut != nil && st.down {
		out, area = s.shares(area)
	}
	own.add(st.runs, area)
	return appendFrame(out, own)
}

// shares are the framing of the parts before this one over some of its area, and what
// they leave of it. In a corner that two parts fill the framing is the first's, also
// where only the second comes down there.
func (s *sheet) shares(area []cabinet.Patch) (out []frame, rest []cabinet.Patch) {
	for _, first := range s.sheets {
		f := frame{of: first.o}
		for _, p := range on(s.k.Room, s.o.Wall, cabinet.Under(first.o)) {
			for _, both := range shared(area, p) {
				f.add(first.whole, on(s.k.Room, first.o.Wall, both))
			}
			area = withoutOne(area, p)
		}
		out = appendFrame(out, f)
	}
	return out, area
}

func appendFrame(out []frame, f frame) []frame {
	if len(f.pieces) == 0 {
		return out
	}
	return append(out, f)
}

// add adds the runs over some areas, those of the whole depth as one piece.
func (f *frame) add(runs []run, areas []cabinet.Patch) {
	var full []survey.Span
	for _, p := range areas {
		span := survey.Span{From: p.From, To: p.To}
		if depth := p.Far - p.Near; depth < f.of.Depth {
			f.addPiece(within(runs, []survey.Span{span}), depth)
			continue
		}
		full = append(full, span)
	}
	f.addPiece(within(runs, survey.Union(full)), f.of.Depth)
}

func (f *frame) addPiece(runs []run, depth length.Length) {
	if longOf(runs).Sign() > 0 {
		f.pieces = append(f.pieces, piece{runs, depth})
	}
}

// mean is the mean height of a frame, each piece by its length and depth.
func (f *frame) mean() length.Exact {
	var sum, all fraction
	for _, p := range f.pieces {
		deep := metres(p.depth.Exact())
		for _, r := range p.runs {
			area := metres(r.long()).times(deep)
			sum, all = sum.plus(metres(r.left.Add(r.right)).times(area)), all.plus(area)
		}
	}
	return sum.over(all.times(integer(2))).nanometres()
}
