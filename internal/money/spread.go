package money

// Spread is an amount that nobody knows exactly: the least that it may come to,
// what it most likely comes to, and the most.
type Spread struct{ Low, Likely, High Amount }
