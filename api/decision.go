package api

// Decisions is what to do with each overhead, and why.
type Decisions struct {
	Room      RoomDecision       `json:"room"`
	Overheads []OverheadDecision `json:"overheads"`
}

// RoomDecision is the advice for the whole room.
type RoomDecision struct {
	Basis    string            `json:"basis" enum:"rules" doc:"rules: ranked by the fixed factors, without money."`
	Advice   map[string]string `json:"advice"`
	LowerRow *LowerRow         `json:"lower_row,omitempty" doc:"Lowering the row on its legs, where that helps."`
}

// LowerRow is the room-level alternative of lowering every row on its legs.
type LowerRow struct {
	By       Measure  `json:"by"`
	RowShift Length   `json:"row_shift" doc:"The plan's row_shift that does it, in the request's own form."`
	Possible bool     `json:"possible"`
	Gates    []string `json:"gates" doc:"What limits it, by code."`
	Spares   []string `json:"spares" doc:"The overheads that need no cut then."`
}

// OverheadDecision is the advice for one overhead or part_of group.
type OverheadDecision struct {
	Overhead string   `json:"overhead"`
	Pointers []string `json:"pointers" doc:"The overheads it covers."`
	Advice   string   `json:"advice"`
	Options  []Option `json:"options"`
	Reasons  []Reason `json:"reasons"`
}

// Option is one way to treat an overhead.
type Option struct {
	Option   string `json:"option" enum:"keep,trim,open_part,remove_taller,remove_close,remove_open,move"`
	Possible bool   `json:"possible"`
	Gates    []Gate `json:"gates"`
	Swaps    []Swap `json:"swaps" doc:"The cabinets it would exchange; the plan itself is never edited."`
}

// Gate is something that must be settled before an option may be taken.
type Gate struct {
	Code    string `json:"code"`
	Pointer string `json:"pointer"`
	Says    string `json:"says"`
	Who     string `json:"who" doc:"Who may settle it."`
}

// Swap exchanges a cabinet for another height.
type Swap struct {
	Cabinet string  `json:"cabinet"`
	Height  Measure `json:"height"`
	Top     Measure `json:"top"`
}

// Reason is one factor's pull, with its evidence.
type Reason struct {
	Factor   string            `json:"factor" enum:"contents,ceiling_height,footprint,expense,structure,health,preference"`
	Leans    string            `json:"leans" enum:"keep,trim,open_part,take_down,none"`
	Code     string            `json:"code"`
	Because  string            `json:"because"`
	Params   map[string]string `json:"params"`
	Evidence []string          `json:"evidence"`
}
