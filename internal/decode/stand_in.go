package decode

import "github.com/santhosh-tekuri/jsonschema/v6"

// unusable is no length, amount, id or word of the contract.
const unusable = `"?"`

// usable reads the next value, and puts a stand-in where nothing can be made of
// it. That there was a value then still shows, but nothing follows from what it
// says: it is refused wherever it is looked at, and here first. It is false where
// the type has no such stand-in, so that the value is as good as left out.
func (w *walk) usable(s *jsonschema.Schema) (there bool, err error) {
	before := w.out.Len()
	keep, err := w.value(s)
	if keep || err != nil {
		return keep, err
	}
	w.hole()
	w.out.Truncate(before)
	text, there := standIn(s)
	w.out.WriteString(text)
	return there, nil
}

// standIn is a value of a schema's type that nothing can be made of. Whole
// numbers and truths have none.
func standIn(s *jsonschema.Schema) (text string, there bool) {
	for _, name := range [...]string{"string", "array", "object"} {
		form := ofType(s, name)
		switch {
		case form == nil:
			continue
		case name == "string":
			return unusable, true
		case name == "object":
			return "{}", true
		}
		item, there := standIn(form.Items2020)
		return "[" + item + "]", there
	}
	return "", false
}
