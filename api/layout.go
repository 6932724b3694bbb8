package api

// LayoutRequest is the body of /v1/layouts: a request, and what its walls are to be
// filled with.
type LayoutRequest struct {
	Request
	Fill *Fill `json:"fill,omitzero" doc:"What is to be proposed for the walls, and by which worths; all of it has defaults."`
}

// Fill says what is to be proposed for the walls.
type Fill struct {
	Walls        []string     `json:"walls,omitempty" minItems:"1" maxItems:"50" pattern:"^[A-Za-z0-9._-]{1,40}$" doc:"Walls to fill; default all. What is planned on others stays."`
	Kinds        []string     `json:"kinds,omitempty" minItems:"1" maxItems:"3" enum:"wall,tall,base" doc:"Kinds to propose; default all that the system makes. Cabinets of other kinds stay as planned."`
	Best         int          `json:"best,omitempty" minimum:"1" maximum:"20" doc:"How many different layouts are answered at most; default 3."`
	LeastFiller  Length       `json:"least_filler,omitzero" doc:"A filler is at least this wide; default 20 mm or 3/4 in, an assumption."`
	WallFiller   Length       `json:"wall_filler,omitzero" doc:"Least filler at a side wall, scribed to it; default least_filler."`
	WallEnds     string       `json:"wall_ends,omitempty" enum:"as_surveyed,side_wall" doc:"What stands at ends of walls that join no other: as_surveyed, a side wall only where an overhead's ends tell of one (default, an assumption), or side_wall at all of them."`
	CornerFiller Length       `json:"corner_filler,omitzero" doc:"Least filler at an inside corner, so that fronts and pulls clear the run around it; default 60 mm or 2 1/4 in, an assumption."`
	Panel        Length       `json:"panel,omitzero" doc:"Thickness of the panel on a side that shows; default 0, sides being finished: an assumption."`
	LeastOpen    Length       `json:"least_open,omitzero" doc:"A stretch that is left open beside a new cabinet is at least this wide, so that the wall in it can be finished; default 150 mm or 6 in, an assumption."`
	Closed       bool         `json:"closed,omitzero" doc:"Whether rows may have no holes; default they may, at what open_per_mm costs."`
	MostTall     int          `json:"most_tall,omitempty" minimum:"1" maximum:"4" doc:"How many tall cabinets are proposed at most for the room; default 2, an assumption. None are where kinds leaves them out."`
	EqualBeside  []string     `json:"equal_beside,omitempty" maxItems:"3" enum:"window,hood,duct_box" doc:"Gaps whose two neighbours in the wall row must be equal in width and height; at others that is a wish by its weight."`
	Prices       []SizePrice  `json:"prices,omitempty" maxItems:"500" doc:"What cabinets of some sizes cost, in place of the weight cabinet, and what is preferred; each size once."`
	Weights      *FillWeights `json:"weights,omitzero" doc:"What is wanted and not wanted, in money."`
	Assess       bool         `json:"assess,omitzero" doc:"Whether the answer also holds the whole assessment of the best layout: plan, decisions and estimate in one call."`
}

// SizePrice is what cabinets of a size cost and are preferred by.
type SizePrice struct {
	Kind   string `json:"kind" enum:"wall,tall,base" doc:"The cabinets' kind."`
	Width  Length `json:"width" doc:"Their width; of corner cabinets, along the wall that they stand on."`
	Height Length `json:"height,omitzero" doc:"Their height; default every height."`
	Price  Amount `json:"price,omitzero" doc:"What one costs; default the weight cabinet."`
	Prefer Amount `json:"prefer,omitzero" doc:"What it is worth that one has this size; default 0."`
}

// FillWeights are what things along a run are worth, each in the request's currency.
type FillWeights struct {
	Cabinet      Amount `json:"cabinet,omitzero" doc:"Each cabinet; default 40 euros, an assumption."`
	Filler       Amount `json:"filler,omitzero" doc:"Each filler; default 15 euros, an assumption."`
	FillerPerMm  Amount `json:"filler_per_mm,omitzero" doc:"A millimetre of filler; default 0.30 euros, an assumption. Where it is no dearer than a millimetre left open, fillers get wide."`
	OpenPerMm    Amount `json:"open_per_mm,omitzero" doc:"A millimetre left open where something might stand; default 0.10 euros, an assumption."`
	Panel        Amount `json:"panel,omitzero" doc:"Each panel on a side that shows; default 30 euros, an assumption, or nothing where panels have no thickness."`
	HeightChange Amount `json:"height_change,omitzero" doc:"Each change of height between neighbours; default 15 euros, an assumption."`
	BaseLineMiss Amount `json:"base_line_miss,omitzero" doc:"Each joint of the wall row that meets no edge below; default 10 euros, an assumption."`
	Symmetry     Amount `json:"symmetry,omitzero" doc:"What equal neighbours at a window or a hood are worth; default 20 euros, an assumption."`
	DuctPair     Amount `json:"duct_pair,omitzero" doc:"What equal neighbours at a duct box are worth; default 100 euros, an assumption."`
	CounterPerMm Amount `json:"counter_per_mm,omitzero" doc:"A millimetre of counter over base cabinets, which tall ones take away; default 0.15 euros, an assumption."`
}

// LayoutAnswer is the answer of /v1/layouts.
type LayoutAnswer struct {
	Edition     string           `json:"edition" doc:"The rules, systems and rates that made this answer."`
	Layouts     []Layout         `json:"layouts" doc:"The best layouts, the best first; none behind a gate, unless what was chosen leaves no other."`
	Once        *Layout          `json:"once,omitzero" doc:"The best layout once the gates that somebody can open are open; absent where that is the first one."`
	Overheads   []LayoutOverhead `json:"overheads" doc:"For each overhead or part_of group that matters to the rows, the best layout for each way to treat it."`
	Relax       []Relax          `json:"relax" doc:"What would have to be given up, where what is asked for cannot be had."`
	Findings    []Finding        `json:"findings" doc:"What was noticed about the survey, the plan and the search."`
	Questions   []Question       `json:"questions" doc:"What is unknown and matters."`
	Cautions    []Caution        `json:"cautions" doc:"Hazards, and who may deal with them."`
	Assumptions []Assumption     `json:"assumptions" doc:"What the answer rests on that nobody gave."`
	NotAssessed []NotAssessed    `json:"not_assessed" doc:"What could not be computed, or was not used."`
	Assessment  *Assessment      `json:"assessment,omitzero" doc:"The best layout assessed; present where fill.assess asks for it and there is a layout."`
}

// Layout is one way to fill the walls. Its choices, cabinets and fillers can be
// pasted into a request as they are.
type Layout struct {
	Rank     int               `json:"rank" doc:"1 is the best."`
	Value    LayoutValue       `json:"value" doc:"What it is worth."`
	Proven   bool              `json:"proven" doc:"Whether every search was finished: for each sky that the overheads may leave, no way to fill a row is worth more, before options are priced and but for the lines between rows, which are met in turns."`
	Datum    Datum             `json:"datum" doc:"The datum of the first level group, which its own cabinets produce."`
	Datums   []Datum           `json:"datums" doc:"One datum for each level group."`
	Assumed  bool              `json:"assumed" doc:"Whether some new cabinet reaches up to what nobody has seen behind an overhead."`
	Hindered bool              `json:"hindered" doc:"Whether something then does not fit or cannot be used: a cabinet that stays, a front, or hooking a cabinet on. Only where nothing else was found for these choices."`
	Choices  map[string]Choice `json:"choices" doc:"What happens to each overhead or part_of group, in the request's own form."`
	Gates    []LayoutGate      `json:"gates" doc:"What must be settled before these choices may be taken."`
	Cabinets []Cabinet         `json:"cabinets" doc:"All cabinets, those that stay first, in the request's own form."`
	Fillers  []Filler          `json:"fillers" doc:"Closing pieces, in the request's own form."`
	Panels   []LayoutPanel     `json:"panels" doc:"Sides that show, with the panels that close them; of thickness 0 where the side itself is finished."`
	Trades   []LayoutTrade     `json:"trades" doc:"What it gains and gives up against the best layout; of the best one, against the next."`
	Because  string            `json:"because" doc:"The same in words; not part of the contract."`
}

// LayoutValue is what a layout is worth, in the request's currency.
type LayoutValue struct {
	Total         string       `json:"total" doc:"The sum of its parts."`
	StorageLitres string       `json:"storage_litres" doc:"Outer volume of its new cabinets."`
	Parts         []LayoutPart `json:"parts" doc:"What the total is made of; what is nothing is left out."`
}

// LayoutPart is a part of a layout's worth.
type LayoutPart struct {
	Name     string `json:"name" enum:"storage,counter,cabinets,preferred,fillers,filler_width,panels,open_width,height_changes,base_line_misses,equal_neighbours,to_ceiling,even_line,overheads" doc:"What it is."`
	Quantity string `json:"quantity" doc:"How many, or how much in unit."`
	Unit     string `json:"unit" enum:"l,mm,1,%" doc:"The unit of quantity."`
	Worth    string `json:"worth" doc:"What it adds to the total; negative where it costs."`
}

// LayoutGate is what must be settled before an overhead may be treated so.
type LayoutGate struct {
	Overhead string            `json:"overhead" doc:"The overhead or part_of group."`
	Code     string            `json:"code" doc:"Stable code."`
	Pointer  string            `json:"pointer" doc:"The member of the request it is about."`
	Forbids  bool              `json:"forbids" doc:"Whether no answer opens it, but at most the licensed trade's work."`
	Says     string            `json:"says" doc:"A sentence for people; not part of the contract."`
	Who      string            `json:"who" doc:"Who may settle it."`
	Params   map[string]string `json:"params" doc:"Values for a translated text."`
}

// LayoutPanel is a panel on a cabinet's side that shows.
type LayoutPanel struct {
	Cabinet   string  `json:"cabinet" doc:"The cabinet's id."`
	Side      string  `json:"side" enum:"left,right" doc:"Which of its sides."`
	Wall      string  `json:"wall" doc:"The wall's id."`
	From      Measure `json:"from" doc:"Left side along the wall."`
	Thickness Measure `json:"thickness" doc:"Its thickness, which it takes up along the wall."`
}

// LayoutTrade is a difference in one part of the worth.
type LayoutTrade struct {
	Name     string `json:"name" doc:"The part."`
	Quantity string `json:"quantity" doc:"How much more, or less where negative, in unit."`
	Unit     string `json:"unit" doc:"The unit of quantity."`
	Worth    string `json:"worth" doc:"What that adds to its total, or takes off it."`
}

// LayoutOverhead is one overhead or part_of group, and the best layout for each way
// to treat it.
type LayoutOverhead struct {
	Overhead string         `json:"overhead" doc:"The overhead or part_of group."`
	Options  []LayoutOption `json:"options" doc:"From the least work to the most."`
}

// LayoutOption is one way to treat an overhead, with the best layout under it.
type LayoutOption struct {
	Option   string       `json:"option" doc:"The option."`
	Possible bool         `json:"possible" doc:"Whether no gate forbids it."`
	Gates    []LayoutGate `json:"gates" doc:"What must be settled before it may be taken."`
	Storage  string       `json:"storage_litres,omitzero" doc:"Outer volume of the layout's new cabinets."`
	Gain     string       `json:"gain,omitzero" doc:"What the layout's cabinets are worth more than those of the best one with the overhead kept; absent where it cannot be kept."`
	Cost     string       `json:"cost,omitzero" doc:"What the layout's choices cost, expected, less what they are worth by themselves."`
	Total    string       `json:"total,omitzero" doc:"The layout's total."`
	Layout   *Layout      `json:"layout,omitzero" doc:"The layout; its rank is its place among this overhead's options by total. Absent where nobody can do it, or nothing new fits then."`
}

// Relax is one thing that a request asks for and that cannot be had together with
// the rest.
type Relax struct {
	Code    string            `json:"code" doc:"Stable code."`
	Pointer string            `json:"pointer" doc:"The member of the request to change."`
	Alone   bool              `json:"alone" doc:"Whether giving this up is enough for its row, all else staying as it is; else all of them that name the same row have to be given up."`
	Wall    string            `json:"wall" doc:"The wall on which it is in the way."`
	Kind    string            `json:"kind" enum:"wall,tall,base" doc:"The row on that wall."`
	Says    string            `json:"says" doc:"A sentence for people; not part of the contract."`
	Params  map[string]string `json:"params" doc:"Values for a translated text."`
}
