package length

// Unit is a unit a request may speak.
type Unit int

// The units of a request.
const (
	MM Unit = iota
	CM
	IN
)

// ParseUnit reads the name of a unit: mm, cm or in.
func ParseUnit(s string) (Unit, bool) {
	for _, u := range [...]Unit{MM, CM, IN} {
		if s == u.String() {
			return u, true
		}
	}
	return MM, false
}

// String is the unit's name as requests and tape marks write it.
func (u Unit) String() string {
	switch u {
	case CM:
		return "cm"
	case IN:
		return "in"
	default:
		return "mm"
	}
}

// Size is one unit.
func (u Unit) Size() Length {
	switch u {
	case CM:
		return Centimetre
	case IN:
		return Inch
	default:
		return Millimetre
	}
}

// DefaultStep is the finest mark of an ordinary tape in this unit: 1 mm, or 1/16 in (common practice, no source).
func (u Unit) DefaultStep() Length {
	if u == IN {
		return Inch / 16
	}
	return Millimetre
}
