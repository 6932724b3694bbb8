package api

// Decisions is what to do with each overhead, and why.
type Decisions struct {
	Room      RoomDecision       `json:"room" doc:"The advice for the whole room."`
	Overheads []OverheadDecision `json:"overheads" doc:"The advice for each overhead or part_of group."`
}

// RoomDecision is the advice for the whole room.
type RoomDecision struct {
	Basis        string            `json:"basis" enum:"money" doc:"money: the combination of options that no gate stands against and whose worth less expected cost is highest."`
	Proven       bool              `json:"proven" doc:"Whether no combination is better. False only where so many overheads share so many charges that the search was ended: then the advice is the best found, and neither looks nor thresholds are worked out."`
	Currency     string            `json:"currency" doc:"ISO 4217 code of every amount here."`
	Advice       map[string]string `json:"advice" doc:"The advised option, by overhead or part_of group."`
	ExpectedCost string            `json:"expected_cost" doc:"What the advice is expected to cost, shared charges included."`
	Gain         string            `json:"gain" doc:"What the advice is worth to the client."`
	Net          string            `json:"net" doc:"Gain less expected cost."`
	Shared       []SharedCharge    `json:"shared" doc:"Charges that the advice's options share: call-outs, minimum charges, setting up."`
	Together     []TogetherWorth   `json:"together" doc:"Worth that belongs to no overhead alone: one even top line, cabinets under two overheads."`
	RunnerUp     *RunnerUp         `json:"runner_up,omitzero" doc:"The best combination that differs somewhere; absent where there is no other."`
	Applied      AppliedWorth      `json:"applied" doc:"What the applied options come to, against the advice."`
	Once         *RunnerUp         `json:"once,omitzero" doc:"The best combination once the gates that can be opened are open; absent where it is the advice itself."`
	LowerRow     *LowerRow         `json:"lower_row,omitzero" doc:"Lowering the row on its legs, where that helps."`
	Flips        []Flip            `json:"flips" doc:"Where the advice would change, nearest first."`
}

// SharedCharge is one trade's charge for the whole room.
type SharedCharge struct {
	Trade   string `json:"trade" doc:"The trade."`
	Chance  string `json:"chance" doc:"How probable it is that it is needed at all."`
	CallOut string `json:"call_out" doc:"Expected charge for coming: the chance times the rate."`
	TopUp   string `json:"top_up" doc:"What the trade's expected labour lacks to its minimum charge."`
}

// TogetherWorth is a worth that several overheads make together.
type TogetherWorth struct {
	Code     string   `json:"code" doc:"Stable code."`
	Evidence []string `json:"evidence" doc:"The members of the request that it is about."`
	Worth    string   `json:"worth" doc:"What it is worth, less what it costs."`
}

// RunnerUp is another combination for the room.
type RunnerUp struct {
	Advice       map[string]string `json:"advice" doc:"Its options, by overhead or part_of group."`
	ExpectedCost string            `json:"expected_cost" doc:"What it is expected to cost."`
	Net          string            `json:"net" doc:"Its gain less its expected cost."`
	WorseBy      string            `json:"worse_by" doc:"How much lower its net is than the advice's; negative where it is higher."`
}

// AppliedWorth is what the applied options come to.
type AppliedWorth struct {
	Gain         string `json:"gain" doc:"What they are worth to the client."`
	ExpectedCost string `json:"expected_cost" doc:"What they are expected to cost; the estimate's mean."`
	Net          string `json:"net" doc:"Their gain less their expected cost."`
	WorseBy      string `json:"worse_by" doc:"How much lower their net is than the advice's. Negative where a choice is one that the advice may not take: the plan stands as sent, or a gate stands in front of it."`
}

// Flip is a threshold: with the member set to 'at' or beyond, the advice changes.
type Flip struct {
	Pointer  string            `json:"pointer" doc:"The member of the request."`
	At       string            `json:"at" doc:"The first value, in the member's finest step, at which the advice differs; send it as it stands here. A length says its unit."`
	Now      string            `json:"now" doc:"The value that the answer used."`
	Overhead string            `json:"overhead" doc:"The overhead or part_of group whose advice changes first."`
	From     string            `json:"from" doc:"Its advice before."`
	To       string            `json:"to" doc:"Its advice from there on."`
	With     map[string]string `json:"with,omitzero" doc:"For odds of contents: all of them at the threshold, to be sent together."`
}

// LowerRow is the room-level alternative of lowering every row on its legs.
type LowerRow struct {
	By       Measure  `json:"by" doc:"How far the rows go down."`
	RowShift Length   `json:"row_shift" doc:"The plan's row_shift that does it, in the request's own form."`
	Possible bool     `json:"possible" doc:"Whether it can be done here."`
	Gates    []string `json:"gates" doc:"What limits it, by code."`
	Spares   []string `json:"spares" doc:"The overheads that need no cut then."`

	Advice       map[string]string `json:"advice" doc:"The best combination for the lowered row; empty where it cannot be lowered."`
	ExpectedCost string            `json:"expected_cost,omitzero" doc:"What lowering and that combination are expected to cost."`
	Saves        string            `json:"saves,omitzero" doc:"How much higher its net is than the advice's; negative where it is lower."`
}

// OverheadDecision is the advice for one overhead or part_of group.
type OverheadDecision struct {
	Overhead  string   `json:"overhead" doc:"The overhead's id, or the part_of group."`
	Pointers  []string `json:"pointers" doc:"The overheads it covers."`
	Advice    string   `json:"advice" doc:"The advised option."`
	Options   []Option `json:"options" doc:"Every way to treat it."`
	Reasons   []Reason `json:"reasons" doc:"Why, by factor."`
	Contents  *Odds    `json:"contents,omitzero" doc:"What may be inside where nobody has looked; absent where all of it was seen."`
	Probe     *Probe   `json:"probe,omitzero" doc:"What a probe hole would be worth; absent where there is nothing to find out."`
	Remeasure *Probe   `json:"remeasure,omitzero" doc:"What measuring the ceiling again would be worth; absent where its doubt changes nothing."`
}

// Odds is what is believed of an overhead's inside.
type Odds struct {
	Prior  map[string]string `json:"prior" doc:"Odds by state before anyone looked, hints counted; send them as inside.priors to replace them."`
	Now    map[string]string `json:"now" doc:"Odds by state of what nobody has seen, looks counted."`
	Steps  []OddsStep        `json:"steps" doc:"What made the odds, in order."`
	Shared []string          `json:"shared" doc:"The overheads or groups that share these contents."`
}

// OddsStep is one thing that moved the odds.
type OddsStep struct {
	Code     string            `json:"code" doc:"Stable code."`
	Evidence []string          `json:"evidence" doc:"The members of the request that it rests on."`
	Says     string            `json:"says" doc:"A sentence for people; not part of the contract."`
	Params   map[string]string `json:"params" doc:"The factors by state."`
}

// Probe is what finding something out before deciding is worth.
type Probe struct {
	Pointer string   `json:"pointer" doc:"The member of the request that the look would fill."`
	Worth   string   `json:"worth" doc:"Expected worth of looking: of what a look shows, as surely as it shows it. Compare this with the cost."`
	Perfect string   `json:"perfect" doc:"Expected worth of knowing for sure; no look is worth more."`
	Cost    string   `json:"cost" doc:"What the look costs, made good."`
	DoIt    bool     `json:"do_it" doc:"Whether it is worth more than it costs."`
	Covers  []string `json:"covers" doc:"The overheads or groups that one look tells about."`
}

// Option is one way to treat an overhead.
type Option struct {
	Option   string       `json:"option" enum:"keep,trim,open_part,remove_taller,remove_close,remove_open,move" doc:"The option."`
	Possible bool         `json:"possible" doc:"Whether it can be done here."`
	Gates    []Gate       `json:"gates" doc:"What must be settled before it may be taken; no price overrides them."`
	Swaps    []Swap       `json:"swaps" doc:"The cabinets it would exchange; the plan itself is never edited."`
	Needs    []string     `json:"needs" doc:"Other overheads that must come down with it."`
	Cost     *Cost        `json:"cost,omitzero" doc:"What it costs by itself, without what the room shares; absent where it cannot be done."`
	Gain     string       `json:"gain,omitzero" doc:"What it is worth to the client, its risks counted."`
	Net      string       `json:"net,omitzero" doc:"Gain less the mean cost."`
	Gains    []Gain       `json:"gains" doc:"What the gain is made of."`
	Lines    []CostLine   `json:"lines" doc:"What the cost is made of."`
	Hours    []TradeHours `json:"hours" doc:"Likely hours by trade, of work that is certain."`
}

// Gain is one part of what an option is worth.
type Gain struct {
	Code     string `json:"code" doc:"Stable code."`
	Says     string `json:"says" doc:"What it is; not part of the contract."`
	Quantity string `json:"quantity" doc:"How much, a decimal; negative for a loss."`
	Unit     string `json:"unit" doc:"The quantity's unit."`
	Rate     string `json:"rate" doc:"What one unit is worth."`
	Worth    string `json:"worth" doc:"Quantity times rate."`
}

// Gate is something that must be settled before an option may be taken.
type Gate struct {
	Code    string `json:"code" doc:"Stable code."`
	Pointer string `json:"pointer" doc:"The member of the request it is about."`
	Says    string `json:"says" doc:"A sentence for people; not part of the contract."`
	Who     string `json:"who" doc:"Who may settle it."`
}

// Swap exchanges a cabinet for another height.
type Swap struct {
	Cabinet string  `json:"cabinet" doc:"The cabinet."`
	Height  Measure `json:"height" doc:"Its new height."`
	Top     Measure `json:"top" doc:"Its new top."`
}

// Reason is one factor's pull, with its evidence.
type Reason struct {
	Factor   string            `json:"factor" enum:"contents,ceiling_height,footprint,expense,structure,health,preference" doc:"The factor."`
	Leans    string            `json:"leans" enum:"keep,trim,open_part,take_down,none" doc:"Which way it pulls."`
	Code     string            `json:"code" doc:"Stable code."`
	Because  string            `json:"because" doc:"The reason, for people."`
	Params   map[string]string `json:"params" doc:"Values for a translated text."`
	Evidence []string          `json:"evidence" doc:"The members of the request that show it."`
}
