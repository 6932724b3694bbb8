package config

import "strings"

// Error is every bad setting.
type Error struct {
	Bad []Bad
}

// Bad is one bad setting: its name, the form it should have, and what is wrong.
type Bad struct {
	Name, Form, Problem string
}

func (e *Error) Error() string {
	lines := []string{"bad settings:"}
	for _, b := range e.Bad {
		lines = append(lines, "  "+b.Name+" "+b.Problem+"; it should be "+b.Form)
	}
	return strings.Join(lines, "\n")
}
