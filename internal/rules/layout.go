package rules

// layoutRules are what is told of layouts.
var layoutRules = []Rule{
	{Code: "layout.because.first", Status: Own, Source: ownRule, Says: "Worth {total} in all, {by} more than the next one. Against that: {trades}."},
	{Code: "layout.because.tied", Status: Own, Source: ownRule, Says: "Worth {total} in all. The next one is worth as much. Against that: {trades}."},
	{Code: "layout.because.itself", Status: Own, Source: ownRule, Says: "The best one as the gates stand, worth {total} in all."},
	{Code: "layout.because.only", Status: Own, Source: ownRule, Says: "Worth {total} in all. Nothing that differs was found."},
	{Code: "layout.because.behind", Status: Own, Source: ownRule, Says: "Worth {by} less than the best one. Against that: {trades}."},
	{Code: "layout.because.ahead", Status: Own, Source: ownRule, Says: "Worth {by} more than the best one as the gates stand. Against that: {trades}."},
	{Code: "layout.because.level", Status: Own, Source: ownRule, Says: "Worth {total} in all, as much as the best one. Against that: {trades}."},
	{Code: "layout.because.alike", Status: Own, Source: ownRule, Says: "the same in every part, with other widths or in other places"},

	{Code: "layout.part.storage", Status: Own, Source: ownRule, Says: "storage"},
	{Code: "layout.part.counter", Status: Own, Source: ownRule, Says: "counter"},
	{Code: "layout.part.cabinets", Status: Own, Source: ownRule, Says: "cabinets"},
	{Code: "layout.part.preferred", Status: Own, Source: ownRule, Says: "preferred sizes"},
	{Code: "layout.part.fillers", Status: Own, Source: ownRule, Says: "fillers"},
	{Code: "layout.part.filler_width", Status: Own, Source: ownRule, Says: "width of fillers"},
	{Code: "layout.part.panels", Status: Own, Source: ownRule, Says: "sides that show"},
	{Code: "layout.part.open_width", Status: Own, Source: ownRule, Says: "length left open"},
	{Code: "layout.part.height_changes", Status: Own, Source: ownRule, Says: "changes of height"},
	{Code: "layout.part.base_line_misses", Status: Own, Source: ownRule, Says: "joints off the lines below"},
	{Code: "layout.part.equal_neighbours", Status: Own, Source: ownRule, Says: "gaps with equal neighbours"},
	{Code: "layout.part.to_ceiling", Status: Own, Source: ownRule, Says: "share that goes up to the ceiling"},
	{Code: "layout.part.even_line", Status: Own, Source: ownRule, Says: "one even top line"},
	{Code: "layout.part.overheads", Status: Own, Source: ownRule, Says: "what is done about the overheads"},

	{Code: "layout.relax.equal", Status: Own, Source: ownRule, Says: "No two equal cabinets can stand on either side of this in the {kind} row. Leave it out of equal_beside."},
	{Code: "layout.relax.closed", Status: Own, Source: ownRule, Says: "The {kind} row cannot be filled without a hole. Allow holes, or other widths."},
	{Code: "layout.relax.least_filler", Status: Own, Source: ownRule, Says: "The {kind} row cannot be filled with fillers this wide at the least."},
	{Code: "layout.relax.end", Status: Own, Source: ownRule, Says: "The {kind} row cannot be filled with this much kept free at the end of the wall."},
	{Code: "layout.relax.cabinet", Status: Own, Source: ownRule, Says: "The {kind} row cannot be filled while this cabinet stays where it is."},
	{Code: "layout.relax.place", Status: Own, Source: ownRule, Says: "The {kind} row cannot be filled as long as this is in its way."},
	{Code: "layout.relax.whole", Status: Own, Source: ownRule, Says: "No one cabinet of the {kind} row can stand under all of this: move it, or let it be narrower."},
	{Code: "layout.relax.too_large", Status: Own, Source: ownRule, Says: "This wall is too long to be filled with so many sizes: fill parts of it, or fewer sizes."},
	{Code: "layout.relax.too_fine", Status: Own, Source: ownRule, Says: "The system's widths have so little in common that cabinets of them do not come to stand on common marks. Give widths that are whole parts of a millimetre or of 1/64 in."},
	{Code: "layout.relax.misfit", Status: Own, Source: ownRule, Says: "Cabinets can be placed, but not all of them fit in the end: for what stands across the room or around corners, or for what was chosen about an overhead."},
	{Code: "layout.stays.blocked", Status: Own, Source: ownRule, Says: "This cabinet stays, and it does not fit where it is; what was proposed stands around it."},
	{Code: "layout.whole.no_place", Status: Own, Source: ownRule, Says: "No base cabinet can stand under this: something else takes its place."},

	{Code: "layout.filler.wide", Status: CommonPractice, Source: practice,
		Says: "A filler of the best layout is {width} wide. A strip closes {most} at the most: a gap like that is closed with a panel, or by filler_per_mm dearer than open_per_mm left open."},
	{Code: "layout.row.no_room", Status: Own, Source: ownRule, Says: "No cabinet of the {kind} row can stand anywhere along this wall."},
	{Code: "layout.row.empty", Status: Own, Source: ownRule, Says: "There is room for cabinets of the {kind} row, but by these worths none of them pays for itself."},

	{Code: "not_assessed.layouts_unproven", Status: Own, Source: ownRule, Says: "The search was ended before everything was looked at; there may be better layouts."},
	{Code: "assume.fill.front", Status: CommonPractice, Source: practice, Says: "Fronts are taken to be hinged away from what is beside them, or to be drawers."},
}
