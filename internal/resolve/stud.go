package resolve

import (
	"cmp"

	"railhead/api"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// closestStuds is the smallest spacing that is taken for one of studs; they are some 40 mm thick themselves (common
// practice, no source).
const closestStuds = 50 * length.Millimetre

// studs are the centres of a wall's studs, in order.
func (b *body) studs(in *api.Studs, pointer string, w *wall) []length.Length {
	listed, spaced := len(in.At) > 0, in.First.Given() || in.Spacing.Given()
	out := b.listedStuds(in.At, pointer+"/at", w)
	switch {
	case listed && spaced:
		b.fault("survey.studs.two_ways", pointer+"/at")
		b.optional(in.First, pointer+"/first", anySign)
		b.optional(in.Spacing, pointer+"/spacing", positive)
	case spaced:
		return b.spacedStuds(in, pointer, w)
	case !listed:
		b.fault("body.member.missing", pointer+"/first")
	}
	return out
}

func (b *body) spacedStuds(in *api.Studs, pointer string, w *wall) (out []length.Length) {
	first, ok := b.length(in.First, pointer+"/first", anySign)
	spacing, read := b.length(in.Spacing, pointer+"/spacing", positive)
	if read && spacing < closestStuds {
		b.fault("survey.studs.too_close", pointer+"/spacing", size("least", closestStuds))
		read = false
	}
	on := ok && b.onWallAt(w, first, "survey.stud.off_wall", pointer+"/first")
	if !on || !read || !w.lengthOK {
		return nil
	}
	for at := first; at <= w.Length; at += spacing {
		out = append(out, at)
	}
	return out
}

func (b *body) listedStuds(in []api.Length, pointer string, w *wall) (out []length.Length) {
	for i := range in {
		at, ok := b.length(in[i], element(pointer, i), anySign)
		if !ok {
			continue
		}
		b.onWallAt(w, at, "survey.stud.off_wall", element(pointer, i))
		if len(out) > 0 && at <= out[len(out)-1] {
			b.fault("survey.studs.unordered", element(pointer, i))
			continue
		}
		out = append(out, at)
	}
	return out
}

func (b *body) readBacking(w *wall) {
	w.Backing = oneOf[survey.Backing](b, cmp.Or(w.in.Backing, "unknown"), w.Pointer+"/backing",
		"unknown", "wood_stud", "steel_stud", "masonry", "board")
	w.Board = b.lengthOr(w.in.Board, w.Pointer+"/board", notNegative, 0)
	if w.in.Studs != nil {
		w.StudsKnown = true
		w.Studs = b.studs(w.in.Studs, w.Pointer+"/studs", w)
	}
}
