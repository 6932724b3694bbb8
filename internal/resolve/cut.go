package resolve

import (
	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// readMayCut works out whether an overhead may be cut: what the request says, else by kind and structure. A beam, or
// anything solid or bearing, is left alone; where nobody knows what it is, somebody has to find out first.
func (b *body) readMayCut(o *overhead) {
	switch o.in.MayCut {
	case "":
		o.MayCut = usualCut(o.Overhead)
	default:
		o.MayCut = oneOf[survey.MayCut](b, o.in.MayCut, o.Pointer+"/may_cut", "ask", "yes", "no")
	}
}

func usualCut(o *survey.Overhead) survey.MayCut {
	switch {
	case o.Kind == survey.Beam || o.Structure == survey.Solid || o.Structure == survey.Bearing:
		return survey.CutNo
	case o.Structure == survey.StructureUnknown:
		return survey.CutAsk
	default:
		return survey.CutYes
	}
}

// readMake reads how an overhead is built. What nobody gave is taken as ordinary: half-inch board over members of 38 mm
// (a nominal 2-by laid flat), and uncut pieces no shorter than 150 mm (common practice, no source).
func (b *body) readMake(o *overhead) {
	in, pointer := o.in.Make, o.Pointer+"/make"
	if in == nil {
		in = &api.Make{}
	}
	assume := func(l api.Length, name string, usual length.Length) length.Length {
		if !l.Given() && !o.GoesWithOldCabinets() {
			b.assume("assume.overhead."+name, usual, pointer+"/"+name)
		}
		return b.lengthOr(l, pointer+"/"+name, notNegative, usual)
	}
	m := &o.Make
	m.Lining = assume(in.Lining, "lining", b.metricOr(12500*length.Micrometre, length.Inch/2))
	m.BottomMember = assume(in.BottomMember, "bottom_member", b.metricOr(38*length.Millimetre, length.Inch*3/2))
	m.NewBottom = assume(in.NewBottom, "new_bottom", 0)
	m.LeastStub = assume(in.LeastStub, "least_stub", m.Lining+m.BottomMember)
	m.LeastRun = assume(in.LeastRun, "least_run", b.metricOr(150*length.Millimetre, 6*length.Inch))
	m.Spacing = b.lengthOr(in.Spacing, pointer+"/spacing", positive, 0)
	if in.HungFrom != "" {
		m.HungFrom = oneOf[survey.HungFrom](b, in.HungFrom, pointer+"/hung_from", "unknown", "joists", "trusses", "slab", "wall")
	}
}
