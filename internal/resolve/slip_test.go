package resolve

import (
	"encoding/json"
	"maps"
	"slices"
	"strings"
	"testing"
)

// touches reports whether a slip rests on a member, on what holds it, or on what is in it.
func (s *slip) touches(pointer string) bool {
	_, at, _ := strings.Cut(s.want, " ")
	near := func(other string) bool { return inside(pointer, other) || inside(other, pointer) }
	return s.misses(pointer) || near(at) || slices.ContainsFunc(s.rests, near) ||
		slices.ContainsFunc(s.changes, func(c change) bool { return near(strings.TrimSuffix(c.pointer, "/-")) })
}

func inside(pointer, other string) bool {
	return pointer == other || strings.HasPrefix(pointer, other+"/")
}

// misses reports whether a slip is to refer to nothing, and what it refers to may be what is not usable at a pointer.
func (s *slip) misses(pointer string) bool {
	_, at, reference := strings.Cut(s.want, "ref.unknown ")
	switch {
	case !reference:
		return false
	case strings.HasSuffix(at, "/laser"):
		return inside("/survey/lasers/0", pointer)
	case strings.HasSuffix(at, "/wall") || strings.HasSuffix(at, "/level_with"):
		return inside(longWall, pointer) && pointer != longWall
	}
	return inside(soffitA, pointer) || pointer == shortWall || strings.HasPrefix(pointer, longWall+"/overheads/") &&
		(strings.Count(pointer, "/") == strings.Count(soffitA, "/") || strings.HasSuffix(pointer, "/id") || strings.HasSuffix(pointer, "/part_of"))
}

// holder is the object that a slip is in.
func (s *slip) holder() string {
	_, at, _ := strings.Cut(s.want, " ")
	at, last, _ := cutLast(at)
	if strings.Trim(last, "0123456789") == "" {
		at, _, _ = cutLast(at)
	}
	return at
}

func cutLast(pointer string) (before, last string, found bool) {
	i := strings.LastIndexByte(pointer, '/')
	return pointer[:max(i, 0)], pointer[i+1:], i >= 0
}

// Every object that a request is made of has a slip of its own.
func TestSlipsForEveryKindOfObject(t *testing.T) {
	var doc any
	if err := json.Unmarshal([]byte(wholeBody(t)), &doc); err != nil {
		t.Fatal(err)
	}
	none := map[string]bool{"": true, "/survey/cleared": true, longWall + "/overheads/0/ends": true} // only words and truths, which the decoder knows
	held := map[string]bool{}
	for _, s := range slips {
		_, at, _ := strings.Cut(s.want, " ")
		held[shapeOf(s.holder())], held[shapeOf(at)] = true, true
	}
	for _, pointer := range objects(doc, "") {
		if !held[shapeOf(pointer)] && !none[pointer] {
			t.Errorf("no slip in %s", pointer)
		}
	}
}

// shapeOf is a pointer without the positions in lists.
func shapeOf(pointer string) string {
	parts := strings.Split(pointer, "/")
	for i, part := range parts {
		if strings.Trim(part, "0123456789") == "" {
			parts[i] = ""
		}
	}
	return strings.Join(parts, "/")
}

func objects(node any, base string) (out []string) {
	switch n := node.(type) {
	case map[string]any:
		out = append(out, base)
		for _, name := range slices.Sorted(maps.Keys(n)) {
			out = append(out, objects(n[name], member(base, name))...)
		}
	case []any:
		for i := range n {
			out = append(out, objects(n[i], element(base, i))...)
		}
	}
	return out
}
