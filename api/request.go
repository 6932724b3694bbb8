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
	Currency        string          `json:"currency,omitempty" pattern:"^[A-Z]{3}$" doc:"ISO 4217 code."`
	Rates           map[string]Rate `json:"rates,omitempty" keys:"^[a-z0-9._-]{1,80}$" doc:"Replaces built-in rates by code."`
	StoragePerLitre Amount          `json:"storage_per_litre,omitzero" doc:"What a litre of storage gained is worth."`
	ToCeilingWorth  Amount          `json:"to_ceiling_worth,omitzero" doc:"What going up to the ceiling is worth to the client."`
	Probe           Amount          `json:"probe,omitzero" doc:"What a probe hole costs, made good."`
}
