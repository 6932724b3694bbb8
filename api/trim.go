package api

// Trim is one cut along one overhead.
type Trim struct {
	ID          string         `json:"id" doc:"Name of the cut."`
	Overhead    string         `json:"overhead" doc:"The overhead's id."`
	Wall        string         `json:"wall" doc:"The wall's id."`
	Needed      bool           `json:"needed" doc:"Whether a cabinet needs it in the room as found."`
	BecauseOf   string         `json:"because_of,omitempty" enum:"fit_gap,lift" doc:"What rules the headroom."`
	Cabinets    []string       `json:"cabinets" doc:"The cabinets it serves."`
	From        Measure        `json:"from" doc:"Left end of the cut, rounded outwards."`
	To          Measure        `json:"to" doc:"Right end of the cut, rounded outwards."`
	CutLine     Measure        `json:"cut_line" doc:"Above the datum, rounded up."`
	FrameLine   *Measure       `json:"frame_line,omitzero" doc:"Underside of the new bottom framing; absent where the frame is not touched."`
	AboveRail   *Measure       `json:"above_rail,omitzero" doc:"Above the rail's lower edge as struck; absent where there is no rail."`
	FromLaser   *Measure       `json:"from_laser,omitzero" doc:"Level minus line, upwards positive."`
	FromBench   *Measure       `json:"from_bench,omitempty" doc:"Level minus bench mark, upwards positive; absent without a bench mark."`
	Work        string         `json:"work" enum:"none,lining_only,relocate_bottom_member,reframe,take_down" doc:"What kind of work it is."`
	Stations    []TrimStation  `json:"stations" doc:"The strip at every break of the profile."`
	MostRemoved Measure        `json:"most_removed" doc:"Height of the strip at its highest."`
	Returns     []TrimReturn   `json:"returns" doc:"Faces across the depth where the cut ends free."`
	Conflicts   []TrimConflict `json:"conflicts" doc:"Services nearer to the cut than their clearance."`
	Steps       []Step         `json:"steps" doc:"The work, in order."`
	Findings    []Finding      `json:"findings" doc:"What was noticed, with remedies."`
}

// TrimStation is the cut at one station.
type TrimStation struct {
	At         Measure `json:"at" doc:"Station along the wall."`
	Underside  Measure `json:"underside" doc:"The overhead's underside as found."`
	Remove     Measure `json:"remove" doc:"Height of the strip."`
	AboveFloor Measure `json:"above_floor" doc:"The cut line above the floor right there: a check."`
	OpenAbove  Measure `json:"open_above" doc:"The gap that stays open between the cabinets' top and what is above them."`
}

// TrimReturn is a free end of a cut.
type TrimReturn struct {
	At    Measure `json:"at" doc:"Station along the wall."`
	Depth Measure `json:"depth" doc:"How far the face runs from the wall's side of the overhead to its front."`
	Meets string  `json:"meets" enum:"wall,corner,cabinet,open,overhead" doc:"overhead: the uncut rest of the same overhead."`
}

// TrimConflict is a service nearer to the cut than its clearance.
type TrimConflict struct {
	Pointer string  `json:"pointer" doc:"The member of the request it is about."`
	At      Measure `json:"at" doc:"Station along the wall."`
	Level   Measure `json:"level" doc:"The service's lowest level."`
	Short   Measure `json:"short" doc:"By how much its clearance is missed."`
}

// Step is one step of the work, in order.
type Step struct {
	Code   string            `json:"code" doc:"Stable code."`
	Says   string            `json:"says" doc:"A sentence for people; not part of the contract."`
	Params map[string]string `json:"params" doc:"Values for a translated text."`
}
