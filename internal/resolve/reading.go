package resolve

import (
	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/level"
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

// floorAt is the floor as found where the level at the pointer was taped from it; false where the floor is not usable.
type floorAt func(pointer string) (level.Height, bool)

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
		b.fault("request.member.missing", pointer)
		return level.Height{}, false
	}
	return b.reading(&l.Reading, pointer, w, floor)
}

func (b *body) reduce(r *api.Reading, f form, pointer, at string, w *wall, floor floorAt) (level.Height, bool) {
	tolerance := b.lengthOr(r.Tolerance, pointer+"/tolerance", notNegative, b.frame.tolerance)
	line, lineOK := b.lineOf(r, f, pointer, w)
	value, ok := b.length(f.value, at, anySign)
	if !ok || !lineOK {
		return level.Height{}, false
	}
	if f.name == "down" {
		value = -value
	}
	switch f.name {
	case "above_floor":
		below, ok := floor(at)
		return below.Add(b.read(at, tolerance, value)), ok
	case "height":
		return b.read(at, tolerance, value), true
	default:
		return b.frame.lines[line].Add(b.read(at, tolerance, value)), b.frame.tied[line]
	}
}

// lineOf is the laser line that a reading counts from. A reading that counts from none must not name one.
func (b *body) lineOf(r *api.Reading, f form, pointer string, w *wall) (int, bool) {
	line, ok := b.line(r.Laser, pointer+"/laser", w.line)
	if ok && r.Laser != "" && f.name != "up" && f.name != "down" {
		b.fault("survey.reading.laser_unused", pointer+"/laser")
		return line, false
	}
	return line, ok
}

// floorNear is the floor as found at a station, or in the middle of a stretch; where the floor steps right there, the
// lower side, because that leaves the least room above.
func (b *body) floorNear(w *wall, from, to length.Length) floorAt {
	low := (from + to) >> 1 // rounds down, so that low and high lie evenly about the middle
	high := from + to - low
	return func(pointer string) (level.Height, bool) {
		if !w.floorOK {
			return level.Height{}, false
		}
		left, right := w.FoundFloor.HeightAt(low, level.Left), w.FoundFloor.HeightAt(high, level.Right)
		if low == high && !left.Value.Equal(right.Value) {
			b.note("survey.reading.on_floor_step", pointer, size("at", low))
		}
		if right.Value.Less(left.Value) {
			return right, true
		}
		return left, true
	}
}

// floorOn is the floor as found on one side of a station.
func (w *wall) floorOn(at length.Length, s level.Side) floorAt {
	return func(string) (level.Height, bool) {
		if !w.floorOK {
			return level.Height{}, false
		}
		return w.FoundFloor.HeightAt(at, s), true
	}
}

// noFloor is for what cannot be taped from the floor: the floor itself, and what stands nowhere usable.
func noFloor(string) (level.Height, bool) { return level.Height{}, false }
