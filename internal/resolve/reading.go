package resolve

import (
	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/level"
	"railhead/internal/survey"
)

// form is one of the ways in which a level is read.
type form struct {
	name  string
	value api.Length
}

// formOf picks the one form that a reading has; false where there is none or more than one.
func formOf(r *api.Reading) (form, bool) {
	var out []form
	for _, f := range [...]form{{"height", r.Height}, {"up", r.Up}, {"down", r.Down}, {"above_floor", r.AboveFloor}} {
		if f.value.Given() {
			out = append(out, f)
		}
	}
	if len(out) != 1 {
		return form{}, false
	}
	return out[0], true
}

// reading reduces one reading to a height in the survey's frame; false where it is refused.
func (b *body) reading(r *api.Reading, pointer string, w *wall, floor floorAt) (level.Height, bool) {
	f, ok := formOf(r)
	if !ok {
		b.fault("survey.reading.not_one", pointer)
		return level.Height{}, false
	}
	return b.reduce(r, f, pointer, pointer+"/"+f.name, w, floor)
}

// level reduces a level: a bare length is above the floor right there.
func (b *body) level(l *api.Level, pointer string, w *wall, floor floorAt) (level.Height, bool) {
	if l.Bare {
		return b.reduce(&l.Reading, form{"above_floor", l.AboveFloor}, pointer, pointer, w, floor)
	}
	if !l.Given() {
		b.fault("body.member.missing", pointer)
		return level.Height{}, false
	}
	return b.reading(&l.Reading, pointer, w, floor)
}

func (b *body) reduce(r *api.Reading, f form, pointer, at string, w *wall, floor floorAt) (level.Height, bool) {
	tolerance := b.lengthOr(r.Tolerance, pointer+"/tolerance", notNegative, b.frame.tolerance)
	from, fromOK := b.origin(r, f, pointer, at, w, floor)
	value, ok := b.length(f.value, at, anySign)
	if !ok || !fromOK {
		return level.Height{}, false
	}
	if f.name == "down" {
		value = -value
	}
	return from.Add(b.read(at, tolerance, value)), true
}

// origin is what a reading counts from: the survey's zero, a laser line, or the floor. A reading that counts from no line
// must not name one.
func (b *body) origin(r *api.Reading, f form, pointer, at string, w *wall, floor floorAt) (level.Height, bool) {
	named, fromLine := r.Laser != "", f.name == "up" || f.name == "down"
	line, known := 0, true
	if named {
		line, known = b.line(r.Laser, pointer+"/laser")
	}
	switch {
	case named && !fromLine:
		b.fault("survey.reading.laser_unused", pointer+"/laser")
		return level.Height{}, false
	case !known:
		return level.Height{}, false
	case named:
		return b.frame.lines[line], true
	case fromLine:
		return b.lineOf(w), true
	case f.name == "above_floor":
		return floor(at), true
	}
	return level.Height{}, true
}

// lineOf is the laser line that a wall's readings count from.
func (b *body) lineOf(w *wall) level.Height {
	if w.line == unknownLine {
		return b.lost(w.Pointer + "/laser")
	}
	return b.frame.lines[w.line]
}

// floorAt is the floor as found where the level at the pointer was taped from it.
type floorAt func(pointer string) level.Height

// floorNear is the floor as found at a station, or in the middle of a stretch; where the floor steps right there, the
// lower side, because that leaves the least room above.
func (b *body) floorNear(w *wall, from, to length.Length) floorAt {
	if !w.floorOK {
		return b.noFloor(w.Pointer + "/floor " + (from + to).MM())
	}
	low := (from + to) >> 1 // rounds down, so that low and high lie evenly about the middle
	high := from + to - low
	return func(pointer string) level.Height {
		left, right := w.FoundFloor.HeightAt(low, level.Left), w.FoundFloor.HeightAt(high, level.Right)
		if low == high && !left.Value.Equal(right.Value) {
			b.note("survey.reading.on_floor_step", pointer, size("at", low))
		}
		if right.Value.Less(left.Value) {
			return right
		}
		return left
	}
}

// floorOver is the floor in the middle of a stretch, where the stretch is usable.
func (b *body) floorOver(w *wall, s survey.Span, usable bool, pointer string) floorAt {
	if !usable {
		return b.noFloor(pointer)
	}
	return b.floorNear(w, s.From, s.To)
}

// floorOn is the floor as found on one side of a station.
func (b *body) floorOn(w *wall, at length.Length, s level.Side) floorAt {
	if !w.floorOK {
		return b.noFloor(w.Pointer + "/floor " + (at + at).MM())
	}
	return func(string) level.Height { return w.FoundFloor.HeightAt(at, s) }
}

// noFloor is the floor where it, or the place on it, is not usable.
func (b *body) noFloor(place string) floorAt {
	return func(string) level.Height { return b.lost(place) }
}
