package api

// SystemList lists the built-in cabinet systems.
type SystemList struct {
	Edition string          `json:"edition" doc:"The rules, systems and rates behind it."`
	Systems []SystemSummary `json:"systems" doc:"The built-in systems, by id."`
}

// SystemSummary names one built-in.
type SystemSummary struct {
	ID     string `json:"id" doc:"The id to send as system."`
	Says   string `json:"says" doc:"A sentence for people; not part of the contract."`
	Hung   string `json:"hung" enum:"rail,strips" doc:"How its wall cabinets are held."`
	Source string `json:"source" doc:"Where its sizes come from."`
}

// SystemDetail is one built-in in full; its system member can be pasted into a request.
type SystemDetail struct {
	SystemSummary
	Edition string       `json:"edition" doc:"The rules, systems and rates behind it."`
	System  InlineSystem `json:"system" doc:"The parameters, in the form a request takes."`
}
