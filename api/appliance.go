package api

// Appliance is an appliance that takes up room along a wall.
type Appliance struct {
	ID        string      `json:"id" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	Kind      string      `json:"kind" enum:"fridge,range,dishwasher,sink,hood,other" doc:"What it is. A sink lies in the counter and wants one base cabinet under it; a hood is one that is not told under cooking."`
	Wall      string      `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall's id."`
	From      Length      `json:"from" doc:"Left end along the wall, without its clearances."`
	Width     Length      `json:"width" doc:"Width along the wall, without its clearances."`
	Height    Length      `json:"height,omitzero" doc:"Height of the appliance itself; needed for other, and not for a sink. Default the counter, for a fridge an assumption; a hood without it goes up to the ceiling."`
	Depth     Length      `json:"depth,omitzero" doc:"How far it reaches from the wall; an assumption where left out."`
	Underside Length      `json:"underside,omitzero" doc:"Above the datum, of a hood or of something else that hangs; default of a hood that of the cooking's hood, else an assumption."`
	Clearance *Clearances `json:"clearance,omitzero" doc:"What its instructions want left free around it; generic values of the trade are assumed where left out."`
}

// Clearances are what an appliance wants left free around it.
type Clearances struct {
	Left  Length `json:"left,omitzero" doc:"On its left side."`
	Right Length `json:"right,omitzero" doc:"On its right side."`
	Above Length `json:"above,omitzero" doc:"Above its top; of a range up to what can burn, of a sink above the counter."`
}
