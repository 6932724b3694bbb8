package resolve

import (
	"slices"

	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/length"
)

// made is what is known of the cabinet system where not all of it is usable.
type made struct {
	none [3]bool       // it makes none of a kind
	play length.Length // what it leaves to the sides of a cabinet; length.Max where that is not known
}

func madeOf(s *cabinet.System) made {
	m := made{play: s.SideClearance}
	for k := range m.none {
		m.none[k] = len(s.Sizes(cabinet.Kind(k)).Heights) == 0
	}
	return m
}

// readSystem takes a built-in system, or reads the one sent along.
func (b *body) readSystem() {
	in := &b.req.System
	switch {
	case in.Inline != nil:
		b.readInline(in.Inline)
	case in.ID == "":
		b.fault("body.member.missing", "/system")
	default:
		built, ok := cabinet.BuiltIn(in.ID)
		if !ok {
			b.fault("system.id.unknown", "/system")
			return
		}
		b.system = &built.System
		b.made = madeOf(b.system)
	}
}

// readInline reads a system in its own units. It is usable where nothing of it was refused.
func (b *body) readInline(in *api.InlineSystem) {
	before, units := len(b.faults), b.units
	defer func() { b.units = units }()
	b.systemUnits(in)
	legs, legsOK := b.length(in.Legs, "/system/legs", notNegative)
	s := &cabinet.System{FitGap: b.must(in.FitGap, "/system/fit_gap", notNegative), Legs: legs}
	side, sideOK := b.optional(in.SideClearance, "/system/side_clearance", notNegative)
	if s.SideClearance = side; sideOK || !in.SideClearance.Given() {
		b.made.play = side
	}
	b.made.none = [...]bool{cabinet.Wall: in.Wall == nil, cabinet.Tall: in.Tall == nil, cabinet.Base: in.Base == nil}
	b.readLegTravel(in.LegTravel, s, legsOK)
	b.readSizes(in, s)
	b.readRail(in.Rail, s)
	b.readMass(in.Mass)
	if len(b.faults) == before {
		b.system = s
	}
}

func (b *body) systemUnits(in *api.InlineSystem) {
	if in.Units == "" {
		return
	}
	own, ok := length.ParseUnit(in.Units)
	if !ok {
		b.fault("body.value.not_allowed", "/system/units")
		own, b.guessed.units = b.guess.system, true
	}
	b.units = own
}

// must reads a length that must be there and is 0 where it is refused.
func (b *body) must(in api.Length, pointer string, s sign) length.Length {
	l, ok := b.length(in, pointer, s)
	if !ok {
		return 0
	}
	return l
}

func (b *body) readLegTravel(in *api.LegTravel, s *cabinet.System, legsOK bool) {
	if in == nil {
		return
	}
	pointer := "/system/leg_travel"
	s.LegTravel = &cabinet.LegTravel{
		Up:   b.must(in.Up, pointer+"/up", notNegative),
		Down: b.must(in.Down, pointer+"/down", notNegative),
	}
	if legsOK && s.LegTravel.Down > s.Legs {
		b.fault("system.legs.travel_too_long", pointer+"/down", size("legs", s.Legs))
	}
}

func (b *body) readSizes(in *api.InlineSystem, s *cabinet.System) {
	if w := in.Wall; w != nil {
		s.Wall = b.sizes(w.Heights, w.Widths, w.Depths, w.Corners, "/system/wall")
		s.WallUnderside = b.must(w.Underside, "/system/wall/underside", positive)
	}
	if t := in.Tall; t != nil {
		s.Tall = b.sizes(t.Heights, t.Widths, t.Depths, t.Corners, "/system/tall")
	}
	if c := in.Base; c != nil {
		s.Base = b.sizes(c.Heights, c.Widths, c.Depths, c.Corners, "/system/base")
		s.Counter = b.lengthOr(c.Counter, "/system/base/counter", notNegative, 0)
	}
}

func (b *body) sizes(heights, widths, depths []api.Length, corners []api.CornerSize, pointer string) cabinet.Sizes {
	out := cabinet.Sizes{
		Heights: b.needed(heights, pointer+"/heights"),
		Widths:  b.list(widths, pointer+"/widths"),
	}
	before := len(b.faults)
	out.Depths = b.needed(depths, pointer+"/depths")
	var shallowest length.Length // 0 where it is not known
	if len(b.faults) == before {
		shallowest = out.Depths[0]
	}
	out.Corners = b.cornerSizes(corners, shallowest, pointer)
	return out
}

func (b *body) needed(in []api.Length, pointer string) []length.Length {
	if len(in) == 0 {
		b.fault("body.member.missing", pointer)
	}
	return b.list(in, pointer)
}

// list reads a list of sizes: in order, each once.
func (b *body) list(in []api.Length, pointer string) []length.Length {
	var out []length.Length
	for i := range in {
		if l, ok := b.length(in[i], element(pointer, i), positive); ok {
			out = append(out, l)
		}
	}
	slices.Sort(out)
	return slices.Compact(out)
}

func (b *body) readMass(in *api.MassPerArea) {
	if in == nil {
		return
	}
	b.amount(in.WallPerM2Front, "/system/mass/wall_per_m2_front")
	b.amount(in.TallPerM2Front, "/system/mass/tall_per_m2_front")
	b.amount(in.BasePerM2Front, "/system/mass/base_per_m2_front")
}
