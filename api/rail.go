package api

// Rail is one row's rail on one wall.
type Rail struct {
	Wall      string        `json:"wall"`
	RowTop    Measure       `json:"row_top"`
	LowerEdge Measure       `json:"lower_edge" doc:"Above the datum, rounded down: the one mark that is struck."`
	FromLaser *Measure      `json:"from_laser,omitempty" doc:"Level minus line, upwards positive."`
	BeforeCut bool          `json:"before_cut" doc:"Whether the rail can go on before an overhead is cut."`
	Stations  []RailStation `json:"stations"`
	Pieces    []RailPiece   `json:"pieces"`
	Fixings   []Fixing      `json:"fixings"`
	Findings  []Finding     `json:"findings"`
}

// RailStation is a check of the level rail at one station.
type RailStation struct {
	At         Measure  `json:"at"`
	AboveFloor Measure  `json:"above_floor" doc:"A check, never struck as a line."`
	AboveLaser *Measure `json:"above_laser,omitempty"`
}

// RailPiece is one length of rail.
type RailPiece struct {
	From   Measure `json:"from"`
	To     Measure `json:"to"`
	Length Measure `json:"length"`
	Joint  bool    `json:"joint" doc:"Whether its right end butts against the next piece of the same run."`
}

// Fixing is one screw through the rail.
type Fixing struct {
	At   Measure `json:"at"`
	Into string  `json:"into" enum:"stud,blocking,board,masonry,unknown"`
}

// RailStock is the shopping and cutting list of rail.
type RailStock struct {
	Bars   []Bar    `json:"bars"`
	Waste  Measure  `json:"waste" doc:"Stock bought minus rail hung."`
	Bought Measure  `json:"bought"`
	Proven bool     `json:"proven" doc:"Whether no cheaper list exists; else bound says how little stock could do."`
	Bound  *Measure `json:"bound,omitempty"`
}

// Bar is one length bought and what is cut from it.
type Bar struct {
	Stock  Measure   `json:"stock"`
	Cuts   []Measure `json:"cuts"`
	Offcut Measure   `json:"offcut"`
}
