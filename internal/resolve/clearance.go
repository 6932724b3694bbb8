package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// readClearances reads what is to be left free around an appliance. Of a range that is told under cooking too, cooking
// says how much.
func (b *body) readClearances(in *api.Clearances, a *cabinet.Appliance, kindOK bool) {
	if in == nil {
		in = &api.Clearances{}
	}
	beside, above := b.usualClearances(a)
	read := func(l api.Length, member, of string, usual length.Length) cabinet.Clearance {
		pointer := a.Pointer + "/clearance/" + member
		if !l.Given() && kindOK && usual > 0 {
			b.assume("assume.appliance."+a.Kind.String()+"_"+of, usual, pointer)
		}
		return cabinet.Clearance{Need: b.lengthOr(l, pointer, notNegative, usual), Stated: l.Given()}
	}
	a.Left = read(in.Left, "left", "beside", beside)
	a.Right = read(in.Right, "right", "beside", beside)
	a.Above = read(in.Above, "above", "above", above)
}

// usualClearances are generic: a fridge gives off its heat beside and above it, 1/2 in and 1 in (13 and 25 mm; common
// practice, no source); over a range what can burn stays 30 in away (762 mm; IRC M1901.1, from memory); over a sink there
// is room for a tap and for what is washed under it, as over any counter (450 mm or 18 in; common practice, no source).
func (b *body) usualClearances(a *cabinet.Appliance) (beside, above length.Length) {
	switch a.Kind {
	case cabinet.Fridge:
		return b.metricOr(13*length.Millimetre, length.Inch/2), b.metricOr(25*length.Millimetre, length.Inch)
	case cabinet.Range:
		if b.toldUnderCooking(a) {
			return 0, 0
		}
		return 0, b.metricOr(762*length.Millimetre, 30*length.Inch)
	case cabinet.Sink:
		return 0, b.metricOr(450*length.Millimetre, 18*length.Inch)
	default:
		return 0, 0
	}
}

func (b *body) toldUnderCooking(a *cabinet.Appliance) bool {
	c := b.plan.Cooking
	return c != nil && c.Wall == a.Wall && c.From < a.To && a.From < c.To
}
