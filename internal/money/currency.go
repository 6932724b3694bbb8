package money

// Currency is a currency of ISO 4217 and how many decimal places its smallest
// coin has.
type Currency struct {
	Code   string
	Digits int
}
