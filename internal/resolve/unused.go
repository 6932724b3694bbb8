package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/finding"
)

// notAssessed lists the parts that this service does not compute, and every member that was sent for them.
func (b *body) notAssessed() {
	b.without("job_order", "not_assessed.job_order", "")
	b.unusedSystem()
	b.unusedPlan()
	b.unusedOld()
	for w := range b.walls {
		if b.walls[w].in.Board.Given() {
			b.without("loads", "not_assessed.loads", b.walls[w].Pointer+"/board")
		}
		for i := range b.walls[w].in.Overheads {
			b.unusedOverhead(&b.walls[w].in.Overheads[i], b.walls[w].Overheads[i].Pointer)
		}
	}
}

func (b *body) without(part, code, pointer string) {
	b.out.NotAssessed = append(b.out.NotAssessed, finding.NotAssessed{Part: part, Code: code, Pointer: pointer})
}

func (b *body) unusedSystem() {
	if s := b.req.System.Inline; s != nil && s.Mass != nil {
		b.without("loads", "not_assessed.loads", "/system/mass")
	} else {
		b.without("loads", "not_assessed.loads", "")
	}
	if s := b.req.System.Inline; s != nil && s.Rail != nil && s.Rail.HangerUp.Given() {
		b.without("hanging", "not_assessed.member", "/system/rail/hanger_up")
	}
	if b.system.LegTravel == nil {
		b.without("legs", "plan.legs.no_travel", "/system")
	}
	if b.system.Rail != nil && len(b.system.Rail.Stock) == 0 {
		b.without("rail_stock", "not_assessed.rail_stock", "/system/rail/stock")
		b.ask("ask.system.stock", "/system/rail/stock")
	}
}

func (b *body) unusedPlan() {
	if b.plan.Counter == 0 {
		b.without("work_zone", "not_assessed.no_counter", "/plan/counter")
	}
	for i := range b.plan.Cabinets {
		if corner := b.plan.Cabinets[i].Corner; corner != nil && corner.Shape == cabinet.CornerBlind {
			b.without("fit", "not_assessed.member", b.plan.Cabinets[i].Pointer+"/corner/other_width")
		}
	}
	if c := b.req.Plan.Cooking; c != nil && c.Hood != nil {
		if c.Hood.Airflow.Given() {
			b.without("air", "not_assessed.air", "/plan/cooking/hood/airflow")
		} else {
			b.without("air", "not_assessed.air", "/plan/cooking/hood")
		}
	}
}

// unusedOld: what shows once old cabinets are gone goes by their place, not yet by how high they reached.
func (b *body) unusedOld() {
	for i := range b.plan.Old {
		b.without("footprint", "not_assessed.member", b.plan.Old[i].Pointer+"/top")
	}
}

func (b *body) unusedOverhead(in *api.Overhead, pointer string) {
	if d := in.Duct; d != nil && (d.Length.Given() || len(d.Bends) > 0 || d.Material != "") {
		b.without("air", "not_assessed.air", pointer+"/duct")
	}
}
