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

// exponent takes the power of ten of a JSON number, if it has one. One too large to matter is cut off, which leaves the
// number as far out of range, or as fine, as it was.
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
		n.exponent = min(n.exponent*10+int(d-'0'), 1<<40)
	}
	if negative {
		n.exponent = -n.exponent
	}
	return taken != ""
}
