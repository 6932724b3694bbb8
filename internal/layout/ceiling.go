package layout

import (
	"railhead/internal/cabinet"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
)

// toCeiling is what a new cabinet's share of going up to the ceiling is taken to be
// worth while cabinets are chosen, by its width. Whether it does go up to the ceiling
// is found out in the end.
func (s *solver) toCeiling(r *row, width, height length.Length) money.Amount {
	worth := s.room.Kitchen.Prices.Worth.ToCeiling.Amount
	if s.room.Aim.Run == 0 || r.Kind == cabinet.Base || !s.reaches(r, height) {
		return 0
	}
	return worth.Share(int64(width), int64(max(width, s.room.Aim.Run)))
}

// reaches reports whether a cabinet of a height leaves a gap under the ceiling that
// is too narrow to stay open. Where overheads hang over half of the wall or more, none
// is taken to.
func (s *solver) reaches(r *row, height length.Length) bool {
	k, hung := s.room.Kitchen, length.Length(0)
	for _, h := range s.room.Sky.Hung {
		if h.Overhead.Wall == r.Wall && h.Overhead.Out < r.Depth {
			hung += h.To - h.From
		}
	}
	if 2*hung >= r.Length {
		return false
	}
	ceiling := k.Above(r.Wall, k.Room.Walls[r.Wall].Ceiling.Lowest(0, r.Length).Value)
	return ceiling.Minus(r.Low+height).CmpLength(k.Prices.Figures.Length(kitchen.NarrowGap)) < 0
}

// Upper is the length along which wall cabinets may stand under a sky, or tall ones
// where no wall cabinets are asked for.
func Upper(k *kitchen.Kitchen, f *kitchen.Filling, sky kitchen.Sky) length.Length {
	for _, kind := range []cabinet.Kind{cabinet.Wall, cabinet.Tall} {
		out := length.Length(0)
		if !f.Asks(kind) {
			continue
		}
		for _, w := range f.Walls {
			for _, at := range rowUnder(k, f, w, kind, sky).stretches {
				if at.Levels > 0 {
					out += at.To - at.From
				}
			}
		}
		if out > 0 {
			return out
		}
	}
	return 0
}
