package api

// Survey is the room as it was measured.
type Survey struct {
	Tolerance   Length  `json:"tolerance,omitzero" doc:"Half-width of every reading's doubt; default 2 mm or 1/16 in, an assumption."`
	Built       int     `json:"built,omitzero" minimum:"1000" maximum:"2200" doc:"Year the house was built."`
	CodeSet     string  `json:"code_set,omitempty" enum:"none,us_irc" doc:"The code set that applies; none is assumed where it is left out."`
	LaserHeight Length  `json:"laser_height,omitzero" doc:"The first laser line above the survey's own zero; needed where 'height' and 'up' or 'down' are both used."`
	Lasers      []Laser `json:"lasers,omitempty" maxItems:"20" doc:"The laser set-ups; the first is the reference."`
	Bench       *Bench  `json:"bench,omitzero" doc:"A permanent mark from which the laser line can be found again."`
	Walls       []Wall  `json:"walls" minItems:"1" maxItems:"50" doc:"Walls from left to right, as seen from inside."`
	Cleared     *Clear  `json:"cleared,omitzero" doc:"What licensed people have already tested and cleared."`
	LocalRules  *Local  `json:"local_rules,omitzero" doc:"What local code says of old materials; in place of the code set's figures."`
}

// Local is what local code says of old materials where it is not the code set's.
type Local struct {
	AsbestosTo int    `json:"asbestos_to,omitzero" minimum:"1000" maximum:"2200" doc:"Textured and plastered surfaces in houses up to this year count as containing asbestos until tested."`
	LeadBefore int    `json:"lead_before,omitzero" minimum:"1000" maximum:"2200" doc:"Paint in houses built before this year counts as containing lead until tested."`
	LeadArea   Amount `json:"lead_area,omitzero" doc:"Painted area in a room, in square metres, up to which a cut needs no licensed firm; where left out, every cut needs one. Taking painted parts down always does."`
}

// Clear says which hazards have been tested and found absent or dealt with.
type Clear struct {
	Asbestos bool `json:"asbestos,omitzero" doc:"Tested, and absent or dealt with."`
	Lead     bool `json:"lead,omitzero" doc:"Tested, and absent or dealt with."`
}

// Laser is one set-up of the laser line.
type Laser struct {
	ID        string `json:"id" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Name of the set-up."`
	Above     Length `json:"above,omitzero" doc:"This line over the first line; 0 for the first. A second line without it is not tied and is refused."`
	Tolerance Length `json:"tolerance,omitzero" doc:"Half-width of the tie's doubt; default the survey's."`
}

// Bench is a permanent bench mark.
type Bench struct {
	Wall  string `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall's id."`
	At    Length `json:"at" doc:"Station along the wall."`
	Level Level  `json:"level" doc:"The mark's level."`
	Says  string `json:"says,omitempty" minLength:"1" maxLength:"200" doc:"How to find it."`
}

// Wall is one wall of the room with everything that was measured on it.
type Wall struct {
	ID        string     `json:"id" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	Length    Length     `json:"length" doc:"Length of the wall."`
	JoinsNext bool       `json:"joins_next,omitzero" doc:"The right end meets the left end of the next wall in a 90 degree inside corner."`
	LevelWith string     `json:"level_with,omitempty" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Levels an unjoined wall together with another."`
	Facing    *Facing    `json:"facing,omitzero" doc:"The opposite wall."`
	Laser     string     `json:"laser,omitempty" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The set-up that this wall's readings count from; default the first."`
	Backing   string     `json:"backing,omitempty" enum:"wood_stud,steel_stud,masonry,board,unknown" doc:"What stands behind the finish; default unknown."`
	Board     Length     `json:"board,omitzero" doc:"Thickness of the wall lining over the backing."`
	Studs     *Studs     `json:"studs,omitzero" doc:"Where the studs are."`
	Floor     []Point    `json:"floor" minItems:"1" maxItems:"1000" doc:"Floor levels in order of 'at'; two points at one station are a step; above_floor has no meaning here."`
	Ceiling   []Point    `json:"ceiling" minItems:"1" maxItems:"1000" doc:"Ceiling levels in order of 'at'."`
	Openings  []Opening  `json:"openings,omitempty" maxItems:"100" doc:"Windows, doors and hatches."`
	Points    []Fixture  `json:"points,omitempty" maxItems:"500" doc:"Sockets, switches, valves and the like on the wall."`
	Overheads []Overhead `json:"overheads,omitempty" maxItems:"100" doc:"Everything under the ceiling that competes with cabinets."`
}

// Facing names the opposite wall.
type Facing struct {
	Wall     string `json:"wall" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The wall's id."`
	Distance Length `json:"distance" doc:"Clear distance between the two walls."`
}

// Studs says where the studs are: a first one and a spacing, or each of them.
type Studs struct {
	First   Length   `json:"first,omitzero" doc:"The first stud's centre; goes with spacing, and not with at."`
	Spacing Length   `json:"spacing,omitzero" doc:"Centre to centre; goes with first."`
	At      []Length `json:"at,omitempty" maxItems:"500" doc:"Each stud's centre, in order."`
}

// Point is one point of a profile.
type Point struct {
	At Length `json:"at" doc:"Station along the wall."`
	Reading
}

// Opening is a window, door or hatch with its casing.
type Opening struct {
	ID     string `json:"id" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	Kind   string `json:"kind" enum:"window,door,passage,hatch" doc:"What it is."`
	From   Length `json:"from" doc:"Left edge of the clear opening."`
	To     Length `json:"to" doc:"Right edge of the clear opening."`
	Sill   Level  `json:"sill,omitzero" doc:"Lower edge; default the floor."`
	Head   Level  `json:"head" doc:"Upper edge."`
	Casing Length `json:"casing,omitzero" doc:"Width of the trim around the opening; default 0."`
}

// Fixture is a small thing on the wall that a cabinet may cover.
type Fixture struct {
	ID     string `json:"id" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	Kind   string `json:"kind" enum:"socket,switch,light,junction,valve,gas_valve,pipe,vent,panel,other" doc:"What it is."`
	At     Length `json:"at" doc:"Its centre along the wall."`
	Level  Level  `json:"level" doc:"Its centre's level."`
	Width  Length `json:"width,omitzero" doc:"Default 80 mm, an assumption."`
	Height Length `json:"height,omitzero" doc:"Default 80 mm, an assumption."`
	Out    Length `json:"out,omitzero" doc:"How far it stands off the wall; default 0."`
}

// Overhead is anything under the ceiling that competes with cabinets.
type Overhead struct {
	ID        string  `json:"id" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	PartOf    string  `json:"part_of,omitempty" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Overheads that are parts of one thing share this name and are decided together."`
	Kind      string  `json:"kind" enum:"soffit,closed_gap,lowered_ceiling,beam,duct_box" doc:"What it is."`
	From      Length  `json:"from" doc:"Left end along the wall."`
	To        Length  `json:"to" doc:"Right end along the wall."`
	Out       Length  `json:"out,omitzero" doc:"Distance from the wall to its near face; default 0."`
	Depth     Length  `json:"depth" doc:"How far it reaches into the room, from its near face."`
	Underside []Point `json:"underside,omitempty" maxItems:"1000" doc:"Required but for a closed gap with thickness."`
	Thickness Length  `json:"thickness,omitzero" doc:"For a closed gap: from the ceiling down to its underside."`
	Structure string  `json:"structure,omitempty" enum:"framed,solid,bearing,unknown" doc:"Default unknown."`
	Finish    string  `json:"finish,omitempty" enum:"gypsum_board,plaster,wood,tile,metal,none,unknown" doc:"Default unknown."`
	Painted   string  `json:"painted,omitempty" enum:"yes,no,unknown" doc:"Default unknown."`
	Textured  string  `json:"textured,omitempty" enum:"yes,no,unknown" doc:"Default unknown."`
	MayCut    string  `json:"may_cut,omitempty" enum:"yes,no,ask" doc:"Overrules what follows from kind and structure."`
	CarriedBy string  `json:"carried_by,omitempty" enum:"old_cabinets,ceiling,both,unknown" doc:"For a closed gap: what holds it up."`
	Make      *Make   `json:"make,omitzero" doc:"How it is built."`
	Ends      *Ends   `json:"ends,omitzero" doc:"What stands at its ends; default worked out from the walls."`
	Behind    *Behind `json:"behind,omitzero" doc:"What is known of the ceiling and the wall that it hides."`
	Inside    *Inside `json:"inside,omitzero" doc:"What is known of its contents."`
	Duct      *Duct   `json:"duct,omitzero" doc:"The duct in a duct box."`
}

// Make is how an overhead is built.
type Make struct {
	Lining       Length `json:"lining,omitzero" doc:"Thickness of its board; default 12.5 mm or 1/2 in, an assumption."`
	BottomMember Length `json:"bottom_member,omitzero" doc:"Height of the lowest framing member; default 38 mm or 1 1/2 in, an assumption."`
	Spacing      Length `json:"spacing,omitzero" doc:"Spacing of its framing, centre to centre; default 400 mm, an assumption."`
	HungFrom     string `json:"hung_from,omitempty" enum:"joists,trusses,slab,wall,unknown" doc:"What carries it; default unknown."`
	NewBottom    Length `json:"new_bottom,omitzero" doc:"Thickness of the new board under a cut; default none, since cabinets hide it."`
	LeastStub    Length `json:"least_stub,omitzero" doc:"Least height of what may be left hanging after a cut; default lining plus bottom member."`
	LeastRun     Length `json:"least_run,omitzero" doc:"Least length along the wall of an uncut piece between two cuts; default 150 mm or 6 in, an assumption."`
}

// Ends says what an overhead's two ends meet.
type Ends struct {
	Left  string `json:"left,omitempty" enum:"wall,corner,cabinet,open" doc:"What the left end meets."`
	Right string `json:"right,omitempty" enum:"wall,corner,cabinet,open" doc:"What the right end meets."`
}

// Behind is what is known of the surfaces that an overhead hides.
type Behind struct {
	Ceiling      string `json:"ceiling,omitempty" enum:"continues,missing,unknown" doc:"Whether the ceiling's board continues; default unknown."`
	CeilingLevel Level  `json:"ceiling_level,omitzero" doc:"The ceiling's level behind it, where seen."`
	Wall         string `json:"wall,omitempty" enum:"finished,unfinished,unknown" doc:"Default unknown."`
}

// Inside is what is known of an overhead's contents.
type Inside struct {
	Looked     string            `json:"looked,omitempty" enum:"no,probe_hole,opened" doc:"How far somebody looked; default no."`
	Hints      []string          `json:"hints,omitempty" maxItems:"20" enum:"bath_above,kitchen_above,fixture_below,cable_enters,stack_in_line,light_in_it,register_in_it,sprinkler_head,upper_floor,attic_above,warm_to_touch,sounds_hollow" doc:"Signs of what may be inside."`
	Seen       []SeenSpan        `json:"seen,omitempty" maxItems:"50" doc:"The stretches that were looked into."`
	Services   []Service         `json:"services,omitempty" maxItems:"100" doc:"What was seen in it."`
	Priors     map[string]Amount `json:"priors,omitempty" keys:"^(empty|few_wires|many_wires|pipe_or_duct|immovable)$" doc:"Probabilities of empty, few_wires, many_wires, pipe_or_duct, immovable; they add up to 1, and what is left out is 0."`
	SharesWith string            `json:"shares_with,omitempty" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"The overhead that its contents run on into, so that a hole in one shows the other's."`
	BathAway   Length            `json:"bath_away,omitzero" doc:"Distance to the nearest bath or toilet."`
}

// SeenSpan is a stretch of an overhead that was looked into.
type SeenSpan struct {
	From Length `json:"from" doc:"Left end along the wall."`
	To   Length `json:"to" doc:"Right end along the wall."`
}

// Service is one thing that runs inside an overhead.
type Service struct {
	ID        string `json:"id,omitempty" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Its name, unique among its kind."`
	Kind      string `json:"kind" enum:"wire,cable,pipe,gas,sprinkler,duct,structure" doc:"What it is."`
	From      Length `json:"from" doc:"Left end along the wall."`
	To        Length `json:"to" doc:"Right end along the wall."`
	Underside Level  `json:"underside" doc:"Its lowest level."`
	Clearance Length `json:"clearance,omitzero" doc:"What must stay free around it; default 0."`
	Movable   string `json:"movable,omitempty" enum:"easily,with_work,no,unknown" doc:"Default unknown."`
	Live      *bool  `json:"live,omitzero" nullable:"false" doc:"False only where it was proved dead; default true."`
}

// Duct is what is known of the duct in a duct box.
type Duct struct {
	Diameter Length   `json:"diameter,omitzero" doc:"Inside diameter."`
	Length   Length   `json:"length,omitzero" doc:"Length of the run."`
	Bends    []Amount `json:"bends,omitempty" maxItems:"20" doc:"Angles in degrees."`
	Material string   `json:"material,omitempty" enum:"steel,aluminium,flexible,plastic,unknown" doc:"Default unknown."`
	Exits    string   `json:"exits,omitempty" enum:"roof,wall,attic,unknown" doc:"Where it leaves the house; default unknown."`
}
