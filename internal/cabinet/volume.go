package cabinet

import (
	"math/big"

	"railhead/internal/length"
	"railhead/internal/money"
)

// FloorArea is the floor that a cabinet covers, in square nanometres: a diagonal
// corner lacks its triangle, an l-shaped one its inner square.
func (p *Placed) FloorArea() *big.Int {
	out := product(p.Width(), p.Depth)
	if p.Corner == nil || p.Corner.Shape == CornerBlind {
		return out
	}
	wing := product(max(0, p.Corner.OtherWidth-p.Depth), p.Depth)
	out.Add(out, wing)
	if p.Corner.Shape == CornerDiagonal {
		inner := product(max(0, p.Width()-p.Depth), max(0, p.Corner.OtherWidth-p.Depth))
		out.Add(out, inner.Rsh(inner, 1))
	}
	return out
}

func product(a, b length.Length) *big.Int {
	return new(big.Int).Mul(big.NewInt(int64(a)), big.NewInt(int64(b)))
}

// litre is a cubic decimetre in cubic nanometres.
var litre = new(big.Int).Exp(big.NewInt(int64(length.Metre)/10), big.NewInt(3), nil)

// Volume is the volume over its floor up to some height, in cubic nanometres.
func (p *Placed) Volume(height length.Length) *big.Int {
	out := p.FloorArea()
	return out.Mul(out, big.NewInt(int64(height)))
}

// Litres is a volume in litres.
func Litres(volume *big.Int) money.Quantity {
	q, _ := money.QuantityFromRat(new(big.Rat).SetFrac(volume, litre))
	return q
}
