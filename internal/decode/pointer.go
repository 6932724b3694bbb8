package decode

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"railhead/api"
)

// path is where the walk stands: member names and list positions.
type path []string

var escapes = strings.NewReplacer("~", "~0", "/", "~1")

// pointer is the path as an RFC 6901 pointer.
func (p path) pointer() string {
	var b strings.Builder
	for _, token := range p {
		b.WriteByte('/')
		b.WriteString(escapes.Replace(token))
	}
	return b.String()
}

// under reports whether a pointer is another or lies below it.
func under(pointer, other string) bool {
	return pointer == other || strings.HasPrefix(pointer, other) && pointer[len(other)] == '/'
}

// inOrder sorts errors by pointer, list positions by number, and drops repeats.
func inOrder(faults []api.Fault) []api.Fault {
	slices.SortStableFunc(faults, func(a, b api.Fault) int {
		return cmp.Or(comparePointers(a.Pointer, b.Pointer), cmp.Compare(a.Code, b.Code))
	})
	return slices.CompactFunc(faults, func(a, b api.Fault) bool {
		return a.Pointer == b.Pointer && a.Code == b.Code
	})
}

func comparePointers(a, b string) int {
	return slices.CompareFunc(strings.Split(a, "/"), strings.Split(b, "/"), compareTokens)
}

func compareTokens(a, b string) int {
	m, errM := strconv.Atoi(a)
	n, errN := strconv.Atoi(b)
	if errM == nil && errN == nil {
		return cmp.Or(cmp.Compare(m, n), cmp.Compare(a, b))
	}
	return cmp.Compare(a, b)
}
