package contents

import (
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// hinted is the members that give a hint.
func (c Cluster) hinted(hint string) []string {
	return c.evidence("/hints", func(o *survey.Overhead) bool { return slices.Contains(o.Inside.Hints, hint) })
}

// bath counts how far the nearest bath is, unless one is known to be above, which
// says more.
func (t *trail) bath(c Cluster) {
	nearest := c.nearestBath()
	if nearest == nil || len(c.hinted("bath_above")) > 0 {
		return
	}
	evidence := []string{nearest.Inside.Pointer + "/bath_away"}
	switch d := *nearest.Inside.BathAway; {
	case d <= bathWithin:
		t.move(bathNear, evidence, apart(d))
	case d > bathBeyond:
		t.move(bathFar, evidence, apart(d))
	}
}

// nearestBath is the part that is nearest to a bath; nil where nobody said.
func (c Cluster) nearestBath() *survey.Overhead {
	var out *survey.Overhead
	for _, o := range c.Parts {
		if d := o.Inside.BathAway; d != nil && (out == nil || *d < *out.Inside.BathAway) {
			out = o
		}
	}
	return out
}

func apart(d length.Length) finding.Param { return finding.Size("away", finding.Near(d.Exact())) }

// hood counts a duct that is known to run here, and else a cooker close by: its
// hood's duct has to go somewhere. A hood that moves tells nothing of the old one.
func (t *trail) hood(k *kitchen.Kitchen, c Cluster) {
	if evidence := c.knownDuct(k.Plan.Cooking); len(evidence) > 0 {
		t.move(ductKnown, evidence)
		return
	}
	cooking := k.Plan.Cooking
	if cooking == nil || goesElsewhere(cooking.Hood) {
		return
	}
	d, ok := c.nearest(k.Room, cooking.Wall, survey.Span{From: cooking.From, To: cooking.To})
	if ok && d <= hoodWithin {
		t.move(hoodNear, []string{cooking.Pointer}, apart(d))
	}
}

// goesElsewhere: the hood moves, or its duct is known to run in some box, which
// is not this one.
func goesElsewhere(h *cabinet.Hood) bool { return h != nil && (h.Moves || h.DuctBox != "") }

// knownDuct is what says that a duct runs in one of the parts.
func (c Cluster) knownDuct(cooking *cabinet.Cooking) []string {
	var out []string
	for _, o := range c.Parts {
		if o.Duct != nil {
			out = append(out, o.Pointer+"/duct")
		}
	}
	if cooking != nil && cooking.Hood != nil && cooking.Hood.DuctBox != "" && c.holds(cooking.Hood.DuctBox) {
		out = append(out, cooking.Pointer+"/hood/duct_box")
	}
	return out
}

// panel counts the nearest electric panel: its cables have to get there.
func (t *trail) panel(room *survey.Room, c Cluster) {
	var nearest *survey.Fixture
	var away length.Length
	for w := range room.Walls {
		for i := range room.Walls[w].Fixtures {
			f := &room.Walls[w].Fixtures[i]
			if f.Kind != survey.Panel {
				continue
			}
			if d, ok := c.nearest(room, w, survey.Span{From: f.At, To: f.At}); ok && (nearest == nil || d < away) {
				nearest, away = f, d
			}
		}
	}
	if nearest != nil && away <= panelWithin {
		t.move(panelNear, []string{nearest.Pointer}, apart(away))
	}
}
