package httpapi

import (
	"fmt"
	"net/http"

	"railhead/api"
	"railhead/internal/decode"
)

// mostFaults is how many errors of a body are listed; a body can hold more than anybody reads.
const mostFaults = 1000

// refused is the problem of a body that cannot be used.
func refused(faults []api.Fault) *api.Problem {
	p := trouble{http.StatusUnprocessableEntity, "request.body.refused", ""}.problem()
	if decode.NotJSON(faults) {
		p = trouble{http.StatusBadRequest, "request.body.not_json", ""}.problem()
	}
	p.Detail = counted(len(faults))
	p.Errors = faults[:min(len(faults), mostFaults)]
	return p
}

func counted(n int) string {
	switch {
	case n == 1:
		return "The body has 1 error."
	case n <= mostFaults:
		return fmt.Sprintf("The body has %d errors.", n)
	}
	return fmt.Sprintf("The body has more errors than the %d listed.", mostFaults)
}
