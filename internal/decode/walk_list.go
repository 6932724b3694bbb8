package decode

import (
	"strconv"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// list reads a list. What is beyond the most that may be there is looked at, but
// not kept, so that nobody has more to go through than a good body holds.
func (w *walk) list(s *jsonschema.Schema) (keep bool, err error) {
	if _, err := w.dec.ReadToken(); err != nil {
		return false, err
	}
	w.out.WriteByte('[')
	n := 0
	for ; w.dec.PeekKind() != ']'; n++ {
		before, holes := w.out.Len(), len(w.holes)
		w.at = append(w.at, strconv.Itoa(n))
		w.comma()
		_, err := w.usable(s.Items2020)
		w.at = w.at[:len(w.at)-1]
		if s.MaxItems != nil && n >= *s.MaxItems {
			w.out.Truncate(before)
			w.holes = w.holes[:holes]
		}
		if err = w.enough(err); err != nil {
			return false, err
		}
	}
	if _, err := w.dec.ReadToken(); err != nil {
		return false, err
	}
	w.out.WriteByte(']')
	w.listSize(s, n)
	return true, nil
}

func (w *walk) listSize(s *jsonschema.Schema, n int) {
	if s.MinItems != nil && n < *s.MinItems {
		w.hole()
		w.note(CodeListShort, "This must have at least "+counted(*s.MinItems, "item")+".", "least", strconv.Itoa(*s.MinItems))
	}
	if s.MaxItems != nil && n > *s.MaxItems {
		w.holes = append(w.holes, hole{w.at.pointer(), true})
		w.note(CodeListLong, "This must have at most "+counted(*s.MaxItems, "item")+".", "most", strconv.Itoa(*s.MaxItems))
	}
}
