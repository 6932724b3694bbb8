package rules

// planRules are what can be wrong with the rest of a request: what is asked for, by which names, in which system.
var planRules = []Rule{
	// The request as a whole.
	{Code: "request.member.missing", Status: Own, Source: ownRule, Says: "This is needed and was left out."},
	{Code: "request.member.unknown", Status: Own, Source: ownRule, Says: "Nothing of this name is known here."},
	{Code: "request.value.unknown", Status: Own, Source: ownRule, Says: "This is none of the words that are known here."},
	{Code: "request.tape.not_sensible", Status: CommonPractice, Source: practice, Says: "A tape's marks are more than 0 and at most {most} apart."},
	{Code: "id.duplicate", Status: Own, Source: ownRule, Says: "Another {kind} has this id already."},
	{Code: "ref.unknown", Status: Own, Source: ownRule, Says: "There is no {kind} of this name in the request."},
	{Code: "length.text.syntax", Status: Own, Source: ownRule,
		Says: "This is not written like a length: a number and its unit, such as 803.3 mm, 31 5/8 in or 2' 7 5/8\"."},
	{Code: "length.text.too_fine", Status: Own, Source: ownRule,
		Says: "This is no whole number of nanometres: six places of a millimetre, 1/64 in or a decimal of an inch that comes out even."},
	{Code: "length.value.out_of_range", Status: Own, Source: ownRule,
		Says: "This is more than 100 m either way, or its fraction is not less than one."},

	// What is to be built.
	{Code: "plan.length.not_positive", Status: Own, Source: impossible, Says: "This length must be more than 0."},
	{Code: "plan.length.negative", Status: Own, Source: impossible, Says: "This length must not be negative."},
	{Code: "plan.span.empty", Status: Own, Source: impossible,
		Says: "This stretch ends at {to}, which is not to the right of where it starts, {from}."},
	{Code: "plan.amount.syntax", Status: Own, Source: ownRule, Says: "This is not a decimal number of ordinary length."},
	{Code: "plan.amount.negative", Status: Own, Source: ownRule, Says: "This number must not be negative."},
	{Code: "plan.change.ceiling_meets_floor", Status: Own, Source: impossible,
		Says: "After this change the ceiling is not above the floor at {at}."},
	{Code: "plan.ceiling_change.swallows_overhead", Status: Own, Source: ownRule,
		Says: "At {at} the new ceiling hangs as low as an overhead or lower. Survey the room as it will be: with the new ceiling, and without what vanishes into it."},
	{Code: "plan.floor_change.meets_overhead", Status: Own, Source: impossible,
		Says: "After this change the floor reaches an overhead at {at}."},
	{Code: "plan.datum.off_wall", Status: Own, Source: impossible, Says: "The station {at} is not on this wall, which is {length} long."},
	{Code: "plan.datum.twice", Status: Own, Source: ownRule, Says: "Walls that are levelled together have one datum, and these have one already."},
	{Code: "plan.cooking.off_wall", Status: Own, Source: impossible, Says: "The cooking appliance reaches to {at}, off the wall, which ends at {most}."},
	{Code: "plan.hood.not_a_duct_box", Status: Own, Source: ownRule, Says: "The overhead that this names is not a duct box."},
	{Code: "plan.old.off_wall", Status: Own, Source: impossible, Says: "This old cabinet reaches off its wall, which is {length} long."},

	// Planned cabinets.
	{Code: "plan.cabinet.no_depth", Status: Own, Source: ownRule, Says: "The system makes nothing of this kind, so the cabinet's depth must be given."},
	{Code: "plan.cabinet.no_underside", Status: Own, Source: ownRule, Says: "The system has no row of wall cabinets, so the cabinet's underside or top must be given."},
	{Code: "plan.cabinet.top_and_underside", Status: Own, Source: ownRule, Says: "Give the cabinet's top or its underside; the other follows from its height."},
	{Code: "plan.cabinet.underside_of_standing", Status: Own, Source: ownRule, Says: "A cabinet that stands on the floor is placed by its top, if at all."},
	{Code: "plan.cabinet.under_datum", Status: Own, Source: impossible, Says: "A cabinet {height} high that ends here would reach under the floor."},
	{Code: "plan.cabinet.kind_not_made", Status: Own, Source: ownRule, Says: "The system makes no {kind} cabinets."},
	{Code: "plan.size.off_list", Status: Own, Source: ownRule, Says: "The system does not make {size}; the nearest it makes is {nearest}."},
	{Code: "plan.corner.not_joined", Status: Own, Source: impossible, Says: "This wall does not meet the cabinet's own wall in an inside corner."},
	{Code: "plan.corner.not_in_corner", Status: Own, Source: impossible, Says: "A corner cabinet stands in the corner; this one is {gap} off it."},

	// What limits lowering the rows.
	{Code: "plan.legs.shortest", Status: Own, Source: ownRule, Says: "The rows go down no further than the shortest legs."},
	{Code: "plan.counter.lowest", Status: CommonPractice, Source: practice, Says: "The rows go down no further than the lowest counter that is taken."},
	{Code: "plan.row.not_enough", Status: Own, Source: ownRule, Says: "Going down that far brings no cabinet clear of what is above it."},

	// The cabinet system.
	{Code: "system.id.unknown", Status: Own, Source: ownRule, Says: "There is no built-in system of this id; GET /v1/systems lists them."},
	{Code: "system.length.not_positive", Status: Own, Source: impossible, Says: "This length must be more than 0."},
	{Code: "system.length.negative", Status: Own, Source: impossible, Says: "This length must not be negative."},
	{Code: "system.amount.syntax", Status: Own, Source: ownRule, Says: "This is not a decimal number of ordinary length."},
	{Code: "system.amount.negative", Status: Own, Source: ownRule, Says: "This number must not be negative."},
	{Code: "system.legs.travel_too_long", Status: Own, Source: impossible, Says: "A leg of {legs} cannot get shorter by more than that."},
	{Code: "system.rail.drop_too_long", Status: Own, Source: impossible,
		Says: "The rail's lower edge would be below the lowest cabinet of the system, which is {height} high."},

	// What was decided, and what it is worth.
	{Code: "choices.span.empty", Status: Own, Source: impossible,
		Says: "This stretch ends at {to}, which is not to the right of where it starts, {from}."},
	{Code: "choice.overhead.is_part", Status: Own, Source: ownRule, Says: "This overhead is part of something and is decided with it: use the name of its part_of."},
	{Code: "choice.move.not_a_duct_box", Status: Own, Source: ownRule, Says: "Only a duct box can be moved elsewhere."},
	{Code: "choice.spans.not_open_part", Status: Own, Source: ownRule, Says: "Stretches are named only where part of an overhead is opened."},
	{Code: "choice.span.wrong_wall", Status: Own, Source: ownRule, Says: "No part of this overhead is on this wall."},
	{Code: "choice.span.off_overhead", Status: Own, Source: ownRule, Says: "This stretch does not lie within one part of the overhead."},
	{Code: "money.amount.syntax", Status: Own, Source: ownRule, Says: "This is not a decimal number of ordinary length."},
	{Code: "money.amount.negative", Status: Own, Source: ownRule, Says: "This amount must not be negative."},
	{Code: "money.amount.too_large", Status: Own, Source: ownRule, Says: "No rate, worth or cost is beyond a thousand million of the currency."},
	{Code: "money.rate.out_of_order", Status: Own, Source: ownRule, Says: "A rate's low, likely and high go up in this order."},
}
