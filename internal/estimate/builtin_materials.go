package estimate

// materials are what one unit of each work costs beside its hours: what is built
// in, with what is wasted of it, and what is bought or paid by the piece. From
// memory.
var materials = []Builtin{
	{"material.frame_refit", "m", 1.5 * one, 3 * one, 6 * one},
	{"material.hangers", "piece", 0.3 * one, 0.6 * one, 1.5 * one},
	{"material.board_on", "m2", 6 * one, 9 * one, 14 * one},
	{"material.ceiling_board", "m2", 7 * one, 10 * one, 16 * one},
	{"material.patch", "m2", 2 * one, 4 * one, 7 * one},
	{"material.paint", "m2", 1.2 * one, 2 * one, 3.5 * one},
	{"material.waste", "l", 0.08 * one, 0.15 * one, 0.3 * one},
	{"material.waste_mass", "kg", 0.1 * one, 0.2 * one, 0.35 * one},
	{"material.reroute_wire", "m", 2 * one, 4 * one, 8 * one},
	{"material.reroute_pipe", "m", 8 * one, 15 * one, 30 * one},
	{"material.reroute_duct", "m", 14 * one, 24 * one, 45 * one},
	{"material.backing_board", "m2", 12 * one, 18 * one, 28 * one},
	{"material.closing_panel", "m2", 50 * one, 85 * one, 150 * one},
	{"material.filler", "m", 12 * one, 20 * one, 35 * one},
	{"material.taller_front", "m2", 90 * one, 160 * one, 300 * one},
	{"material.shorter_front", "m2", 60 * one, 130 * one, 260 * one},
	{"material.exchange_order", "piece", 0, 15 * one, 50 * one},
	{"material.close_again", "m2", 8 * one, 12 * one, 18 * one},
	{"material.probe", "piece", 25 * one, 40 * one, 75 * one},
	{"material.remeasure", "piece", 15 * one, 25 * one, 50 * one},
}
