package resolve

import (
	"testing"

	"github.com/go-json-experiment/json"

	"railhead/api"
)

// failing is what a test and a property have in common.
type failing interface {
	Helper()
	Fatal(args ...any)
}

// decode reads a body as the wire does.
func decode(t failing, text string) *api.Request {
	t.Helper()
	var req api.Request
	if err := json.Unmarshal([]byte(text), &req, json.RejectUnknownMembers(true)); err != nil {
		t.Fatal(err)
	}
	return &req
}

// resolved is the case of a body that is not refused.
func resolved(t testing.TB, text string) *Case {
	t.Helper()
	c, faults := Request(decode(t, text))
	for _, f := range faults {
		t.Errorf("refused: %s %s", f.Code, f.Pointer)
	}
	if c == nil {
		t.FailNow()
	}
	return c
}
