package api

// Request is the one body that every assessing path reads: a surveyed room, a
// cabinet system, and as much of a plan as there is.
type Request struct {
	Units   string            `json:"units" enum:"mm,cm,in" doc:"The unit of every length that is sent as a number."`
	Tape    Length            `json:"tape,omitzero" doc:"Step of the tape marks in the answer; default 1 mm, or 1/16 in where units is in."`
	Survey  Survey            `json:"survey" doc:"The room as found."`
	System  System            `json:"system" doc:"A built-in cabinet system's id, or the system itself."`
	Plan    Plan              `json:"plan,omitzero" doc:"What is to be built."`
	Choices map[string]Choice `json:"choices,omitempty" keys:"^[A-Za-z0-9._-]{1,40}$" doc:"What has been decided about overheads, by part_of where given, else by the overhead's id."`
	Money   *Money            `json:"money,omitzero" doc:"What money is worth here."`
}

// Money holds the client's and the trade's figures.
type Money struct {
	Currency        string            `json:"currency,omitempty" pattern:"^[A-Z]{3}$" doc:"ISO 4217 code; default EUR, an assumption."`
	PerEuro         Amount            `json:"per_euro,omitzero" doc:"How many of the currency's units stand for one euro in the built-in rates, which are kept in euros; default a round figure, an assumption. Required for a currency that none is known of."`
	Rates           map[string]Rate   `json:"rates,omitempty" keys:"^[a-z0-9._-]{1,80}$" doc:"Replaces built-in rates by code. Codes that start with hours. are hours for each unit of the work, all others are money."`
	Figures         map[string]Amount `json:"figures,omitempty" keys:"^[a-z_]{1,40}$" doc:"Replaces figures that work is reckoned with and nobody measures, by the name in their assumption's override: metres, kilograms a cubic metre, or plain numbers."`
	StoragePerLitre Amount            `json:"storage_per_litre,omitzero" doc:"What a litre of storage gained is worth; default 0.40 euros, an assumption."`
	ToCeilingWorth  Amount            `json:"to_ceiling_worth,omitzero" doc:"What going up to the ceiling is worth to the client; default 0."`
	EvenLineWorth   Amount            `json:"even_line_worth,omitzero" doc:"What it is worth to the client that all wall and tall cabinets end on one line; default 0."`
	ShorterCabinet  Amount            `json:"shorter_cabinet,omitzero" doc:"What exchanging a planned cabinet for a shorter one costs the client; where given, keeping an overhead over shorter cabinets competes with cutting it; where left out the plan stands as sent."`
	Probe           Amount            `json:"probe,omitzero" doc:"What a probe hole costs, made good; the same as the rate material.probe."`
	Remeasure       Amount            `json:"remeasure,omitzero" doc:"What measuring a ceiling again costs; the same as the rate material.remeasure."`
}
