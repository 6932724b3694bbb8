package resolve

import (
	"railhead/internal/finding"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// onWallAt refuses a station that is not on the wall.
func (b *body) onWallAt(w *wall, at length.Length, code, pointer string) bool {
	if at >= 0 && (!w.lengthOK || at <= w.Length) {
		return true
	}
	b.fault(code, pointer, append(w.known(), size("at", at))...)
	return false
}

// onWallOver refuses a stretch that leaves the wall, at the member that leaves it.
func (b *body) onWallOver(w *wall, s survey.Span, code, pointer string) {
	switch {
	case w.lengthOK:
		b.within(s, 0, w.Length, code, pointer)
	case s.From < 0:
		b.fault(code, pointer+"/from", size("at", s.From), size("least", 0))
	}
}

// known is the wall's length, where it is known.
func (w *wall) known() []finding.Param {
	if !w.lengthOK {
		return nil
	}
	return []finding.Param{size("length", w.Length)}
}

// possibleShell refuses a ceiling at or under the floor. Where the wall's length is not usable, it reaches as far as the
// last level that was read on it.
func (b *body) possibleShell(w *wall) {
	if !w.floorOK || !w.ceilingOK {
		return
	}
	s := survey.Span{From: 0, To: w.Length}
	if !w.lengthOK {
		s.To = max(last(w.FoundFloor), last(w.Ceiling), 0)
	}
	w.sound = b.above(w.Ceiling, w.FoundFloor, s, "survey.ceiling.under_floor", w.Pointer+"/ceiling")
}

// last is the furthest station of a profile.
func last(p level.Profile) length.Length {
	points := p.Points()
	return points[len(points)-1].At
}

// above refuses an upper profile that is not above a lower one everywhere over a closed span.
func (b *body) above(upper, lower level.Profile, s survey.Span, code, pointer string) bool {
	least := closest(upper, lower, s)
	if least.Value.Sign() > 0 {
		return true
	}
	b.fault(code, pointer, size("at", least.At), finding.Size("gap", finding.Down(least.Value)))
	return false
}
