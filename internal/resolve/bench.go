package resolve

import (
	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

func (b *body) readBench() {
	in, pointer := b.req.Survey.Bench, "/survey/bench"
	if in == nil {
		return
	}
	at, ok := b.length(in.At, pointer+"/at", anySign)
	w, found := b.onWall(in.Wall, pointer+"/wall")
	mark := b.markedAt(w, at, ok && found, &in.Level, pointer, "survey.bench.off_wall")
	b.room.Bench = &survey.Bench{Pointer: pointer, Wall: w.Index, At: at, Level: mark, Says: in.Says}
}

// markedAt reads a level at a station of a wall that a member names.
func (b *body) markedAt(w *wall, at length.Length, usable bool, in *api.Level, pointer, off string) level.Height {
	if usable {
		b.onWallAt(w, at, off, pointer+"/at")
	}
	h, _ := b.level(in, pointer+"/level", w, b.floorOver(w, survey.Span{From: at, To: at}, usable, pointer))
	return h
}
