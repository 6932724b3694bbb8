package httpapi

import (
	"net/http"
	"net/http/httptest"
	"strings"
	"sync"
	"testing"

	"github.com/pb33f/libopenapi"
	validator "github.com/pb33f/libopenapi-validator"
	"github.com/pb33f/libopenapi-validator/errors"

	"railhead/openapi"
)

func readContract(t testing.TB, document []byte) validator.Validator {
	t.Helper()
	parsed, err := libopenapi.NewDocument(document)
	if err != nil {
		t.Fatal(err)
	}
	v, errs := validator.NewValidator(parsed)
	for _, err := range errs {
		t.Error(err)
	}
	return v
}

var thirdParty = struct {
	sync.Once
	validator.Validator
}{}

// The contract's three forms are valid by the schemas of OpenAPI 3.1 and 3.0.
func TestContractIsValid(t *testing.T) {
	for name, document := range map[string][]byte{"3.1, JSON": openapi.JSON, "3.1, YAML": openapi.YAML, "3.0": openapi.JSON30} {
		if ok, errs := readContract(t, document).ValidateDocument(); !ok {
			t.Errorf("%s: %v", name, told(errs))
		}
	}
}

// againstContract checks a request that was answered, and every answer, against the contract.
func againstContract(t testing.TB, c call, w *httptest.ResponseRecorder) {
	t.Helper()
	thirdParty.Do(func() { thirdParty.Validator = readContract(t, openapi.JSON) })
	if !strings.HasPrefix(c.path, "/v1/") || c.method == http.MethodHead || w.Code == http.StatusMethodNotAllowed || w.Code == http.StatusNotModified || strings.Contains(w.Body.String(), unknownPath.code) {
		return
	}
	if w.Code == http.StatusOK {
		if ok, errs := thirdParty.ValidateHttpRequest(c.request()); !ok {
			t.Errorf("%s %s: answered, but the contract refuses the request: %v", c.method, c.path, told(errs))
		}
	}
	if ok, errs := thirdParty.ValidateHttpResponse(c.request(), w.Result()); !ok {
		t.Errorf("%s %s: the answer breaks the contract: %v", c.method, c.path, told(errs))
	}
}

func told(errs []*errors.ValidationError) (all []string) {
	for _, e := range errs {
		all = append(all, e.Message+": "+e.Reason)
		for _, s := range e.SchemaValidationErrors {
			all = append(all, s.Reason)
		}
	}
	return all
}
