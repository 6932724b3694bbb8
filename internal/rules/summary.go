package rules

var summaryRules = []Rule{
	{Code: "summary.room.go", Says: "All {cabinets} cabinets go in as planned; nothing has to be cut.", Source: "follows from the fit of every cabinet", Status: Own},
	{Code: "summary.room.go_after_trim", Says: "All {cabinets} cabinets go in once {cuts} cut(s) are made.", Source: "follows from the fit of every cabinet", Status: Own},
	{Code: "summary.room.go_after_opening", Says: "All {cabinets} cabinets go in once what hangs above them is opened or taken down.", Source: "follows from the fit of every cabinet", Status: Own},
	{Code: "summary.room.answers_needed", Says: "{fit} of {cabinets} cabinets go in; something must be found out before work starts.", Source: "follows from the fit of every cabinet", Status: Own},
	{Code: "summary.room.blocked", Says: "{fit} of {cabinets} cabinets go in; what blocks the others needs another plan.", Source: "follows from the fit of every cabinet", Status: Own},
}
