package api

// Problem is an RFC 9457 problem.
type Problem struct {
	Type      string  `json:"type" doc:"about:blank; the code says what happened."`
	Title     string  `json:"title" doc:"The status in words."`
	Status    int     `json:"status" doc:"The HTTP status."`
	Detail    string  `json:"detail" doc:"What went wrong and what to do, for people."`
	Code      string  `json:"code" doc:"Stable code of what went wrong."`
	RequestID string  `json:"request_id" doc:"The id of the request, as in the X-Request-Id header."`
	Errors    []Fault `json:"errors" doc:"Every error of the body."`
}

// Fault is one error of a body.
type Fault struct {
	Code    string            `json:"code" doc:"Stable code."`
	Detail  string            `json:"detail" doc:"What is wrong, for people."`
	Pointer string            `json:"pointer" doc:"RFC 6901 pointer into the body as sent; for a missing member, to the member."`
	Params  map[string]string `json:"params" doc:"Values for a translated text."`
}

// Error makes a Problem an error.
func (p *Problem) Error() string { return p.Code + ": " + p.Detail }

// GetStatus is the HTTP status, by the name that the HTTP framework asks for it.
func (p *Problem) GetStatus() int { return p.Status }

// ContentType is the media type of a problem.
func (p *Problem) ContentType(string) string { return "application/problem+json" }
