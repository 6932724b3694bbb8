package kitchen

import "railhead/internal/survey"

// By is why an option holds.
type By int

// Why an option holds.
const (
	ByChoice  By = iota // the planner chose it
	ByAdvice            // nobody chose: the room's advice
	ByDefault           // the advice is gated: the overhead stays
)

// String is the reason's name on the wire.
func (b By) String() string { return [...]string{"choice", "advice", "default"}[b] }

// Applied is the option that holds for one overhead group.
type Applied struct {
	Option Option
	By     By
	Spans  []survey.WallSpan // for OpenPart; empty means over the cabinets in the way
}

// AppliedOptions says what holds for each overhead group, by its id.
type AppliedOptions map[string]Applied
