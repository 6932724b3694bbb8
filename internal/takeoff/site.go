package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// Site is a kitchen with what every job in it asks for. It is looked up once: a
// group has half a dozen options, and each asks for the same.
type Site struct {
	k         *kitchen.Kitchen
	patches   [][]cabinet.Patch // of each planned cabinet
	overheads map[*survey.Overhead]*standing
}

// standing is an overhead as no option has touched it yet.
type standing struct {
	faces   []face
	whole   []run           // its face along the wall
	under   []cabinet.Patch // floor areas of hung cabinets on its wall
	removal *removal        // once it was measured bare
}

// NewSite is a kitchen made ready to be measured.
func NewSite(k *kitchen.Kitchen) *Site {
	s := &Site{k, make([][]cabinet.Patch, len(k.Plan.Cabinets)), map[*survey.Overhead]*standing{}}
	for i := range k.Plan.Cabinets {
		s.patches[i] = k.Plan.Cabinets[i].Patches(k.Room)
	}
	return s
}

// standing is an overhead among the parts of its group.
func (s *Site) standing(parts []*survey.Overhead, o *survey.Overhead) *standing {
	out := s.overheads[o]
	if out == nil {
		out = &standing{faces: facesOf(s.k.Room, parts, o), whole: wholeOf(s.k.Room, o), under: s.hungOn(o.Wall)}
		s.overheads[o] = out
	}
	return out
}

// wholeOf is an overhead's face as found.
func wholeOf(room *survey.Room, o *survey.Overhead) []run {
	return heights(o.Underside, room.CeilingOver(o), survey.Span{From: o.From, To: o.To})
}

// hungOn are the floor areas of wall and tall cabinets on a wall.
func (s *Site) hungOn(wall int) []cabinet.Patch {
	var out []cabinet.Patch
	for i := range s.patches {
		if s.k.Plan.Cabinets[i].Kind == cabinet.Base {
			continue
		}
		for _, p := range s.patches[i] {
			if p.Wall == wall {
				out = append(out, p)
			}
		}
	}
	return out
}
