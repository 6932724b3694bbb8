package report

import (
	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/money"
)

// Scale is how an answer's tape marks and amounts are written.
type Scale struct {
	Unit     length.Unit
	Step     length.Length
	Currency money.Currency
}

// measure rounds an exact length once to a whole nanometre and then to a tape
// mark, both in one direction.
func (s Scale) measure(v length.Exact, d length.Direction) api.Measure {
	return s.marked(v.Round(d), v.Round(d), d)
}

// marked is a length whose tape mark is taken from another length: the one that
// is counted on site.
func (s Scale) marked(exact, onSite length.Length, d length.Direction) api.Measure {
	text, mark := onSite.Tape(s.Unit, s.Step, d)
	m := api.Measure{MM: api.Decimal(exact.MM()), Inches: api.Decimal(exact.Inches()), Tape: text}
	if mark != exact {
		m.TapeOff = api.Decimal((mark - exact).MM())
	}
	return m
}

func (s Scale) down(v length.Exact) api.Measure   { return s.measure(v, length.Down) }
func (s Scale) up(v length.Exact) api.Measure     { return s.measure(v, length.Up) }
func (s Scale) near(v length.Exact) api.Measure   { return s.measure(v, length.Nearest) }
func (s Scale) plan(l length.Length) api.Measure  { return s.near(l.Exact()) }
func (s Scale) downL(l length.Length) api.Measure { return s.down(l.Exact()) }
func (s Scale) upL(l length.Length) api.Measure   { return s.up(l.Exact()) }

func (s Scale) of(m finding.Measure) api.Measure { return s.measure(m.Value, m.Round) }

// optional is a measure that may be absent.
func (s Scale) optional(m *finding.Measure) *api.Measure {
	if m == nil {
		return nil
	}
	out := s.of(*m)
	return &out
}

func ptr[T any](v T) *T { return &v }

// each turns a list into another one; the result is never nil, so that it is an
// array on the wire.
func each[A, B any](in []A, f func(A) B) []B {
	out := make([]B, 0, len(in))
	for _, a := range in {
		out = append(out, f(a))
	}
	return out
}
