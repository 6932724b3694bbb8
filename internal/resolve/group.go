package resolve

import (
	"railhead/internal/survey"
)

// join links the walls that meet in inside corners. The last wall may join the first only where the walls can close
// around a room, which takes four square corners.
func (b *body) join() {
	for i := range b.walls {
		if !b.walls[i].in.JoinsNext {
			continue
		}
		next := i + 1
		if next == len(b.walls) {
			if len(b.walls) < 4 {
				b.fault("survey.wall.joins_nothing", b.walls[i].Pointer+"/joins_next")
				continue
			}
			next = 0
		}
		b.walls[i].Next, b.walls[next].Prev = next, i
	}
}

// group makes the level groups: walls that join, and walls that are tied by level_with. They are numbered in order of
// their first wall.
func (b *body) group() {
	lead := b.ties()
	number := map[int]int{}
	for i := range b.walls {
		g, ok := number[lead[i]]
		if !ok {
			g = len(b.room.Groups)
			number[lead[i]] = g
			b.room.Groups = append(b.room.Groups, survey.Group{})
		}
		b.walls[i].Group = g
		b.room.Groups[g].Walls = append(b.room.Groups[g].Walls, i)
	}
}

// ties names a leading wall for every wall; walls of one level group have the same.
func (b *body) ties() []int {
	lead := make([]int, len(b.walls))
	for i := range lead {
		lead[i] = i
	}
	tie := func(x, y int) {
		from, to := lead[x], lead[y]
		for i := range lead {
			if lead[i] == from {
				lead[i] = to
			}
		}
	}
	for i := range b.walls {
		w := &b.walls[i]
		if w.Next >= 0 {
			tie(i, w.Next)
		}
		if w.in.LevelWith == "" {
			continue
		}
		other, ok := b.onWall(w.in.LevelWith, w.Pointer+"/level_with")
		switch {
		case !ok:
		case other.Index == i:
			b.fault("survey.wall.level_with_itself", w.Pointer+"/level_with")
		default:
			tie(i, other.Index)
		}
	}
	return lead
}
