package money

// Amount is money, in ten-thousandths of the currency's unit: fine enough that
// what rounding takes never shows in the smallest coin of any currency. It is at
// most Most either way.
type Amount int64

// Unit is one of the currency.
const Unit Amount = 10_000

// Most is the end of the range either way.
const Most Amount = 1e15

// Plus is a + b.
func (a Amount) Plus(b Amount) Amount { return max(-Most, min(Most, a+b)) }

// Minus is a - b.
func (a Amount) Minus(b Amount) Amount { return max(-Most, min(Most, a-b)) }

// Neg is -a.
func (a Amount) Neg() Amount { return -a }

// Times is a for each of a quantity's units.
func (a Amount) Times(q Quantity) Amount { return Amount(scale(int64(a), int64(q), int64(One))) }

// Share is the part of a that has part of a whole; nothing, where the whole is
// nothing.
func (a Amount) Share(part, whole int64) Amount { return Amount(scale(int64(a), part, whole)) }

// Decimal is a with as many decimal places as it has, such as 12.5.
func (a Amount) Decimal() string { return Decimal(int64(a), int64(Unit)) }
