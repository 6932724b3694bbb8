package api

// Common is what every assessing path answers.
type Common struct {
	Edition     string             `json:"edition" doc:"The rules, systems and rates that made this answer."`
	Datum       Datum              `json:"datum" doc:"The datum of the first level group."`
	Datums      []Datum            `json:"datums" doc:"One datum for each level group."`
	Applied     map[string]Applied `json:"applied" doc:"The option that holds for each overhead or part_of group."`
	Summary     Summary            `json:"summary"`
	Findings    []Finding          `json:"findings" doc:"What was noticed about the survey and the plan as a whole."`
	Questions   []Question         `json:"questions"`
	Cautions    []Caution          `json:"cautions"`
	Assumptions []Assumption       `json:"assumptions"`
	NotAssessed []NotAssessed      `json:"not_assessed"`
}

// Assessment is the whole answer.
type Assessment struct {
	Common
	Rows      []Row      `json:"rows"`
	Fit       []Fit      `json:"fit"`
	Rails     []Rail     `json:"rails"`
	RailStock *RailStock `json:"rail_stock,omitempty"`
	Trims     []Trim     `json:"trims"`
	Decisions Decisions  `json:"decisions"`
}

// FitAnswer is the answer of /v1/fit-checks.
type FitAnswer struct {
	Common
	Rows []Row `json:"rows"`
	Fit  []Fit `json:"fit"`
}

// RailAnswer is the answer of /v1/rail-heights.
type RailAnswer struct {
	Common
	Rails     []Rail     `json:"rails"`
	RailStock *RailStock `json:"rail_stock,omitempty"`
}

// TrimAnswer is the answer of /v1/soffit-trims.
type TrimAnswer struct {
	Common
	Trims []Trim `json:"trims"`
}

// DecisionAnswer is the answer of /v1/soffit-decisions.
type DecisionAnswer struct {
	Common
	Decisions Decisions `json:"decisions"`
}

// Datum is the level that a level group's heights refer to.
type Datum struct {
	Walls      []string `json:"walls" doc:"The walls of the level group."`
	Wall       string   `json:"wall" doc:"The wall at which the datum was found."`
	At         Measure  `json:"at"`
	LaserAbove *Measure `json:"laser_above,omitempty" doc:"The wall's laser line over the datum; absent where no laser was used."`
	FloorFall  Measure  `json:"floor_fall" doc:"From the group's highest floor point to its lowest."`
	By         string   `json:"by" enum:"given,floor_standing,planned_walls,all_walls" doc:"The rule that gave the datum."`
}

// Applied is the option that holds for one overhead or group, and why.
type Applied struct {
	Option string `json:"option"`
	By     string `json:"by" enum:"choice,advice,default"`
}

// Summary is the room in one verdict.
type Summary struct {
	Verdict string `json:"verdict" enum:"go,go_after_trim,go_after_opening,answers_needed,blocked" doc:"Treat an unknown verdict as blocked."`
	Says    string `json:"says"`
}

// Question is something unknown on which the answer rests.
type Question struct {
	Code    string `json:"code"`
	Pointer string `json:"pointer" doc:"The member of the request that would answer it."`
	Asks    string `json:"asks"`
}

// Caution is a hazard with who may deal with it.
type Caution struct {
	Code    string `json:"code"`
	Pointer string `json:"pointer"`
	Says    string `json:"says"`
	Who     string `json:"who"`
	Source  string `json:"source"`
}

// Assumption is a value the answer rests on that nobody gave.
type Assumption struct {
	Code     string `json:"code"`
	Value    string `json:"value"`
	Says     string `json:"says" doc:"What was assumed, in words."`
	Source   string `json:"source" doc:"memory, common_practice, or the document."`
	Override string `json:"override" doc:"The member of the request that replaces it."`
}

// NotAssessed is a part that could not be computed, or a member that was not used.
type NotAssessed struct {
	Part    string `json:"part"`
	Code    string `json:"code"`
	Pointer string `json:"pointer"`
}

// Finding is something noticed, with what it needs and what there is.
type Finding struct {
	Code     string            `json:"code"`
	Severity string            `json:"severity" enum:"stop,caution,note"`
	Pointer  string            `json:"pointer"`
	Says     string            `json:"says"`
	Params   map[string]string `json:"params" doc:"Values for a translated text."`
	Need     *Measure          `json:"need,omitempty"`
	Have     *Measure          `json:"have,omitempty"`
	Remedies []Remedy          `json:"remedies"`
}

// Remedy is one way out of a finding.
type Remedy struct {
	Code string `json:"code"`
	Says string `json:"says"`
}
