package api

// Estimate is what the applied options come to, line by line.
type Estimate struct {
	Currency string         `json:"currency" doc:"ISO 4217 code."`
	Lines    []EstimateLine `json:"lines" doc:"Lines in order of overhead and work, then what the room shares; each column adds up to the total."`
	Total    EstimateTotal  `json:"total" doc:"What it all comes to."`
	Hours    []TradeHours   `json:"hours" doc:"Likely hours by trade, of work that is certain."`
}

// EstimateLine is one line of the estimate.
type EstimateLine struct {
	ID       string `json:"id" doc:"Stable within one answer."`
	Overhead string `json:"overhead,omitzero" doc:"The overhead or part_of group; absent for what the room shares."`
	Pointer  string `json:"pointer,omitzero" doc:"The member of the request that it is about; absent for what the room shares."`
	CostLine
	Says       string `json:"says" doc:"What it is for; not part of the contract."`
	Tax        string `json:"tax" doc:"Tax on top of the likely amount."`
	TaxPercent string `json:"tax_percent,omitzero" doc:"The tax rate; absent without tax."`
	Assumed    bool   `json:"assumed" doc:"Whether a built-in rate stands in it."`
}

// CostLine is what a line is reckoned from: a quantity at a rate.
type CostLine struct {
	Code      string          `json:"code" doc:"Stable code of the work."`
	Kind      string          `json:"kind" enum:"labour,material,allowance,shared,saving" doc:"What sort of line it is. An allowance is for what nobody has seen: its mean is its chance times its rate."`
	Trade     string          `json:"trade" doc:"Who does it; none for what is bought."`
	Unit      string          `json:"unit" doc:"The quantity's unit; 1 for pieces."`
	Quantity  string          `json:"quantity" doc:"Likely quantity, a decimal."`
	Rate      string          `json:"rate" doc:"Likely rate for one unit; of an allowance, what it is expected to cost if it turns out."`
	RateCode  string          `json:"rate_code,omitzero" doc:"The member of money.rates that replaces the rate; absent for an allowance."`
	HoursCode string          `json:"hours_code,omitzero" doc:"Of labour: the member of money.rates that replaces the hours for one unit of work."`
	Low       string          `json:"low" doc:"Least that it may come to."`
	Likely    string          `json:"likely" doc:"What it most likely comes to."`
	High      string          `json:"high" doc:"Most that it may come to. Of allowances that exclude each other only the dearest counts here."`
	Mean      string          `json:"mean" doc:"Expected amount: (low + 4·likely + high)/6; of an allowance, its chance times its rate."`
	Chance    string          `json:"chance,omitzero" doc:"How probable it is that it comes up, between 0 and 1; absent where that is sure."`
	If        string          `json:"if,omitzero" enum:"few_wires,many_wires,pipe_or_duct,immovable,ceiling_missing_behind,row_does_not_fit,called" doc:"What must turn out for it; called: a trade comes."`
	Pool      string          `json:"pool" doc:"Lines of one pool are dear or cheap together, and their deviations add up: a trade's hours, one rate, or one unknown. Lines of different pools are independent."`
	Formula   string          `json:"formula,omitzero" doc:"How the quantity is reckoned from the inputs, rounded to a thousandth at each step."`
	Inputs    []EstimateInput `json:"inputs" doc:"The figures that the quantity is made of; of an allowance, the hours and quantities of the work it stands for."`
}

// EstimateInput is one figure of a quantity's formula.
type EstimateInput struct {
	Name  string `json:"name" doc:"Its name in the formula."`
	Value string `json:"value" doc:"A decimal."`
	Unit  string `json:"unit" doc:"Its unit; 1 for a plain number."`
}

// EstimateTotal is what lines come to together.
type EstimateTotal struct {
	Cost
	P10 string `json:"p10" doc:"One time in ten it comes to no more than this."`
	P50 string `json:"p50" doc:"As probably more as less."`
	P90 string `json:"p90" doc:"Nine times in ten it comes to no more than this."`
	Tax string `json:"tax" doc:"Tax on top of the likely amounts."`
}

// Cost is an amount with its spread.
type Cost struct {
	Low    string `json:"low" doc:"Least that it may come to."`
	Likely string `json:"likely" doc:"What it most likely comes to."`
	High   string `json:"high" doc:"Most that it may come to."`
	Mean   string `json:"mean" doc:"Expected amount."`
	SD     string `json:"sd" doc:"Standard deviation."`
}

// TradeHours are one trade's hours.
type TradeHours struct {
	Trade string `json:"trade" doc:"The trade."`
	Hours string `json:"hours" doc:"Likely hours, a decimal."`
}

// EstimateAnswer is the answer of /v1/estimates.
type EstimateAnswer struct {
	Common
	Estimate *Estimate `json:"estimate,omitzero" doc:"The line items and what they come to."`
}
