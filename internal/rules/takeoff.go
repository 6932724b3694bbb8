package rules

// takeoffRules are the sizes and weights that quantities of work are reckoned with
// and nobody measures in a kitchen.
var takeoffRules = []Rule{
	{Code: "assume.takeoff.spacing", Status: CommonPractice, Source: practice, Says: "The framing of overheads is taken to stand {value} apart, centre to centre."},
	{Code: "assume.takeoff.members", Status: LookedUp, Source: "a carpentry textbook of 2022, figure 11-32 (seen in an extract)",
		Says: "An overhead is taken to have {value} members along its length: at the wall, at the ceiling and at the lower front edge."},
	{Code: "assume.takeoff.band", Status: CommonPractice, Source: practice, Says: "Along a cut or an old joint a band of {value} is filled and sanded."},
	{Code: "assume.takeoff.ceiling_blend", Status: CommonPractice, Source: practice, Says: "The ceiling is painted {value} beyond the edge of what came down."},
	{Code: "assume.takeoff.backing_width", Status: CommonPractice, Source: practice, Says: "The board behind a rail is taken to be {value} high."},
	{Code: "assume.takeoff.most_filler", Status: CommonPractice, Source: practice, Says: "A gap of up to {value} is closed by a strip, a wider one by a panel."},
	{Code: "assume.takeoff.duct_move", Status: CommonPractice, Source: practice, Says: "A duct that moves is taken to go {value} aside, beside its way up."},
	{Code: "assume.takeoff.few_wires", Status: CommonPractice, Source: practice, Says: "A few wires are taken to be {value}."},
	{Code: "assume.takeoff.many_wires", Status: CommonPractice, Source: practice, Says: "Many wires are taken to be {value}."},
	{Code: "assume.takeoff.gypsum_density", Status: LookedUp, Source: "57 lb for a sheet of 4 by 8 ft, 1/2 in thick (seen on a trade page)",
		Says: "Gypsum board, and board of which nobody said what it is, is taken to weigh {value} kg a cubic metre."},
	{Code: "assume.takeoff.plaster_density", Status: FromMemory, Source: memory, Says: "Plaster is taken to weigh {value} kg a cubic metre."},
	{Code: "assume.takeoff.tile_density", Status: FromMemory, Source: memory, Says: "Tile is taken to weigh {value} kg a cubic metre."},
	{Code: "assume.takeoff.metal_density", Status: FromMemory, Source: memory,
		Says: "A metal lining is taken to weigh {value} kg for each cubic metre that it takes with its grid."},
	{Code: "assume.takeoff.wood_density", Status: FromMemory, Source: memory, Says: "Wood is taken to weigh {value} kg a cubic metre."},
	{Code: "assume.takeoff.solid_density", Status: FromMemory, Source: memory, Says: "What is solid is taken to weigh {value} kg a cubic metre."},
	{Code: "assume.takeoff.board_bulking", Status: LookedUp, Source: "400 lb to the cubic yard of loose gypsum board in a US study of 1995, 500 in a table of 1994 (seen in copies)",
		Says: "Board is taken to fill {value} times its own volume once it is broken."},
	{Code: "assume.takeoff.frame_bulking", Status: LookedUp, Source: "267 lb to the cubic yard of loose wood in a US study of 1995, 300 in a table of 1994 (seen in copies)",
		Says: "Framing is taken to fill {value} times its own volume once it is cut up."},
	{Code: "assume.takeoff.solid_bulking", Status: FromMemory, Source: memory, Says: "What is solid is taken to fill {value} times its own volume once it is broken."},
	{Code: "assume.takeoff.narrow_gap", Status: CommonPractice, Source: practice, Says: "An open gap over cabinets below {value} is taken to be too narrow to clean."},
	{Code: "assume.takeoff.remeasured_right", Status: FromMemory, Source: memory,
		Says: "A ceiling that is measured again with care is taken to tell rightly, {value} of the time, whether a row fits."},
}
