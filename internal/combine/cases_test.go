package combine

import (
	"slices"
	"testing"

	"railhead/internal/belief"
	"railhead/internal/money"
)

// Amounts here are in euros, by whole ones; what they come to is reckoned by hand
// from the definition of the charges in Trade and of the line in Even.

const (
	half  = belief.Certain / 2
	third = belief.Certain / 3
)

func eur(n money.Amount) money.Amount { return n * money.Unit }

// leave is to leave a thing as it is.
func leave() Way { return Way{} }

// job is a way that is worth something and calls for trade 0.
func job(worth, labour money.Amount, chance belief.Chance) Way {
	return Way{Worth: eur(worth), Calls: []Call{{0, chance, eur(labour)}}}
}

func things(ways ...[]Way) (all []Thing) {
	for _, w := range ways {
		all = append(all, Thing{w})
	}
	return all
}

func at(line Line, worth money.Amount) Way { return Way{Worth: eur(worth), Line: line} }

// rising lets a joint rise by the limit, at 10 a step, less 25 where one wishes.
func rising(limit uint8, wish bool) (money.Amount, bool) {
	if wish {
		return eur(10*money.Amount(limit) - 25), limit < 9
	}
	return eur(10 * money.Amount(limit)), true
}

func bears(worth money.Amount, effects ...Effect) Way {
	return Way{Worth: eur(worth), Effects: effects}
}

var cases = []struct {
	name   string
	p      Problem
	pick   []int
	value  money.Amount // in hundredths of a euro
	second []int
}{
	{
		name: "two small jobs share a call-out that neither is worth alone",
		p: Problem{
			Things: things([]Way{leave(), job(80, 20, belief.Certain)}, []Way{leave(), job(90, 30, belief.Certain)}),
			Trades: []Trade{{CallOut: eur(70)}},
		},
		pick: []int{1, 1}, value: 50_00, // 80+90-20-30-70
		second: []int{0, 0}, // 0; one alone is worth -10
	},
	{
		name: "and three do not where one of them is worth too little",
		p: Problem{
			Things: things([]Way{leave(), job(80, 20, belief.Certain)}, []Way{leave(), job(90, 30, belief.Certain)}, []Way{leave(), job(10, 11, belief.Certain)}),
			Trades: []Trade{{CallOut: eur(70)}},
		},
		pick: []int{1, 1, 0}, value: 50_00, second: []int{1, 1, 1},
	},
	{
		name: "labour under the minimum charge costs nothing more",
		p: Problem{
			Things: things([]Way{leave(), job(150, 60, belief.Certain)}, []Way{leave(), job(5, 35, belief.Certain)}, []Way{leave(), job(20, 25, belief.Certain)}),
			Trades: []Trade{{Minimum: eur(120)}},
		},
		pick: []int{1, 1, 1}, value: 55_00, // 150+5+20-max(120, 120)
		second: []int{1, 0, 1}, // 150+20-120 = 50
	},
	{
		name: "a trade that is needed perhaps is paid for as likely as any needs it",
		p: Problem{
			Things: things([]Way{job(60, 0, half)}, []Way{leave(), job(26, 0, half)}),
			Trades: []Trade{{CallOut: eur(100)}},
		},
		pick: []int{0, 1}, value: 11_00, // 60+26-0.75*100; alone 60-50 = 10
		second: []int{0, 0},
	},
	{
		name: "and its minimum charge too",
		p: Problem{
			Things: things([]Way{job(60, 10, half)}, []Way{leave(), job(26, 30, half)}),
			Trades: []Trade{{CallOut: eur(20), Minimum: eur(60)}},
		},
		pick: []int{0, 1}, value: 26_00, // 60+26-0.75*20-max(10+30, 0.75*60)
		second: []int{0, 0}, // 60-0.5*20-max(10, 0.5*60) = 20
	},
	{
		name: "an even line is worth a worse way",
		p: Problem{
			Things: things([]Way{at(1, 50), at(2, 40)}, []Way{at(2, 30), at(1, 15)}, []Way{at(NoLine, 5)}),
			Even:   Even{Worth: eur(12)},
		},
		pick: []int{1, 0, 0}, value: 87_00, // 40+30+5+12
		second: []int{0, 0, 0}, // 85
	},
	{
		name: "but not where the rest ends elsewhere",
		p: Problem{
			Things: things([]Way{at(1, 50), at(2, 40)}, []Way{at(2, 30), at(1, 15)}),
			Even:   Even{Worth: eur(12), Others: 3},
		},
		pick: []int{0, 0}, value: 80_00, second: []int{1, 0},
	},
	{
		name: "nor where it ends at several levels",
		p: Problem{
			Things: things([]Way{at(1, 50), at(2, 40)}, []Way{at(2, 30), at(Several, 29)}),
			Even:   Even{Worth: eur(12), Others: Several},
		},
		pick: []int{0, 0}, value: 80_00, second: []int{0, 1},
	},
	{
		name: "what leaves nothing standing breaks no line, and makes none",
		p: Problem{
			Things: things([]Way{at(1, 0), at(NoLine, 11)}, []Way{at(2, 0), at(NoLine, 11)}),
			Even:   Even{Worth: eur(12)},
		},
		pick: []int{0, 1}, value: 23_00, // 0+11+12; both are 22
		second: []int{1, 0}, // 23
	},
	{
		name: "the others' line alone is even",
		p: Problem{
			Things: things([]Way{at(1, 11), at(NoLine, 0)}),
			Even:   Even{Worth: eur(12), Others: 2},
		},
		pick: []int{1}, value: 12_00, second: []int{0},
	},
	{
		name: "the lowest limit holds, and one wish is a wish",
		p: Problem{
			Things: things([]Way{bears(0, Effect{0, 5, false}), bears(8, Effect{0, 3, false})}, []Way{bears(0, Effect{0, 7, true}), bears(-20, Effect{0, 7, false})}),
			Joints: []Joint{{Unlimited: 9, Outcome: rising}},
		},
		pick: []int{0, 1}, value: 30_00, // 0-20+50
		second: []int{0, 0}, // 50-25 = 25; 8+30-20 = 18; 8+30-25 = 13
	},
	{
		name: "nothing bears on a joint",
		p: Problem{
			Things: things([]Way{bears(0), bears(1, Effect{0, 2, false})}),
			Joints: []Joint{{Unlimited: 4, Outcome: rising}, {}},
		},
		pick: []int{0}, value: 40_00, second: []int{1},
	},
	{
		name: "what is impossible is not done, whatever it is worth",
		p: Problem{
			Things: things([]Way{bears(0), bears(500, Effect{0, 9, false})}, []Way{bears(0, Effect{0, 9, true}), bears(-90)}),
			Joints: []Joint{{Unlimited: 4, Outcome: rising}},
		},
		pick: []int{1, 1}, value: 500_00, second: []int{0, 1}, // 500-90+90; 0-90+40
	},
	{
		name: "of equals the first, first thing first",
		p: Problem{
			Things: things([]Way{leave(), job(30, 0, belief.Certain)}, []Way{leave(), job(30, 0, belief.Certain)}, []Way{leave(), leave(), leave()}),
			Trades: []Trade{{CallOut: eur(60)}},
		},
		pick: []int{0, 0, 0}, value: 0, second: []int{0, 0, 1},
	},
	{
		name: "the first of equals though joints turn the order round",
		p: Problem{
			Things: things(
				[]Way{bears(5, Effect{0, 1, false}), bears(5, Effect{0, 2, false})},
				[]Way{bears(3, Effect{1, 2, false}), bears(3, Effect{1, 1, false})},
				[]Way{bears(0, Effect{1, 2, false}), bears(10, Effect{1, 1, false})},
				[]Way{bears(0, Effect{0, 2, false}), bears(10, Effect{0, 1, false})},
			),
			Joints: []Joint{{Outcome: rising}, {Outcome: rising}},
		},
		pick: []int{0, 0, 0, 1}, value: 48_00, // 5+3+0+10+10+20
		second: []int{0, 0, 1, 1}, // 5+3+10+10+10+10
	},
}

func TestCases(t *testing.T) {
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			want := c.value * money.Unit / 100
			if pick, value, ok := c.p.Best(); !ok || value != want || !slices.Equal(pick, c.pick) {
				t.Errorf("%v, %d, %v; want %v, %d", pick, value, ok, c.pick, want)
			}
			if second, _, ok := new(Solver).RunnerUp(&c.p, c.pick); !ok || !slices.Equal(second, c.second) {
				t.Errorf("runner-up %v, %v; want %v", second, ok, c.second)
			}
		})
	}
}

func TestNothingToChoose(t *testing.T) {
	for _, c := range []struct {
		name string
		p    Problem
		want money.Amount
		ok   bool
	}{
		{"no things", Problem{}, 0, true},
		{"no things and an even line", Problem{Even: Even{eur(3), 1}}, eur(3), true},
		{"no things and a joint", Problem{Joints: []Joint{{Unlimited: 2, Outcome: rising}}}, eur(20), true},
		{"one way", Problem{Things: things([]Way{job(5, 2, half)}), Trades: []Trade{{CallOut: eur(1)}}}, 5*money.Unit/2 + 0, true},
		{"a thing without ways", Problem{Things: things([]Way{leave()}, nil)}, 0, false},
		{"an impossible joint", Problem{
			Things: things([]Way{bears(0, Effect{0, 9, true})}), Joints: []Joint{{Outcome: rising}},
		}, 0, false},
	} {
		pick, value, ok := c.p.Best()
		if ok != c.ok || value != c.want || ok && len(pick) != len(c.p.Things) {
			t.Errorf("%s: %v, %d, %v; want %d, %v", c.name, pick, value, ok, c.want, c.ok)
		}
		if second, _, more := new(Solver).RunnerUp(&c.p, pick); ok && more {
			t.Errorf("%s: runner-up %v", c.name, second)
		}
	}
}

// What is charged is told line by line: chances go to the billionth, half up, and
// amounts half to even.
func TestChargesByTrade(t *testing.T) {
	p := Problem{
		Things: []Thing{
			{Ways: []Way{{Calls: []Call{{0, third, 100}, {1, belief.Certain, 7}}}}},
			{Ways: []Way{{Calls: []Call{{0, third, 150}}}}},
		},
		Trades: []Trade{{CallOut: 5, Minimum: 1000}, {CallOut: 80, Minimum: 5}, {CallOut: 900, Minimum: 900}},
	}
	want := []Charge{
		{Chance: 555_555_555, Labour: 250, CallOut: 3, TopUp: 306}, // 1-0.666666667^2; 5*0.56; 556-250
		{Chance: belief.Certain, Labour: 7, CallOut: 80},
		{},
	}
	if got := p.Charges([]int{0, 0}); !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
	if v, ok := p.Value([]int{0, 0}); !ok || v != -(250+3+306+7+80) {
		t.Errorf("worth %d, %v", v, ok)
	}
}
