package decode

import (
	"bytes"
	"errors"
	"io"

	"github.com/go-json-experiment/json/jsontext"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"railhead/api"
)

const (
	// mostNesting is how deep objects and lists may nest. The contract itself needs ten.
	mostNesting = 32
	// enoughFaults ends a walk: nobody reads more.
	enoughFaults = 1001
	// longestName is the longest unknown name that is repeated in a pointer.
	longestName = 200
)

// found is what a walk found wrong, and the body without it.
type found struct {
	faults   []api.Fault
	holes    []hole
	rest     []byte // with stand-ins for what could not be used
	unusable bool   // rest is no whole body
}

// walk reads a body token by token beside the schema. Nothing is built in memory
// but the rest of the body, so a hostile body costs no more than a good one.
type walk struct {
	found
	body []byte
	dec  *jsontext.Decoder
	at   path
	out  bytes.Buffer
}

// errStop ends a walk; what is wrong is already noted.
var errStop = errors.New("stop")

func (s *schema) walk(body []byte) found {
	w := &walk{body: body}
	w.dec = jsontext.NewDecoder(bytes.NewReader(body), jsontext.AllowDuplicateNames(true), jsontext.AllowInvalidUTF8(true))
	keep, err := w.value(s.root)
	if err == nil {
		err = w.end()
	}
	if err != nil && !errors.Is(err, errStop) {
		w.faults = []api.Fault{notJSON(body, err)}
	}
	w.unusable = err != nil || !keep
	w.faults = inOrder(w.faults)
	w.rest = w.out.Bytes()
	return w.found
}

// end makes sure that nothing follows the body's one value.
func (w *walk) end() error {
	switch _, err := w.dec.ReadToken(); {
	case errors.Is(err, io.EOF):
		return nil
	case err != nil:
		return err
	}
	return &jsontext.SyntacticError{ByteOffset: w.dec.InputOffset()}
}

// enough ends the walk of a body that has more errors than anybody reads.
func (w *walk) enough(err error) error {
	if err == nil && len(w.faults) >= enoughFaults {
		return errStop
	}
	return err
}

// hole notes that nothing can be made of the value where the walk stands.
func (w *walk) hole() { w.holes = append(w.holes, hole{pointer: w.at.pointer()}) }

// note notes an error where the walk stands.
func (w *walk) note(code, detail string, params ...string) {
	w.faults = append(w.faults, oneFault(code, w.at.pointer(), detail, params...))
}

// value reads the next value. It is not kept where nothing can be made of it.
func (w *walk) value(s *jsonschema.Schema) (keep bool, err error) {
	kind := w.dec.PeekKind()
	if kind == 'n' {
		w.note(CodeNull, "This must not be null; leave the member out.")
		return false, w.dec.SkipValue()
	}
	form := ofType(s, typeNames[kind])
	if form == nil && typeNames[kind] != "" {
		return false, w.otherType(s)
	}
	switch kind {
	case '{':
		return w.object(form)
	case '[':
		return w.list(form)
	}
	return w.scalar(form)
}

var typeNames = map[jsontext.Kind]string{
	'{': "object", '[': "array", '"': "string", '0': "number", 't': "boolean", 'f': "boolean",
}

// otherType notes a value of a type that is not asked for.
func (w *walk) otherType(s *jsonschema.Schema) error {
	var words []string
	for _, form := range forms(plain(s)) {
		for _, name := range types(form) {
			words = append(words, typeWords[name])
		}
	}
	w.note(CodeType, "This must be "+either(words)+".", "expected", either(words))
	return w.skip()
}
