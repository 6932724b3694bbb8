package length

import (
	"math/big"
	"math/bits"
)

// Direction is the way an output is rounded. What must not be overstated goes down, what must not be understated goes
// up, and what is only reported goes to the nearest.
type Direction int

// The directions. Down is toward minus infinity and Up toward plus infinity, so a negative margin rounded down is a
// larger overlap.
const (
	Nearest Direction = iota // ties to even
	Down
	Up
)

// Round is e as a whole nanometre.
func (e Exact) Round(d Direction) Length {
	switch d {
	case Down:
		return e.Floor()
	case Up:
		return e.Ceil()
	default:
		return e.Nearest()
	}
}

// Floor is the largest whole nanometre that is not above e. A value beyond int64, which no sum of lengths within Max
// reaches, stops at its end; so it does in Ceil and Nearest.
func (e Exact) Floor() Length {
	if e.wide == nil {
		return e.whole
	}
	whole := new(big.Int).Div(e.wide.Num(), e.wide.Denom()) // Div goes down, as denominators are positive
	switch {
	case whole.IsInt64():
		return Length(whole.Int64())
	case whole.Sign() < 0:
		return minWhole
	default:
		return maxWhole
	}
}

// Ceil is the smallest whole nanometre that is not below e.
func (e Exact) Ceil() Length {
	f := e.Floor()
	if f == maxWhole || e.CmpLength(f) <= 0 {
		return f
	}
	return f + 1
}

// Nearest is the whole nanometre nearest to e; of two equally near ones, the even one.
func (e Exact) Nearest() Length {
	f := e.Floor()
	half := e.Minus(f).cmpHalf()
	if half > 0 || half == 0 && f&1 != 0 {
		return e.Ceil()
	}
	return f
}

// RoundTo is l as a whole number of steps; a tie goes to the even number of them. A step that is not positive leaves l
// as it is. Both are to be within ±Max.
func (l Length) RoundTo(step Length, d Direction) Length {
	if step <= 0 {
		return l
	}
	steps, over := floorDiv(l, step)
	if over > 0 && roundsUp(steps, uint64(over), uint64(step), d) {
		steps++
	}
	return steps * step
}

// roundsUp says whether q + rem/div (0 < rem < div) goes to q+1.
func roundsUp(q Length, rem, div uint64, d Direction) bool {
	switch d {
	case Down:
		return false
	case Up:
		return true
	}
	twice, carry := bits.Add64(rem, rem, 0)
	if carry == 1 || twice > div {
		return true
	}
	return twice == div && q&1 == 1
}

// floorDiv divides toward minus infinity, so the remainder is never negative.
func floorDiv(l, step Length) (q, rem Length) {
	q, rem = l/step, l%step
	if rem < 0 {
		q, rem = q-1, rem+step
	}
	return q, rem
}
