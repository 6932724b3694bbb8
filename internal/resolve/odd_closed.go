package resolve

import "railhead/internal/finding"

// oddClosed mentions a room of four walls whose opposite walls are not equally long: with four inside corners of 90° it
// cannot close. Each length has two ends, so four tolerances are allowed for.
func (b *body) oddClosed() {
	for i := range b.walls {
		w := &b.walls[i]
		if w.Next < 0 || b.walls[w.Next].Next < 0 || b.walls[b.walls[w.Next].Next].Next != w.Prev {
			continue
		}
		across := &b.walls[b.walls[w.Next].Next]
		if by := (w.Length - across.Length).Abs(); across.Index > w.Index && by > 4*b.room.Tolerance {
			b.caution("survey.room.not_closed", across.Pointer+"/length", finding.Word("other", w.ID), size("by", by))
		}
	}
}
