package assess

import (
	"context"
	"slices"
	"strconv"

	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/hazard"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/propose"
	"railhead/internal/report"
	"railhead/internal/resolve"
)

// Layouts proposes cabinets for the walls of a room, or says everything that is wrong with what was sent.
func Layouts(ctx context.Context, req *api.LayoutRequest) (*api.LayoutAnswer, []api.Fault) {
	c, filling, faults := resolvedLayouts(ctx, req)
	if len(faults) > 0 {
		return nil, faults
	}
	var proposal *propose.Proposal
	run(ctx, "propose", func() { proposal = propose.Propose(c.Kitchen, filling, func() bool { return ctx.Err() != nil }) })
	notice(c, proposal)
	out := proposed(ctx, c, proposal, &req.Request)
	if req.Fill != nil && req.Fill.Assess && len(out.Layouts) > 0 {
		out.Assessment, faults = Assess(ctx, pasted(&req.Request, &out.Layouts[0]), All)
	}
	return out, faults
}

// CheckLayouts says everything that is wrong with a request for layouts without answering it.
func CheckLayouts(ctx context.Context, req *api.LayoutRequest) []api.Fault {
	_, _, faults := resolvedLayouts(ctx, req)
	return faults
}

func resolvedLayouts(ctx context.Context, req *api.LayoutRequest) (*resolve.Case, *kitchen.Filling, []api.Fault) {
	_, span := stage(ctx, "resolve")
	defer span.End()
	c, filling, faults := resolve.LayoutRequest(req)
	return c, filling, told(faults)
}

// pasted is a request with a layout in place of its plan's cabinets, fillers and choices.
func pasted(req *api.Request, l *api.Layout) *api.Request {
	out := *req
	out.Plan.Cabinets, out.Plan.Fillers, out.Choices = l.Cabinets, l.Fillers, l.Choices
	return &out
}

// notice adds what was noticed while the room was planned.
func notice(c *resolve.Case, p *propose.Proposal) {
	if !p.Proven {
		c.NotAssessed = append(c.NotAssessed, finding.NotAssessed{Part: "layouts", Code: "not_assessed.layouts_unproven", Pointer: "/fill"})
	}
	for _, e := range p.Empty {
		c.Findings = append(c.Findings, finding.Finding{
			Code: "layout.row." + e.Why.String(), Severity: finding.AsNote, Pointer: e.Pointer, Params: []finding.Param{finding.Word("kind", e.Kind.String())},
		})
	}
	c.NotAssessed = slices.DeleteFunc(c.NotAssessed, func(n finding.NotAssessed) bool { return notOfLayouts[n.Part] })
	if len(p.Layouts) > 0 {
		c.Findings = append(c.Findings, wide(c.Kitchen, &p.Layouts[0])...)
		c.Findings = append(c.Findings, p.Layouts[0].Stops...)
		for _, i := range p.Layouts[0].Blocked {
			c.Findings = append(c.Findings, finding.Finding{
				Code: "layout.stays.blocked", Severity: finding.AsStop, Pointer: "/plan/cabinets/" + strconv.Itoa(p.Stays.Cabinets[i]),
			})
		}
		for _, by := range p.Unmet {
			c.Findings = append(c.Findings, finding.Finding{Code: "layout.whole.no_place", Severity: finding.AsCaution, Pointer: by})
		}
		d := p.Layouts[0].Decided
		c.Questions = append(c.Questions, d.Questions...)
		c.Assumptions = append(c.Assumptions, d.Assumptions()...)
		c.NotAssessed = append(c.NotAssessed, d.NotAssessed()...)
	}
}

// notOfLayouts are parts that no layout rests on.
var notOfLayouts = map[string]bool{"job_order": true, "loads": true, "air": true, "footprint": true}

// wide tells of the widest filler where no strip closes it.
func wide(k *kitchen.Kitchen, l *propose.Layout) []finding.Finding {
	widest, most := length.Length(0), k.Prices.Figures.Length(kitchen.MostFiller)
	for _, f := range l.Kitchen.Plan.Fillers {
		widest = max(widest, f.To-f.From)
	}
	if widest <= most {
		return nil
	}
	return []finding.Finding{{
		Code: "layout.filler.wide", Severity: finding.AsNote, Pointer: "/fill/weights/filler_per_mm", Params: []finding.Param{
			finding.Size("width", finding.Up(widest.Exact())), finding.Size("most", finding.Down(most.Exact())),
		},
	}}
}

func proposed(ctx context.Context, c *resolve.Case, p *propose.Proposal, req *api.Request) *api.LayoutAnswer {
	_, span := stage(ctx, "report")
	defer span.End()
	s := report.Scale{Unit: c.Units, Step: c.Tape, Currency: c.Kitchen.Prices.Currency}
	out := (&report.Proposed{Scale: s, Proposal: p, Request: req}).Answer()
	out.Edition = Edition
	out.Findings = s.Findings(c.Findings)
	out.Questions = s.Questions(unique(c.Questions))
	out.Assumptions = s.Assumptions(c.Assumptions)
	out.NotAssessed = report.NotAssessed(c.NotAssessed)
	out.Cautions = s.Cautions(cautions(c.Kitchen, p))
	return &out
}

// cautions are those of the best layout; of the room as sent where there is none.
func cautions(k *kitchen.Kitchen, p *propose.Proposal) []finding.Caution {
	if len(p.Layouts) == 0 {
		return hazard.Cautions(k, kitchen.AppliedOptions{})
	}
	return hazard.Cautions(p.Layouts[0].Kitchen, p.Layouts[0].Applied())
}
