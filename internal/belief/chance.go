package belief

import "railhead/internal/money"

// Chance is a probability, in billionths.
type Chance int64

// Certain is the probability of what is sure.
const Certain Chance = 1_000_000_000

// Not is the chance that it is not so.
func (c Chance) Not() Chance { return Certain - c }

// Of is what an amount that is paid with this chance is expected to come to.
func (c Chance) Of(a money.Amount) money.Amount { return a.Share(int64(c), int64(Certain)) }

// Decimal is the chance as a decimal number, every digit of it.
func (c Chance) Decimal() string { return money.Decimal(int64(c), int64(Certain)) }
