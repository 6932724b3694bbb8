package fit

import (
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// fixtures holds a patch against the small things on its wall, and on a joined
// wall where the cabinet's flank reaches them. What stands off the wall is in
// the way; what lies flush is covered.
func (b *beside) fixtures(p cabinet.Patch) {
	for i := range b.k.Room.Walls[p.Wall].Fixtures {
		b.fixture(p, p, &b.k.Room.Walls[p.Wall].Fixtures[i])
	}
	for _, q := range p.Joined(b.k.Room) {
		for i := range b.k.Room.Walls[q.Wall].Fixtures {
			b.fixture(p, q, &b.k.Room.Walls[q.Wall].Fixtures[i])
		}
	}
}

// fixture holds the patch p, seen as q from the fixture's wall, against it.
func (b *beside) fixture(p, q cabinet.Patch, f *survey.Fixture) {
	from, to := f.At-f.Width/2, f.At+f.Width/2
	if from >= q.To || to <= q.From || !b.atHeight(q.Wall, f) {
		return
	}
	switch {
	case f.Out > max(q.Near, 0):
		b.inWay(p, q, f, from, to)
	case q.Near <= 0:
		b.covered(f)
	}
}

func (b *beside) atHeight(wall int, f *survey.Fixture) bool {
	at := b.k.Above(wall, f.Level.Value)
	return at.Plus(f.Height/2).CmpLength(lowest(b.c)) > 0 && at.Minus(f.Height/2).CmpLength(b.c.Top) < 0
}

// inWay notes a fixture that stands off the wall within the cabinet. The
// cabinet clears it by moving along or by coming forward, whichever is less.
func (b *beside) inWay(p, q cabinet.Patch, f *survey.Fixture, from, to length.Length) {
	off := f.Out - max(q.Near, 0)
	aside := min(q.To-from, to-q.From)
	axis, overlap := Along, aside
	if off < aside {
		axis, overlap = Out, off
	}
	if q.Wall != p.Wall && axis == Along { // what is along the joined wall is out of the cabinet's own
		axis = Out
	} else if q.Wall != p.Wall {
		axis = Along
	}
	over := q
	over.From, over.To = max(q.From, from), min(q.To, to)
	b.clash(f.Pointer, axis, over, invades(q, from, to), overlap, finding.Finding{
		Code: "fit.point.in_way", Params: []finding.Param{finding.Word("kind", pointWord(f.Kind))},
		Need: finding.Up(f.Out.Exact()), Have: finding.Down(max(q.Near, 0).Exact()),
		Remedies: remedies(movePoint, cutBack, moveCabinet),
	})
}

// covered notes a flush fixture that ends up behind or beside the cabinet.
func (b *beside) covered(f *survey.Fixture) {
	code, severity, help := coverOf(f.Kind, b.c.Kind)
	for _, have := range b.findings {
		if have.Code == code && have.Pointer == f.Pointer {
			return
		}
	}
	b.findings = append(b.findings, finding.Finding{
		Code: code, Severity: severity, Pointer: f.Pointer,
		Params:   []finding.Param{finding.Word("kind", pointWord(f.Kind)), place(f.At)},
		Remedies: help,
	})
}

// coverOf says what it means that a cabinet of a kind covers a fixture. Behind a
// base cabinet a socket can still serve an appliance through a cut-out; what
// shuts something off, and a panel, must be reached at once.
func coverOf(f survey.FixtureKind, c cabinet.Kind) (code string, s finding.Severity, help []finding.Remedy) {
	s = finding.AsCaution
	if c == cabinet.Base {
		s = finding.AsNote
	}
	switch f {
	case survey.GasValve:
		return "fit.point.gas_valve_covered", finding.AsStop, remedies(movePoint, leaveAccess, moveCabinet)
	case survey.Valve:
		return "fit.point.valve_covered", finding.AsStop, remedies(leaveAccess, movePoint, moveCabinet)
	case survey.Panel:
		return "fit.point.panel_covered", finding.AsStop, remedies(moveCabinet, movePoint)
	case survey.Junction:
		return "fit.point.junction_covered", s, remedies(leaveAccess, movePoint)
	case survey.Vent:
		return "fit.point.vent_covered", finding.AsCaution, remedies(movePoint, cutBack, moveCabinet)
	case survey.Socket, survey.Switch, survey.Light:
		return "fit.point.covered", s, remedies(movePoint, cutBack, moveCabinet)
	default:
		return "fit.point.covered", finding.AsNote, remedies(cutBack, movePoint)
	}
}

func pointWord(k survey.FixtureKind) string {
	if k == survey.GasValve {
		return "gas valve"
	}
	if k == survey.OtherFixture {
		return "fixture"
	}
	return k.String()
}
