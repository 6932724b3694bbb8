package contents

import (
	"railhead/internal/belief"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// Odds is what is believed of a cluster's contents.
//
// What was seen is known and is work that is sure; the odds are about what nobody
// has seen. Where everything was seen they are certain, and say what that was.
type Odds struct {
	Prior   belief.Belief // before anyone looked
	Now     belief.Belief // after the looks
	Steps   []Step        // that lead from nothing to Now
	Assumed bool          // the request does not give the odds
	Given   string        // the member that gives the odds, or would
	Unused  []string      // members that give other odds for parts of the same cluster
	Seen    State         // what was seen makes by itself; Empty where nothing was
	Unseen  money.Quantity
}

// Of is what is believed of a cluster. Where the request gives odds, they stand
// for the built-in ones and for all hints, but not for what was seen; where it
// gives several, those of the first part hold.
func Of(k *kitchen.Kitchen, c Cluster) Odds {
	giver, unused := c.giver()
	if giver != nil {
		out := With(c, belief.Of(giver.Inside.Priors...))
		out.Unused = unused
		return out
	}
	t := trail{now: even()}
	t.builtIn(k, c)
	return t.odds(c, true)
}

// With is what would be believed of a cluster if the request gave these odds at
// [Cluster.PriorPointer].
func With(c Cluster, prior belief.Belief) Odds {
	var t trail
	t.set(prior, "contents.odds.given", c.PriorPointer())
	return t.odds(c, false)
}

// PriorPointer is the member of the request that gives a cluster's odds, or would.
func (c Cluster) PriorPointer() string {
	giver, _ := c.giver()
	if giver == nil {
		giver = c.Parts[0]
	}
	return giver.Inside.Pointer + "/priors"
}

// NotAssessed are the odds that the request gives in vain.
func (o Odds) NotAssessed() []finding.NotAssessed {
	var out []finding.NotAssessed
	for _, pointer := range o.Unused {
		out = append(out, finding.NotAssessed{Part: "decisions", Code: "not_assessed.priors_shared", Pointer: pointer})
	}
	return out
}

// giver is the first part for which the request gives odds; nil where there is
// none. Others that give different ones are unused.
func (c Cluster) giver() (first *survey.Overhead, unused []string) {
	for _, o := range c.Parts {
		switch {
		case len(o.Inside.Priors) != int(States):
		case first == nil:
			first = o
		case !same(first.Inside.Priors, o.Inside.Priors):
			unused = append(unused, o.Inside.Pointer+"/priors")
		}
	}
	return first, unused
}

func same(a, b []belief.Chance) bool {
	return [States]belief.Chance(a) == [States]belief.Chance(b)
}

// odds closes a trail of priors with what the looks have shown.
func (t *trail) odds(c Cluster, assumed bool) Odds {
	out := Odds{Prior: t.now, Assumed: assumed, Given: c.PriorPointer(), Unseen: c.unseenShare()}
	out.Seen, _ = c.seenState()
	t.looks(c)
	out.Now, out.Steps = t.now, t.steps
	return out
}
