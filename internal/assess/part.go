package assess

// Part is a part of the whole answer that a path may ask for alone.
type Part uint8

// Parts.
const (
	Fit Part = 1 << iota
	Rails
	Trims
	Decisions
	Estimate
	All = Fit | Rails | Trims | Decisions | Estimate
)

// Edition names the rules, systems and rates behind an answer; equal requests get
// byte-equal answers within one edition.
const Edition = "2026.1"
