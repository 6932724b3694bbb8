package decode

import (
	"slices"
	"strings"

	"github.com/go-json-experiment/json/jsontext"
	"github.com/santhosh-tekuri/jsonschema/v6"
)

func (w *walk) object(s *jsonschema.Schema) (bool, error) {
	if _, err := w.dec.ReadToken(); err != nil {
		return false, err
	}
	w.out.WriteByte('{')
	start := w.out.Len()
	seen := map[string]bool{}
	for w.dec.PeekKind() == '"' {
		name, sound, err := w.text()
		if err != nil {
			return false, err
		}
		w.at = append(w.at, name)
		err = w.member(s, name, sound, seen[name])
		w.at = w.at[:len(w.at)-1]
		if err = w.enough(err); err != nil {
			return false, err
		}
		seen[name] = true
	}
	if _, err := w.dec.ReadToken(); err != nil {
		return false, err
	}
	kept := w.out.Len() > start
	w.out.WriteByte('}')
	w.missing(s, seen)
	return w.enoughMembers(s, len(seen), kept), nil
}

// member reads one member's value and keeps it where it is a good one.
func (w *walk) member(s *jsonschema.Schema, name string, sound, again bool) error {
	values, named := w.known(s, name, sound)
	if values == nil {
		return w.skip()
	}
	if again {
		w.note(CodeDuplicate, "This name stands twice in the same object.")
	}
	before, holes := w.out.Len(), len(w.holes)
	w.name(name)
	there, err := w.usable(values)
	if !there || again || !named {
		w.out.Truncate(before)
	}
	if again || !named {
		w.holes = w.holes[:holes] // the first of two counts, and what has no name is not there
	}
	return err
}

// known is the schema of a member, where there is one, and whether its name is a
// good one; names that do not belong here are noted.
func (w *walk) known(s *jsonschema.Schema, name string, sound bool) (values *jsonschema.Schema, named bool) {
	if values, listed := s.Properties[name]; listed {
		return values, true
	}
	switch values, open := s.AdditionalProperties.(*jsonschema.Schema); {
	case !sound || len(name) > longestName:
		w.unnamed(sound)
	case !open:
		w.unknown(s, name)
	case s.PropertyNames != nil && !s.PropertyNames.Pattern.MatchString(name):
		f := formOf(s.PropertyNames.Pattern.String())
		w.note(CodeName, "This name "+f.words+".", "form", f.key)
		return values, false
	default:
		return values, true
	}
	return nil, false
}

// unnamed notes a name that cannot stand in a pointer, at the object that holds it.
func (w *walk) unnamed(sound bool) {
	name := w.at
	w.at = w.at[:len(w.at)-1]
	if sound {
		w.note(CodeUnknown, "A member with a very long name is not known here.")
	} else {
		w.note(CodeEncoding, "The name of a member is not valid UTF-8, or holds half a surrogate pair.")
	}
	w.at = name
}

// unknown notes a name, with the one that was probably meant.
func (w *walk) unknown(s *jsonschema.Schema, name string) {
	for known := range s.Properties {
		if loose(known) == loose(name) {
			w.note(CodeUnknown, "No member of this name is known here; did you mean "+known+"?", "did_you_mean", known)
			return
		}
	}
	w.note(CodeUnknown, "No member of this name is known here.")
}

// loose is a name without what is easily mistaken: case, hyphens and underscores.
func loose(name string) string {
	return strings.NewReplacer("_", "", "-", "", " ", "").Replace(strings.ToLower(name))
}

func (w *walk) missing(s *jsonschema.Schema, seen map[string]bool) {
	for _, name := range s.Required {
		if !seen[name] {
			w.at = append(w.at, name)
			w.note(CodeMissing, "This member is needed.")
			w.hole()
			w.at = w.at[:len(w.at)-1]
		}
	}
}

// enoughMembers notes an object that must not be empty. One that only the walk
// has emptied is no use either.
func (w *walk) enoughMembers(s *jsonschema.Schema, n int, kept bool) bool {
	if s.MinProperties != nil && n < *s.MinProperties {
		w.note(CodeNoReading, "This must not be empty: a level is read in exactly one way.", "known", strings.Join(names(s), ", "))
	}
	return s.MinProperties == nil || kept
}

func names(s *jsonschema.Schema) (all []string) {
	for name := range s.Properties {
		all = append(all, name)
	}
	slices.Sort(all)
	return all
}

// name writes a member's name to the rest of the body.
func (w *walk) name(name string) {
	w.comma()
	quoted, _ := jsontext.AppendQuote(nil, name)
	w.out.Write(quoted)
	w.out.WriteByte(':')
}

// comma parts a member or an item from the one before.
func (w *walk) comma() {
	if b := w.out.Bytes(); len(b) > 0 && b[len(b)-1] != '{' && b[len(b)-1] != '[' {
		w.out.WriteByte(',')
	}
}
