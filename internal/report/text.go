package report

import (
	"strings"

	"railhead/internal/finding"
	"railhead/internal/rules"
)

// says fills a code's words with its parameters.
func (s Scale) says(code string, params []finding.Param) string {
	rule, ok := rules.Of(code)
	if !ok {
		return code
	}
	return fill(rule.Says, s.params(params))
}

// fill replaces each {name} by the parameter of that name.
func fill(template string, params map[string]string) string {
	if !strings.Contains(template, "{") {
		return template
	}
	pairs := make([]string, 0, 2*len(params))
	for name, value := range params {
		pairs = append(pairs, "{"+name+"}", value)
		if says, ok := rules.Options[value]; ok {
			pairs = append(pairs, "{"+name+"_says}", says)
		}
	}
	return strings.NewReplacer(pairs...).Replace(template)
}

// params are a text's values; a length is written as its tape mark.
func (s Scale) params(params []finding.Param) map[string]string {
	out := make(map[string]string, len(params))
	for _, p := range params {
		out[p.Name] = s.value(p)
	}
	return out
}

func (s Scale) value(p finding.Param) string {
	if p.Length == nil {
		return p.Text
	}
	return s.of(*p.Length).Tape
}
