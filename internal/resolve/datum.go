package resolve

import (
	"railhead/internal/survey"
)

// readDatums reads the datums that the planner set, one a level group.
func (b *body) readDatums() {
	for i := range b.req.Plan.Datums {
		in, pointer := &b.req.Plan.Datums[i], item("/plan", "datums", i)
		at, ok := b.length(in.At, pointer+"/at", anySign)
		w, found := b.onWall(in.Wall, pointer+"/wall")
		h := b.markedAt(w, at, ok && found, &in.Level, pointer, "plan.datum.off_wall")
		if !found {
			continue
		}
		if _, twice := b.given[w.Group]; twice {
			b.fault("plan.datum.twice", pointer+"/wall")
		}
		b.given[w.Group] = survey.Datum{Wall: w.Index, At: at, Level: h, By: survey.ByGiven}
	}
}
