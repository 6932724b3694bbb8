package takeoff

import "slices"

// Work is a kind of work; its rates and its words go by its code.
type Work string

// Kinds of work, with the unit that each is measured in.
const (
	BoardOff      Work = "board_off"      // m2: lining taken off, by face, returns included
	FrameOff      Work = "frame_off"      // m: framing taken out
	Cut           Work = "cut"            // m: cut along a line, returns included
	FrameRefit    Work = "frame_refit"    // m: bottom member cut free and refitted higher; framing of a new box
	Hangers       Work = "hangers"        // pieces: hangers shortened
	BoardOn       Work = "board_on"       // m2: new board, returns included
	CeilingBoard  Work = "ceiling_board"  // m2: ceiling boarded where there was none behind
	Patch         Work = "patch"          // m2: filled and made good
	Paint         Work = "paint"          // m2: painted, with the blend to the next corner
	Waste         Work = "waste"          // l: debris, loose
	WasteMass     Work = "waste_mass"     // kg: debris, for who carries it
	RerouteWire   Work = "reroute_wire"   // m
	ReroutePipe   Work = "reroute_pipe"   // m
	RerouteDuct   Work = "reroute_duct"   // m
	BackingBoard  Work = "backing_board"  // m2: board behind the rail where services went into the wall
	ClosingPanel  Work = "closing_panel"  // m2: panel that closes the gap over the cabinets
	Filler        Work = "filler"         // m: strip scribed to the ceiling
	TallerFront   Work = "taller_front"   // m2: front that taller cabinets have more
	ShorterFront  Work = "shorter_front"  // m2: front that shorter cabinets have less
	ExchangeOrder Work = "exchange_order" // pieces: planned cabinets exchanged for another height
	CloseAgain    Work = "close_again"    // m2: opened for nothing and closed again
	Probe         Work = "probe"          // pieces: probe holes, made good
	Remeasure     Work = "remeasure"      // pieces: a ceiling measured again
	LowerRow      Work = "lower_row"      // pieces: legs wound in, under one cabinet
)

// Works are all kinds of work, in the order in which items stand.
func Works() []Work { return slices.Clone(works) }

var works = []Work{
	BoardOff, FrameOff, Cut, FrameRefit, Hangers, BoardOn, CeilingBoard, Patch, Paint, Waste, WasteMass,
	RerouteWire, ReroutePipe, RerouteDuct, BackingBoard, ClosingPanel, Filler,
	TallerFront, ShorterFront, ExchangeOrder, CloseAgain, Probe, Remeasure, LowerRow,
}

// Unit is the unit that a kind of work is measured in.
func (w Work) Unit() string {
	switch w {
	case FrameOff, Cut, FrameRefit, RerouteWire, ReroutePipe, RerouteDuct, Filler:
		return "m"
	case Hangers, ExchangeOrder, Probe, Remeasure, LowerRow:
		return "1"
	case Waste:
		return "l"
	case WasteMass:
		return "kg"
	default:
		return "m2"
	}
}

// pieces is an item of work that is counted: probe holes, ceilings to measure
// again, cabinets to lower.
func pieces(w Work, pointer string, count int, bare bool) Item {
	a := account{bare: bare}
	a.add(a.number("count", count))
	out, _ := a.item(w, pointer)
	return out
}
