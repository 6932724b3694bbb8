package assess

import (
	"context"

	"railhead/api"
	"railhead/internal/report"
	"railhead/internal/resolve"
)

// Layouts proposes cabinets for the walls of a room, or says everything that is wrong with what was sent.
func Layouts(ctx context.Context, req *api.LayoutRequest) (*api.LayoutAnswer, []api.Fault) {
	_, span := stage(ctx, "resolve")
	defer span.End()
	c, _, faults := resolve.LayoutRequest(req)
	if len(faults) > 0 {
		return nil, told(faults)
	}
	s := report.Scale{Unit: c.Units, Step: c.Tape, Currency: c.Kitchen.Prices.Currency}
	return &api.LayoutAnswer{
		Edition:     Edition,
		Findings:    s.Findings(c.Findings),
		Questions:   s.Questions(c.Questions),
		Assumptions: s.Assumptions(c.Assumptions),
		NotAssessed: report.NotAssessed(c.NotAssessed),
	}, nil
}

// CheckLayouts says everything that is wrong with a request for layouts without answering it.
func CheckLayouts(ctx context.Context, req *api.LayoutRequest) []api.Fault {
	_, span := stage(ctx, "resolve")
	defer span.End()
	_, _, faults := resolve.LayoutRequest(req)
	return told(faults)
}
