package resolve

import (
	"railhead/api"
)

// ids are the names of the request that others refer to.
type ids struct {
	walls     map[string]int
	lasers    map[string]int
	overheads map[string]*api.Overhead
	groups    map[string]bool // part_of where given, else the overhead's id
}

// names gathers the ids of the body and refuses those that are not unique among their kind.
func (b *body) names() {
	b.ids = ids{map[string]int{}, map[string]int{}, map[string]*api.Overhead{}, map[string]bool{}}
	lasers, walls := register{b, "laser", nil}, register{b, "wall", nil}
	for i, l := range b.req.Survey.Lasers {
		keep(b.ids.lasers, l.ID, i, lasers.add(l.ID, item("/survey", "lasers", i)))
	}
	for i, w := range b.req.Survey.Walls {
		keep(b.ids.walls, w.ID, i, walls.add(w.ID, item("/survey", "walls", i)))
	}
	b.namesOnWalls()
	b.namesInPlan()
}

func (b *body) namesOnWalls() {
	openings, points := register{b, "opening", nil}, register{b, "point", nil}
	overheads, services := register{b, "overhead", nil}, register{b, "service", nil}
	for i := range b.req.Survey.Walls {
		w, pointer := &b.req.Survey.Walls[i], item("/survey", "walls", i)
		for j, o := range w.Openings {
			openings.add(o.ID, item(pointer, "openings", j))
		}
		for j, p := range w.Points {
			points.add(p.ID, item(pointer, "points", j))
		}
		for j := range w.Overheads {
			o, at := &w.Overheads[j], item(pointer, "overheads", j)
			keep(b.ids.overheads, o.ID, o, overheads.add(o.ID, at))
			b.ids.groups[groupOf(o)] = true
			if o.PartOf != "" && !isID(o.PartOf) {
				b.fault("body.value.pattern", at+"/part_of")
				b.nameless["overhead"]++
			}
			if o.Inside == nil {
				continue
			}
			for k, s := range o.Inside.Services {
				services.addOptional(s.ID, item(at+"/inside", "services", k))
			}
		}
	}
	b.partsOf()
}

// partsOf refuses a part_of that is the id of an overhead which belongs elsewhere.
func (b *body) partsOf() {
	for i := range b.req.Survey.Walls {
		for j := range b.req.Survey.Walls[i].Overheads {
			o := &b.req.Survey.Walls[i].Overheads[j]
			other := b.ids.overheads[o.PartOf]
			if o.PartOf != "" && other != nil && groupOf(other) != o.PartOf {
				b.fault("survey.overhead.part_of_taken", item(item("/survey", "walls", i), "overheads", j)+"/part_of")
			}
		}
	}
}

func (b *body) namesInPlan() {
	cabinets, fillers, old := register{b, "cabinet", nil}, register{b, "filler", nil}, register{b, "old_cabinet", nil}
	for i, c := range b.req.Plan.Cabinets {
		cabinets.add(c.ID, item("/plan", "cabinets", i))
	}
	for i, f := range b.req.Plan.Fillers {
		fillers.addOptional(f.ID, item("/plan", "fillers", i))
	}
	appliances := register{b, "appliance", nil}
	for i, a := range b.req.Plan.Appliances {
		appliances.add(a.ID, item("/plan", "appliances", i))
	}
	for i, o := range b.req.Plan.OldCabinets {
		old.add(o.ID, item("/plan", "old_cabinets", i))
	}
}

func groupOf(o *api.Overhead) string {
	if o.PartOf != "" {
		return o.PartOf
	}
	return o.ID
}
