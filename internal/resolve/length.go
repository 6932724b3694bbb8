package resolve

import (
	"errors"

	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// sign is what a length may be.
type sign int

const (
	anySign     sign = iota
	notNegative      // 0 makes sense
	positive         // 0 does not
)

// length reads a length that must be there; false where it is refused.
func (b *body) length(in api.Length, pointer string, s sign) (length.Length, bool) {
	if !in.Given() {
		b.fault("body.member.missing", pointer)
		return 0, false
	}
	l, err := b.parse(in)
	if err != nil {
		b.fault(codeOf(err), pointer)
		return 0, false
	}
	return l, b.signed(l, pointer, s)
}

// lengthOr reads a length that may be left out.
func (b *body) lengthOr(in api.Length, pointer string, s sign, otherwise length.Length) length.Length {
	if l, ok := b.optional(in, pointer, s); ok {
		return l
	}
	return otherwise
}

// optional reads a length that may be left out; false where it is, or is refused.
func (b *body) optional(in api.Length, pointer string, s sign) (length.Length, bool) {
	if !in.Given() {
		return 0, false
	}
	return b.length(in, pointer, s)
}

func (b *body) parse(in api.Length) (length.Length, error) {
	if in.Quoted {
		return length.Parse(in.Text)
	}
	return length.ParseNumber(in.Text, b.units)
}

func (b *body) signed(l length.Length, pointer string, s sign) bool {
	switch {
	case s == positive && l <= 0:
		b.fault(area(pointer)+".length.not_positive", pointer)
	case s == notNegative && l < 0:
		b.fault(area(pointer)+".length.negative", pointer)
	default:
		return true
	}
	return false
}

// codeOf is the code of an error of package length.
func codeOf(err error) string {
	var e *length.Error
	if errors.As(err, &e) {
		return e.Code
	}
	return length.CodeSyntax
}

// span reads a stretch of wall; an empty one is refused at its end.
func (b *body) span(from, to api.Length, pointer string) (survey.Span, bool) {
	f, fok := b.length(from, pointer+"/from", anySign)
	t, tok := b.length(to, pointer+"/to", anySign)
	if !fok || !tok {
		return survey.Span{}, false
	}
	if f >= t {
		b.fault(area(pointer)+".span.empty", pointer+"/to", size("from", f), size("to", t))
		return survey.Span{}, false
	}
	return survey.Span{From: f, To: t}, true
}

// within refuses a stretch that leaves another, at the member that leaves it.
func (b *body) within(s survey.Span, least, most length.Length, code, pointer string) {
	if s.From < least {
		b.fault(code, pointer+"/from", size("at", s.From), size("least", least), size("most", most))
	}
	if s.To > most {
		b.fault(code, pointer+"/to", size("at", s.To), size("least", least), size("most", most))
	}
}

// quiet reads a length that has been read, and refused if need be, before.
func (b *body) quiet(in api.Length) (length.Length, bool) {
	l, err := b.parse(in)
	return l, err == nil && in.Given()
}

// same reports whether two lengths are read as one.
func (b *body) same(x, y api.Length) bool {
	l, lok := b.quiet(x)
	m, mok := b.quiet(y)
	return lok && mok && l == m
}
