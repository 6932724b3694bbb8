package trim

import (
	"slices"
	"strings"

	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// list collects the steps of one cut.
type list struct {
	k     *kitchen.Kitchen
	t     *Trim
	steps []Step
}

func (l *list) add(name string, params ...finding.Param) {
	l.steps = append(l.steps, Step{"trim.step." + name, params})
}

func (l *list) addIf(cond bool, name string, params ...finding.Param) {
	if cond {
		l.add(name, params...)
	}
}

// steps is the work, in order; none where nothing comes off.
func steps(k *kitchen.Kitchen, t Trim) []Step {
	l := &list{k: k, t: &t}
	left, right, duct := neighbours(k, &t)
	switch {
	case t.Work == None:
		return nil
	case t.Work == TakeDown:
		l.takeDown()
	case duct:
		l.ductBox(left, right)
	default:
		l.cut()
	}
	return l.steps
}

// cut is the usual order: the line at the rail, up to the cut, cut, rail, hang.
func (l *list) cut() {
	l.makeSafe()
	hidden := railHidden(l.k, l.t)
	switch {
	case l.t.RailEdge == nil:
		l.add("line_at_top", l.rowTop())
		l.add("mark_up_from_top", l.headroom())
	case hidden:
		l.add("line_on_face", l.rail())
		l.add("mark_up_on_face", l.aboveRail())
	default:
		l.add("line_at_rail", l.rail())
		l.add("mark_up", l.aboveRail())
	}
	l.add("line_to_mark", l.cutLine())
	l.takeOff()
	l.putUp(hidden)
}

// takeDown needs no cut line; the rail is struck on the wall behind.
func (l *list) takeDown() {
	l.makeSafe()
	l.takeOff()
	l.putUp(true)
}

// ductBox fits the neighbours first: their tops are the line that the box is
// cut to, and what the eye sees.
func (l *list) ductBox(left, right *cabinet.Placed) {
	l.makeSafe()
	names := []finding.Param{finding.Word("left", left.ID), finding.Word("right", right.ID)}
	l.addIf(l.t.RailEdge != nil, "fit_rails_beside", append(names, l.railIfAny()...)...)
	l.add("hang_neighbours", names...)
	l.add("check_tops", names...)
	l.add("carry_line", names...)
	l.add("mark_up_from_top", l.headroom())
	l.takeOff()
	l.add("duct_stub")
	if railHidden(l.k, l.t) {
		l.boardBehind()
		l.add("fit_rail_between", l.railIfAny()...)
	}
	l.add("fit_middle", l.cabinets())
}

// makeSafe comes before anything is touched.
func (l *list) makeSafe() {
	unseen := l.t.Overhead.Inside.Looked != survey.Opened
	l.addIf(unseen || len(l.t.live()) > 0, "dead")
}

// takeOff is the work on the overhead itself, and what it must be left like.
func (l *list) takeOff() {
	t := l.t
	rest := meetsRest(t)
	l.addIf(rest, "mark_ends", finding.Size("from", finding.Down(t.From.Exact())), finding.Size("to", finding.Up(t.To.Exact())))
	l.addIf(t.Overhead.Inside.Looked != survey.Opened, "open_and_look")
	l.addIf(slices.ContainsFunc(t.Conflicts, func(c Conflict) bool { return !t.isItsDuct(c) }), "move_services")
	switch t.Work {
	case LiningOnly:
		l.add("cut_lining", l.cutLine())
	case RelocateBottomMember:
		l.add("cut_lining", l.cutLine())
		l.add("refit_member", l.frameLine())
	case Reframe:
		l.add("cut_lining", l.cutLine())
		l.add("reframe", l.frameLine())
	default:
		l.add("take_down")
	}
	l.addIf(fireblocked(t), "fireblock")
	l.addIf(t.Overhead.Make.NewBottom > 0 && t.FrameLine != nil, "new_bottom", l.cutLine())
	l.addIf(len(t.Returns) > 0, "close_faces")
}

// putUp is what follows the cut.
func (l *list) putUp(hidden bool) {
	if l.t.RailEdge != nil {
		if hidden {
			l.boardBehind()
			l.add("line_back_to_rail", l.rail())
		}
		l.add("fit_rail", l.rail())
	}
	l.addIf(len(l.t.Cabinets) > 0, "hang", l.cabinets())
}

func (l *list) boardBehind() {
	l.addIf(l.t.Boarded, "board_behind")
}

// boarded reports whether the wall behind a cut is boarded: where the cut bares the
// rail's place, and nobody has seen the wall finished.
func boarded(k *kitchen.Kitchen, t *Trim) bool {
	if t.Work == None || t.RailEdge == nil || t.Overhead.Behind.Wall == survey.Yes {
		return false
	}
	return t.Work == TakeDown || railHidden(k, t)
}

// railHidden reports whether the overhead hangs at the wall down to the place of
// the rail, so that the rail goes on only after the cut.
func railHidden(k *kitchen.Kitchen, t *Trim) bool {
	if t.RailEdge == nil || t.Overhead.Out > 0 {
		return false
	}
	under := lowest(k, t.Overhead, survey.Span{From: t.From, To: t.To})
	return under.CmpLength(*t.RailEdge+k.System.Rail.Profile) < 0
}

func meetsRest(t *Trim) bool {
	for _, r := range t.Returns {
		if r.Meets == MeetsOverhead {
			return true
		}
	}
	return false
}

func fireblocked(t *Trim) bool { return t.Work != None && t.Overhead.Structure != survey.Solid }

func (l *list) rail() finding.Param { return finding.Size("rail", finding.Down(l.t.RailEdge.Exact())) }

func (l *list) railIfAny() []finding.Param {
	if l.t.RailEdge == nil {
		return nil
	}
	return []finding.Param{l.rail()}
}

func (l *list) aboveRail() finding.Param {
	return finding.Size("above_rail", finding.Up((l.t.CutLine - *l.t.RailEdge).Exact()))
}

func (l *list) rowTop() finding.Param { return finding.Size("top", finding.Down(l.t.RowTop.Exact())) }

func (l *list) headroom() finding.Param {
	return finding.Size("headroom", finding.Up((l.t.CutLine - l.t.RowTop).Exact()))
}

func (l *list) cutLine() finding.Param { return up("cut_line", l.t.CutLine) }

func (l *list) frameLine() finding.Param { return up("frame_line", *l.t.FrameLine) }

func up(name string, v length.Length) finding.Param {
	return finding.Size(name, finding.Up(v.Exact()))
}

func (l *list) cabinets() finding.Param {
	var ids []string
	for _, c := range l.t.Cabinets {
		ids = append(ids, c.ID)
	}
	return finding.Word("cabinets", strings.Join(ids, ", "))
}
