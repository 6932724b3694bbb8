package rules

const guessed = "an estimate from memory; nobody counted houses for it"

// contentsRules are what the odds of an overhead's contents rest on. A factor
// multiplies the chance of its state; then all are brought back to 1 together.
var contentsRules = []Rule{
	{Code: "contents.odds.given", Status: Own, Source: ownRule, Says: "The request gives the odds of what is inside: {value}. They stand for the built-in ones and for all hints."},
	{Code: "not_assessed.priors_shared", Status: Own, Source: ownRule, Says: "These odds differ from those of another overhead with the same contents; the first one's hold for both."},
	{Code: "contents.look.all", Status: Own, Source: ownRule, Says: "All of it was seen, so what is inside is certain: {value}."},

	{Code: "assume.contents.kind_soffit", Status: FromMemory, Source: guessed, Says: "A soffit nobody looked into holds, by chance: {value}."},
	{Code: "assume.contents.kind_closed_gap", Status: FromMemory, Source: guessed, Says: "A closed-off gap nobody looked into holds, by chance: {value}."},
	{Code: "assume.contents.kind_lowered_ceiling", Status: FromMemory, Source: guessed, Says: "A lowered ceiling nobody looked into holds, by chance: {value}."},
	{Code: "assume.contents.kind_beam", Status: FromMemory, Source: guessed, Says: "A beam nobody looked into holds, by chance, often part of the house's structure: {value}."},
	{Code: "assume.contents.kind_framed_beam", Status: FromMemory, Source: guessed, Says: "A beam that is only a framed box holds, by chance: {value}."},
	{Code: "assume.contents.kind_duct_box", Status: FromMemory, Source: guessed, Says: "A duct box nobody looked into holds, by chance: {value}."},

	{Code: "assume.contents.age_old", Status: FromMemory, Source: guessed, Says: "The house is from before 1950, when kitchens were seldom built with soffits: what hangs there was put up to hide something. Factors: {value}."},
	{Code: "assume.contents.age_middle", Status: FromMemory, Source: guessed, Says: "The house is from 1950 to 1989, when many soffits were built for looks; the odds by kind are for such houses. Factors: {value}."},
	{Code: "assume.contents.age_late", Status: FromMemory, Source: guessed, Says: "The house is from 1990 or later, when soffits were built for ducts more than for looks. Factors: {value}."},
	{Code: "assume.contents.age_unknown", Status: FromMemory, Source: guessed, Says: "The year of the house is not known; it is taken to be of the middle age, 1950 to 1989. Factors: {value}."},

	{Code: "assume.contents.hint_bath_above", Status: FromMemory, Source: guessed, Says: "A bath stands above, and its drains and supplies come down somewhere. Factors: {value}."},
	{Code: "assume.contents.hint_kitchen_above", Status: FromMemory, Source: guessed, Says: "Another kitchen stands above, and its drains, supplies and ducts come down somewhere. Factors: {value}."},
	{Code: "assume.contents.hint_upper_floor", Status: FromMemory, Source: guessed, Says: "There is a storey above, which needs wires, pipes and ducts. Factors: {value}."},
	{Code: "assume.contents.hint_attic_above", Status: FromMemory, Source: guessed, Says: "There is an attic above, where things could run more easily. Factors: {value}."},
	{Code: "assume.contents.hint_stack_in_line", Status: FromMemory, Source: guessed, Says: "A vent or waste stack stands in line with it; stacks are hard to move. Factors: {value}."},
	{Code: "assume.contents.hint_fixture_below", Status: FromMemory, Source: guessed, Says: "A fixture stands below, and what serves it may come from above. Factors: {value}."},
	{Code: "assume.contents.hint_cable_enters", Status: FromMemory, Source: guessed, Says: "A cable is seen to go in, so it is hardly empty. Factors: {value}."},
	{Code: "assume.contents.hint_light_in_it", Status: FromMemory, Source: guessed, Says: "A light is built in, so a wire leads there. Factors: {value}."},
	{Code: "assume.contents.hint_register_in_it", Status: FromMemory, Source: guessed, Says: "An air register is built in, so a duct leads there. Factors: {value}."},
	{Code: "assume.contents.hint_sprinkler_head", Status: FromMemory, Source: guessed, Says: "A sprinkler head shows, so its line runs there; only the licensed trade moves it. Factors: {value}."},
	{Code: "assume.contents.hint_warm_to_touch", Status: FromMemory, Source: guessed, Says: "It is warm to the touch, as over a warm pipe or duct. Factors: {value}."},
	{Code: "assume.contents.hint_sounds_hollow", Status: FromMemory, Source: guessed, Says: "It sounds hollow, which says little: most of it is hollow whatever runs there. Factors: {value}."},

	{Code: "assume.contents.near_bath", Status: FromMemory, Source: guessed, Says: "A bath or toilet is near, within 1.5 m. Factors: {value}."},
	{Code: "assume.contents.far_from_bath", Status: FromMemory, Source: guessed, Says: "The nearest bath or toilet is far, more than 4 m away. Factors: {value}."},
	{Code: "assume.contents.near_hood", Status: FromMemory, Source: guessed, Says: "The cooker is near, within 0.6 m along the wall, and its hood's duct may run here. Factors: {value}."},
	{Code: "assume.contents.near_panel", Status: FromMemory, Source: guessed, Says: "The electric panel is near, within 1.5 m along the wall, and its cables may run here. Factors: {value}."},
	{Code: "assume.contents.duct_known", Status: FromMemory, Source: guessed, Says: "A duct is said to run in it. Factors: {value}."},

	{Code: "assume.contents.seen_empty", Status: FromMemory, Source: guessed, Says: "Somebody looked into a part and saw nothing. Factors, from how often things run through and how often they are missed: {value}."},
	{Code: "assume.contents.seen_few_wires", Status: FromMemory, Source: guessed, Says: "Wires were seen in a part, and things mostly run on. Factors for the rest: {value}."},
	{Code: "assume.contents.seen_many_wires", Status: FromMemory, Source: guessed, Says: "Many wires were seen in a part, and things mostly run on. Factors for the rest: {value}."},
	{Code: "assume.contents.seen_pipe_or_duct", Status: FromMemory, Source: guessed, Says: "A pipe or a duct was seen in a part, and things mostly run on. Factors for the rest: {value}."},
	{Code: "assume.contents.seen_immovable", Status: FromMemory, Source: guessed, Says: "Something that cannot be moved was seen in a part, and things mostly run on. Factors for the rest: {value}."},

	{Code: "contents.probe.behind", Status: CommonPractice, Source: practice, Says: "Looking up through a probe hole shows whether the ceiling's board goes on, and what holds there is taken to hold all along."},

	{Code: "assume.behind.soffit", Status: FromMemory, Source: guessed, Says: "Behind a soffit the ceiling's board is missing with a chance of {value}: many were framed before the ceiling was boarded."},
	{Code: "assume.behind.closed_gap", Status: FromMemory, Source: guessed, Says: "Behind a closed-off gap the ceiling's board is missing with a chance of {value}: the gap was closed after the ceiling was done."},
	{Code: "assume.behind.lowered_ceiling", Status: FromMemory, Source: guessed, Says: "Above a lowered ceiling the ceiling's board is missing with a chance of {value}: mostly the old ceiling is still there."},
	{Code: "assume.behind.beam", Status: FromMemory, Source: guessed, Says: "Behind a beam the ceiling's board is missing with a chance of {value}: boards mostly end at beams."},
	{Code: "assume.behind.duct_box", Status: FromMemory, Source: guessed, Says: "Behind a duct box the ceiling's board is missing with a chance of {value}."},
}
