package estimate

import (
	"iter"

	"railhead/internal/takeoff"
)

// job is who does a kind of work and which rates make its price.
type job struct {
	trade                  Trade // that does it; NoTrade for what is only bought
	paid                   Trade // that is paid by the piece; NoTrade for what is bought
	dusty                  bool  // so that the room is set up and protected for it
	saved                  bool  // what is not bought
	wage, hours            int   // indices in the book; none where there is no labour
	material               int   // none where nothing is bought
	code, hoursCode        string
	wageCode, materialCode string
}

// jobs are the jobs of all kinds of work.
var jobs = map[takeoff.Work]*job{
	takeoff.BoardOff:      with(takeoff.BoardOff, job{trade: Helper, dusty: true}),
	takeoff.FrameOff:      with(takeoff.FrameOff, job{trade: Carpenter, dusty: true}),
	takeoff.Cut:           with(takeoff.Cut, job{trade: Drywaller, dusty: true}),
	takeoff.FrameRefit:    with(takeoff.FrameRefit, job{trade: Carpenter, dusty: true}),
	takeoff.Hangers:       with(takeoff.Hangers, job{trade: Carpenter, dusty: true}),
	takeoff.BoardOn:       with(takeoff.BoardOn, job{trade: Drywaller, dusty: true}),
	takeoff.CeilingBoard:  with(takeoff.CeilingBoard, job{trade: Drywaller, dusty: true}),
	takeoff.Patch:         with(takeoff.Patch, job{trade: Drywaller, dusty: true}),
	takeoff.Paint:         with(takeoff.Paint, job{trade: Painter, dusty: true}),
	takeoff.Waste:         with(takeoff.Waste, job{paid: WasteHaul}),
	takeoff.WasteMass:     with(takeoff.WasteMass, job{trade: Helper, paid: WasteHaul}),
	takeoff.RerouteWire:   with(takeoff.RerouteWire, job{trade: Electrician}),
	takeoff.ReroutePipe:   with(takeoff.ReroutePipe, job{trade: Plumber}),
	takeoff.RerouteDuct:   with(takeoff.RerouteDuct, job{trade: DuctFitter}),
	takeoff.BackingBoard:  with(takeoff.BackingBoard, job{trade: Carpenter}),
	takeoff.ClosingPanel:  with(takeoff.ClosingPanel, job{trade: Fitter}),
	takeoff.Filler:        with(takeoff.Filler, job{trade: Fitter}),
	takeoff.TallerFront:   with(takeoff.TallerFront, job{}),
	takeoff.ShorterFront:  with(takeoff.ShorterFront, job{saved: true}),
	takeoff.ExchangeOrder: with(takeoff.ExchangeOrder, job{}),
	takeoff.CloseAgain:    with(takeoff.CloseAgain, job{trade: Drywaller, dusty: true}),
	takeoff.Probe:         with(takeoff.Probe, job{}),
	takeoff.Remeasure:     with(takeoff.Remeasure, job{}),
	takeoff.LowerRow:      with(takeoff.LowerRow, job{trade: Fitter}),
}

// with is a job with its rates looked up.
func with(w takeoff.Work, j job) *job {
	j.code = prefixWork + string(w)
	j.hoursCode, j.wageCode, j.materialCode = prefixHours+string(w), prefixWage+j.trade.String(), prefixMaterial+string(w)
	j.hours, j.wage, j.material = index(j.hoursCode), index(j.wageCode), index(j.materialCode)
	return &j
}

// jobsOf are the items that are priced, each with its job: those of a kind of work that has rates, and of which there
// is any.
func jobsOf(items []takeoff.Item) iter.Seq2[*takeoff.Item, *job] {
	return func(yield func(*takeoff.Item, *job) bool) {
		for i := range items {
			item := &items[i]
			if j := jobs[item.Work]; j != nil && item.Quantity > 0 && !yield(item, j) {
				return
			}
		}
	}
}
