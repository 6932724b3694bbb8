package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
)

func (b *body) readRail(in *api.RailSystem, s *cabinet.System) {
	if in == nil {
		return
	}
	pointer := "/system/rail"
	s.Rail = &cabinet.Rail{
		Drop:        b.must(in.Drop, pointer+"/drop", positive),
		Profile:     b.lengthOr(in.Profile, pointer+"/profile", positive, 0),
		Stock:       b.list(in.Stock, pointer+"/stock"),
		Kerf:        b.lengthOr(in.Kerf, pointer+"/kerf", notNegative, 0),
		HangerUp:    b.lengthOr(in.HangerUp, pointer+"/hanger_up", notNegative, 0),
		HangerDown:  b.lengthOr(in.HangerDown, pointer+"/hanger_down", notNegative, 0),
		Lift:        b.lengthOr(in.Lift, pointer+"/lift", notNegative, 0),
		EndInset:    b.lengthOr(in.EndInset, pointer+"/end_inset", notNegative, 0),
		LongestSpan: b.lengthOr(in.LongestSpan, pointer+"/longest_span", positive, 0),
	}
	for _, sizes := range [...]cabinet.Sizes{s.Wall, s.Tall} {
		if len(sizes.Heights) > 0 && s.Rail.Drop > sizes.Heights[0] {
			b.fault("system.rail.drop_too_long", pointer+"/drop", size("height", sizes.Heights[0]))
			return
		}
	}
}
