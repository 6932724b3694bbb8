package trim

import (
	"railhead/internal/finding"
	"railhead/internal/fit"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// notice adds everything there is to say about a cut.
func (t *Trim) notice(k *kitchen.Kitchen, c *cut) {
	if t.Work == None {
		t.note(finding.Finding{Code: "trim.nothing.to_take", Severity: finding.AsNote})
		return
	}
	t.noticeLine(k, c)
	t.noticeFraming(k)
	t.noticeServices()
	t.noticeDuct(k)
}

// note adds a finding; one that names no member is about the overhead.
func (t *Trim) note(f finding.Finding) {
	if f.Pointer == "" {
		f.Pointer = t.Overhead.Pointer
	}
	t.Findings = append(t.Findings, f)
}

// noticeLine says what made the cut longer or higher than its cabinets ask for.
func (t *Trim) noticeLine(k *kitchen.Kitchen, c *cut) {
	if t.Work == TakeDown && !c.opened {
		t.note(finding.Finding{
			Code: "trim.cut.removal", Severity: finding.AsCaution,
			Need:     finding.Up(t.Overhead.Make.LeastStub.Exact()),
			Have:     finding.Down(fit.Stub(k, t.Overhead, t.CutLine, t.From, t.To)),
			Remedies: []finding.Remedy{{Code: "trim.remedy.open_part"}, {Code: "trim.remedy.lower_cabinet"}},
		})
	}
	if c.evened {
		t.note(finding.Finding{Code: "trim.line.evened", Severity: finding.AsNote, Params: []finding.Param{up("cut_line", t.CutLine)}})
	}
	if c.along > 0 {
		t.note(finding.Finding{
			Code: "trim.rest.taken_along", Severity: finding.AsNote,
			Need: finding.Up(t.Overhead.Make.LeastRun.Exact()), Have: finding.Down(c.along.Exact()),
		})
	}
	for _, p := range t.Cabinets {
		if p.Top < t.RowTop {
			t.note(finding.Finding{
				Code: "trim.row.lower", Severity: finding.AsNote, Pointer: p.Pointer,
				Params: []finding.Param{finding.Word("cabinet", p.ID)}, Have: finding.Down((t.CutLine - p.Top).Exact()),
			})
		}
	}
}

// noticeFraming says what the framing and the joist bays need.
func (t *Trim) noticeFraming(k *kitchen.Kitchen) {
	m := t.Overhead.Make
	if t.Work >= RelocateBottomMember {
		switch m.HungFrom {
		case survey.HungJoists, survey.HungTrusses:
			from := map[survey.HungFrom]string{survey.HungJoists: "joists", survey.HungTrusses: "trusses"}[m.HungFrom]
			t.note(finding.Finding{
				Code: "trim.framing.never_notch", Severity: finding.AsCaution, Pointer: t.Overhead.Pointer + "/make/hung_from",
				Params: []finding.Param{finding.Word("hung_from", from)},
			})
		case survey.HungUnknown:
			t.note(finding.Finding{
				Code: "trim.framing.hung_from_unknown", Severity: finding.AsNote, Pointer: t.Overhead.Pointer + "/make/hung_from",
			})
		}
	}
	if left := t.Most.Neg().Plus(m.Lining); t.Work == LiningOnly && left.CmpLength(m.NewBottom) < 0 && m.NewBottom > 0 {
		t.note(finding.Finding{
			Code: "trim.new_bottom.no_room", Severity: finding.AsCaution, Pointer: t.Overhead.Pointer + "/make/new_bottom",
			Need: finding.Up(m.NewBottom.Exact()), Have: finding.Down(left),
		})
	}
	if fireblocked(t) {
		t.noticeFireblock(k)
	}
}

// noticeFireblock weighs more where the code that asks for it applies.
func (t *Trim) noticeFireblock(k *kitchen.Kitchen) {
	f := finding.Finding{Code: "trim.fireblock.restore", Severity: finding.AsNote}
	if k.Room.CodeSet == survey.CodeUSIRC {
		f.Severity = finding.AsCaution
	}
	t.note(f)
}

// noticeServices says which services are in the cut's way, and which wires
// could be live.
func (t *Trim) noticeServices() {
	for _, c := range t.Conflicts {
		if t.isItsDuct(c) {
			t.note(finding.Finding{Code: "trim.duct.shortened", Severity: finding.AsNote, Pointer: c.Pointer, Have: finding.Down(c.Level), Need: finding.Up(c.Level.Add(c.Short))})
			continue
		}
		f := finding.Finding{
			Code: "trim.service.in_the_way", Severity: finding.AsCaution, Pointer: c.Pointer,
			Params: []finding.Param{finding.Word("kind", c.Service.Kind.String()), finding.Size("at", finding.Near(c.At.Exact()))},
			Need:   finding.Up(c.Level.Add(c.Short)), Have: finding.Down(c.Level),
			Remedies: []finding.Remedy{{Code: "trim.remedy.move_service"}, {Code: "trim.remedy.lower_cabinet"}},
		}
		if c.Service.Movable == survey.NotMovable {
			f.Code, f.Severity = "trim.service.immovable", finding.AsStop
			f.Remedies = f.Remedies[1:]
		}
		t.note(f)
	}
	for _, s := range t.live() {
		t.note(finding.Finding{
			Code: "trim.wire.live", Severity: finding.AsCaution, Pointer: s.Pointer,
			Params: []finding.Param{finding.Word("kind", s.Kind.String())},
		})
	}
}

// noticeDuct says what a cut duct box leaves, and what has to line up.
func (t *Trim) noticeDuct(k *kitchen.Kitchen) {
	if t.Overhead.Kind != survey.DuctBox || t.Work == TakeDown {
		return
	}
	if left, right, ok := neighbours(k, t); ok {
		t.note(finding.Finding{
			Code: "trim.duct.neighbours_first", Severity: finding.AsNote,
			Params: []finding.Param{finding.Word("left", left.ID), finding.Word("right", right.ID)},
		})
	}
	stub := fit.Stub(k, t.Overhead, t.CutLine, t.From, t.To)
	t.note(finding.Finding{Code: "trim.duct.stub", Severity: finding.AsNote, Have: finding.Down(stub)})
	if c := k.Plan.Cooking; c != nil && c.Hood != nil && c.Hood.DuctBox == t.Overhead.ID {
		from, to := c.From.Exact().Plus(c.To), t.Overhead.From.Exact().Plus(t.Overhead.To)
		t.note(finding.Finding{
			Code: "trim.duct.hood", Severity: finding.AsNote, Pointer: c.Pointer,
			Params: []finding.Param{offCentre(from, to)},
		})
	}
}

// offCentre is how far two middles, each given doubled, lie apart.
func offCentre(a, b length.Exact) finding.Param {
	apart := b.Sub(a)
	if apart.Sign() < 0 {
		apart = apart.Neg()
	}
	half := length.Interpolate(0, length.Exact{}, 2, apart, 1)
	return finding.Size("apart", finding.Near(half))
}
