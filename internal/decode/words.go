package decode

import (
	"strconv"
	"strings"

	"railhead/api"
	"railhead/internal/length"
)

// form is a pattern of the contract in words.
type form struct{ key, words string }

// patternForms has every pattern of the contract; a test sees to that.
var patternForms = map[string]form{
	api.IDPattern:         {"id", "must be 1 to 40 letters, digits, dots, underscores or hyphens"},
	api.AmountPattern:     {"amount", `must be a decimal such as "12.50"`},
	length.Pattern:        {"length", `must be a length with its unit, such as "803.3 mm", "31 5/8 in" or "2' 7 5/8\""`},
	`^[A-Z]{3}$`:          {"currency", "must be the three capital letters of an ISO 4217 code"},
	`^[a-z_]{1,40}$`:      {"name", "must be a name: lower-case letters and underscores"},
	`^[a-z0-9._-]{1,80}$`: {"code", "must be a code: lower-case letters, digits, dots, underscores or hyphens"},
	`^(empty|few_wires|many_wires|pipe_or_duct|immovable)$`: {"prior", "must be one of empty, few_wires, many_wires, pipe_or_duct, immovable"},
}

func formOf(pattern string) form {
	if f, known := patternForms[pattern]; known {
		return f
	}
	return form{"pattern", "does not have the form that is asked for"}
}

// oneFault is an error of a body, with its params as pairs.
func oneFault(code, pointer, detail string, params ...string) api.Fault {
	values := map[string]string{}
	for i := 0; i+1 < len(params); i += 2 {
		values[params[i]] = params[i+1]
	}
	return api.Fault{Code: code, Pointer: pointer, Detail: detail, Params: values}
}

// typeWords are the JSON types as they are named to people.
var typeWords = map[string]string{
	"object": "an object", "array": "a list", "string": "a text", "number": "a number",
	"integer": "a whole number", "boolean": "true or false",
}

// either joins words: a, b or c.
func either(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " or " + words[last]
}

func counted(n int, one string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + one + "s"
}
