package rules

// fillRules are what can be wrong with what is asked of layouts, and the values that nobody gave for them.
var fillRules = []Rule{
	{Code: "fill.wall.twice", Status: Own, Source: ownRule, Says: "This wall is named already."},
	{Code: "fill.kind.twice", Status: Own, Source: ownRule, Says: "This kind is named already."},
	{Code: "fill.kind.not_made", Status: Own, Source: ownRule, Says: "The system makes no cabinets of this kind."},
	{Code: "fill.kind.no_widths", Status: Own, Source: ownRule,
		Says: "The system does not say how wide its cabinets of this kind are, so none can be proposed: give their widths, or leave the kind out."},
	{Code: "fill.equal.twice", Status: Own, Source: ownRule, Says: "These gaps are named already."},
	{Code: "fill.price.off_list", Status: Own, Source: ownRule, Says: "The system makes no cabinets of this size, so none are proposed."},
	{Code: "fill.price.twice", Status: Own, Source: ownRule, Says: "Another price is for the same size."},
	{Code: "fill.length.not_positive", Status: Own, Source: impossible, Says: "This length must be more than 0."},
	{Code: "fill.length.negative", Status: Own, Source: impossible, Says: "This length must not be negative."},
	{Code: "fill.amount.syntax", Status: Own, Source: ownRule, Says: "This is not a decimal number of ordinary length."},
	{Code: "fill.amount.negative", Status: Own, Source: ownRule, Says: "This amount must not be negative."},
	{Code: "fill.amount.too_fine", Status: Own, Source: ownRule, Says: "This is finer than it is reckoned with: at most {places} decimal places."},
	{Code: "fill.amount.too_large", Status: Own, Source: ownRule, Says: "No cabinet and nothing beside it is worth more than 1000000000 of the currency."},

	{Code: "assume.fill.least_filler", Status: CommonPractice, Source: practice, Says: "Fillers are taken to be {value} wide at the least, or they cannot be cut and fixed."},
	{Code: "assume.fill.corner_filler", Status: CommonPractice, Source: practice,
		Says: "In inside corners {value} is taken to stay free beside the run around the corner, for doors and pulls."},
	{Code: "assume.fill.panel_thickness", Status: Own, Source: ownRule, Says: "Cabinets' sides are taken to be finished: the panel on a side that shows is {value} thick."},
	{Code: "assume.fill.least_open", Status: CommonPractice, Source: practice, Says: "A stretch that is left open is taken to be {value} wide at the least, so that the wall in it can be finished."},
	{Code: "assume.fill.most_tall", Status: CommonPractice, Source: practice, Says: "At most {value} tall cabinets are proposed."},
	{Code: "assume.fill.cabinet", Status: FromMemory, Source: "from memory", Says: "Each cabinet is reckoned at {value}, whatever its size."},
	{Code: "assume.fill.filler", Status: FromMemory, Source: "from memory", Says: "Each filler is reckoned at {value}."},
	{Code: "assume.fill.filler_per_mm", Status: FromMemory, Source: "from memory", Says: "A millimetre of filler is reckoned at {value}."},
	{Code: "assume.fill.open_per_mm", Status: FromMemory, Source: "from memory", Says: "A millimetre left open is reckoned at {value}."},
	{Code: "assume.fill.panel", Status: FromMemory, Source: "from memory", Says: "Each panel on a side that shows is reckoned at {value}."},
	{Code: "assume.fill.height_change", Status: FromMemory, Source: "from memory", Says: "Each change of height between neighbours is reckoned at {value}."},
	{Code: "assume.fill.base_line_miss", Status: FromMemory, Source: "from memory", Says: "Each joint of the wall row that meets no edge below is reckoned at {value}."},
	{Code: "assume.fill.symmetry", Status: FromMemory, Source: "from memory", Says: "Equal neighbours at a window or a hood are taken to be worth {value}."},
	{Code: "assume.fill.duct_pair", Status: FromMemory, Source: "from memory", Says: "Equal neighbours at a duct box are taken to be worth {value}."},
	{Code: "assume.fill.counter_per_mm", Status: FromMemory, Source: "from memory", Says: "A millimetre of counter is taken to be worth {value}."},

	{Code: "not_assessed.no_widths", Status: Own, Source: ownRule, Says: "The system does not say how wide its cabinets of this kind are, so none are proposed."},
	{Code: "not_assessed.not_filled", Status: Own, Source: ownRule, Says: "This is about cabinets of a kind that is not to be proposed, so nothing comes of it."},
}
