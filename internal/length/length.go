package length

// Length is a whole number of nanometres.
type Length int64

// The units everything is made of. The inch is 25.4 mm and the foot 12 in, both exact (international yard and pound
// agreement, 1959).
const (
	Nanometre  Length = 1
	Micrometre        = 1000 * Nanometre
	Millimetre        = 1000 * Micrometre
	Centimetre        = 10 * Millimetre
	Metre             = 1000 * Millimetre
	Inch       Length = 25_400_000
	Foot              = 12 * Inch
)

// Max is the largest length that can be read; the smallest is -Max. No kitchen wall comes near it, and within it sums
// and products stay far from the ends of an int64.
const Max = 100 * Metre

// Exact is the same length as a value that arithmetic can make rational.
func (l Length) Exact() Exact { return Exact{whole: l} }

// Abs is the length without its sign.
func (l Length) Abs() Length {
	if l < 0 {
		return -l
	}
	return l
}

// String is for messages and test logs: exact millimetres with their unit.
func (l Length) String() string { return l.MM() + " mm" }

// size is the length without its sign as a machine word; unlike Abs it holds for every int64.
func (l Length) size() uint64 {
	if l < 0 {
		return -uint64(l)
	}
	return uint64(l)
}
