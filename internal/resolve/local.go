package resolve

import (
	"railhead/internal/money"
	"railhead/internal/survey"
)

// readLocalRules reads what local code says of old materials.
func (b *body) readLocalRules() {
	in := b.req.Survey.LocalRules
	if in == nil {
		return
	}
	b.room.Local = survey.Local{AsbestosTo: in.AsbestosTo, LeadBefore: in.LeadBefore}
	area, ok := b.placed(in.LeadArea, "/survey/local_rules/lead_area", quantityPlaces)
	if !ok {
		return
	}
	if in.LeadBefore == 0 {
		b.fault("survey.local_rules.no_year", "/survey/local_rules/lead_before")
	}
	b.room.Local.LeadArea, _ = money.QuantityFromRat(area) // amounts are bounded where they are read
}
