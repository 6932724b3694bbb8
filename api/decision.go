package api

// Decisions is what to do with each overhead, and why.
type Decisions struct {
	Room      RoomDecision       `json:"room" doc:"The advice for the whole room."`
	Overheads []OverheadDecision `json:"overheads" doc:"The advice for each overhead or part_of group."`
}

// RoomDecision is the advice for the whole room.
type RoomDecision struct {
	Basis    string            `json:"basis" enum:"rules" doc:"rules: ranked by the fixed factors, without money."`
	Advice   map[string]string `json:"advice" doc:"The advised option, by overhead or part_of group."`
	LowerRow *LowerRow         `json:"lower_row,omitzero" doc:"Lowering the row on its legs, where that helps."`
}

// LowerRow is the room-level alternative of lowering every row on its legs.
type LowerRow struct {
	By       Measure  `json:"by" doc:"How far the rows go down."`
	RowShift Length   `json:"row_shift" doc:"The plan's row_shift that does it, in the request's own form."`
	Possible bool     `json:"possible" doc:"Whether it can be done here."`
	Gates    []string `json:"gates" doc:"What limits it, by code."`
	Spares   []string `json:"spares" doc:"The overheads that need no cut then."`
}

// OverheadDecision is the advice for one overhead or part_of group.
type OverheadDecision struct {
	Overhead string   `json:"overhead" doc:"The overhead's id, or the part_of group."`
	Pointers []string `json:"pointers" doc:"The overheads it covers."`
	Advice   string   `json:"advice" doc:"The advised option."`
	Options  []Option `json:"options" doc:"Every way to treat it."`
	Reasons  []Reason `json:"reasons" doc:"Why, by factor."`
}

// Option is one way to treat an overhead.
type Option struct {
	Option   string `json:"option" enum:"keep,trim,open_part,remove_taller,remove_close,remove_open,move" doc:"The option."`
	Possible bool   `json:"possible" doc:"Whether it can be done here."`
	Gates    []Gate `json:"gates" doc:"What must be settled before it may be taken."`
	Swaps    []Swap `json:"swaps" doc:"The cabinets it would exchange; the plan itself is never edited."`
}

// Gate is something that must be settled before an option may be taken.
type Gate struct {
	Code    string `json:"code" doc:"Stable code."`
	Pointer string `json:"pointer" doc:"The member of the request it is about."`
	Says    string `json:"says" doc:"A sentence for people; not part of the contract."`
	Who     string `json:"who" doc:"Who may settle it."`
}

// Swap exchanges a cabinet for another height.
type Swap struct {
	Cabinet string  `json:"cabinet" doc:"The cabinet."`
	Height  Measure `json:"height" doc:"Its new height."`
	Top     Measure `json:"top" doc:"Its new top."`
}

// Reason is one factor's pull, with its evidence.
type Reason struct {
	Factor   string            `json:"factor" enum:"contents,ceiling_height,footprint,expense,structure,health,preference" doc:"The factor."`
	Leans    string            `json:"leans" enum:"keep,trim,open_part,take_down,none" doc:"Which way it pulls."`
	Code     string            `json:"code" doc:"Stable code."`
	Because  string            `json:"because" doc:"The reason, for people."`
	Params   map[string]string `json:"params" doc:"Values for a translated text."`
	Evidence []string          `json:"evidence" doc:"The members of the request that show it."`
}
