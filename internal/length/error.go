package length

// The codes of an Error.
const (
	CodeSyntax     = "length.text.syntax"        // not a length at all
	CodeTooFine    = "length.text.too_fine"      // no whole number of nanometres
	CodeOutOfRange = "length.value.out_of_range" // beyond ±Max, or the fraction of a mixed number is not below one
)

// Error says why a text is no length. It never repeats the text.
type Error struct {
	Code   string
	Detail string
}

func (e *Error) Error() string { return e.Code + ": " + e.Detail }

func errSyntax() error {
	return &Error{CodeSyntax, "not a length: a number with mm, cm, m, in or ft, or feet and inches, is expected"}
}

func errNumber() error { return &Error{CodeSyntax, "not a number"} }

func errTooFine() error { return &Error{CodeTooFine, "not a whole number of nanometres"} }

func errOutOfRange() error { return &Error{CodeOutOfRange, "beyond 100 m"} }

func errImproper() error {
	return &Error{CodeOutOfRange, "the fraction after a whole number must be less than one"}
}
