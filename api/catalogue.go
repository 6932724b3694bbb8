package api

// SystemList lists the built-in cabinet systems.
type SystemList struct {
	Edition string          `json:"edition"`
	Systems []SystemSummary `json:"systems"`
}

// SystemSummary names one built-in.
type SystemSummary struct {
	ID     string `json:"id"`
	Says   string `json:"says"`
	Hung   string `json:"hung" enum:"rail,strips" doc:"How its wall cabinets are held."`
	Source string `json:"source" doc:"Where its sizes come from."`
}

// SystemDetail is one built-in in full; its system member can be pasted into a request.
type SystemDetail struct {
	SystemSummary
	Edition string       `json:"edition"`
	System  InlineSystem `json:"system"`
}
