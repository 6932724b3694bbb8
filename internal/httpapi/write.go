package httpapi

import (
	"crypto/sha256"
	"encoding/hex"
	"net/http"
	"strconv"
	"strings"

	"railhead/api"
)

// reply is bytes that are ready to be sent.
type reply struct {
	mediaType string
	body      []byte
	etag      string
}

// newReply gives bytes their ETag: a hash of themselves, so that equal answers have equal tags.
func newReply(mediaType string, body []byte) reply {
	sum := sha256.Sum256(body)
	return reply{mediaType, body, `"` + hex.EncodeToString(sum[:16]) + `"`}
}

// send sends a reply, or 304 where the caller has it already.
func (p reply) send(w http.ResponseWriter, r *http.Request) {
	w.Header().Set("ETag", p.etag)
	if r.Method != http.MethodPost {
		w.Header().Set("Cache-Control", "no-cache")
		if has(r.Header.Values("If-None-Match"), p.etag) {
			w.WriteHeader(http.StatusNotModified)
			return
		}
	}
	write(w, http.StatusOK, p.mediaType, p.body)
}

// has reports whether If-None-Match names a tag; it compares weakly (RFC 9110, 13.1.2).
func has(fields []string, etag string) bool {
	for tag := range strings.SplitSeq(strings.Join(fields, ","), ",") {
		tag = strings.TrimSpace(tag)
		if tag == "*" || strings.TrimPrefix(tag, "W/") == etag {
			return true
		}
	}
	return false
}

// fail sends a problem: the one writer for every way to fail.
func fail(w http.ResponseWriter, r *http.Request, p *api.Problem) {
	p.RequestID = requestID(r.Context())
	body, err := Encode(p)
	if err != nil {
		logger(r.Context()).ErrorContext(r.Context(), "a problem could not be encoded", "cause", err)
	}
	write(w, p.Status, p.ContentType(""), body)
}

func write(w http.ResponseWriter, status int, mediaType string, body []byte) {
	w.Header().Set("Content-Type", mediaType)
	w.Header().Set("Content-Length", strconv.Itoa(len(body)))
	w.WriteHeader(status)
	_, _ = w.Write(body) // a caller who has gone is no failure of ours
}
