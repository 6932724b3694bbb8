package httpapi

import (
	"mime"
	"net/http"
	"strconv"
	"strings"

	"github.com/danielgtaylor/huma/v2"
	"github.com/danielgtaylor/huma/v2/adapters/humachi"
)

// acceptsJSON refuses what takes no JSON answer (406).
func acceptsJSON(c huma.Context, next func(huma.Context)) {
	r, w := humachi.Unwrap(c)
	if !accepts(r.Header.Values("Accept"), "application/json") {
		fail(w, r, notAcceptable.problem())
		return
	}
	next(c)
}

// accepts reports whether Accept fields take a media type: the most specific
// range that names it decides (RFC 9110, 12.5.1). Without a field, all is taken.
// Who takes only problems is served too: the answer may be one.
func accepts(fields []string, mediaType string) bool {
	if len(fields) == 0 {
		return true
	}
	best, taken := -1, false
	for part := range strings.SplitSeq(strings.Join(fields, ","), ",") {
		if strings.TrimSpace(part) == "" {
			continue
		}
		named, params, err := mime.ParseMediaType(part)
		if err != nil {
			continue
		}
		if how := specificity(named, mediaType); how > best {
			best, taken = how, quality(params) > 0
		}
	}
	return taken
}

// specificity is how closely a range names a media type; -1 where it does not.
func specificity(named, mediaType string) int {
	family, _, _ := strings.Cut(mediaType, "/")
	switch named {
	case mediaType:
		return 3
	case "application/problem+json":
		return 0
	case family + "/*":
		return 2
	case "*/*":
		return 1
	}
	return -1
}

func quality(params map[string]string) float64 {
	q, given := params["q"]
	if !given {
		return 1
	}
	value, err := strconv.ParseFloat(q, 64)
	if err != nil {
		return 0
	}
	return value
}

// only is acceptsJSON for other media types and plain handlers.
func only(mediaType string, next http.HandlerFunc) http.HandlerFunc {
	return func(w http.ResponseWriter, r *http.Request) {
		if !accepts(r.Header.Values("Accept"), mediaType) {
			fail(w, r, notAcceptable.problem())
			return
		}
		next(w, r)
	}
}
