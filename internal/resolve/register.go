package resolve

import "railhead/internal/finding"

// keep notes what an id names. An id of two things names neither, until one of them has another.
func keep[T any](names map[string]T, id string, thing T, unique bool) {
	if unique {
		names[id] = thing
	} else {
		delete(names, id)
	}
}

// register keeps the ids of one kind.
type register struct {
	b     *body
	kind  string
	taken map[string]bool
}

func (r *register) add(id, pointer string) bool {
	if !isID(id) {
		r.b.fault(missingOr(id, "body.value.pattern"), pointer+"/id")
		r.b.nameless[r.kind]++
		return false
	}
	return r.addOptional(id, pointer)
}

func (r *register) addOptional(id, pointer string) bool {
	if id == "" {
		return false
	}
	if r.taken == nil {
		r.taken = map[string]bool{}
	}
	if r.taken[id] {
		r.b.fault("id.duplicate", pointer+"/id", finding.Word("kind", r.kind))
		r.b.nameless[r.kind]++ // it may be meant to have another
		r.b.twice[named{r.kind, id}] = true
		return false
	}
	r.taken[id] = true
	return true
}
