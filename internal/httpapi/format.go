package httpapi

import (
	"errors"
	"io"

	"github.com/danielgtaylor/huma/v2"
	"github.com/go-json-experiment/json"
	"github.com/go-json-experiment/json/jsontext"
)

// Encode writes an answer's bytes. Lists are never null, names of maps come in
// order, characters are not escaped for HTML, and a newline ends it.
func Encode(answer any) ([]byte, error) {
	body, err := json.Marshal(answer, json.Deterministic(true), jsontext.EscapeForHTML(false))
	return append(body, '\n'), err
}

var errUnused = errors.New("bodies are decoded elsewhere")

// jsonFormat is for what the HTTP framework writes itself: its own problems.
var jsonFormat = huma.Format{
	Marshal: func(w io.Writer, v any) error {
		body, err := Encode(v)
		if err == nil {
			_, err = w.Write(body)
		}
		return err
	},
	Unmarshal: func([]byte, any) error { return errUnused },
}
