package length

import "testing"

var (
	sinkLength Length
	sinkExact  Exact
	sinkInt    int
	sinkBool   bool
	sinkText   string
)

func BenchmarkParse(b *testing.B) {
	for _, text := range []string{"803.3 mm", "31 5/8 in", `2' 7 5/8"`, "31⅝ in"} {
		b.Run(text, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				sinkLength, _ = Parse(text)
			}
		})
	}
}

func BenchmarkParseNumber(b *testing.B) {
	for b.Loop() {
		sinkLength, _ = ParseNumber("803.275", MM)
	}
}

// Two interpolated heights over stations that share few factors, as a survey has them.
func heights() (Exact, Exact) {
	a := Interpolate(0, (2400 * Millimetre).Exact(), 3001*Millimetre, (2407 * Millimetre).Exact(), 1234*Millimetre)
	b := Interpolate(0, (2400 * Millimetre).Exact(), 121*Inch, (2407 * Millimetre).Exact(), 37*Inch/16)
	return a, b
}

func BenchmarkExactAdd(b *testing.B) {
	x, y := heights()
	for b.Loop() {
		sinkExact = x.Add(y)
	}
}

func BenchmarkExactAddBig(b *testing.B) { // the same sum by math/big, to compare
	x, y := heights()
	for b.Loop() {
		r := x.Rat()
		sinkExact = FromRat(r.Add(r, y.Rat()))
	}
}

func BenchmarkExactPlus(b *testing.B) {
	x, _ := heights()
	for b.Loop() {
		sinkExact = x.Plus(Inch)
	}
}

func BenchmarkExactCmp(b *testing.B) {
	x, y := heights()
	y = y.Minus(y.Floor()).Plus(x.Floor()) // so that the fractions decide
	for b.Loop() {
		sinkInt = x.Cmp(y)
	}
}

func BenchmarkInterpolate(b *testing.B) {
	y0, y1 := (2400 * Millimetre).Exact(), (2407 * Millimetre).Exact()
	for b.Loop() {
		sinkExact = Interpolate(0, y0, 3001*Millimetre, y1, 1234*Millimetre)
	}
}

func BenchmarkInterpolateFractions(b *testing.B) {
	y0, y1 := heights()
	for b.Loop() {
		sinkExact = Interpolate(0, y0, 3001*Millimetre, y1, 1234*Millimetre)
	}
}

func BenchmarkCrossing(b *testing.B) {
	y0, y1 := (2400 * Millimetre).Exact(), (2407 * Millimetre).Exact()
	y := (2403 * Millimetre).Exact()
	for b.Loop() {
		sinkExact = Crossing(0, y0, 3001*Millimetre, y1, y)
	}
}

func BenchmarkHypot(b *testing.B) {
	for b.Loop() {
		sinkLength = Hypot(84*Inch, 24*Inch)
	}
}

func BenchmarkHypotFits(b *testing.B) {
	room, _ := heights()
	for b.Loop() {
		sinkBool = HypotFits(84*Inch, 24*Inch, room)
	}
}

func BenchmarkTape(b *testing.B) {
	for b.Loop() {
		sinkText, sinkLength = (803 * Millimetre).Tape(IN, Inch/16, Down)
	}
}

func BenchmarkMM(b *testing.B) {
	for b.Loop() {
		sinkText = Length(803_275_000).MM()
	}
}
