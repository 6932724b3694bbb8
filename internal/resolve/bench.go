package resolve

import (
	"railhead/internal/survey"
)

func (b *body) readBench() {
	in, pointer := b.req.Survey.Bench, "/survey/bench"
	if in == nil {
		return
	}
	at, ok := b.length(in.At, pointer+"/at", anySign)
	w, found := b.onWall(in.Wall, pointer+"/wall")
	if !ok || !found {
		return
	}
	b.onWallAt(w, at, "survey.bench.off_wall", pointer+"/at")
	mark, _ := b.level(&in.Level, pointer+"/level", w, b.floorNear(w, at, at))
	b.room.Bench = &survey.Bench{Pointer: pointer, Wall: w.Index, At: at, Level: mark, Says: in.Says}
}
