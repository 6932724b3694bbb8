package hazard

import (
	"math/big"

	"railhead/internal/length"
	"railhead/internal/money"
)

// Area is a surface in square nanometres.
type Area struct{ n *big.Int }

// AreaOf is a rectangle's.
func AreaOf(a, b length.Length) Area {
	return Area{new(big.Int).Mul(big.NewInt(int64(a)), big.NewInt(int64(b)))}
}

// Add is a + b.
func (a Area) Add(b Area) Area { return Area{new(big.Int).Add(a.value(), b.value())} }

func (a Area) value() *big.Int {
	if a.n == nil {
		return new(big.Int)
	}
	return a.n
}

// minorRepair is the interior paint that work may disturb in one room before it
// counts as renovation: 6 ft² (40 CFR 745.83, minor repair and maintenance).
var minorRepair = AreaOf(6*length.Foot, length.Foot)

// BeyondMinorRepair reports whether so much paint is more than minor repair in
// one room. Work that demolishes a painted surface never is minor, however
// small; the caller knows which it is.
func (a Area) BeyondMinorRepair() bool { return a.value().Cmp(minorRepair.value()) > 0 }

// Beyond reports whether it is more than an area in square metres.
func (a Area) Beyond(m2 money.Quantity) bool {
	thousandth := AreaOf(length.Metre, length.Millimetre) // of a square metre
	return a.value().Cmp(new(big.Int).Mul(thousandth.value(), big.NewInt(int64(m2)))) > 0
}

// SquareFeet is the area for people, rounded up to a tenth.
func (a Area) SquareFeet() string {
	tenth := new(big.Int).Quo(AreaOf(length.Foot, length.Foot).value(), big.NewInt(10))
	n, rest := new(big.Int).QuoRem(a.value(), tenth, new(big.Int))
	if rest.Sign() > 0 {
		n.Add(n, big.NewInt(1))
	}
	return new(big.Rat).SetFrac(n, big.NewInt(10)).FloatString(1)
}
