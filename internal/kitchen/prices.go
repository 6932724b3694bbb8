package kitchen

import "railhead/internal/money"

// Prices are the money of the request: the currency, the rates that it gives,
// and what things are worth to the client.
type Prices struct {
	Currency money.Currency
	// PerEuro is how many of the currency's units stand for one euro in the built-in
	// rates, which are kept in euros.
	PerEuro money.Amount
	Rates   map[string]Rate // that replace built-in ones, by code
	Figures Figures
	Worth   Worth
}

// Rate is one rate that the request gives.
type Rate struct {
	money.Spread
	Tax     money.Quantity // percent on top; meaningless unless TaxSet
	TaxSet  bool
	Pointer string // the member that gives it
}

// Worth is what things are worth to the client, each with the member that says so.
type Worth struct {
	Litre     Worthy  // of storage gained, for each litre
	ToCeiling Worthy  // of the whole run of wall and tall cabinets going up to the ceiling
	EvenLine  Worthy  // of all wall and tall cabinets ending on one line
	Shorter   *Worthy // what exchanging a planned cabinet for a shorter one costs the client; nil: the plan stands as sent
}

// Worthy is an amount and the member of the request that gives it.
type Worthy struct {
	money.Amount
	Pointer string
}
