package estimate

// charges are what trades ask beside their hours: for coming at all, and the least
// that they come for. The cabinet fitter comes for the kitchen anyhow, and the
// helper with whoever needs one. From memory.
var charges = []Builtin{
	{"setup.site", "room", 40 * one, 70 * one, 130 * one},
	{"call_out.helper", "visit", 0, 0, 0},
	{"call_out.carpenter", "visit", 25 * one, 40 * one, 70 * one},
	{"call_out.drywaller", "visit", 30 * one, 45 * one, 75 * one},
	{"call_out.painter", "visit", 25 * one, 40 * one, 70 * one},
	{"call_out.electrician", "visit", 45 * one, 65 * one, 110 * one},
	{"call_out.plumber", "visit", 50 * one, 70 * one, 120 * one},
	{"call_out.duct_fitter", "visit", 40 * one, 60 * one, 100 * one},
	{"call_out.cabinet_fitter", "visit", 0, 0, 0},
	{"call_out.waste", "visit", 25 * one, 45 * one, 80 * one},
	{"minimum.helper", "visit", 0, 0, 0},
	{"minimum.carpenter", "visit", 60 * one, 90 * one, 150 * one},
	{"minimum.drywaller", "visit", 60 * one, 90 * one, 150 * one},
	{"minimum.painter", "visit", 60 * one, 95 * one, 160 * one},
	{"minimum.electrician", "visit", 55 * one, 75 * one, 130 * one},
	{"minimum.plumber", "visit", 60 * one, 85 * one, 140 * one},
	{"minimum.duct_fitter", "visit", 60 * one, 90 * one, 150 * one},
	{"minimum.cabinet_fitter", "visit", 0, 0, 0},
}
