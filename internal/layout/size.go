package layout

import (
	"railhead/internal/cabinet"
	"railhead/internal/fill"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
)

// worth is what one new cabinet is worth, taken apart.
type worth struct {
	litres  money.Quantity
	storage money.Amount
	run     length.Length // of counter over a base cabinet
	counter money.Amount
	prefer  money.Amount
	price   money.Amount
}

func (w worth) sum() money.Amount {
	return w.storage.Plus(w.counter).Plus(w.prefer).Minus(w.price)
}

// Litres are the outer volume of a cabinet.
func Litres(c *cabinet.Placed) money.Quantity { return cabinet.Litres(c.Volume(c.Height)) }

// worthOf is what a new cabinet is worth. Counter runs over the whole front of a base
// cabinet; around a corner it is counted along both walls.
func (s *solver) worthOf(c *cabinet.Placed) worth {
	f := s.room.Filling
	w := worth{litres: Litres(c), price: f.Weights.Cabinet}
	w.storage = s.room.Kitchen.Prices.Worth.Litre.Times(w.litres)
	if c.Kind == cabinet.Base {
		w.run = c.Width()
		if c.Corner != nil && c.Corner.Shape != cabinet.CornerBlind {
			w.run += c.Corner.OtherWidth - c.Depth
		}
		w.counter = perMM(f.Weights.CounterPerMM, w.run)
	}
	for _, p := range f.Sizes {
		if p.Kind == c.Kind && p.Width == c.Width() && (p.Height == 0 || p.Height == c.Height) {
			w.prefer = w.prefer.Plus(p.Prefer)
			if p.Price != nil {
				w.price = *p.Price
			}
		}
	}
	return w
}

func perMM(rate money.Amount, l length.Length) money.Amount {
	return rate.Share(int64(l), int64(length.Millimetre))
}

// sizes are what may stand in a row. What a cabinet costs is counted for each
// cabinet by the weight, so the difference to that is in its size's worth.
func (s *solver) sizes(r *row) []fill.Size {
	var out []fill.Size
	for _, h := range r.offered {
		for _, w := range s.room.Kitchen.System.Sizes(r.Kind).Widths {
			c := r.cabinet(0, w, h)
			value := s.worthOf(&c).sum().Plus(s.room.Filling.Weights.Cabinet).Plus(s.toCeiling(r, w, h))
			out = append(out, fill.Size{Width: w, Height: h, Worth: value})
		}
	}
	return out
}

// weights are those of one run.
func weights(f *kitchen.Filling, grid length.Length, lines bool) fill.Weights {
	w := fill.Weights{
		Cabinet: f.Weights.Cabinet, Filler: f.Weights.Filler, Panel: f.Weights.Panel, HeightChange: f.Weights.HeightChange,
		FillerPerGrid: perMM(f.Weights.FillerPerMM, grid), OpenPerGrid: perMM(f.Weights.OpenPerMM, grid),
	}
	if lines {
		w.LineMiss = f.Weights.BaseLineMiss
	}
	return w
}
