package hazard

import "railhead/internal/survey"

// wires: every wire counts as live until it is proved dead, and so does what
// nobody has looked at.
func (s *site) wires(o *survey.Overhead) {
	for _, v := range o.Inside.Services {
		if (v.Kind == survey.Wire || v.Kind == survey.Cable) && v.Live {
			s.warn("caution.wires.live", v.Pointer)
		}
	}
	if !SeenAll(o) {
		s.warn("caution.wires.unseen", o.Inside.Pointer)
	}
}

// warnOfEach warns of every service of a kind that was seen inside.
func (s *site) warnOfEach(o *survey.Overhead, kind survey.ServiceKind, code string) {
	for _, v := range o.Inside.Services {
		if v.Kind == kind {
			s.warn(code, v.Pointer)
		}
	}
}

func (s *site) gas(o *survey.Overhead) {
	s.warnOfEach(o, survey.Gas, "caution.gas.inside")
	if !SeenAll(o) {
		s.warn("caution.gas.unseen", o.Inside.Pointer)
	}
}

func (s *site) sprinklers(o *survey.Overhead) {
	s.warnOfEach(o, survey.Sprinkler, "caution.sprinkler.line")
	if ShowsSprinklerHead(o) {
		s.warn("caution.sprinkler.line", o.Inside.Pointer+"/hints")
	}
}

// structure: framing that bears, or of which nobody knows whether it does, and
// the joists or trusses that something hangs from.
func (s *site) structure(o *survey.Overhead) {
	for _, v := range o.Inside.Services {
		if v.Kind == survey.StructureInside {
			s.warn("caution.structure.inside", v.Pointer)
		}
	}
	if o.GoesWithOldCabinets() {
		return
	}
	switch {
	case o.Structure == survey.Bearing || o.Structure == survey.Solid || o.Kind == survey.Beam && o.Structure != survey.Framed:
		s.warn("caution.structure.bearing", o.Pointer+"/structure")
	case o.Structure == survey.StructureUnknown:
		s.warn("caution.structure.unknown", o.Pointer+"/structure")
	}
	if o.Make.HungFrom == survey.HungJoists || o.Make.HungFrom == survey.HungTrusses {
		s.warn("caution.structure.notch", o.Pointer+"/make/hung_from")
	}
}

// asbestos: the year and the presumption are US rules; elsewhere the warning is
// that local law has its own.
func (s *site) asbestos(o *survey.Overhead) {
	switch suspicion := Asbestos(s.k.Room, o); {
	case suspicion == Unsuspected:
	case s.k.Room.CodeSet == survey.CodeNone || s.k.Room.Local.AsbestosTo > 0:
		s.warn("caution.asbestos.local", o.Pointer)
	case suspicion == Presumed:
		s.warn("caution.asbestos.presumed", o.Pointer)
	default:
		s.warn("caution.asbestos.possible", o.Pointer)
	}
}

func (s *site) lead(o *survey.Overhead) {
	switch suspicion := Lead(s.k.Room, o); {
	case suspicion == Unsuspected:
	case s.k.Room.CodeSet == survey.CodeNone || s.k.Room.Local.LeadBefore > 0:
		s.warn("caution.lead.local", o.Pointer)
	case suspicion == Presumed:
		s.warn("caution.lead.renovation", o.Pointer)
	default:
		s.warn("caution.lead.possible", o.Pointer)
	}
}
