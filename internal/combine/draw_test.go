package combine

import (
	"math/rand/v2"
	"slices"

	"railhead/internal/belief"
	"railhead/internal/money"
)

// shape is what kind of problem to draw at random.
type shape struct {
	things, ways, trades         int
	joints, span                 int // how many, and how many things each is about
	lines                        int
	worth, labour                int64
	callOut, minimum             int64
	even, joint                  int64
	calls                        float64 // how often a way calls for a trade
	perhaps                      float64 // how often it calls perhaps
	tenths, forLabour, scattered bool    // chances in tenths; worth goes with labour; joints anywhere
	full                         bool    // as many ways as ways says, not any number up to that
}

func number(r *rand.Rand, most int64) money.Amount { return money.Amount(r.Int64N(most + 1)) }

func (sh *shape) draw(r *rand.Rand) *Problem {
	p := &Problem{Even: Even{money.Amount(sh.even), sh.line(r)}}
	for range sh.trades {
		p.Trades = append(p.Trades, Trade{number(r, sh.callOut), number(r, sh.minimum)})
	}
	member := sh.members(r)
	for i := range sh.things {
		var thing Thing
		ways := 1 + r.IntN(sh.ways)
		if sh.full {
			ways = sh.ways
		}
		for range ways {
			thing.Ways = append(thing.Ways, sh.way(r, member[i]))
		}
		p.Things = append(p.Things, thing)
	}
	for range sh.joints {
		p.Joints = append(p.Joints, sh.drawJoint(r))
	}
	return p
}

func (sh *shape) way(r *rand.Rand, joints []int) Way {
	w := Way{Worth: number(r, sh.worth), Line: sh.line(r)}
	for t := range sh.trades {
		if r.Float64() >= sh.calls {
			continue
		}
		c := Call{t, belief.Certain, number(r, sh.labour)}
		if r.Float64() < sh.perhaps {
			c.Chance = sh.chance(r)
		}
		if sh.forLabour {
			w.Worth += c.Labour
		}
		w.Calls = append(w.Calls, c)
	}
	for _, j := range joints {
		if r.IntN(3) > 0 {
			w.Effects = append(w.Effects, Effect{j, uint8(r.IntN(5)), r.IntN(4) == 0})
		}
	}
	return w
}

func (sh *shape) chance(r *rand.Rand) belief.Chance {
	if sh.tenths {
		return belief.Certain / 10 * belief.Chance(r.IntN(11))
	}
	return belief.Chance(r.Int64N(int64(belief.Certain) + 1))
}

func (sh *shape) line(r *rand.Rand) Line {
	if sh.lines == 0 {
		return NoLine
	}
	return Line(r.IntN(sh.lines+2) - 1)
}

// members is the joints that each thing bears on.
func (sh *shape) members(r *rand.Rand) [][]int {
	member := make([][]int, sh.things)
	for j := range sh.joints {
		from := j * sh.things / sh.joints
		for i := range sh.things {
			if sh.scattered && r.IntN(sh.things) < sh.span || !sh.scattered && i >= from && i < from+sh.span {
				member[i] = append(member[i], j)
			}
		}
	}
	return member
}

func (sh *shape) drawJoint(r *rand.Rand) Joint {
	var worth [6][2]money.Amount
	var possible [6][2]bool
	for limit := range worth {
		for wish := range 2 {
			worth[limit][wish], possible[limit][wish] = number(r, 2*sh.joint)-money.Amount(sh.joint), r.IntN(8) > 0
		}
	}
	return Joint{Unlimited: uint8(r.IntN(6)), Outcome: func(limit uint8, wish bool) (money.Amount, bool) {
		w := 0
		if wish {
			w = 1
		}
		return worth[limit][w], possible[limit][w]
	}}
}

// anyShape is a shape of a problem that is small enough to try everything.
func anyShape(r *rand.Rand) shape {
	unit := []int64{1, 3, 20, 1000, 1_000_000, 1e13}[r.IntN(6)]
	times := func(of ...int64) int64 { return unit * of[r.IntN(len(of))] }
	return shape{
		things: 1 + r.IntN(5), ways: 1 + r.IntN(4), trades: r.IntN(4),
		joints: r.IntN(3), span: 1 + r.IntN(4), lines: r.IntN(4),
		worth: times(0, 1, 5), labour: times(0, 1, 2), callOut: times(0, 1, 4), minimum: times(0, 1, 4),
		even: times(-1, 0, 1, 3), joint: times(0, 1, 4),
		calls: r.Float64(), perhaps: r.Float64(),
		tenths: r.IntN(2) == 0, forLabour: r.IntN(2) == 0, scattered: r.IntN(2) == 0,
	}
}

// tryAll is the best of all combinations but one, by the definition of the value:
// the first of equals.
func tryAll(p *Problem, value func([]int) (money.Amount, bool), but []int) (best []int, most money.Amount, ok bool) {
	pick := make([]int, len(p.Things))
	for {
		if v, can := value(pick); can && (!ok || v > most) && (but == nil || !slices.Equal(pick, but)) {
			best, most, ok = slices.Clone(pick), v, true
		}
		i := len(pick) - 1
		for ; i >= 0 && pick[i] == len(p.Things[i].Ways)-1; i-- {
			pick[i] = 0
		}
		if i < 0 {
			return best, most, ok
		}
		pick[i]++
	}
}
