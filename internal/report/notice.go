package report

import (
	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/rules"
)

// Findings writes findings.
func (s Scale) Findings(in []finding.Finding) []api.Finding { return each(in, s.finding) }

func (s Scale) finding(f finding.Finding) api.Finding {
	params := f.Params
	if f.Need != nil {
		params = append(params[:len(params):len(params)], finding.Size("need", f.Need))
	}
	if f.Have != nil {
		params = append(params[:len(params):len(params)], finding.Size("have", f.Have))
	}
	return api.Finding{
		Code: f.Code, Severity: f.Severity.String(), Pointer: f.Pointer,
		Says: s.says(f.Code, params), Params: s.params(params),
		Need: s.optional(f.Need), Have: s.optional(f.Have),
		Remedies: each(f.Remedies, func(r finding.Remedy) api.Remedy {
			return api.Remedy{Code: r.Code, Says: s.says(r.Code, append(r.Params[:len(r.Params):len(r.Params)], params...))}
		}),
	}
}

// Questions writes questions.
func (s Scale) Questions(in []finding.Question) []api.Question {
	return each(in, func(q finding.Question) api.Question {
		out := api.Question{Code: q.Code, Pointer: q.Pointer, Asks: s.says(q.Code, q.Params)}
		if q.Worth != nil {
			out.Worth = s.money(*q.Worth)
		}
		return out
	})
}

// Cautions writes cautions with who may deal with them.
func (s Scale) Cautions(in []finding.Caution) []api.Caution {
	return each(in, func(c finding.Caution) api.Caution {
		rule, _ := rules.Of(c.Code)
		return api.Caution{
			Code: c.Code, Pointer: c.Pointer, Says: s.says(c.Code, c.Params),
			Who: rule.Who, Source: rule.Source,
		}
	})
}

// Assumptions writes assumptions.
func (s Scale) Assumptions(in []finding.Assumption) []api.Assumption {
	return each(in, func(a finding.Assumption) api.Assumption {
		rule, _ := rules.Of(a.Code)
		return api.Assumption{
			Code: a.Code, Value: s.exact(a.Value), Says: s.says(a.Code, []finding.Param{finding.Word(a.Value.Name, s.exact(a.Value))}),
			Source: source(rule), Override: a.Override,
		}
	})
}

// exact is a parameter's value as a request would give it, not rounded to a mark.
func (s Scale) exact(p finding.Param) string {
	if p.Length == nil {
		return p.Text
	}
	return p.Length.Value.Round(p.Length.Round).Text(s.Unit)
}

// source is short for what was not looked up in a document.
func source(r rules.Rule) string {
	switch r.Status {
	case rules.FromMemory:
		return "memory"
	case rules.CommonPractice:
		return "common_practice"
	default:
		return r.Source
	}
}

// NotAssessed writes the parts that are missing.
func NotAssessed(in []finding.NotAssessed) []api.NotAssessed {
	return each(in, func(n finding.NotAssessed) api.NotAssessed { return api.NotAssessed(n) })
}

// Fault writes one refusal of a body.
func (s Scale) Fault(code, pointer string, params []finding.Param) api.Fault {
	return api.Fault{Code: code, Detail: s.says(code, params), Pointer: pointer, Params: s.params(params)}
}
