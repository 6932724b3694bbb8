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
func (s *Site) Of(job Job) Takeoff {
	m := newMeasuring(s, job)
	for _, s := range m.sheets {
		s.covers = s.coversOf()
	}
	for _, s := range m.sheets {
		s.measure()
	}
	out := Takeoff{Items: m.itemList(), Reach: m.reach()}
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
	*Site
	job    Job
	sheets []*sheet          // by part
	areas  []cabinet.Patch   // seen from below, of what was counted so far
	closed []survey.WallSpan // where the gap over cabinets was counted so far
}

func newMeasuring(s *Site, job Job) *measuring {
	m := &measuring{Site: s, job: job, sheets: make([]*sheet, 0, len(job.Group.Parts))}
	for _, o := range job.Group.Parts {
		m.sheets = append(m.sheets, m.sheetOf(o))
	}
	return m
}

// itemList is a list with room for all items.
func (m *measuring) itemList() []Item {
	n := 2 * len(m.job.Swaps)
	for _, s := range m.sheets {
		n += len(s.accounts)
	}
	if n == 0 {
		return nil
	}
	return make([]Item, 0, n)
}

// isCut and closes tell the options apart by their work.
func (m *measuring) isCut() bool {
	return m.job.Option == kitchen.Trim || m.job.Option == kitchen.OpenPart
}

func (m *measuring) closes() bool {
	return m.job.Option == kitchen.RemoveTaller || m.job.Option == kitchen.RemoveClose
}
