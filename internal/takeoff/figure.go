package takeoff

// figure is a part of a formula and what it comes to. Where nobody reads the
// formula its text is empty.
type figure struct {
	text  string
	value fraction
	sum   bool // needs brackets as a factor
}

func (f figure) factor() string {
	if f.sum {
		return "(" + f.text + ")"
	}
	return f.text
}

// bare reports whether nobody reads the formula.
func (f figure) bare() bool { return f.text == "" }

// times is a product of two figures or more.
func times(a, b figure, more ...figure) figure {
	out := figure{value: a.value.times(b.value)}
	for _, f := range more {
		out.value = out.value.times(f.value)
	}
	if !a.bare() {
		out.text = a.factor() + "*" + b.factor()
		for _, f := range more {
			out.text += "*" + f.factor()
		}
	}
	return out
}

func plus(a, b figure) figure {
	out := figure{value: a.value.plus(b.value), sum: true}
	if !a.bare() {
		out.text = a.text + " + " + b.text
	}
	return out
}

func minus(a, b figure) figure {
	out := figure{value: a.value.minus(b.value), sum: true}
	if !a.bare() {
		out.text = a.text + " - " + b.factor()
	}
	return out
}

func half(f figure) figure {
	out := figure{value: f.value.times(quotient(1, 2))}
	if !f.bare() {
		out.text = f.factor() + "/2"
	}
	return out
}

// over is a / b, where b is one input and not 0.
func over(a, b figure) figure {
	out := figure{value: a.value.over(b.value)}
	if !a.bare() {
		out.text = a.factor() + "/" + b.text
	}
	return out
}

func plusOne(f figure) figure {
	out := figure{value: f.value.plus(integer(1)), sum: true}
	if !f.bare() {
		out.text = f.text + " + 1"
	}
	return out
}

// roundedUp is the least whole number that is not below f.
func roundedUp(f figure) figure {
	out := figure{value: f.value.up()}
	if !f.bare() {
		out.text = "ceil(" + f.text + ")"
	}
	return out
}
