package rail

import (
	"strconv"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// notice adds everything there is to say about a rail.
func (r *Rail) notice(b band, row *row, runs []survey.Span, hidden []*survey.Overhead) {
	r.noticeCabinets(row, runs)
	r.noticePieces(b.wall)
	r.noticeFixtures(b, runs)
	r.noticeBacking(b.wall)
	for _, o := range hidden {
		r.noticeWallBehind(o)
	}
}

// noticeCabinets finds cabinets without a rail behind all of their width.
func (r *Rail) noticeCabinets(row *row, runs []survey.Span) {
	for _, c := range row.cabinets {
		width, have := c.To-c.From, common(c.Span, runs)
		if have == width {
			continue
		}
		f := finding.Finding{
			Code: "rail.cabinet.part_without", Severity: finding.AsCaution, Pointer: c.cabinet.Pointer,
			Need: finding.Up(width.Exact()), Have: finding.Down(have.Exact()), Remedies: remedies("blocking"),
		}
		if have <= 0 {
			f.Code, f.Severity = "rail.cabinet.without", finding.AsStop
		}
		r.Findings = append(r.Findings, f)
	}
}

// noticePieces finds pieces too short to hold anything.
func (r *Rail) noticePieces(w *survey.Wall) {
	for _, p := range r.Pieces {
		if p.Length() < LeastPiece {
			r.Findings = append(r.Findings, finding.Finding{
				Code: "rail.piece.short", Severity: finding.AsCaution, Pointer: w.Pointer,
				Params: []finding.Param{finding.Size("from", finding.Near(p.From.Exact())), finding.Size("to", finding.Near(p.To.Exact()))},
				Need:   finding.Up(LeastPiece.Exact()), Have: finding.Down(p.Length().Exact()),
			})
		}
	}
}

// noticeFixtures finds what sits flush in the wall where the rail runs.
func (r *Rail) noticeFixtures(b band, runs []survey.Span) {
	for i := range b.wall.Fixtures {
		f := &b.wall.Fixtures[i]
		if f.Out > 0 || !b.crossesFixture(f) || common(fixtureSpan(f), runs) <= 0 {
			continue
		}
		r.Findings = append(r.Findings, finding.Finding{
			Code: "rail.fixture.behind", Severity: finding.AsCaution, Pointer: f.Pointer,
			Params:   []finding.Param{finding.Word("kind", f.Kind.String()), finding.Size("at", finding.Near(f.At.Exact()))},
			Remedies: remedies("move_fixture"),
		})
	}
}

// noticeBacking says what has to be known or built for the screws to hold.
func (r *Rail) noticeBacking(w *survey.Wall) {
	if len(r.Pieces) == 0 {
		return
	}
	if w.Backing == survey.BackingUnknown {
		r.Questions = append(r.Questions, finding.Question{Code: "ask.wall.backing", Pointer: w.Pointer + "/backing"})
	}
	if (w.Backing == survey.WoodStud || w.Backing == survey.SteelStud) && !w.StudsKnown {
		r.Questions = append(r.Questions, finding.Question{Code: "ask.wall.studs", Pointer: w.Pointer + "/studs"})
	}
	r.noticeScrews(w, BoardOnly, "rail.backing.none")
	r.noticeScrews(w, Unknown, "rail.backing.unknown")
	r.noticeScrews(w, Blocking, "rail.blocking.needed")
}

// noticeScrews says how many screws go into what will not do as it is.
func (r *Rail) noticeScrews(w *survey.Wall, into Into, code string) {
	n := 0
	for _, f := range r.Fixings {
		if f.Into == into {
			n++
		}
	}
	if n > 0 {
		r.Findings = append(r.Findings, finding.Finding{
			Code: code, Severity: finding.AsCaution, Pointer: w.Pointer,
			Params:   []finding.Param{finding.Word("screws", strconv.Itoa(n))},
			Remedies: remedies("blocking", "backing_board"),
		})
	}
}

// noticeWallBehind says that the rail comes where an overhead hides the wall:
// it needs a flat base there, so new board goes up first. What is behind is
// asked with the survey.
func (r *Rail) noticeWallBehind(o *survey.Overhead) {
	f := finding.Finding{Severity: finding.AsCaution, Pointer: o.Pointer, Remedies: remedies("new_board")}
	switch o.Behind.Wall {
	case survey.No:
		f.Code = "rail.wall.unfinished"
	case survey.Unknown:
		f.Code = "rail.wall.unseen"
	default:
		return
	}
	r.Findings = append(r.Findings, f)
}

// unstated says which values of the rail nobody gave, and what is used instead.
func unstated(s *cabinet.System) []finding.Finding {
	r, used := s.Rail, limitsOf(s.Rail)
	var out []finding.Finding
	note := func(wrong bool, code, member string, have length.Length) {
		if wrong {
			out = append(out, finding.Finding{Code: code, Severity: finding.AsNote, Pointer: member, Have: finding.Near(have.Exact())})
		}
	}
	longest := longestOf(r.Stock)
	note(r.Profile <= 0, "rail.profile.not_stated", member(s, "profile"), 0)
	note(r.EndInset <= 0, "rail.end_inset.not_stated", member(s, "end_inset"), used.inset)
	note(r.LongestSpan <= 0, "rail.longest_span.not_stated", member(s, "longest_span"), used.span)
	note(r.LongestSpan > 0 && r.LongestSpan < LeastSpan, "rail.longest_span.too_short", member(s, "longest_span"), used.span)
	note(longest > 0 && longest < LeastPiece, "rail.stock.too_short", member(s, "stock"), longest)
	return out
}

// member is the member of the request that holds a rail's value.
func member(s *cabinet.System, name string) string {
	if s.ID != "" {
		return "/system"
	}
	return "/system/rail/" + name
}

func cornerNote(room *survey.Room, r *Rail) finding.Finding {
	return finding.Finding{
		Code: "rail.corner.butts", Severity: finding.AsNote, Pointer: room.Walls[r.Wall].Pointer,
		Params: []finding.Param{finding.Word("wall", room.Walls[room.Walls[r.Wall].Prev].ID)},
	}
}

func remedies(names ...string) []finding.Remedy {
	var out []finding.Remedy
	for _, n := range names {
		out = append(out, finding.Remedy{Code: "rail.remedy." + n})
	}
	return out
}
