package decode

import (
	"bytes"
	"errors"
	"strconv"
	"unicode/utf8"

	"github.com/go-json-experiment/json/jsontext"

	"railhead/api"
)

// skip passes over a value that is refused as a whole. Only its nesting is looked at.
func (w *walk) skip() error {
	start, deep := w.dec.StackDepth(), false
	for {
		_, err := w.dec.ReadToken()
		if err != nil {
			return w.tooDeep(err)
		}
		if w.dec.StackDepth() > mostNesting && !deep {
			deep = true
			w.note(CodeDeep, "Objects and lists may nest at most "+strconv.Itoa(mostNesting)+" deep.")
		}
		if w.dec.StackDepth() == start {
			return nil
		}
	}
}

// tooDeep tells nesting beyond what can be read at all from text that is no JSON.
func (w *walk) tooDeep(err error) error {
	if w.dec.StackDepth() >= deepestReadable {
		return errStop
	}
	return err
}

// deepestReadable is the JSON reader's own limit.
const deepestReadable = 10_000

// notJSON says where a body stops being JSON, without repeating any of it.
func notJSON(body []byte, err error) api.Fault {
	if len(bytes.TrimSpace(body)) == 0 {
		return oneFault(CodeEmpty, "", "The body is empty; send one JSON object.")
	}
	offset := len(body)
	var broken *jsontext.SyntacticError
	if errors.As(err, &broken) {
		offset = min(int(broken.ByteOffset), len(body))
	}
	line := strconv.Itoa(1 + bytes.Count(body[:offset], []byte("\n")))
	column := strconv.Itoa(1 + utf8.RuneCount(body[bytes.LastIndexByte(body[:offset], '\n')+1:offset]))
	return oneFault(CodeSyntax, "", "This is not JSON from line "+line+", column "+column+" on.", "line", line, "column", column)
}
