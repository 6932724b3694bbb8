package length

import "strings"

// scanner takes one piece after another off the front of a text.
type scanner struct{ rest string }

// eat takes the first of the pieces that comes next, and says whether one did.
func (s *scanner) eat(pieces ...string) bool {
	for _, p := range pieces {
		if strings.HasPrefix(s.rest, p) {
			s.rest = s.rest[len(p):]
			return true
		}
	}
	return false
}

// digits takes at most that many digits.
func (s *scanner) digits(most int) string {
	n := 0
	for n < len(s.rest) && n < most && '0' <= s.rest[n] && s.rest[n] <= '9' {
		n++
	}
	taken := s.rest[:n]
	s.rest = s.rest[n:]
	return taken
}

// whole takes a whole number without leading zeros.
func (s *scanner) whole(most int) (string, bool) {
	if s.eat("0") {
		return "0", true
	}
	taken := s.digits(most)
	return taken, taken != ""
}

// decimal takes a whole number and the places after its point, if it has one.
func (s *scanner) decimal(mostWhole, mostPlaces int) (n number, ok bool) {
	if n.whole, ok = s.whole(mostWhole); !ok {
		return n, false
	}
	if s.eat(".") {
		n.places = s.digits(mostPlaces)
		return n, n.places != ""
	}
	return n, true
}

// mostExponent is beyond any power of ten that matters: no text is that long that its digits could make up for it.
const mostExponent = 100_000_000

// exponent takes the power of ten of a JSON number, if it has one; it is cut off at mostExponent.
func (s *scanner) exponent(n *number) bool {
	if !s.eat("e", "E") {
		return true
	}
	negative := s.eat("-")
	if !negative {
		s.eat("+")
	}
	taken := s.digits(len(s.rest))
	for _, d := range []byte(taken) {
		n.exponent = min(n.exponent*10+int(d-'0'), mostExponent)
	}
	if negative {
		n.exponent = -n.exponent
	}
	return taken != ""
}

func (s *scanner) space() bool  { return s.eat(" ", noBreak, narrowNoBreak) }
func (s *scanner) hyphen() bool { return s.eat("-", hyphen, noBreakHyphen) }
