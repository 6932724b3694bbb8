package takeoff

import (
	"slices"

	"railhead/internal/contents"
	"railhead/internal/survey"
)

// takeDown is the work of an overhead that comes down as a whole, whatever is then
// made of the gap.
func (s *sheet) takeDown(st *stretch) {
	if !s.again() {
		if !st.gone {
			s.stripOut(st)
		}
		s.makeGoodCeiling(st)
		s.debris()
		s.remember()
	}
	s.makeGoodWalls(st)
}

// removal is what taking an overhead down comes to.
type removal struct {
	accounts []account
	behind   account
	framing  fraction
	found    [contents.States][]Item
	backed   []survey.Span // what was found rests on this,
	duct     bool          // and on whether a duct is moved for sure
}

// takesDownBare reports whether all comes down and nobody reads a formula; where
// somebody does, each account has a paper of its own, and nothing is kept.
func (s *sheet) takesDownBare() bool { return s.job.Bare && s.job.Option.TakesDown() }

// remember keeps what taking it down came to for the next option that does.
func (s *sheet) remember() {
	if !s.takesDownBare() {
		return
	}
	kept := &removal{behind: s.behind, framing: s.framing, accounts: make([]account, len(s.accounts))}
	for i, a := range s.accounts {
		kept.accounts[i] = *a
	}
	s.standing.removal = kept
}

// again takes what was kept; false where nothing was.
func (s *sheet) again() bool {
	kept := s.standing.removal
	if kept == nil || !s.takesDownBare() {
		return false
	}
	s.behind, s.framing = kept.behind, kept.framing
	for i := range kept.accounts {
		*s.account(kept.accounts[i].work) = kept.accounts[i]
	}
	return true
}

// foundFor reports whether what may turn up is kept as it is for an option.
func (r *removal) foundFor(s *sheet) bool {
	return r.found[contents.Immovable] != nil && slices.Equal(r.backed, s.backed) && r.duct == (s.of(RerouteDuct).sign() != 0)
}
