package rules

// Options are the ways to treat an overhead as a person would say them, by their
// names on the wire. A text has them as {name_says} where {name} is an option.
var Options = map[string]string{
	"keep":          "keeping it",
	"trim":          "trimming it",
	"open_part":     "opening a part of it",
	"remove_taller": "taking it down for a taller row",
	"remove_close":  "taking it down and closing the gap",
	"remove_open":   "taking it down and leaving the gap open",
	"move":          "moving it",
}
