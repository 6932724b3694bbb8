package decode

import (
	"slices"
	"strconv"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

func (w *walk) list(s *jsonschema.Schema) (keep bool, err error) {
	if _, err := w.dec.ReadToken(); err != nil {
		return false, err
	}
	keep = true
	w.out.WriteByte('[')
	n := 0
	for ; w.dec.PeekKind() != ']'; n++ {
		w.at = append(w.at, strconv.Itoa(n))
		good, err := w.item(s.Items2020)
		w.at = w.at[:len(w.at)-1]
		if err = w.enough(err); err != nil {
			return false, err
		}
		keep = keep && good
	}
	if _, err := w.dec.ReadToken(); err != nil {
		return false, err
	}
	w.out.WriteByte(']')
	w.listSize(s, n)
	return keep, nil
}

// item reads one item. A bad object leaves an empty one in its place, so that
// the pointers of those after it stay right; a list with any other bad item is not kept.
func (w *walk) item(s *jsonschema.Schema) (bool, error) {
	w.comma()
	before := w.out.Len()
	keep, err := w.value(s)
	if keep || err != nil {
		return keep, err
	}
	w.out.Truncate(before)
	w.hole(false)
	if !slices.Equal(types(plain(s)), []string{"object"}) {
		return false, nil
	}
	w.out.WriteString("{}")
	return true, nil
}

func (w *walk) listSize(s *jsonschema.Schema, n int) {
	if s.MinItems != nil && n < *s.MinItems {
		w.note(CodeListShort, "This must have at least "+counted(*s.MinItems, "item")+".", "least", strconv.Itoa(*s.MinItems))
	}
	if s.MaxItems != nil && n > *s.MaxItems {
		w.note(CodeListLong, "This must have at most "+counted(*s.MaxItems, "item")+".", "most", strconv.Itoa(*s.MaxItems))
	}
}
