// Package length holds lengths exactly: whole nanometres where a length is measured, planned or struck, and rationals
// where one is interpolated between two readings.
//
// A nanometre divides both worlds without a remainder: 1/64 in is 396 875 nm and 0.1 mm is 100 000 nm, because the inch
// is 25.4 mm exactly. So inches and millimetres never drift, and a verdict never hangs on a rounding.
//
// What the package promises:
//
//   - nothing is rounded on the way in: text that is no whole number of nanometres is refused, not trimmed;
//   - [Exact] arithmetic is exact, always; nothing is rounded until an output asks for it, with its direction;
//   - what is printed can be read back: [Parse] reads what [Length.Text] and [Length.Tape] print.
package length
