package hazard

import "railhead/internal/survey"

// Suspicion is how far a harmful material has to be reckoned with.
type Suspicion int

// Suspicions.
const (
	Unsuspected Suspicion = iota // tested, or too young
	Possible                     // worth a warning
	Presumed                     // to be treated as present until it is tested
)

// Years of the US rules; elsewhere they are used as a warning only.
const (
	// LastAsbestosYear: thermal insulation and surfacing material in buildings
	// of this year or older is presumed to contain asbestos (29 CFR 1926.1101(b)).
	LastAsbestosYear = 1980
	// FirstLeadFreeYear: housing built before it is target housing (40 CFR 745.83
	// with 745.103).
	FirstLeadFreeYear = 1978
)

// firstBanYear is the year from which the last use of asbestos was off the
// market throughout the European Union (Directive 1999/77/EC: 1 January 2005).
// It serves as the youngest year worth a warning where no US rule applies.
const firstBanYear = 2005

// Asbestos is the suspicion against an overhead's material: sprayed or trowelled
// surfaces are on the presumed list, plain wallboard is not.
func Asbestos(room *survey.Room, o *survey.Overhead) Suspicion {
	switch {
	case room.Cleared.Asbestos:
		return Unsuspected
	case room.Local.AsbestosTo > 0:
		return presumedTo(room.Built, room.Local.AsbestosTo, Surfaced(o))
	case room.CodeSet == survey.CodeNone:
		return upTo(room.Built, firstBanYear-1)
	case upTo(room.Built, LastAsbestosYear) == Unsuspected:
		return Unsuspected
	case Surfaced(o):
		return Presumed
	default:
		return Possible
	}
}

// Surfaced reports whether an overhead is textured or plastered.
func Surfaced(o *survey.Overhead) bool { return o.Textured == survey.Yes || o.Finish == "plaster" }

// Lead is the suspicion against an overhead's paint. An unknown year is a
// question, not a presumption.
func Lead(room *survey.Room, o *survey.Overhead) Suspicion {
	switch {
	case room.Cleared.Lead || o.Painted == survey.No:
		return Unsuspected
	case room.Local.LeadBefore > 0:
		return presumedTo(room.Built, room.Local.LeadBefore-1, true)
	case room.CodeSet == survey.CodeNone || room.Built == 0:
		return upTo(room.Built, FirstLeadFreeYear-1)
	case room.Built < FirstLeadFreeYear:
		return Presumed
	default:
		return Unsuspected
	}
}

// presumedTo presumes by a local rule what is of a kind that the rule names, up to
// its year; an unknown year is a question, not a presumption.
func presumedTo(built, last int, named bool) Suspicion {
	if built == 0 || built > last || !named {
		return upTo(built, last)
	}
	return Presumed
}

// upTo warns of buildings up to a year, and of those whose year nobody gave.
func upTo(built, last int) Suspicion {
	if built > last {
		return Unsuspected
	}
	return Possible
}
