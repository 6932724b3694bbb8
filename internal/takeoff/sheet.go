package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/length"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// sheet collects what is measured of one overhead.
type sheet struct {
	*measuring
	o *survey.Overhead
	*standing
	stretches []stretch
	covers    []cover
	accounts  []*account    // by kind of work, in the order in which they were opened
	spare     []account     // to be opened
	framing   fraction      // metres of it that become debris
	backed    []survey.Span // where the wall is boarded behind the rail
	behind    account       // the ceiling's board, where nobody knows whether it is there
}

// stretch is a part of an overhead that is worked on.
type stretch struct {
	survey.Span
	cut    *trim.Trim      // nil where the whole overhead comes down
	down   bool            // all that hangs over the stretch comes down
	gone   bool            // it goes with the old cabinets: nothing is stripped out
	runs   []run           // what comes off, along a face
	area   []cabinet.Patch // its own area seen from below
	frames []frame         // what of the framing it works on: that of a corner counts once
}

// height is what the heights of the runs are called.
func (st *stretch) height() string {
	if st.down {
		return "height"
	}
	return "strip"
}

func (m *measuring) sheetOf(o *survey.Overhead) *sheet {
	s := &sheet{measuring: m, o: o, standing: m.standing(m.job.Group.Parts, o), behind: account{bare: m.job.Bare}}
	switch {
	case m.job.Option.TakesDown():
		whole := survey.Span{From: o.From, To: o.To}
		s.work(stretch{Span: whole, down: true, gone: o.GoesWithOldCabinets(), runs: s.whole})
	case m.isCut():
		for i := range m.job.Cuts {
			if c := &m.job.Cuts[i]; c.Overhead == o && c.Work != trim.None {
				s.work(stretch{Span: survey.Span{From: c.From, To: c.To}, cut: c, down: c.Work == trim.TakeDown, runs: strips(c.Stations)})
			}
		}
	}
	return s
}

// work notes a stretch that is worked on. Its own area is what no other part's
// stretch has counted before.
func (s *sheet) work(st stretch) {
	area := cabinet.UnderStretch(s.o, st.From, st.To)
	var counted []cabinet.Patch
	for _, a := range s.areas {
		counted = append(counted, on(s.k.Room, s.o.Wall, a)...)
	}
	st.area = without(area, counted)
	st.frames = s.framesOf(&st)
	s.areas = append(s.areas, area)
	s.stretches = append(s.stretches, st)
}

// measure measures everything, in the order of the work.
func (s *sheet) measure() {
	if len(s.stretches) == 0 {
		return
	}
	if s.job.Option.TakesDown() {
		s.takeDown(&s.stretches[0])
	} else {
		s.cutAll()
	}
	s.services()
	s.duct()
	s.closeGaps()
	s.newBox()
}

// cutAll is the work of all cuts.
func (s *sheet) cutAll() {
	for i := range s.stretches {
		st := &s.stretches[i]
		s.stripOut(st)
		s.closeEnds(st)
		if st.down {
			s.makeGoodCeiling(st)
			s.makeGoodWalls(st)
		} else {
			s.refit(st)
		}
	}
	s.paintRest()
	s.debris()
}

func (s *sheet) account(w Work) *account {
	if a := s.opened(w); a != nil {
		return a
	}
	if len(s.spare) == 0 {
		s.spare = make([]account, usual)
	}
	a := &s.spare[0]
	s.spare = s.spare[1:]
	a.work, a.bare = w, s.job.Bare
	s.accounts = append(s.accounts, a)
	return a
}

// usual is how many kinds of work taking an overhead down mostly is.
const usual = 12

// opened is the account of a kind of work; nil where there is none.
func (s *sheet) opened(w Work) *account {
	for _, a := range s.accounts {
		if a.work == w {
			return a
		}
	}
	return nil
}

// of is what a kind of work comes to so far.
func (s *sheet) of(w Work) fraction {
	if a := s.opened(w); a != nil {
		return a.total.value
	}
	return fraction{}
}

func (s *sheet) appendItems(out []Item) []Item {
	for _, w := range works {
		if a := s.opened(w); a != nil {
			out = appendItem(out, a, w, s.o.Pointer)
		}
	}
	return out
}

func appendItem(out []Item, a *account, w Work, pointer string) []Item {
	if item, ok := a.item(w, pointer); ok {
		out = append(out, item)
	}
	return out
}

// addAreas adds areas seen from below, as far as something of a stretch hangs there.
func (a *account) addAreas(st *stretch, areas []cabinet.Patch) {
	for _, p := range areas {
		long := longWithin(st.runs, []survey.Span{{From: p.From, To: p.To}})
		if long.Sign() > 0 {
			a.add(times(a.metre("length", long), a.length("depth", p.Far-p.Near)))
		}
	}
}

// addEnds adds rectangles across the depth at ends of a stretch.
func (a *account) addEnds(ends []end, height string) {
	for _, e := range ends {
		a.add(times(a.length("depth", e.depth), a.metre(height, e.height)))
	}
}

// end is a rectangle across an overhead's depth.
type end struct {
	depth  length.Length
	height length.Exact
}
