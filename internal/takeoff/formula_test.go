package takeoff

import (
	"go/ast"
	"go/parser"
	"go/token"
	"math/big"
	"strings"
	"testing"
)

func ratio(a, b int64) *big.Rat { return big.NewRat(a, b) }

// fataler is a test or a property.
type fataler interface {
	Helper()
	Fatalf(string, ...any)
}

// dims is a dimension: powers of metre, litre and kilogram.
type dims [3]int

var unitDims = map[string]dims{"1": {}, "m": {1}, "m2": {2}, "l": {0, 1}, "kg": {0, 0, 1}, "kg/m3": {-3, 0, 1}, "l/m3": {-3, 1}}

// sheetOfPaper works a formula out again from what is written, and only from that.
type sheetOfPaper struct {
	t      fataler
	values map[string]*big.Rat
	units  map[string]dims
	used   map[string]bool
}

// reworked works an item's quantity out again from its formula and inputs: the
// value to half a thousandth, the unit, and no input that is not needed. A figure
// without an end is shown to the nanometre, which in litres is up to a millionth.
func reworked(t fataler, i Item) {
	t.Helper()
	p := sheetOfPaper{t, map[string]*big.Rat{}, map[string]dims{}, map[string]bool{}}
	for _, in := range i.Inputs {
		value, ok := new(big.Rat).SetString(in.Value)
		unit, known := unitDims[in.Unit]
		if !ok || !known || p.values[in.Name] != nil || strings.ContainsAny(in.Value, "eE/") {
			t.Fatalf("%s: input %+v", i.Work, in)
		}
		p.values[in.Name], p.units[in.Name] = value, unit
	}
	tree, err := parser.ParseExpr(i.Formula)
	if err != nil {
		t.Fatalf("%s: %q: %v", i.Work, i.Formula, err)
	}
	value, unit := p.eval(tree)
	if unit != unitDims[i.Work.Unit()] {
		t.Fatalf("%s: %q is in %v, want %s", i.Work, i.Formula, unit, i.Work.Unit())
	}
	off := new(big.Rat).Sub(value, ratio(int64(i.Quantity), 1000))
	if off.Abs(off).Cmp(ratio(501, 1_000_000)) > 0 {
		t.Fatalf("%s: %q of %+v is %s, but %s is told", i.Work, i.Formula, i.Inputs, value.FloatString(6), i.Quantity.Decimal())
	}
	for _, in := range i.Inputs {
		if !p.used[in.Name] {
			t.Fatalf("%s: %q does not use %s", i.Work, i.Formula, in.Name)
		}
	}
}

func (p sheetOfPaper) eval(e ast.Expr) (*big.Rat, dims) {
	p.t.Helper()
	switch e := e.(type) {
	case *ast.ParenExpr:
		return p.eval(e.X)
	case *ast.BasicLit:
		value, _ := new(big.Rat).SetString(e.Value)
		return value, dims{}
	case *ast.Ident:
		value, ok := p.values[e.Name]
		if !ok {
			p.t.Fatalf("no input %s", e.Name)
		}
		p.used[e.Name] = true
		return value, p.units[e.Name]
	case *ast.CallExpr:
		value, unit := p.eval(e.Args[0])
		whole, rest := new(big.Int).DivMod(value.Num(), value.Denom(), new(big.Int))
		if rest.Sign() > 0 {
			whole.Add(whole, big.NewInt(1))
		}
		return new(big.Rat).SetInt(whole), unit
	case *ast.BinaryExpr:
		return p.binary(e)
	}
	p.t.Fatalf("%T in a formula", e)
	return nil, dims{}
}

func (p sheetOfPaper) binary(e *ast.BinaryExpr) (*big.Rat, dims) {
	p.t.Helper()
	a, unit := p.eval(e.X)
	b, other := p.eval(e.Y)
	out := new(big.Rat)
	switch e.Op {
	case token.ADD, token.SUB:
		if unit != other {
			p.t.Fatalf("%v added to %v", other, unit)
		}
		if e.Op == token.SUB {
			return out.Sub(a, b), unit
		}
		return out.Add(a, b), unit
	case token.MUL:
		return out.Mul(a, b), dims{unit[0] + other[0], unit[1] + other[1], unit[2] + other[2]}
	default:
		return out.Quo(a, b), dims{unit[0] - other[0], unit[1] - other[1], unit[2] - other[2]}
	}
}

// The paper itself: it must notice what is wrong.
func TestReworkingNoticesWhatIsWrong(t *testing.T) {
	right := Item{Work: BoardOff, Quantity: 990, Formula: "length*depth", Inputs: []Input{{"length", "3", "m"}, {"depth", "0.33", "m"}}}
	reworked(t, right)
	for name, edit := range map[string]func(*Item){
		"a quantity off by a thousandth": func(i *Item) { i.Quantity = 991 },
		"a length for an area":           func(i *Item) { i.Work = Cut },
		"an input of no use":             func(i *Item) { i.Inputs = append(i.Inputs, Input{"band", "0.15", "m"}) },
		"a figure nobody gives":          func(i *Item) { i.Formula = "length*height" },
		"a value that is no decimal":     func(i *Item) { i.Inputs = []Input{{"length", "3/1", "m"}, {"depth", "0.33", "m"}} },
	} {
		wrong := right
		edit(&wrong)
		if !fails(func(t fataler) { reworked(t, wrong) }) {
			t.Errorf("%s: not noticed", name)
		}
	}
}

// stopped is a test that fails into a panic.
type stopped struct{}

func (stopped) Helper()               {}
func (stopped) Fatalf(string, ...any) { panic(stopped{}) }

func fails(f func(fataler)) (failed bool) {
	defer func() { failed = recover() == stopped{} }()
	f(stopped{})
	return false
}
