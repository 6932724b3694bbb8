package api

// Rail is one row's rail on one wall.
type Rail struct {
	Wall      string        `json:"wall" doc:"The wall."`
	RowTop    Measure       `json:"row_top" doc:"The top line of the row it carries."`
	LowerEdge Measure       `json:"lower_edge" doc:"Above the datum, rounded down: the one mark that is struck."`
	FromLaser *Measure      `json:"from_laser,omitzero" doc:"Level minus line, upwards positive."`
	FromBench *Measure      `json:"from_bench,omitempty" doc:"Level minus bench mark, upwards positive; absent without a bench mark."`
	BeforeCut bool          `json:"before_cut" doc:"Whether the rail can go on before an overhead is cut."`
	Stations  []RailStation `json:"stations" doc:"Checks along the rail."`
	Pieces    []RailPiece   `json:"pieces" doc:"The lengths of rail."`
	Fixings   []Fixing      `json:"fixings" doc:"The screws."`
	Findings  []Finding     `json:"findings" doc:"What was noticed, with remedies."`
}

// RailStation is a check of the level rail at one station.
type RailStation struct {
	At         Measure  `json:"at" doc:"Station along the wall."`
	AboveFloor Measure  `json:"above_floor" doc:"A check, never struck as a line."`
	AboveLaser *Measure `json:"above_laser,omitzero" doc:"Level minus line, upwards positive."`
}

// RailPiece is one length of rail.
type RailPiece struct {
	From   Measure `json:"from" doc:"Left end along the wall."`
	To     Measure `json:"to" doc:"Right end along the wall."`
	Length Measure `json:"length" doc:"Its length, rounded down."`
	Joint  bool    `json:"joint" doc:"Whether its right end butts against the next piece of the same run."`
}

// Fixing is one screw through the rail.
type Fixing struct {
	At   Measure `json:"at" doc:"Station along the wall."`
	Into string  `json:"into" enum:"stud,blocking,board,masonry,unknown" doc:"What the screw goes into."`
}

// RailStock is the shopping and cutting list of rail.
type RailStock struct {
	Bars   []Bar    `json:"bars" doc:"Each bar bought."`
	Waste  Measure  `json:"waste" doc:"Stock bought minus rail hung."`
	Bought Measure  `json:"bought" doc:"Stock bought in all."`
	Proven bool     `json:"proven" doc:"Whether no cheaper list exists; else bound says how little stock could do."`
	Bound  *Measure `json:"bound,omitzero" doc:"The least stock that could do, where the list is not proven."`
}

// Bar is one length bought and what is cut from it.
type Bar struct {
	Stock  Measure   `json:"stock" doc:"Length bought."`
	Cuts   []Measure `json:"cuts" doc:"Pieces cut from it, in order."`
	Offcut Measure   `json:"offcut" doc:"What is left of it."`
}
