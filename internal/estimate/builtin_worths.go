package estimate

// worths are what a sight is worth to the client that nobody likes to look at and
// dust: a guess, which only the client can replace. From memory of what people pay
// to be rid of it.
var worths = []Builtin{
	{"worth.open_gap", "m", 15 * one, 30 * one, 60 * one},
	{"worth.stray_overhead", "m", 10 * one, 25 * one, 60 * one},
}
