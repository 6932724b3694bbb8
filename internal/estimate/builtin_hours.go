package estimate

// hours are what one unit of each work takes one person. The works are small and
// overhead, from a platform, in a room that is lived in: more than what tables for
// whole houses say. From memory.
var hours = []Builtin{
	{"hours.board_off", "m2", 0.15 * one, 0.25 * one, 0.45 * one},
	{"hours.frame_off", "m", 0.02 * one, 0.04 * one, 0.09 * one},
	{"hours.cut", "m", 0.12 * one, 0.2 * one, 0.4 * one},
	{"hours.frame_refit", "m", 0.25 * one, 0.4 * one, 0.75 * one},
	{"hours.hangers", "piece", 0.08 * one, 0.12 * one, 0.25 * one},
	{"hours.board_on", "m2", 0.6 * one, 0.9 * one, 1.5 * one},
	{"hours.ceiling_board", "m2", 0.6 * one, 0.9 * one, 1.4 * one},
	{"hours.patch", "m2", 0.5 * one, 0.8 * one, 1.4 * one},
	{"hours.paint", "m2", 0.12 * one, 0.2 * one, 0.35 * one},
	{"hours.waste_mass", "kg", 0.002 * one, 0.004 * one, 0.01 * one},
	{"hours.reroute_wire", "m", 0.3 * one, 0.5 * one, 1 * one},
	{"hours.reroute_pipe", "m", 0.5 * one, 0.9 * one, 1.8 * one},
	{"hours.reroute_duct", "m", 0.5 * one, 0.8 * one, 1.5 * one},
	{"hours.backing_board", "m2", 0.4 * one, 0.6 * one, 1 * one},
	{"hours.closing_panel", "m2", 0.8 * one, 1.2 * one, 2 * one},
	{"hours.filler", "m", 0.3 * one, 0.5 * one, 0.9 * one},
	{"hours.close_again", "m2", 1 * one, 1.5 * one, 2.4 * one},
	{"hours.lower_row", "piece", 0.05 * one, 0.1 * one, 0.2 * one},
}
