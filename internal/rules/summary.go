package rules

var summaryRules = []Rule{
	{Code: "summary.room.go", Says: "Every planned cabinet goes in as it is ({cabinets}); nothing has to be cut.", Source: "follows from the fit of every cabinet", Status: Own},
	{Code: "summary.room.go_after_trim", Says: "Every planned cabinet goes in ({cabinets}) once the cuts are made ({cuts}).", Source: "follows from the fit of every cabinet", Status: Own},
	{Code: "summary.room.go_after_opening", Says: "Every planned cabinet goes in ({cabinets}) once what hangs above is opened or taken down.", Source: "follows from the fit of every cabinet", Status: Own},
	{Code: "summary.room.answers_needed", Says: "Of the planned cabinets {fit} in {cabinets} go in; something must be settled before work starts.", Source: "follows from the fit of every cabinet", Status: Own},
	{Code: "summary.room.blocked", Says: "Of the planned cabinets {fit} in {cabinets} go in; what blocks the rest needs another plan.", Source: "follows from the fit of every cabinet", Status: Own},
}
