package api

// Problem is an RFC 9457 problem.
type Problem struct {
	Type      string  `json:"type" doc:"about:blank; the code says what happened."`
	Title     string  `json:"title"`
	Status    int     `json:"status"`
	Detail    string  `json:"detail"`
	Code      string  `json:"code" doc:"Stable code of what went wrong."`
	RequestID string  `json:"request_id"`
	Errors    []Fault `json:"errors" doc:"Every error of the body."`
}

// Fault is one error of a body.
type Fault struct {
	Code    string            `json:"code"`
	Detail  string            `json:"detail"`
	Pointer string            `json:"pointer" doc:"RFC 6901 pointer into the body as sent."`
	Params  map[string]string `json:"params" doc:"Values for a translated text."`
}

// Error makes a Problem an error.
func (p *Problem) Error() string { return p.Code + ": " + p.Detail }
