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
	// Reached reports whether the option's work comes to a service; all of them
	// where it is nil.
	Reached func(*survey.Overhead, *survey.Service) bool
}

// Of measures a job.
func Of(_ *kitchen.Kitchen, _ Job) Takeoff { return Takeoff{} }
