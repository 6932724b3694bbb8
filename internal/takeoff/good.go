package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// makeGoodCeiling makes the ceiling good where all of a stretch comes down: its
// board, and what was hidden along each face.
func (s *sheet) makeGoodCeiling(st *stretch) {
	s.boardCeiling(st)
	patch, paint := s.account(Patch), s.account(Paint)
	for _, f := range s.faces {
		if along := longWithin(st.runs, f.shows); along.Sign() > 0 {
			patch.add(times(patch.metre("length", along), patch.length("band", f.upTo(s.figures().Length(kitchen.Band)))))
			paint.add(times(paint.metre("length", along), paint.length("blend", f.upTo(s.figures().Length(kitchen.CeilingBlend)))))
		}
	}
}

// makeGoodWalls makes good what is then seen between the faces, and the walls.
func (s *sheet) makeGoodWalls(st *stretch) {
	patch, paint := s.account(Patch), s.account(Paint)
	for _, p := range st.area {
		seen := without(p, s.hides())
		patch.addAreas(st, seen)
		paint.addAreas(st, seen)
	}
	s.walls(st)
}

// boardCeiling boards the ceiling where there was none behind.
func (s *sheet) boardCeiling(st *stretch) {
	switch b := s.o.Behind; {
	case b.Ceiling == survey.No:
		s.account(CeilingBoard).addAreas(st, st.area)
	case b.Ceiling == survey.Unknown && b.CeilingLevel == nil:
		s.behind.addAreas(st, st.area)
	}
}

// hides are the floor areas on the overhead's wall of the cabinets whose gap is
// closed: what is over them is not seen.
func (s *sheet) hides() []cabinet.Patch {
	if !s.closes() {
		return nil
	}
	return s.under
}
