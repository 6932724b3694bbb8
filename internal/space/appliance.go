package space

import (
	"railhead/internal/cabinet"
	"railhead/internal/fit"
	"railhead/internal/length"
)

// appliances adds the plan's appliances with what they want left free.
func (r *Row) appliances() {
	for i := range r.k.Plan.Appliances {
		a := &r.k.Plan.Appliances[i]
		if !a.InWayOf(r.Kind) {
			continue
		}
		body := Box{By: a.Pointer, What: Appliance, Low: r.here(a.Wall, a.Low()), High: r.here(a.Wall, a.Top)}
		r.standing(a.Patch(), body)
		free := body
		free.Soft = true
		for _, right := range []bool{false, true} {
			if p := a.Beside(right); p.From < p.To {
				r.standing(p, free)
			}
		}
		if a.Above.Need > 0 {
			free.Low, free.High = body.High, body.High.Plus(a.Above.Need)
			r.standing(a.Patch(), free)
		}
	}
}

// cooking keeps what hangs, and what is tall, off the cooking surface: up to the
// height that what can burn keeps, and where a hood hangs, which its duct or its
// chimney goes on from, all the way up.
func (r *Row) cooking() {
	cook := r.k.Plan.Cooking
	if cook == nil || r.Kind == cabinet.Base {
		return
	}
	b := Box{By: cook.Pointer, What: Cooking, Low: fit.Underfoot.Exact(), High: r.here(cook.Wall, cook.Surface+fit.CookingNeed(cook)), Soft: true}
	if hooded(cook) {
		b.High = length.Max.Exact()
	}
	r.standing(fit.CookingArea(r.k), b)
}

func hooded(cook *cabinet.Cooking) bool {
	return cook.Hood != nil && cook.Hood.Kind != cabinet.Downdraft
}
