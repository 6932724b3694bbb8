package length

import "strconv"

// finest is the finest binary fraction of an inch that is a whole number of nanometres: 1/64 in, 396 875 nm.
const finest = Inch / 64

// Tape is the mark on a tape: l rounded to a whole number of steps, in words as a tape reads in the unit, "31 5/8 in" or
// "803 mm", and as a length. A step that is not positive means the unit's own. Where steps of an inch tape are no binary
// fractions of an inch, the mark is an exact decimal; where it has none in inches, it is in millimetres.
func (l Length) Tape(u Unit, step Length, d Direction) (text string, mark Length) {
	if step <= 0 {
		step = u.DefaultStep()
	}
	mark = l.RoundTo(step, d)
	if u == IN && step%finest == 0 {
		return inchMark(mark) + " in", mark
	}
	return mark.Text(u), mark
}

// inchMark writes a whole number of 1/64 in as inches and a fraction in lowest terms.
func inchMark(mark Length) string {
	parts := mark.size() / uint64(finest)
	whole, num := parts/64, parts%64
	text := ""
	if mark < 0 {
		text = "-"
	}
	if num == 0 {
		return text + strconv.FormatUint(whole, 10)
	}
	if whole > 0 {
		text += strconv.FormatUint(whole, 10) + " "
	}
	common := gcd(num, 64)
	return text + strconv.FormatUint(num/common, 10) + "/" + strconv.FormatUint(64/common, 10)
}
