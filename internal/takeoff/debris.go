package takeoff

import (
	"railhead/internal/kitchen"
	"railhead/internal/money"
)

// debris is what has to be carried out, loose, and what it weighs.
func (s *sheet) debris() {
	litres, mass := s.account(Waste), s.account(WasteMass)
	if boards := s.of(BoardOff); boards.sign() > 0 {
		thick := s.o.Make.Lining
		litres.add(times(litres.derived("boards", boards, "m2"), litres.length("thickness", thick), litres.figure("bulking", s.figures(), kitchen.BoardBulking), litres.perCubicMetre()))
		mass.add(times(mass.derived("boards", boards, "m2"), mass.length("thickness", thick), mass.figure("density", s.figures(), density(s.o))))
	}
	if s.framing.sign() > 0 {
		side := s.o.Make.BottomMember // light framing is as wide as it is high
		litres.add(times(litres.derived("framing", s.framing, "m"), litres.length("member", side), litres.length("member", side),
			litres.figure("bulking", s.figures(), kitchen.FrameBulking), litres.perCubicMetre()))
		mass.add(times(mass.derived("framing", s.framing, "m"), mass.length("member", side), mass.length("member", side),
			mass.figure("density", s.figures(), kitchen.WoodDensity)))
	}
	s.rubble(litres, mass)
}

// rubble is the body of what is solid.
func (s *sheet) rubble(litres, mass *account) {
	for i := range s.stretches {
		st := &s.stretches[i]
		if st.gone {
			continue
		}
		for _, f := range st.frames {
			if solid(f.of) {
				s.body(st, f, litres, mass)
			}
		}
	}
}

func (s *sheet) body(st *stretch, f frame, litres, mass *account) {
	for _, p := range f.pieces {
		for _, r := range p.runs {
			litres.add(times(litres.face(r, st.height()), litres.length("depth", p.depth), litres.figure("bulking", s.figures(), kitchen.SolidBulking), litres.perCubicMetre()))
			mass.add(times(mass.face(r, st.height()), mass.length("depth", p.depth), mass.figure("density", s.figures(), kitchen.SolidDensity)))
		}
	}
}

func (a *account) perCubicMetre() figure { return a.constant("litres", 1000*money.One, "l/m3") }
