package rules

const (
	impossible = "follows from the geometry of a room"
	din18202   = "DIN 18202, tables 2 and 3 (a guide to what is ordinary; read in copies of the tables)"
	jcgm100    = "JCGM 100:2008, 4.3.7, 5.1.2 and 6.2"
)

// surveyRules are what can be wrong with a survey, and what is odd about one.
var surveyRules = []Rule{
	// Lengths, stations and references.
	{Code: "survey.length.not_positive", Status: Own, Source: impossible, Says: "This length must be more than 0."},
	{Code: "survey.length.negative", Status: Own, Source: impossible, Says: "This length must not be negative."},
	{Code: "survey.span.empty", Status: Own, Source: impossible,
		Says: "This stretch ends at {to}, which is not to the right of where it starts, {from}."},
	{Code: "survey.amount.syntax", Status: Own, Source: ownRule, Says: "This is not a decimal number of ordinary length."},
	{Code: "survey.amount.negative", Status: Own, Source: ownRule, Says: "This number must not be negative."},
	{Code: "survey.local_rules.no_year", Status: Own, Source: ownRule, Says: "An area up to which a cut is minor needs lead_before, the year of the rule that it belongs to."},
	{Code: "survey.amount.too_fine", Status: Own, Source: ownRule, Says: "This is finer than it is reckoned with: at most {places} decimal places."},
	{Code: "survey.amount.too_large", Status: Own, Source: ownRule, Says: "This number is beyond 1000000000."},

	// Readings and laser lines.
	{Code: "survey.laser_height.missing", Status: Own, Source: ownRule,
		Says: "Some levels count from the survey's own zero and others from a laser line: say how high the first line is above that zero."},
	{Code: "survey.laser.first_not_zero", Status: Own, Source: ownRule,
		Says: "The first laser line is the one that the others are measured against, so it is 0 above itself."},
	{Code: "survey.laser.untied", Status: CommonPractice, Source: practice,
		Says: "Nobody has said how high this laser line is over the first one: read both against one mark."},
	{Code: "survey.reading.not_one", Status: Own, Source: ownRule,
		Says: "A level is read in exactly one way: height, up, down or above_floor."},
	{Code: "survey.reading.laser_unused", Status: Own, Source: ownRule,
		Says: "This level counts from no laser line, so it cannot name one; only up and down do."},
	{Code: "survey.reading.on_floor_step", Status: CommonPractice, Source: practice,
		Says: "This was taped from the floor just where the floor steps, at {at}; the lower side is taken."},
	{Code: "survey.floor.above_floor", Status: Own, Source: impossible,
		Says: "The floor's own level cannot be taped from the floor: use height, up or down."},
	{Code: "survey.tolerance.wide", Status: CommonPractice, Source: practice,
		Says: "A doubt of {tolerance} either way is more than a tape and a laser leave; many verdicts will ask for a second reading."},

	// Profiles.
	{Code: "survey.profile.empty", Status: Own, Source: ownRule, Says: "At least one point is needed here."},
	{Code: "survey.profile.unordered", Status: Own, Source: ownRule, Says: "The points go from left to right; this one is to the left of the one before it."},
	{Code: "survey.profile.third_at_station", Status: Own, Source: ownRule,
		Says: "Two points at one station are a step, left side first; a third has no meaning."},
	{Code: "survey.profile.off_wall", Status: Own, Source: impossible, Says: "The station {at} is not on this wall."},
	{Code: "survey.profile.outside_overhead", Status: CommonPractice, Source: practice,
		Says: "This level was read at {at}, beyond the end of the overhead; it still counts for the slope."},
	{Code: "survey.profile.sparse", Status: LookedUp, Source: din18202,
		Says: "No level was read between {from} and {to}, where cabinets come. Over {have} a sag or hump of {usual} is ordinary, and no doubt given here knows of it."},
	{Code: "survey.profile.steep", Status: LookedUp, Source: din18202,
		Says: "Between {from} and {to} the level changes by {have}; {usual} is ordinary. Check for a slip in one of the two readings."},

	// Walls and their floors and ceilings.
	{Code: "survey.wall.joins_nothing", Status: Own, Source: impossible,
		Says: "There is no next wall. Only four walls or more can close around a room, so that the last joins the first."},
	{Code: "survey.wall.level_with_itself", Status: Own, Source: ownRule, Says: "A wall cannot be levelled with itself; name another wall."},
	{Code: "survey.facing.itself", Status: Own, Source: impossible, Says: "A wall does not face itself; name the opposite wall."},
	{Code: "survey.ceiling.under_floor", Status: Own, Source: impossible, Says: "At {at} the ceiling is not above the floor: there is {gap} between them."},
	{Code: "survey.ceiling.low", Status: CommonPractice, Source: practice,
		Says: "At {at} the ceiling is only {have} above the floor. Under {usual} it is more often a slip than a kitchen."},
	{Code: "survey.ceiling.high", Status: CommonPractice, Source: practice,
		Says: "At {at} the ceiling is {have} above the floor. Over {usual} it is more often a slip than a kitchen."},
	{Code: "survey.floor.not_levelled", Status: CommonPractice, Source: practice,
		Says: "Everything here was taped from a floor that was taken for level, and hardly any floor is. Strike a laser line and read floor and ceiling from it."},
	{Code: "survey.corner.floor_differs", Status: LookedUp, Source: jcgm100,
		Says: "In the corner this floor is {have} off the floor of the joining wall; the readings leave only {need} of doubt. Read both again there."},
	{Code: "survey.room.not_closed", Status: Own, Source: ownRule,
		Says: "This wall and {other} lie opposite each other in a closed room and differ by {by} in length; with four square corners the room cannot close."},
	{Code: "survey.corner.ceiling_differs", Status: LookedUp, Source: jcgm100,
		Says: "In the corner this ceiling is {have} off the ceiling of the joining wall; the readings leave only {need} of doubt. Read both again there."},
	{Code: "survey.laser.disagrees", Status: LookedUp, Source: jcgm100,
		Says: "In a corner that was read from two laser lines, floor and ceiling are both off by {have}: the tie between the lines looks wrong."},

	// Studs and the bench mark.
	{Code: "survey.stud.off_wall", Status: Own, Source: impossible, Says: "The stud at {at} is not on this wall."},
	{Code: "survey.studs.unordered", Status: Own, Source: ownRule, Says: "Studs are listed from left to right, each once."},
	{Code: "survey.studs.two_ways", Status: Own, Source: ownRule, Says: "Say where the studs are in one way: a first one and a spacing, or each of them."},
	{Code: "survey.studs.too_close", Status: CommonPractice, Source: practice, Says: "Studs are further apart than {least}."},
	{Code: "survey.bench.off_wall", Status: Own, Source: impossible, Says: "The bench mark at {at} is not on this wall."},

	// Openings and points.
	{Code: "survey.opening.off_wall", Status: Own, Source: impossible, Says: "This opening reaches to {at}, off the wall."},
	{Code: "survey.opening.head_under_sill", Status: Own, Source: impossible, Says: "The head of this opening is not above its sill."},
	{Code: "survey.opening.sill_under_floor", Status: Own, Source: impossible, Says: "The sill of this opening is under the floor at {at}."},
	{Code: "survey.opening.head_above_ceiling", Status: Own, Source: impossible, Says: "The head of this opening is {over} above the ceiling at {at}."},
	{Code: "survey.point.off_wall", Status: Own, Source: impossible, Says: "This point at {at} is not on this wall."},

	// Overheads.
	{Code: "survey.overhead.off_wall", Status: Own, Source: impossible, Says: "This overhead reaches to {at}, off the wall."},
	{Code: "survey.overhead.above_ceiling", Status: Own, Source: impossible,
		Says: "At {at} this underside is not below the ceiling: there is {gap} between them."},
	{Code: "survey.overhead.under_floor", Status: Own, Source: impossible,
		Says: "At {at} this underside is not above the floor: there is {gap} between them."},
	{Code: "survey.overhead.two_undersides", Status: Own, Source: ownRule,
		Says: "A closed gap's underside is given by its levels or by its thickness, not by both."},
	{Code: "survey.overhead.not_a_closed_gap", Status: Own, Source: ownRule, Says: "This is said of a closed gap only."},
	{Code: "survey.overhead.not_a_duct_box", Status: Own, Source: ownRule, Says: "This is said of a duct box only."},
	{Code: "survey.overhead.part_of_taken", Status: Own, Source: ownRule,
		Says: "This name is the id of an overhead that belongs to something else."},
	{Code: "survey.overhead.overlaps", Status: CommonPractice, Source: practice,
		Says: "From {from} to {to} this overhead takes up room that another one takes up too: taking one down shows the other."},
	{Code: "survey.ends.no_wall", Status: Own, Source: impossible, Says: "This end is said to meet a wall, but it is not at an end of the wall."},
	{Code: "survey.ends.no_corner", Status: Own, Source: impossible, Says: "This end is said to go on around a corner, but there is no inside corner here."},
	{Code: "survey.ends.at_wall", Status: Own, Source: impossible, Says: "This end is at the end of the wall, so it is neither free nor against a cabinet."},
	{Code: "survey.behind.under_underside", Status: Own, Source: impossible,
		Says: "The ceiling behind an overhead cannot be lower than the overhead's underside."},
	{Code: "survey.duct.wider_than_box", Status: Own, Source: impossible, Says: "A duct of {need} does not go into a box that is {have} inside at the most."},

	// Contents.
	{Code: "survey.seen.off_overhead", Status: Own, Source: impossible, Says: "What was looked into reaches to {at}; the overhead runs from {least} to {most}."},
	{Code: "survey.service.off_overhead", Status: Own, Source: impossible, Says: "This reaches to {at}; the overhead it runs in goes from {least} to {most}."},
	{Code: "survey.service.under_overhead", Status: Own, Source: impossible, Says: "This is {by} lower than the underside of the overhead that it is said to run in."},
	{Code: "survey.service.above_ceiling", Status: Own, Source: impossible, Says: "This is {by} higher than the ceiling over the overhead that it is said to run in."},
	{Code: "survey.inside.not_looked", Status: Own, Source: ownRule, Says: "Contents are listed, yet nobody is said to have looked inside."},
	{Code: "survey.inside.shares_with_itself", Status: Own, Source: ownRule, Says: "An overhead's contents run on into another overhead; this is the same one."},
	{Code: "survey.priors.not_one", Status: Own, Source: ownRule, Says: "The probabilities must add up to 1."},
}
