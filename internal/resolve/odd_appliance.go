package resolve

import "railhead/internal/survey"

// oddAppliances mentions appliances that take each other's place.
func (b *body) oddAppliances() {
	for i := range b.plan.Appliances {
		for j := range i {
			a, o := &b.plan.Appliances[i], &b.plan.Appliances[j]
			s := survey.Span{From: a.From, To: a.To}.Clip(survey.Span{From: o.From, To: o.To})
			if a.Wall == o.Wall && s.From < s.To && a.Low() < o.Top && o.Low() < a.Top {
				b.caution("plan.appliance.overlap", a.Pointer, size("overlap", s.To-s.From))
				break
			}
		}
	}
}
