package decode

import (
	"strings"

	"github.com/go-playground/validator/v10"

	"railhead/api"
)

// The names under which the relations of relation_rules.go are reported.
const (
	exactlyOne = "exactly_one"
	notHere    = "not_here"
	neededHere = "needed_here"
	addToOne   = "add_to_one"
)

// fault puts a broken relation into words.
func (r *relations) fault(e validator.FieldError) api.Fault {
	at := pointerOf(e.Namespace())
	param := e.Param()
	switch e.Tag() {
	case exactlyOne:
		return oneFault(CodeRelOneOf, at, "This must have exactly one of "+param+".", "members", param)
	case notHere:
		return oneFault(CodeRelExcluded, at, "This has no meaning here: "+param+".", "why", param)
	case neededHere:
		return oneFault(CodeRelRequired, at, "This is needed: "+param+".", "why", param)
	case addToOne:
		return oneFault(CodeRelSum, at, "These must be from 0 to 1 each, and add up to 1.")
	case "required_with":
		return oneFault(CodeRelRequired, at, "This is needed together with "+r.name(param)+".", "with", r.name(param))
	case "required_without":
		return oneFault(CodeRelRequired, at, "This is needed unless "+r.name(param)+" is given.", "without", r.name(param))
	case "excluded_with":
		return oneFault(CodeRelExcluded, at, "This does not go together with "+r.name(param)+".", "with", r.name(param))
	case "excluded_unless":
		member, value, _ := strings.Cut(param, " ")
		return oneFault(CodeRelExcluded, at, "This goes only with "+r.name(member)+" "+value+".", "only_with", r.name(member)+" "+value)
	}
	return oneFault(CodeUnreadable, at, "This does not go together with the rest of the body.")
}

func (r *relations) name(field string) string { return r.names[field] }

// pointerOf turns the validator's path (Request.survey.walls[0].floor[1].) into a
// pointer. Names that hold brackets are refused before any relation is looked at.
func pointerOf(namespace string) string {
	_, members, _ := strings.Cut(namespace, ".")
	var p path
	for _, part := range splitPath(strings.TrimSuffix(members, ".")) {
		p = append(p, part)
	}
	return p.pointer()
}

// splitPath parts a.b[key.with.dots].c at dots and brackets, keeping what is within brackets whole.
func splitPath(members string) (parts []string) {
	for members != "" {
		if key, rest, found := strings.Cut(strings.TrimPrefix(members, "["), "]"); members[0] == '[' && found {
			parts, members = append(parts, key), strings.TrimPrefix(rest, ".")
			continue
		}
		end := strings.IndexAny(members, ".[")
		if end < 0 {
			return append(parts, members)
		}
		parts = append(parts, members[:end])
		members = strings.TrimPrefix(members[end:], ".")
	}
	return parts
}
