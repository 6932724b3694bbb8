package estimate

// worths are what it is worth to the client to be rid of a sight that nobody likes
// to look at and dust: a guess, which only the client can replace. A narrow gap over
// cabinets is closed as a rule (common practice, no source), so being rid of it must
// be worth more than a closing panel and its strip along the ceiling. From memory.
var worths = []Builtin{
	{"worth.open_gap", "m", 80 * one, 120 * one, 200 * one},
	{"worth.stray_overhead", "m", 10 * one, 25 * one, 60 * one},
}
