package api

// Plan is what is to be built.
type Plan struct {
	Counter            Length       `json:"counter,omitzero" doc:"Top of the counter above the datum; default from the system."`
	LeastCounter       Length       `json:"least_counter,omitzero" doc:"Lowest counter that the client and the appliances take; an assumption where left out."`
	RowShift           Length       `json:"row_shift,omitzero" doc:"Moves every row up (positive) or down on its legs; default 0."`
	FloorChange        Length       `json:"floor_change,omitzero" doc:"Change of the floor's level before fitting, upwards positive; assumed none where left out."`
	FloorUnderCabinets *bool        `json:"floor_under_cabinets,omitzero" nullable:"false" doc:"Whether the new floor runs under the cabinets (default) or up to the plinth only."`
	CeilingChange      Length       `json:"ceiling_change,omitzero" doc:"Change of the ceiling's level before fitting, upwards positive: a new board is negative; assumed none where left out."`
	Datums             []GivenDatum `json:"datums,omitempty" maxItems:"50" doc:"Datums set by the planner, one a level group."`
	Cooking            *Cooking     `json:"cooking,omitzero" doc:"The cooking appliance and its hood."`
	Cabinets           []Cabinet    `json:"cabinets,omitempty" maxItems:"1000" doc:"The planned cabinets."`
	Fillers            []Filler     `json:"fillers,omitempty" maxItems:"1000" doc:"Closing pieces between cabinets or to walls."`
	Appliances         []Appliance  `json:"appliances,omitempty" maxItems:"200" doc:"Appliances that take up room along the walls."`
	OldCabinets        []OldCabinet `json:"old_cabinets,omitempty" maxItems:"200" doc:"The old kitchen's cabinets, for what shows after removal."`
}

// GivenDatum sets the datum of a wall's level group.
type GivenDatum struct {
	Wall  string `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall's id."`
	At    Length `json:"at" doc:"Station along the wall."`
	Level Level  `json:"level" doc:"The datum's level, as surveyed there."`
}

// Cooking is the cooking appliance.
type Cooking struct {
	Wall      string `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall's id."`
	From      Length `json:"from" doc:"Left end along the wall."`
	To        Length `json:"to" doc:"Right end along the wall."`
	Surface   Length `json:"surface,omitzero" doc:"Cooking surface above the datum; default the counter."`
	Energy    string `json:"energy" enum:"gas,electric,induction" doc:"What it burns or draws."`
	Clearance Length `json:"clearance,omitzero" doc:"Least height from the cooking surface to combustibles, from the appliance's instructions."`
	Hood      *Hood  `json:"hood,omitzero" doc:"The hood over it."`
}

// Hood is the cooker hood.
type Hood struct {
	Kind        string `json:"kind" enum:"ducted,recirculating,downdraft" doc:"How it gets rid of the air."`
	Airflow     Amount `json:"airflow,omitzero" validate:"required_with=AirflowUnit" doc:"Its airflow, in airflow_unit; the two go together."`
	AirflowUnit string `json:"airflow_unit,omitempty" validate:"required_with=Airflow" enum:"m3/h,cfm,l/s" doc:"The unit of airflow."`
	DuctBox     string `json:"duct_box,omitempty" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The duct box that its duct runs in."`
	Underside   Length `json:"underside,omitzero" doc:"Above the datum."`
	Clearance   Length `json:"clearance,omitzero" doc:"Least height of the hood over the cooking surface, from its instructions."`
	Protected   bool   `json:"protected,omitzero" doc:"Whether the underside above the cooking surface is protected."`
	Moves       bool   `json:"moves,omitzero" doc:"Whether the hood moves from where the old one was."`
}

// Cabinet is one planned cabinet.
type Cabinet struct {
	ID        string  `json:"id" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	Kind      string  `json:"kind" enum:"wall,tall,base" doc:"Where it goes."`
	Wall      string  `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall's id."`
	From      Length  `json:"from" doc:"Left end along the wall."`
	Width     Length  `json:"width" doc:"Width along the wall."`
	Height    Length  `json:"height" doc:"Height of the carcass, without legs."`
	Depth     Length  `json:"depth,omitzero" doc:"Default the smallest in the system."`
	Underside Length  `json:"underside,omitzero" doc:"For a wall cabinet, above the datum; default the system's plus row_shift. Does not go with top."`
	Top       Length  `json:"top,omitzero" validate:"excluded_with=Underside" doc:"Above the datum; default from the height."`
	Door      *Door   `json:"door,omitzero" doc:"Its front."`
	Corner    *Corner `json:"corner,omitzero" doc:"Makes it a corner cabinet."`
	Built     string  `json:"built,omitempty" enum:"lying,upright" doc:"How a tall carcass is put together; default lying."`
	Keep      bool    `json:"keep,omitzero" doc:"Whether it stays where cabinets are proposed for the walls; an assessment is the same with and without it."`
}

// Door is a cabinet's front.
type Door struct {
	Opens     string `json:"opens" enum:"left,right,pair,up,drawer,none" doc:"The side the hinges are on; pair is a left and a right door."`
	Rise      Length `json:"rise,omitzero" doc:"For a lift-up front: how far it rises above the cabinet's top."`
	Thickness Length `json:"thickness,omitzero" doc:"Default 20 mm or 3/4 in, an assumption."`
	Pull      Length `json:"pull,omitzero" doc:"How far the pull stands off the front; default 40 mm or 1 1/2 in, an assumption."`
}

// Corner makes a cabinet a corner cabinet.
type Corner struct {
	OtherWall  string `json:"other_wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall around the corner."`
	OtherWidth Length `json:"other_width" doc:"How far it reaches along the other wall."`
	Shape      string `json:"shape" enum:"l,diagonal,blind" doc:"Its plan."`
}

// Filler closes a gap between cabinets or to a wall.
type Filler struct {
	ID    string `json:"id,omitempty" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	Kind  string `json:"kind,omitempty" enum:"wall,tall,base" doc:"The row it belongs to."`
	Wall  string `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall's id."`
	From  Length `json:"from" doc:"Left end along the wall."`
	Width Length `json:"width" doc:"Width along the wall."`
}

// OldCabinet is a cabinet of the kitchen that goes.
type OldCabinet struct {
	ID    string `json:"id" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	Kind  string `json:"kind" enum:"wall,tall,base" doc:"Where it is."`
	Wall  string `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall's id."`
	From  Length `json:"from" doc:"Left end along the wall."`
	Width Length `json:"width" doc:"Width along the wall."`
	Top   Level  `json:"top" doc:"Its top, as surveyed."`
	Depth Length `json:"depth,omitzero" doc:"Depth from the wall."`
}
