package takeoff

import "railhead/internal/kitchen"

// framingOff is the framing of a stretch that comes down: the members that run along
// it, and at each hanger one piece across its depth and one up its face, of the mean
// height.
func (s *sheet) framingOff(st *stretch) {
	for i := range st.frames {
		f := &st.frames[i]
		if solid(f.of) {
			continue
		}
		a := s.account(FrameOff)
		members := times(a.figure("members", s.figures(), kitchen.Members), a.frame(f))
		pieces := times(s.hanging(a, f), plus(a.length("depth", f.of.Depth), a.metre("mean_height", f.mean())))
		a.add(plus(members, pieces))
		s.framing = s.framing.plus(members.value).plus(pieces.value)
	}
}

// frame is how long framing is; over less than the depth it counts for so much less.
func (a *account) frame(f *frame) figure {
	var out figure
	for i, p := range f.pieces {
		long := a.metre("length", longOf(p.runs))
		if p.depth < f.of.Depth {
			long = over(times(long, a.length("depth", p.depth)), a.length("depth", f.of.Depth))
		}
		if i == 0 {
			out = long
		} else {
			out = plus(out, long)
		}
	}
	return out
}

// hanging is how many hangers there are over a frame. Nobody knows where they are
// between the ends: of a part that is opened it is the average, one to each spacing,
// so that all parts together never have more of them than the whole.
func (s *sheet) hanging(a *account, f *frame) figure {
	if f.whole {
		return s.hangers(a, f)
	}
	return over(a.frame(f), a.length("spacing", s.spacing(f.of)))
}

// hangers is how many hangers a frame by itself takes: one at each end, and no
// further apart than their spacing.
func (s *sheet) hangers(a *account, f *frame) figure {
	return plusOne(roundedUp(over(a.frame(f), a.length("spacing", s.spacing(f.of)))))
}
