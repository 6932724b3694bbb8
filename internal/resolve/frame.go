package resolve

import (
	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/level"
)

// frame is what the survey's levels are counted from. Its zero is the survey's own zero where any `height` is read;
// else it is the first laser line (less `laser_height`, where that is given), which nothing depends on.
type frame struct {
	tolerance length.Length
	heights   bool           // some reading counts from the survey's own zero
	lasers    bool           // some reading counts from a laser line
	lines     []level.Height // by laser; one unnamed line where none is declared
}

// known reports whether the lines' heights over the frame's zero are known.
func (f *frame) known(laserHeight api.Length) bool { return f.lasers || laserHeight.Given() }

func (b *body) readFrame() {
	b.frame.tolerance = b.readTolerance()
	b.room.Tolerance = b.frame.tolerance
	b.eachReading(func(r *api.Reading) {
		b.frame.heights = b.frame.heights || r.Height.Given()
		b.frame.lasers = b.frame.lasers || r.Up.Given() || r.Down.Given()
	})
	b.readLines(b.firstLine())
}

// readTolerance is the half-width of a reading's doubt: 2 mm or 1/16 in where nobody says (common practice, no source).
func (b *body) readTolerance() length.Length {
	usual := b.metricOr(2*length.Millimetre, length.Inch/16)
	in := b.req.Survey.Tolerance
	if !in.Given() {
		b.assume("assume.survey.tolerance", usual, "/survey/tolerance")
	}
	return b.lengthOr(in, "/survey/tolerance", notNegative, usual)
}

// firstLine is the first laser line over the frame's zero. It matters only where levels count from both.
func (b *body) firstLine() level.Height {
	in, pointer := b.req.Survey.LaserHeight, "/survey/laser_height"
	both := b.frame.heights && b.frame.lasers
	value, ok := b.optional(in, pointer, anySign)
	switch {
	case ok && !b.frame.heights:
		return level.Fixed(value.Exact())
	case ok:
		return b.read(pointer, b.frame.tolerance, value)
	case !both:
		return level.Height{}
	case !in.Given():
		b.fault("survey.laser_height.missing", pointer)
	}
	return b.lost(pointer)
}

// readLines ties every set-up to the first line. The tie is a reading of its own.
func (b *body) readLines(first level.Height) {
	b.frame.lines = []level.Height{first}
	for i, in := range b.req.Survey.Lasers {
		pointer := item("/survey", "lasers", i)
		tolerance := b.lengthOr(in.Tolerance, pointer+"/tolerance", notNegative, b.frame.tolerance)
		if i == 0 {
			b.firstIsZero(in.Above, pointer+"/above")
			continue
		}
		b.frame.lines = append(b.frame.lines, b.tied(first, in.Above, pointer+"/above", tolerance))
	}
}

func (b *body) firstIsZero(above api.Length, pointer string) {
	if b.lengthOr(above, pointer, anySign, 0) != 0 {
		b.fault("survey.laser.first_not_zero", pointer)
	}
}

// tied is a laser line over the first one.
func (b *body) tied(first level.Height, above api.Length, pointer string, tolerance length.Length) level.Height {
	if !above.Given() {
		b.fault("survey.laser.untied", pointer)
		return b.lost(pointer)
	}
	value, ok := b.length(above, pointer, anySign)
	if !ok {
		return b.lost(pointer)
	}
	return first.Add(b.read(pointer, tolerance, value))
}

// line is the index of the laser line of a name; false where there is none.
func (b *body) line(name, pointer string) (int, bool) {
	i, ok := b.ids.lasers[name]
	if !ok {
		b.astray("laser", name, pointer)
	}
	return i, ok
}

// read makes a reading and is its height.
func (b *body) read(pointer string, tolerance, value length.Length) level.Height {
	b.room.Readings = append(b.room.Readings, level.Reading{Pointer: pointer, HalfWidth: tolerance})
	return level.Read(level.ReadingID(len(b.room.Readings)-1), value)
}
