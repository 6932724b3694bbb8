package resolve

import (
	"railhead/internal/length"
)

// widestTape is the coarsest step of a tape that makes sense in a kitchen (common practice, no source).
const widestTape = 100 * length.Millimetre

// head reads the units and the step of the tape marks.
func (b *body) head() {
	units, ok := length.ParseUnit(b.req.Units)
	if !ok {
		b.fault(missingOr(b.req.Units, "body.value.not_allowed"), "/units")
		units, b.guessed.units = b.guess.units, true
	}
	b.units, b.out.Units = units, units
	b.out.Tape = units.DefaultStep()
	if !b.req.Tape.Given() {
		return
	}
	step, ok := b.length(b.req.Tape, "/tape", anySign)
	switch {
	case !ok:
	case step <= 0 || step > widestTape:
		b.fault("request.tape.not_sensible", "/tape", size("most", widestTape))
	default:
		b.out.Tape = step
	}
}

func missingOr(text, code string) string {
	if text == "" {
		return "body.member.missing"
	}
	return code
}

// metricOr is the metric or the inch form of a default, as a carpenter of that tape would say it.
func (b *body) metricOr(metric, inch length.Length) length.Length {
	if b.out.Units == length.IN {
		return inch
	}
	return metric
}
