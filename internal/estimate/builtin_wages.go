package estimate

// wages are what an hour of each trade is billed at, its tools and small items
// included. The low end is a small firm in the country, the high end a large one
// in a city. From memory.
var wages = []Builtin{
	{"wage.helper", "h", 30 * one, 40 * one, 52 * one},
	{"wage.carpenter", "h", 46 * one, 56 * one, 74 * one},
	{"wage.drywaller", "h", 42 * one, 52 * one, 68 * one},
	{"wage.painter", "h", 38 * one, 48 * one, 62 * one},
	{"wage.electrician", "h", 55 * one, 68 * one, 90 * one},
	{"wage.plumber", "h", 58 * one, 72 * one, 96 * one},
	{"wage.duct_fitter", "h", 52 * one, 64 * one, 86 * one},
	{"wage.cabinet_fitter", "h", 46 * one, 58 * one, 76 * one},
}
