package decode

import (
	"math/big"
	"strconv"

	"github.com/go-playground/validator/v10"

	"railhead/api"
)

// The relations that tags cannot say. Those that they can are in the wire
// types' `validate` tags.
func (r *relations) register() {
	on := r.validate.RegisterStructValidation
	on(checkPoint, api.Point{})
	on(checkLevel, api.Level{})
	on(checkWall, api.Wall{})
	on(checkOverhead, api.Overhead{})
	on(checkInside, api.Inside{})
}

const readings = "height, up, down, above_floor"

func checkPoint(level validator.StructLevel) {
	p := level.Current().Addr().Interface().(*api.Point)
	if given(p.Height, p.Up, p.Down, p.AboveFloor) != 1 {
		level.ReportError(p, "", "", exactlyOne, readings)
	}
}

func checkLevel(level validator.StructLevel) {
	l := level.Current().Addr().Interface().(*api.Level)
	if l.Given() && given(l.Height, l.Up, l.Down, l.AboveFloor) != 1 {
		level.ReportError(l, "", "", exactlyOne, readings)
	}
}

// checkWall: a floor's own level cannot be measured from the floor.
func checkWall(level validator.StructLevel) {
	wall := level.Current().Addr().Interface().(*api.Wall)
	for i, p := range wall.Floor {
		if p.AboveFloor.Given() {
			name := "floor[" + strconv.Itoa(i) + "].above_floor"
			level.ReportError(p, name, name, notHere, "the floor's own level is not above the floor")
		}
	}
}

// checkOverhead: only what closes a gap may leave its underside to its thickness.
func checkOverhead(level validator.StructLevel) {
	o := level.Current().Addr().Interface().(*api.Overhead)
	if len(o.Underside) > 0 || o.Kind == "closed_gap" && o.Thickness.Given() {
		return
	}
	level.ReportError(o, "underside", "underside", neededHere, "only a closed gap with a thickness goes without")
}

func given(lengths ...api.Length) (n int) {
	for _, l := range lengths {
		if l.Given() {
			n++
		}
	}
	return n
}

// checkInside: probabilities add up to 1, exactly.
func checkInside(level validator.StructLevel) {
	inside := level.Current().Addr().Interface().(*api.Inside)
	if len(inside.Priors) > 0 && !addUpToOne(inside.Priors) {
		level.ReportError(inside, "priors", "priors", addToOne, "")
	}
}

func addUpToOne(priors map[string]api.Amount) bool {
	sum := new(big.Rat)
	for _, p := range priors {
		value, ok := probability(p.Text)
		if !ok {
			return false
		}
		sum.Add(sum, value)
	}
	return sum.Cmp(one) == 0
}

var one = big.NewRat(1, 1)

// probability reads a decimal from 0 to 1 of ordinary length; its bounds keep the exact arithmetic small.
func probability(text string) (*big.Rat, bool) {
	digits, exponent := decimal(text)
	if len(text) > 40 || digits != "" && exponent < -40 || len(digits)+exponent > 1 {
		return nil, false
	}
	value, ok := new(big.Rat).SetString(text)
	return value, ok && value.Sign() >= 0 && value.Cmp(one) <= 0
}
