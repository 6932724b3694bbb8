package httpapi

import (
	"bytes"
	"context"
	"errors"
	"mime"
	"net/http"
	"os"
	"strings"

	"github.com/danielgtaylor/huma/v2"
	"github.com/danielgtaylor/huma/v2/adapters/humachi"

	"railhead/api"
)

type bodyKey struct{}

// withBody reads a request's body before the operation runs, and refuses what is no JSON by its headers.
func (s *Service) withBody(c huma.Context, next func(huma.Context)) {
	r, w := humachi.Unwrap(c)
	body, problem := readBody(w, r, s.MaxBody)
	if problem != nil {
		fail(w, r, problem)
		return
	}
	next(huma.WithValue(c, bodyKey{}, body))
}

func bodyOf(ctx context.Context) []byte {
	body, _ := ctx.Value(bodyKey{}).([]byte)
	return body
}

func readBody(w http.ResponseWriter, r *http.Request, limit int64) ([]byte, *api.Problem) {
	switch {
	case !isJSON(r.Header.Get("Content-Type")):
		w.Header().Set("Accept", "application/json")
		return nil, wrongMediaType.problem()
	case !isPlain(r.Header.Values("Content-Encoding")):
		w.Header().Set("Accept-Encoding", "identity")
		return nil, encodedBody.problem()
	case r.ContentLength > limit:
		return nil, tooLarge(limit).problem()
	}
	var body bytes.Buffer
	body.Grow(int(max(r.ContentLength, 0)) + bytes.MinRead)
	if _, err := body.ReadFrom(http.MaxBytesReader(w, r.Body, limit)); err != nil {
		return nil, unread(err, limit).problem()
	}
	return body.Bytes(), nil
}

// unread says why a body could not be read to its end.
func unread(err error, limit int64) trouble {
	var tooMuch *http.MaxBytesError
	switch {
	case errors.As(err, &tooMuch):
		return tooLarge(limit)
	case errors.Is(err, os.ErrDeadlineExceeded):
		return slowBody
	}
	return brokenBody
}

// isJSON reports whether a Content-Type is application/json, in UTF-8 where it names a charset.
func isJSON(contentType string) bool {
	mediaType, params, err := mime.ParseMediaType(contentType)
	charset, named := params["charset"]
	return err == nil && mediaType == "application/json" && (!named || strings.EqualFold(charset, "utf-8"))
}

func isPlain(encodings []string) bool {
	for _, encoding := range encodings {
		if !strings.EqualFold(strings.TrimSpace(encoding), "identity") {
			return false
		}
	}
	return true
}
