package takeoff

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
	"railhead/internal/trim"
)

// Job is one way to treat one overhead group.
type Job struct {
	Group  kitchen.OverheadGroup
	Option kitchen.Option
	Cuts   []trim.Trim    // of the group, for a trim and for opening a part
	Swaps  []cabinet.Swap // that the option makes
	// Reached reports whether the option's work comes to a service; where it is nil,
	// the work comes to all within its stretches.
	Reached func(*survey.Overhead, *survey.Service) bool
	// Bare leaves formulas and inputs out: for whoever reckons and tells nothing.
	Bare bool
}

// Of measures a job. Keeping an overhead takes no work but for cabinets that are
// exchanged under it.
func Of(k *kitchen.Kitchen, job Job) Takeoff {
	m := newMeasuring(k, job)
	for _, s := range m.sheets {
		s.covers = s.coversOf()
	}
	for _, s := range m.sheets {
		s.measure()
	}
	out := Takeoff{Reach: m.reach()}
	for _, s := range m.sheets {
		out.Items = s.appendItems(out.Items)
		out.Behind = appendItem(out.Behind, &s.behind, CeilingBoard, s.o.Pointer)
		s.find(&out.Found)
	}
	for _, w := range job.Swaps {
		out.Items = appendSwap(out.Items, w, job.Bare)
	}
	return out
}

// measuring is one job on its way to a takeoff.
type measuring struct {
	k      *kitchen.Kitchen
	job    Job
	sheets []*sheet          // by part
	areas  []cabinet.Patch   // seen from below, of what was counted so far
	closed []survey.WallSpan // where the gap over cabinets was counted so far
}

func newMeasuring(k *kitchen.Kitchen, job Job) *measuring {
	m := &measuring{k: k, job: job}
	for _, o := range job.Group.Parts {
		m.sheets = append(m.sheets, m.sheetOf(o))
	}
	return m
}

// isCut and closes tell the options apart by their work.
func (m *measuring) isCut() bool {
	return m.job.Option == kitchen.Trim || m.job.Option == kitchen.OpenPart
}

func (m *measuring) closes() bool {
	return m.job.Option == kitchen.RemoveTaller || m.job.Option == kitchen.RemoveClose
}
