package takeoff

import (
	"math/big"
	"strconv"
	"strings"

	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
)

// account collects the terms of one quantity and the inputs that they use.
type account struct {
	work  Work
	bare  bool // nobody reads the formula
	begun bool // there is a term
	total figure
	paper *paper // nil where nothing is written
}

// paper is what is written beside a quantity.
type paper struct {
	inputs []Input
	names  map[Input]string // the name under which a figure is known, by its plain name
	count  map[string]int   // how many figures have a plain name
}

// input makes a figure known; the same figure under the same plain name is one.
func (a *account) input(in Input, value fraction) figure {
	if a.paper == nil {
		a.paper = &paper{names: map[Input]string{}, count: map[string]int{}}
	}
	return figure{text: a.paper.name(in), value: value}
}

// name is what a figure is called.
func (p *paper) name(in Input) string {
	if name, known := p.names[in]; known {
		return name
	}
	p.count[in.Name]++
	name := in.Name
	if n := p.count[in.Name]; n > 1 {
		name += "_" + strconv.Itoa(n)
	}
	p.names[in] = name
	p.inputs = append(p.inputs, Input{name, in.Value, in.Unit})
	return name
}

// metre is a length in metres, shown to the nanometre.
func (a *account) metre(name string, l length.Exact) figure {
	if a.bare {
		return figure{value: metres(l)}
	}
	return a.input(Input{name, inMetres(l.Nearest()), "m"}, metres(l))
}

func (a *account) length(name string, l length.Length) figure { return a.metre(name, l.Exact()) }

// constant is a number of the table.
func (a *account) constant(name string, q money.Quantity, unit string) figure {
	value := quotient(int64(q), int64(money.One))
	if a.bare {
		return figure{value: value}
	}
	return a.input(Input{name, q.Decimal(), unit}, value)
}

// figure is a figure of the request or of the table.
func (a *account) figure(name string, g kitchen.Figures, f kitchen.Figure) figure {
	return a.constant(name, g.Of(f), f.Unit())
}

func (a *account) number(name string, n int) figure {
	if a.bare {
		return figure{value: integer(int64(n))}
	}
	return a.input(Input{name, strconv.Itoa(n), "1"}, integer(int64(n)))
}

// derived is what other accounts come to.
func (a *account) derived(name string, value fraction, unit string) figure {
	if a.bare {
		return figure{value: value}
	}
	return a.input(Input{name, decimalOf(value.rat()), unit}, value)
}

// add adds a term, and take takes one off.
func (a *account) add(f figure) {
	if !a.begun {
		a.begun, a.total = true, f
		return
	}
	a.total = plus(a.total, f)
}

func (a *account) take(f figure) {
	if !a.begun {
		a.begun = true
		if !a.bare {
			a.total.text = "0"
		}
	}
	a.total = minus(a.total, f)
}

// item is the account as an item of work; false where it comes to nothing.
func (a *account) item(w Work, pointer string) (Item, bool) {
	q := a.total.value.quantity()
	out := Item{Work: w, Pointer: pointer, Quantity: q, Formula: a.total.text}
	if a.paper != nil {
		out.Inputs = a.paper.inputs
	}
	return out, q > 0
}

// decimalPlaces are those of a nanometre in metres.
const decimalPlaces = 9

// inMetres is a length in metres, without idle zeros.
func inMetres(l length.Length) string {
	if l < 0 {
		return "-" + inMetres(-l)
	}
	metres, rest := l/length.Metre, l%length.Metre
	text := strconv.AppendInt(nil, int64(metres), 10)
	if rest > 0 {
		text = append(text, '.')
	}
	for ; rest > 0; rest %= length.Metre {
		rest *= 10
		text = append(text, '0'+byte(rest/length.Metre))
	}
	return string(text)
}

// decimalOf is a value as a decimal without idle zeros.
func decimalOf(r *big.Rat) string {
	text := r.FloatString(decimalPlaces)
	return strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
}
