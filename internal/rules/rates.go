package rules

// memory is the source of what was recalled and not looked up.
const memory = "from memory"

// rateRules are the rates of the built-in book, each with what one unit of it is.
// Their values are low / likely / high: euros of 2026 in the book, the request's
// currency in an answer.
var rateRules = []Rule{
	rate("wage.helper", "An hour of a helper who strips out and carries, without tax"),
	rate("wage.carpenter", "An hour of a carpenter, without tax"),
	rate("wage.drywaller", "An hour of a drywaller, without tax"),
	rate("wage.painter", "An hour of a painter, without tax"),
	rate("wage.electrician", "An hour of a licensed electrician, without tax"),
	rate("wage.plumber", "An hour of a licensed plumber, without tax"),
	rate("wage.duct_fitter", "An hour of a duct fitter, without tax"),
	rate("wage.cabinet_fitter", "An hour of a cabinet fitter, without tax"),

	rate("hours.board_off", "Hours of a helper to take 1 m² of lining off"),
	rate("hours.frame_off", "Hours of a carpenter to take 1 m of framing out"),
	rate("hours.cut", "Hours of a drywaller to cut 1 m of lining along a line"),
	rate("hours.frame_refit", "Hours of a carpenter to cut 1 m of bottom member free and refit it higher"),
	rate("hours.hangers", "Hours of a carpenter to shorten 1 hanger"),
	rate("hours.board_on", "Hours of a drywaller to put 1 m² of new board on, edges and joints filled"),
	rate("hours.ceiling_board", "Hours of a drywaller to board 1 m² of ceiling, joints filled"),
	rate("hours.patch", "Hours of a drywaller to fill 1 m² and make it good"),
	rate("hours.paint", "Hours of a painter to paint 1 m², masking and primer included"),
	rate("hours.waste_mass", "Hours of a helper to bag and carry out 1 kg of debris"),
	rate("hours.reroute_wire", "Hours of an electrician to reroute 1 m of wire or cable"),
	rate("hours.reroute_pipe", "Hours of a plumber to reroute 1 m of pipe"),
	rate("hours.reroute_duct", "Hours of a duct fitter to reroute 1 m of duct"),
	rate("hours.backing_board", "Hours of a carpenter to let 1 m² of backing board into the wall"),
	rate("hours.closing_panel", "Hours of a cabinet fitter to fit 1 m² of closing panel"),
	rate("hours.filler", "Hours of a cabinet fitter to scribe and fit 1 m of filler"),
	rate("hours.close_again", "Hours of a drywaller to close 1 m² again that was opened for nothing"),
	rate("hours.lower_row", "Hours of a cabinet fitter to wind the legs under 1 cabinet in"),

	rate("material.frame_refit", "What goes into 1 m of bottom member refitted, without tax"),
	rate("material.hangers", "What goes into 1 hanger shortened, without tax"),
	rate("material.board_on", "What goes into 1 m² of new board, with its waste, without tax"),
	rate("material.ceiling_board", "What goes into 1 m² of ceiling boarded, with its waste, without tax"),
	rate("material.patch", "What goes into 1 m² filled and made good, without tax"),
	rate("material.paint", "Paint and primer on 1 m², without tax"),
	rate("material.waste", "Taking away 1 l of loose debris, without tax"),
	rate("material.waste_mass", "Tipping 1 kg of debris, without tax"),
	rate("material.reroute_wire", "What goes into 1 m of wire or cable rerouted, without tax"),
	rate("material.reroute_pipe", "What goes into 1 m of pipe rerouted, without tax"),
	rate("material.reroute_duct", "What goes into 1 m of duct rerouted, without tax"),
	rate("material.backing_board", "What goes into 1 m² of backing board, without tax"),
	rate("material.closing_panel", "1 m² of panel finished like the cabinets, without tax"),
	rate("material.filler", "1 m of filler finished like the cabinets, without tax"),
	rate("material.taller_front", "What taller cabinets cost more for 1 m² more of front, without tax"),
	rate("material.shorter_front", "What shorter cabinets cost less for 1 m² less of front, without tax"),
	rate("material.exchange_order", "Exchanging 1 planned cabinet for another height in the order, without tax"),
	rate("material.close_again", "What goes into 1 m² closed again, without tax"),
	rate("material.probe", "1 probe hole: looked into and made good, without tax"),
	rate("material.remeasure", "Measuring 1 ceiling again, without tax"),

	rate("setup.site", "Setting up and protecting the room, once for all works that make dust, without tax"),
	rate("call_out.helper", "What a helper charges for coming, without tax"),
	rate("call_out.carpenter", "What a carpenter charges for coming, without tax"),
	rate("call_out.drywaller", "What a drywaller charges for coming, without tax"),
	rate("call_out.painter", "What a painter charges for coming, without tax"),
	rate("call_out.electrician", "What an electrician charges for coming, without tax"),
	rate("call_out.plumber", "What a plumber charges for coming, without tax"),
	rate("call_out.duct_fitter", "What a duct fitter charges for coming, without tax"),
	rate("call_out.cabinet_fitter", "What the cabinet fitter charges for coming beside the kitchen, without tax"),
	rate("call_out.waste", "What fetching debris costs whatever its amount, without tax"),
	rate("minimum.helper", "The least that a helper's hours come to, without tax"),
	rate("minimum.carpenter", "The least that a carpenter's hours come to, without tax"),
	rate("minimum.drywaller", "The least that a drywaller's hours come to, without tax"),
	rate("minimum.painter", "The least that a painter's hours come to, without tax"),
	rate("minimum.electrician", "The least that an electrician's hours come to, without tax"),
	rate("minimum.plumber", "The least that a plumber's hours come to, without tax"),
	rate("minimum.duct_fitter", "The least that a duct fitter's hours come to, without tax"),
	rate("minimum.cabinet_fitter", "The least that the cabinet fitter's hours come to beside the kitchen, without tax"),

	rate("worth.open_gap", "What it is worth to the client not to have 1 m of open gap above the cabinets"),
	rate("worth.stray_overhead", "What it is worth to the client not to have 1 m of overhead left where no cabinet stands under it"),
}

// rate is the entry of a rate of the built-in book.
func rate(code, says string) Rule {
	return Rule{Code: code, Status: FromMemory, Source: memory, Says: says + "; low / likely / high: {value}."}
}

// workRules are what the lines of an estimate are for.
var workRules = []Rule{
	work("work.board_off", "Lining taken off, by face, returns included."),
	work("work.frame_off", "Framing taken out."),
	work("work.cut", "Cut along the line, returns included."),
	work("work.frame_refit", "Bottom member cut free and refitted higher."),
	work("work.hangers", "Hangers shortened."),
	work("work.board_on", "New board put on, returns included."),
	work("work.ceiling_board", "Ceiling boarded where there was none behind."),
	work("work.patch", "Filled and made good."),
	work("work.paint", "Painted, with the blend to the next corner."),
	work("work.waste", "Debris taken away, by volume."),
	work("work.waste_mass", "Debris carried out and tipped, by mass."),
	work("work.reroute_wire", "Wires and cables rerouted."),
	work("work.reroute_pipe", "Pipes rerouted."),
	work("work.reroute_duct", "Duct rerouted."),
	work("work.backing_board", "Backing board behind the rail, where services went into the wall."),
	work("work.closing_panel", "Panel that closes the gap above the cabinets."),
	work("work.filler", "Filler scribed to the ceiling."),
	work("work.taller_front", "What taller cabinets cost more."),
	work("work.shorter_front", "What shorter cabinets cost less."),
	work("work.exchange_order", "Planned cabinets exchanged for another height."),
	work("work.close_again", "Opened for nothing and closed again."),
	work("work.probe", "Probe holes, made good."),
	work("work.remeasure", "Ceiling measured again."),
	work("work.lower_row", "Row lowered on its legs."),
	work("work.setup", "Room set up and protected, once for all works."),
	work("work.call_out", "Coming to the site, once for all works of the trade."),
	work("work.minimum", "What the trade's hours fall short of the least that it comes for."),
	work("work.allowance", "An allowance for what nobody has seen: its chance times what it then costs."),
}

func work(code, says string) Rule {
	return Rule{Code: code, Status: Own, Source: ownRule, Says: says}
}
