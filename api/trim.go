package api

// Trim is one cut along one overhead.
type Trim struct {
	ID          string         `json:"id"`
	Overhead    string         `json:"overhead"`
	Wall        string         `json:"wall"`
	Needed      bool           `json:"needed" doc:"Whether a cabinet needs it in the room as found."`
	BecauseOf   string         `json:"because_of,omitempty" enum:"fit_gap,lift" doc:"What rules the headroom."`
	Cabinets    []string       `json:"cabinets" doc:"The cabinets it serves."`
	From        Measure        `json:"from"`
	To          Measure        `json:"to"`
	CutLine     Measure        `json:"cut_line" doc:"Above the datum, rounded up."`
	FrameLine   *Measure       `json:"frame_line,omitempty" doc:"Underside of the new bottom framing; absent where the frame is not touched."`
	AboveRail   *Measure       `json:"above_rail,omitempty" doc:"Above the rail's lower edge as struck; absent where there is no rail."`
	FromLaser   *Measure       `json:"from_laser,omitempty"`
	Work        string         `json:"work" enum:"none,lining_only,relocate_bottom_member,reframe,take_down"`
	Stations    []TrimStation  `json:"stations"`
	MostRemoved Measure        `json:"most_removed"`
	Returns     []TrimReturn   `json:"returns" doc:"Faces across the depth where the cut ends free."`
	Conflicts   []TrimConflict `json:"conflicts"`
	Steps       []Step         `json:"steps"`
	Findings    []Finding      `json:"findings"`
}

// TrimStation is the cut at one station.
type TrimStation struct {
	At         Measure `json:"at"`
	Underside  Measure `json:"underside"`
	Remove     Measure `json:"remove"`
	AboveFloor Measure `json:"above_floor"`
	OpenAbove  Measure `json:"open_above" doc:"The gap that stays open between the cabinets' top and what is above them."`
}

// TrimReturn is a free end of a cut.
type TrimReturn struct {
	At    Measure `json:"at"`
	Depth Measure `json:"depth" doc:"How far the face runs from the wall's side of the overhead to its front."`
	Meets string  `json:"meets" enum:"wall,corner,cabinet,open,overhead" doc:"overhead: the uncut rest of the same overhead."`
}

// TrimConflict is a service nearer to the cut than its clearance.
type TrimConflict struct {
	Pointer string  `json:"pointer"`
	At      Measure `json:"at"`
	Level   Measure `json:"level"`
	Short   Measure `json:"short" doc:"By how much its clearance is missed."`
}

// Step is one step of the work, in order.
type Step struct {
	Code   string            `json:"code"`
	Says   string            `json:"says"`
	Params map[string]string `json:"params"`
}
