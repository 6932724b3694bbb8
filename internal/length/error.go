package length

// The codes of an Error.
const (
	CodeSyntax     = "length.text.syntax"        // not written like a length
	CodeTooFine    = "length.text.too_fine"      // no whole number of nanometres
	CodeOutOfRange = "length.value.out_of_range" // beyond ±Max, or a fraction after a whole number that is not below one
)

// Error says why a text is no length. It never repeats the text.
type Error struct {
	Code   string
	Detail string
}

func (e *Error) Error() string { return e.Code + ": " + e.Detail }

func errSyntax() error {
	return &Error{CodeSyntax, `a length says its unit (mm, cm, m, in, ft), such as 803.3 mm, 31 5/8 in or 2' 7 5/8"`}
}

func errNumber() error {
	return &Error{CodeSyntax, "a length without a unit is a number such as 803.3"}
}

func errTooFine() error {
	return &Error{CodeTooFine, "a length is a whole number of nanometres, such as 0.000001 mm or 1/64 in; not 1/3 in"}
}

func errOutOfRange() error { return &Error{CodeOutOfRange, "a length is at most 100 m either way"} }

func errImproper() error {
	return &Error{CodeOutOfRange, "a fraction after a whole number is less than one"}
}
