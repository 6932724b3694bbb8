package money

// The codes of an Error.
const (
	CodeSyntax   = "money.amount.syntax"    // no decimal number of ordinary length
	CodeTooLarge = "money.amount.too_large" // beyond the range either way
)

// Error says why a text is no amount. It never repeats the text.
type Error struct {
	Code   string
	Detail string
}

func (e *Error) Error() string { return e.Code + ": " + e.Detail }

func errSyntax() error {
	return &Error{CodeSyntax, "an amount is a decimal number of ordinary length, such as 12.50"}
}

func errTooLarge() error {
	return &Error{CodeTooLarge, "an amount is at most 100 000 million of the currency either way"}
}
