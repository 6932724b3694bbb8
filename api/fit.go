package api

// Row compares what one row of the system needs with what there is.
type Row struct {
	WallHeight     *Measure `json:"wall_height,omitzero" doc:"The row's wall cabinets; absent where it has none."`
	TallHeight     *Measure `json:"tall_height,omitzero" doc:"The row's tall cabinets; absent where it has none."`
	Top            Measure  `json:"top" doc:"The row's top line."`
	CeilingNeeded  Measure  `json:"ceiling_needed" doc:"The lowest ceiling that the row can be squeezed under."`
	CeilingForFits Measure  `json:"ceiling_for_fits" doc:"The lowest ceiling with the fit gap left open."`
	Kept           RowRoom  `json:"kept" doc:"With the overheads as found."`
	Removed        RowRoom  `json:"removed" doc:"With every overhead gone that may be cut."`
}

// RowRoom is what a row has above it.
type RowRoom struct {
	Have    Measure `json:"have" doc:"What there is."`
	Margin  Measure `json:"margin" doc:"What is left over; negative is an overlap."`
	Verdict string  `json:"verdict" enum:"fits,snug,needs_trim,blocked" doc:"Treat an unknown verdict as blocked."`
	By      string  `json:"limited_by" doc:"The ceiling or overhead that limits it."`
	Basis   string  `json:"basis,omitempty" enum:"seen,assumed" doc:"Whether what lies behind was seen."`
}

// Fit is one cabinet against everything around it.
type Fit struct {
	Cabinet      string    `json:"cabinet" doc:"The cabinet's id."`
	Verdict      string    `json:"verdict" enum:"fits,snug,needs_trim,blocked" doc:"In the room as found."`
	Cure         string    `json:"cure" enum:"none,lower_row,trim,open,remove,ask" doc:"The cheapest cure."`
	LowerRowBy   *Measure  `json:"lower_row_by,omitzero" doc:"With cure lower_row: how far the row goes down on its legs."`
	MeasureAgain bool      `json:"measure_again" doc:"Whether the readings' doubt could change the verdict."`
	MeasureWhat  string    `json:"measure_what,omitempty" doc:"The reading to repeat: the one with the largest share of the doubt."`
	WorstVerdict string    `json:"worst_verdict" enum:"fits,snug,needs_trim,blocked" doc:"The worst verdict within the readings' doubt."`
	Top          Measure   `json:"top" doc:"The cabinet's top."`
	Underside    Measure   `json:"underside" doc:"The cabinet's underside."`
	Margin       Measure   `json:"margin" doc:"The smallest clearance above the cabinet; negative is an overlap."`
	Uncertainty  Measure   `json:"uncertainty" doc:"Expanded uncertainty of the margin, k = 2."`
	LimitedBy    string    `json:"limited_by" doc:"The obstacle that rules the verdict."`
	LimitedAt    Measure   `json:"limited_at" doc:"Station at which it does."`
	Limits       []Limit   `json:"limits" doc:"Every obstacle: what is above wall by wall, then what is beside."`
	Hanging      *Hanging  `json:"hanging,omitzero" doc:"For a cabinet that is hung."`
	Standing     *Standing `json:"standing,omitzero" doc:"For a tall cabinet that is stood up."`
	After        FitAfter  `json:"after" doc:"The fit once the applied options are carried out."`
	Findings     []Finding `json:"findings" doc:"What was noticed, with remedies."`
}

// Limit is one obstacle's clearance and verdict.
type Limit struct {
	By      string  `json:"by" doc:"The obstacle."`
	Axis    string  `json:"axis" enum:"up,along,out" doc:"The direction the margin is measured in."`
	At      Measure `json:"at" doc:"Station of the least margin."`
	Margin  Measure `json:"margin" doc:"What is left over; negative is an overlap."`
	Verdict string  `json:"verdict" enum:"fits,snug,needs_trim,blocked" doc:"Treat an unknown verdict as blocked."`
}

// Hanging is how a cabinet gets onto its rail.
type Hanging struct {
	Verdict string  `json:"verdict" enum:"hooks,hooks_low,screw_up_only,blocked" doc:"Treat an unknown verdict as blocked."`
	Need    Measure `json:"need" doc:"What is needed."`
	Have    Measure `json:"have" doc:"What there is."`
}

// Standing is how a tall carcass gets upright in the room.
type Standing struct {
	Verdict string  `json:"verdict" enum:"with_legs,on_side,legs_after,upright,blocked" doc:"Treat an unknown verdict as blocked."`
	Need    Measure `json:"need" doc:"What is needed."`
	Have    Measure `json:"have" doc:"What there is."`
}

// FitAfter is the cabinet's fit once the applied options are carried out.
type FitAfter struct {
	Verdict   string    `json:"verdict" enum:"fits,snug,needs_trim,blocked" doc:"Treat an unknown verdict as blocked."`
	Margin    Measure   `json:"margin" doc:"What is left over; negative is an overlap."`
	LimitedBy string    `json:"limited_by" doc:"The obstacle that rules the verdict."`
	Basis     string    `json:"basis" enum:"seen,assumed" doc:"assumed where it rests on what nobody has seen behind an overhead."`
	Hanging   *Hanging  `json:"hanging,omitempty" doc:"For a cabinet that is hung: how, once the options are carried out."`
	Findings  []Finding `json:"findings" doc:"What overheads then still do to its front, and to hanging it."`
}
