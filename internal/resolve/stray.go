package resolve

import (
	"strings"

	"railhead/internal/finding"
)

const refUnknown = "ref.unknown"

// named is a name of a kind of thing.
type named struct{ kind, name string }

// stray is a reference to a name that nothing of its kind has.
type stray struct {
	named
	pointer string
}

// astray refuses a reference to what is not there. What is there twice is refused already.
func (b *body) astray(kind, name, pointer string) {
	n := named{kind, name}
	if kind == "duct_box" {
		n.kind = "overhead"
	}
	if b.twice[n] {
		return
	}
	b.fault(refUnknown, pointer, finding.Word("kind", kind))
	if isID(name) {
		b.strays = append(b.strays, stray{n, pointer})
	}
}

// refer finds what a reference names, or refuses it.
func refer[T any](b *body, names map[string]T, kind, name, pointer string) (T, bool) {
	found, ok := names[name]
	switch {
	case ok:
	case name == "":
		b.fault("body.member.missing", pointer)
	default:
		b.astray(kind, name, pointer)
	}
	return found, ok
}

// onWall finds the wall that a member names. Where it names none, there is a wall all the same of which nothing is known.
func (b *body) onWall(name, pointer string) (*wall, bool) {
	i, ok := refer(b, b.ids.walls, "wall", name, pointer)
	if !ok {
		return &b.nowhere, false
	}
	return &b.walls[i], true
}

// unexplained are the faults without the references that may name something whose own name is not usable: while there
// are as many things without one as there are unknown names of their kind.
func (b *body) unexplained() []Fault {
	names := map[string]map[string]bool{}
	for _, s := range b.strays {
		if names[s.kind] == nil {
			names[s.kind] = map[string]bool{}
		}
		names[s.kind][s.name] = true
	}
	explained := map[string]bool{}
	for _, s := range b.strays {
		if len(names[s.kind]) <= b.nameless[s.kind] {
			explained[s.pointer] = true
		}
	}
	var out []Fault
	for _, f := range b.faults {
		if f.Code != refUnknown || !explained[f.Pointer] {
			out = append(out, f)
		}
	}
	return out
}

// isID reports whether a name may be an id, as api.IDPattern has it.
func isID(name string) bool {
	other := func(r rune) bool { return !strings.ContainsRune(idLetters, r) }
	return name != "" && len(name) <= 40 && !strings.ContainsFunc(name, other)
}

const idLetters = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789._-"
