package resolve

import (
	"railhead/api"
	"railhead/internal/survey"
)

// unsaid marks an end that is worked out once every overhead is read.
const unsaid survey.EndKind = -1

// readEnds reads what an overhead's ends meet, where the request says so.
func (b *body) readEnds(o *overhead) {
	in, pointer := o.in.Ends, o.Pointer+"/ends"
	if in == nil {
		in = &api.Ends{}
	}
	end := func(word, pointer string) survey.EndKind {
		if word == "" {
			return unsaid
		}
		return oneOf[survey.EndKind](b, word, pointer, "open", "wall", "corner", "cabinet")
	}
	o.Left, o.Right = end(in.Left, pointer+"/left"), end(in.Right, pointer+"/right")
}

// joinOverheads works out the ends that nobody described.
func (b *body) joinOverheads() {
	for w := range b.room.Walls {
		for i := range b.room.Walls[w].Overheads {
			o := &b.room.Walls[w].Overheads[i]
			if o.Left == unsaid {
				o.Left = b.leftEnd(o)
			}
			if o.Right == unsaid {
				o.Right = b.rightEnd(o)
			}
		}
	}
}

// leftEnd and rightEnd: an end that another part of the same thing takes up goes on, as around a corner; an end at the
// wall's end meets the wall around the corner; any other end is free.
func (b *body) leftEnd(o *survey.Overhead) survey.EndKind {
	w := &b.room.Walls[o.Wall]
	for _, p := range b.parts(o, w.Prev) {
		if o.From <= p.Face() && b.room.Walls[w.Prev].Length-p.To <= o.Face() {
			return survey.EndCorner
		}
	}
	return b.plainEnd(o, o.From == 0, func(p *survey.Overhead) bool { return p.To == o.From })
}

func (b *body) rightEnd(o *survey.Overhead) survey.EndKind {
	w := &b.room.Walls[o.Wall]
	for _, p := range b.parts(o, w.Next) {
		if w.Length-o.To <= p.Face() && p.From <= o.Face() {
			return survey.EndCorner
		}
	}
	return b.plainEnd(o, o.To == w.Length, func(p *survey.Overhead) bool { return p.From == o.To })
}

func (b *body) plainEnd(o *survey.Overhead, atWall bool, goesOn func(*survey.Overhead) bool) survey.EndKind {
	for _, p := range b.parts(o, o.Wall) {
		if goesOn(p) {
			return survey.EndCorner
		}
	}
	if atWall {
		return survey.EndWall
	}
	return survey.EndOpen
}

// parts are the other parts of an overhead's group on a wall; −1 is no wall.
func (b *body) parts(o *survey.Overhead, wall int) (out []*survey.Overhead) {
	if wall < 0 {
		return nil
	}
	for i := range b.room.Walls[wall].Overheads {
		if p := &b.room.Walls[wall].Overheads[i]; p != o && p.Group == o.Group {
			out = append(out, p)
		}
	}
	return out
}
