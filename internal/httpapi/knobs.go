package httpapi

import (
	"sync"

	"github.com/danielgtaylor/huma/v2"
)

// setKnobs sets what the HTTP framework keeps in globals, once, before any
// operation is registered. This is the only place that does.
var setKnobs = sync.OnceFunc(func() {
	huma.DefaultArrayNullable = false
	huma.ValidateStrictCasing = true
	huma.NewError = func(status int, _ string, _ ...error) huma.StatusError {
		return problemFor(status)
	}
	huma.NewErrorWithContext = func(c huma.Context, status int, _ string, errs ...error) huma.StatusError {
		return frameworkProblem(c, status, errs)
	}
})
