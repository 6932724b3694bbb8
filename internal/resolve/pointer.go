package resolve

import (
	"strconv"
	"strings"
)

// item points to an element of a list member (RFC 6901).
func item(base, list string, i int) string { return base + "/" + list + "/" + strconv.Itoa(i) }

// member points to a member by a name that comes from outside (RFC 6901, section 3).
func member(base, name string) string {
	return base + "/" + strings.NewReplacer("~", "~0", "/", "~1").Replace(name)
}

// area is the first part of a pointer: which of the request's members it is in.
func area(pointer string) string {
	first, _, _ := strings.Cut(strings.TrimPrefix(pointer, "/"), "/")
	return first
}

// element points to an element of the list that the pointer itself points to.
func element(list string, i int) string { return list + "/" + strconv.Itoa(i) }
