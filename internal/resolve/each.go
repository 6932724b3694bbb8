package resolve

import "railhead/api"

// eachReading goes through every level reading of the request.
func (b *body) eachReading(do func(*api.Reading)) {
	if bench := b.req.Survey.Bench; bench != nil {
		do(&bench.Level.Reading)
	}
	for i := range b.req.Survey.Walls {
		eachOnWall(&b.req.Survey.Walls[i], do)
	}
	for i := range b.req.Plan.Datums {
		do(&b.req.Plan.Datums[i].Level.Reading)
	}
	for i := range b.req.Plan.OldCabinets {
		do(&b.req.Plan.OldCabinets[i].Top.Reading)
	}
}

func eachOnWall(w *api.Wall, do func(*api.Reading)) {
	eachPoint(w.Floor, do)
	eachPoint(w.Ceiling, do)
	for i := range w.Openings {
		do(&w.Openings[i].Sill.Reading)
		do(&w.Openings[i].Head.Reading)
	}
	for i := range w.Points {
		do(&w.Points[i].Level.Reading)
	}
	for i := range w.Overheads {
		eachOfOverhead(&w.Overheads[i], do)
	}
}

func eachOfOverhead(o *api.Overhead, do func(*api.Reading)) {
	eachPoint(o.Underside, do)
	if o.Behind != nil {
		do(&o.Behind.CeilingLevel.Reading)
	}
	if o.Inside == nil {
		return
	}
	for i := range o.Inside.Services {
		do(&o.Inside.Services[i].Underside.Reading)
	}
}

func eachPoint(points []api.Point, do func(*api.Reading)) {
	for i := range points {
		do(&points[i].Reading)
	}
}
