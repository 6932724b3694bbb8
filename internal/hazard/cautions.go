package hazard

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// site is one case's work, and the hazards met so far.
type site struct {
	k       *kitchen.Kitchen
	opened  []*survey.Overhead // cut, opened or taken down
	wall    []*cabinet.Placed  // planned wall cabinets
	tall    []*cabinet.Placed  // planned tall cabinets
	out     []finding.Caution
	already map[string]bool
}

// Cautions are the hazards of the work that the applied options call for, in a
// fixed order, none twice for one pointer. The last one always says that local
// code and licensed practice decide.
func Cautions(k *kitchen.Kitchen, applied kitchen.AppliedOptions) []finding.Caution {
	s := newSite(k, applied)
	for _, o := range s.opened {
		s.wires(o)
	}
	for _, o := range s.opened {
		s.gas(o)
	}
	for _, o := range s.opened {
		s.sprinklers(o)
	}
	for _, o := range s.opened {
		s.structure(o)
	}
	for _, o := range s.opened {
		s.asbestos(o)
	}
	for _, o := range s.opened {
		s.lead(o)
	}
	s.dust()
	s.falling()
	s.lifting()
	s.ladders()
	s.cooking()
	s.fireblocking()
	s.gasValves()
	s.warn("caution.local_code.rules", "/survey/code_set")
	return s.out
}

func newSite(k *kitchen.Kitchen, applied kitchen.AppliedOptions) *site {
	s := &site{k: k, already: map[string]bool{}}
	for _, o := range k.Overheads() {
		if applied[o.Group].Option != kitchen.Keep || o.GoesWithOldCabinets() {
			s.opened = append(s.opened, o)
		}
	}
	for i := range k.Plan.Cabinets {
		switch c := &k.Plan.Cabinets[i]; c.Kind {
		case cabinet.Wall:
			s.wall = append(s.wall, c)
		case cabinet.Tall:
			s.tall = append(s.tall, c)
		}
	}
	return s
}

// warn adds a caution once.
func (s *site) warn(code, pointer string, params ...finding.Param) {
	key := code + "\x00" + pointer
	if s.already[key] {
		return
	}
	s.already[key] = true
	s.out = append(s.out, finding.Caution{Code: code, Pointer: pointer, Params: params})
}
