package httpapi

import (
	"context"
	"crypto/rand"
	"encoding/hex"
	"net/http"
	"regexp"
)

const requestIDHeader = "X-Request-Id"

type requestIDKey struct{}

// sane is what an id from outside must look like to be kept.
var sane = regexp.MustCompile(`^[A-Za-z0-9._-]{1,64}$`)

// requestIDs gives every request an id: the caller's own where it is a sane one.
func requestIDs(next http.Handler) http.Handler {
	return http.HandlerFunc(func(w http.ResponseWriter, r *http.Request) {
		id := r.Header.Get(requestIDHeader)
		if !sane.MatchString(id) {
			id = newRequestID()
		}
		w.Header().Set(requestIDHeader, id)
		next.ServeHTTP(w, r.WithContext(WithRequestID(r.Context(), id)))
	})
}

// WithRequestID puts a request's id into its context.
func WithRequestID(ctx context.Context, id string) context.Context {
	return context.WithValue(ctx, requestIDKey{}, id)
}

func requestID(ctx context.Context) string {
	id, _ := ctx.Value(requestIDKey{}).(string)
	return id
}

func newRequestID() string {
	var id [16]byte
	_, _ = rand.Read(id[:]) // never fails: crypto/rand ends the program instead
	return hex.EncodeToString(id[:])
}
