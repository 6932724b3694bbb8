package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// readAppliance places one appliance. It is there, so unlike a planned cabinet it is refused off its wall.
func (b *body) readAppliance(i int) {
	in, pointer := &b.req.Plan.Appliances[i], item("/plan", "appliances", i)
	a := cabinet.Appliance{ID: in.ID, Pointer: pointer}
	kind, kindOK := among[cabinet.ApplianceKind](b, in.Kind, pointer+"/kind", "fridge", "range", "dishwasher", "sink", "hood", "other")
	a.Kind = kind
	w, onWall := b.onWall(in.Wall, pointer+"/wall")
	from, fromOK := b.length(in.From, pointer+"/from", anySign)
	width, widthOK := b.length(in.Width, pointer+"/width", positive)
	a.Wall, a.From, a.To = w.Index, from, from+width
	if onWall && fromOK && widthOK {
		b.applianceOnWall(w, &a)
	}
	a.Depth = b.lengthOr(in.Depth, pointer+"/depth", positive, b.applianceDepth(kind))
	if !in.Depth.Given() && kindOK {
		b.assume("assume.appliance."+kind.String()+"_depth", a.Depth, pointer+"/depth")
	}
	b.readApplianceLevels(in, &a, kindOK)
	b.readClearances(in.Clearance, &a, kindOK)
	b.plan.Appliances = append(b.plan.Appliances, a)
}

// applianceOnWall refuses an appliance that leaves its wall, at the member that takes it there.
func (b *body) applianceOnWall(w *wall, a *cabinet.Appliance) {
	if a.From < 0 {
		b.fault("plan.appliance.off_wall", a.Pointer+"/from", size("at", a.From))
	}
	if w.lengthOK && a.To > w.Length {
		b.fault("plan.appliance.off_wall", a.Pointer+"/width", size("at", a.To))
	}
}

// readApplianceLevels works out where an appliance begins and ends. What stands does so at the datum: whether the floor
// is lower somewhere its feet make good.
func (b *body) readApplianceLevels(in *api.Appliance, a *cabinet.Appliance, kindOK bool) {
	height, heightGiven := b.optional(in.Height, a.Pointer+"/height", positive)
	under, underGiven := b.optional(in.Underside, a.Pointer+"/underside", notNegative)
	mayHang := a.Kind == cabinet.HoodOnWall || a.Kind == cabinet.OtherAppliance
	if kindOK {
		b.applianceLevelsOfKind(in, a, mayHang)
	}
	a.Hangs = underGiven && mayHang || a.Kind == cabinet.HoodOnWall
	a.Underside = under
	if a.Hangs && !underGiven {
		a.Underside = b.hoodUnderside(a.Pointer + "/underside")
	}
	switch {
	case heightGiven:
		a.Top = a.Underside + height
	case a.Hangs:
		a.Top = length.Max
	default:
		a.Top = b.usualTop(a)
	}
}

// applianceLevelsOfKind refuses levels that an appliance of a kind does not have, and the want of those that it needs.
func (b *body) applianceLevelsOfKind(in *api.Appliance, a *cabinet.Appliance, mayHang bool) {
	switch {
	case in.Underside.Given() && !mayHang:
		b.fault("plan.appliance.underside_of_standing", a.Pointer+"/underside")
	case in.Height.Given() && a.Kind == cabinet.Sink:
		b.fault("plan.appliance.height_of_sink", a.Pointer+"/height")
	case !in.Height.Given() && a.Kind == cabinet.OtherAppliance:
		b.fault("body.member.missing", a.Pointer+"/height")
	}
}

// hoodUnderside is where a hood hangs of which nobody says: where the cooking's own is, else 24 in (610 mm) over the
// cooking surface or the counter, as the work zone asks for (common practice, no source).
func (b *body) hoodUnderside(pointer string) length.Length {
	surface := b.counterOrUsual()
	if c := b.plan.Cooking; c != nil {
		if c.Hood != nil && c.Hood.Underside > 0 {
			return c.Hood.Underside
		}
		if c.Surface > 0 {
			surface = c.Surface
		}
	}
	usual := surface + b.metricOr(610*length.Millimetre, 24*length.Inch)
	b.assume("assume.appliance.hood_underside", usual, pointer)
	return usual
}

// usualTop is the top of what stands on the floor: a fridge's of ordinary size (common practice, no source), else the
// counter.
func (b *body) usualTop(a *cabinet.Appliance) length.Length {
	if a.Kind != cabinet.Fridge {
		return b.counterOrUsual()
	}
	usual := b.metricOr(1800*length.Millimetre, 70*length.Inch)
	b.assume("assume.appliance.fridge_height", usual, a.Pointer+"/height")
	return usual
}

// counterOrUsual is the counter; without base cabinets nobody knows it, and it is taken at its ordinary height.
func (b *body) counterOrUsual() length.Length {
	if b.plan.Counter > 0 {
		return b.plan.Counter
	}
	usual := b.metricOr(900*length.Millimetre, 36*length.Inch)
	b.assume("assume.appliance.counter", usual, "/plan/counter")
	return usual
}

// applianceDepth is how deep an appliance is that nobody measured (common practice, no source).
func (b *body) applianceDepth(k cabinet.ApplianceKind) length.Length {
	switch k {
	case cabinet.Fridge:
		return b.metricOr(650*length.Millimetre, 30*length.Inch)
	case cabinet.HoodOnWall:
		return b.metricOr(500*length.Millimetre, 20*length.Inch)
	default:
		return b.metricOr(600*length.Millimetre, 24*length.Inch)
	}
}
