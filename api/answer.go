package api

// Common is what every assessing path answers.
type Common struct {
	Edition     string             `json:"edition" doc:"The rules, systems and rates that made this answer."`
	Datum       Datum              `json:"datum" doc:"The datum of the first level group."`
	Datums      []Datum            `json:"datums" doc:"One datum for each level group."`
	Applied     map[string]Applied `json:"applied" doc:"The option that holds for each overhead or part_of group."`
	Summary     Summary            `json:"summary" doc:"The room in one verdict."`
	Findings    []Finding          `json:"findings" doc:"What was noticed about the survey and the plan as a whole."`
	Questions   []Question         `json:"questions" doc:"What is unknown and matters, most telling first."`
	Cautions    []Caution          `json:"cautions" doc:"Hazards, and who may deal with them."`
	Assumptions []Assumption       `json:"assumptions" doc:"What the answer rests on that nobody gave."`
	NotAssessed []NotAssessed      `json:"not_assessed" doc:"What could not be computed, or was not used."`
}

// Assessment is the whole answer.
type Assessment struct {
	Common
	Rows      []Row      `json:"rows" doc:"Each row of the system against the room."`
	Fit       []Fit      `json:"fit" doc:"Each planned cabinet against everything around it."`
	Rails     []Rail     `json:"rails" doc:"One entry for each row on each wall."`
	RailStock *RailStock `json:"rail_stock,omitzero" doc:"What to buy and how to cut it; absent where the system has no rail."`
	Trims     []Trim     `json:"trims" doc:"One entry for each cut."`
	Decisions Decisions  `json:"decisions" doc:"What to do with each overhead, and why."`
	Estimate  *Estimate  `json:"estimate,omitzero" doc:"What the applied options come to; absent where it could not be computed."`
}

// FitAnswer is the answer of /v1/fit-checks.
type FitAnswer struct {
	Common
	Rows []Row `json:"rows" doc:"Each row of the system against the room."`
	Fit  []Fit `json:"fit" doc:"Each planned cabinet against everything around it."`
}

// RailAnswer is the answer of /v1/rail-heights.
type RailAnswer struct {
	Common
	Rails     []Rail     `json:"rails" doc:"One entry for each row on each wall."`
	RailStock *RailStock `json:"rail_stock,omitzero" doc:"What to buy and how to cut it; absent where the system has no rail."`
}

// TrimAnswer is the answer of /v1/soffit-trims.
type TrimAnswer struct {
	Common
	Trims []Trim `json:"trims" doc:"One entry for each cut."`
}

// DecisionAnswer is the answer of /v1/soffit-decisions.
type DecisionAnswer struct {
	Common
	Decisions Decisions `json:"decisions" doc:"What to do with each overhead, and why."`
}

// Datum is the level that a level group's heights refer to.
type Datum struct {
	Walls      []string `json:"walls" doc:"The walls of the level group."`
	Wall       string   `json:"wall" doc:"The wall at which the datum was found."`
	At         Measure  `json:"at" doc:"Station at which it was found."`
	LaserAbove *Measure `json:"laser_above,omitzero" doc:"The wall's laser line over the datum; absent where no laser was used."`
	BenchAbove *Measure `json:"bench_above,omitempty" doc:"The bench mark over the datum; absent without one."`
	FloorFall  Measure  `json:"floor_fall" doc:"From the group's highest floor point to its lowest."`
	By         string   `json:"by" enum:"given,floor_standing,planned_walls,all_walls" doc:"The rule that gave the datum."`
}

// Applied is the option that holds for one overhead or group, and why.
type Applied struct {
	Option string `json:"option" doc:"The option."`
	By     string `json:"by" enum:"choice,advice,default" doc:"Why it holds: chosen, advised, or kept by default."`
}

// Summary is the room in one verdict.
type Summary struct {
	Verdict string `json:"verdict" enum:"go,go_after_trim,go_after_opening,answers_needed,blocked" doc:"Treat an unknown verdict as blocked."`
	Says    string `json:"says" doc:"A sentence for people; not part of the contract."`
}

// Question is something unknown on which the answer rests.
type Question struct {
	Code    string `json:"code" doc:"Stable code."`
	Pointer string `json:"pointer" doc:"The member of the request that would answer it."`
	Asks    string `json:"asks" doc:"The question, for people."`
	Worth   string `json:"worth,omitzero" doc:"What the answer would be worth before deciding; absent where that is not money."`
}

// Caution is a hazard with who may deal with it.
type Caution struct {
	Code    string `json:"code" doc:"Stable code."`
	Pointer string `json:"pointer" doc:"The member of the request it is about."`
	Says    string `json:"says" doc:"A sentence for people; not part of the contract."`
	Who     string `json:"who" doc:"Who may deal with it."`
	Source  string `json:"source" doc:"The document or the practice behind it."`
}

// Assumption is a value the answer rests on that nobody gave.
type Assumption struct {
	Code     string `json:"code" doc:"Stable code."`
	Value    string `json:"value" doc:"The value taken."`
	Says     string `json:"says" doc:"What was assumed, in words."`
	Source   string `json:"source" doc:"memory, common_practice, or the document."`
	Override string `json:"override" doc:"The member of the request that replaces it."`
}

// NotAssessed is a part that could not be computed, or a member that was not used.
type NotAssessed struct {
	Part    string `json:"part" doc:"The part or member."`
	Code    string `json:"code" doc:"Stable code."`
	Pointer string `json:"pointer" doc:"The member of the request it is about."`
}

// Finding is something noticed, with what it needs and what there is.
type Finding struct {
	Code     string            `json:"code" doc:"Stable code."`
	Severity string            `json:"severity" enum:"stop,caution,note" doc:"stop: settle it before any work; caution: take care; note: worth knowing."`
	Pointer  string            `json:"pointer" doc:"The member of the request it is about."`
	Says     string            `json:"says" doc:"A sentence for people; not part of the contract."`
	Params   map[string]string `json:"params" doc:"Values for a translated text."`
	Need     *Measure          `json:"need,omitzero" doc:"What is needed."`
	Have     *Measure          `json:"have,omitzero" doc:"What there is."`
	Remedies []Remedy          `json:"remedies" doc:"Ways out, cheapest first."`
}

// Remedy is one way out of a finding.
type Remedy struct {
	Code string `json:"code" doc:"Stable code."`
	Says string `json:"says" doc:"A sentence for people; not part of the contract."`
}
