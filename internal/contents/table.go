package contents

import (
	"railhead/internal/belief"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// row is factors under the code by which they are listed as an assumption. The
// numbers of all rows are estimates from memory; nobody counted houses for them.
type row struct {
	code    string
	factors Factors
}

// kindRows are the odds before anything else is known, by kind of overhead:
// what the trade expects to find, from memory.
var kindRows = [...]row{
	survey.Soffit:         {"assume.contents.kind_soffit", weights(45, 25, 8, 17, 5)},
	survey.ClosedGap:      {"assume.contents.kind_closed_gap", weights(80, 12, 2, 5, 1)},
	survey.LoweredCeiling: {"assume.contents.kind_lowered_ceiling", weights(25, 35, 12, 23, 5)},
	survey.Beam:           {"assume.contents.kind_beam", weights(30, 15, 3, 7, 45)},
	survey.DuctBox:        {"assume.contents.kind_duct_box", weights(5, 5, 2, 80, 8)},
}

// framedBeam is a beam that is only a box of light framing: it hides something,
// or is for looks.
var framedBeam = row{"assume.contents.kind_framed_beam", weights(45, 20, 5, 20, 10)}

// The house's age. Before middleAge hardly any kitchen was built with a soffit:
// what hangs there now was put up to hide something. Until lateAge many were built
// for looks, over cabinets of the usual height. Later ones hide ducts more often.
// A house of unknown age is taken to be of the middle age.
var (
	ageOld     = row{"assume.contents.age_old", weights(100, 120, 120, 160, 140)}
	ageMiddle  = row{"assume.contents.age_middle", weights(100, 100, 100, 100, 100)}
	ageLate    = row{"assume.contents.age_late", weights(100, 100, 120, 140, 100)}
	ageUnknown = row{"assume.contents.age_unknown", weights(100, 100, 100, 100, 100)}
)

// The years in which the ages begin.
const (
	middleAge = 1950
	lateAge   = 1990
)

// hints are the factors of each hint of the wire, in the order in which they are
// told: what stands above first, then what shows on the overhead itself.
var hints = [...]struct {
	name string
	row
}{
	{"bath_above", row{"assume.contents.hint_bath_above", weights(100, 100, 100, 400, 150)}},
	{"kitchen_above", row{"assume.contents.hint_kitchen_above", weights(100, 120, 120, 300, 150)}},
	{"upper_floor", row{"assume.contents.hint_upper_floor", weights(100, 120, 120, 150, 120)}},
	{"attic_above", row{"assume.contents.hint_attic_above", weights(100, 80, 80, 60, 70)}},
	{"stack_in_line", row{"assume.contents.hint_stack_in_line", weights(100, 100, 100, 600, 300)}},
	{"fixture_below", row{"assume.contents.hint_fixture_below", weights(100, 120, 100, 160, 120)}},
	{"cable_enters", row{"assume.contents.hint_cable_enters", weights(5, 100, 80, 50, 50)}},
	{"light_in_it", row{"assume.contents.hint_light_in_it", weights(2, 100, 80, 50, 50)}},
	{"register_in_it", row{"assume.contents.hint_register_in_it", weights(2, 4, 4, 100, 50)}},
	{"sprinkler_head", row{"assume.contents.hint_sprinkler_head", weights(1, 1, 1, 2, 100)}},
	{"warm_to_touch", row{"assume.contents.hint_warm_to_touch", weights(100, 110, 120, 500, 150)}},
	{"sounds_hollow", row{"assume.contents.hint_sounds_hollow", weights(100, 90, 80, 70, 60)}},
}

// What is near, and how near counts.
var (
	bathNear  = row{"assume.contents.near_bath", weights(100, 100, 100, 200, 130)}
	bathFar   = row{"assume.contents.far_from_bath", weights(100, 100, 100, 60, 80)}
	hoodNear  = row{"assume.contents.near_hood", weights(100, 120, 100, 200, 120)}
	panelNear = row{"assume.contents.near_panel", weights(100, 150, 250, 100, 100)}
	ductKnown = row{"assume.contents.duct_known", weights(1, 1, 1, 100, 5)}
)

// How near is near, from memory.
const (
	bathWithin  = 1500 * length.Millimetre
	bathBeyond  = 4000 * length.Millimetre
	hoodWithin  = 600 * length.Millimetre
	panelWithin = 1500 * length.Millimetre
)

// seenRows are how likely a look at a part shows what it showed, by what the
// unseen rest holds: most things run on.
var seenRows = [...]row{
	FewWires:   {"assume.contents.seen_few_wires", weights(35, 100, 50, 50, 50)},
	ManyWires:  {"assume.contents.seen_many_wires", weights(20, 60, 100, 50, 50)},
	PipeOrDuct: {"assume.contents.seen_pipe_or_duct", weights(30, 40, 40, 100, 60)},
	Immovable:  {"assume.contents.seen_immovable", weights(30, 40, 40, 60, 100)},
}

// throughs are the figures that say how often what is there runs through the whole
// overhead.
var throughs = [States]kitchen.Figure{
	FewWires: kitchen.ThroughFewWires, ManyWires: kitchen.ThroughManyWires,
	PipeOrDuct: kitchen.ThroughPipeOrDuct, Immovable: kitchen.ThroughImmovable,
}

// behindRows are how often the ceiling's board turns out to be missing behind an
// overhead, by kind: what was framed before the ceiling was boarded has none.
var behindRows = [...]struct {
	code    string
	missing belief.Chance
}{
	survey.Soffit:         {"assume.behind.soffit", belief.Certain / 2},
	survey.ClosedGap:      {"assume.behind.closed_gap", belief.Certain / 20},
	survey.LoweredCeiling: {"assume.behind.lowered_ceiling", belief.Certain / 5},
	survey.Beam:           {"assume.behind.beam", belief.Certain / 10 * 7},
	survey.DuctBox:        {"assume.behind.duct_box", belief.Certain / 10 * 3},
}
