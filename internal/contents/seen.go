package contents

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/money"
	"railhead/internal/survey"
)

// UnseenSpans are the stretches of an overhead that nobody has looked into.
func UnseenSpans(o *survey.Overhead) []survey.Span {
	switch {
	case o.Inside.Looked == survey.NotLooked:
		return whole(o)
	case len(o.Inside.Seen) > 0:
		return survey.Without(whole(o), o.Inside.Seen)
	case o.Inside.Looked == survey.Opened:
		return nil
	default:
		return whole(o) // a hole, and nobody said how far it showed
	}
}

func whole(o *survey.Overhead) []survey.Span { return []survey.Span{{From: o.From, To: o.To}} }

// UnseenLength is how long what nobody has looked into is, over all parts.
func (c Cluster) UnseenLength() length.Length { return c.sum(UnseenSpans) }

// UnseenOf is how long what nobody has looked into is in one overhead.
func UnseenOf(o *survey.Overhead) length.Length {
	return Cluster{Parts: []*survey.Overhead{o}}.UnseenLength()
}

// unseenShare is the part of the length that nobody has looked into; 0 and 1
// mean none of it and all.
func (c Cluster) unseenShare() money.Quantity {
	unseen, all := c.UnseenLength(), c.Length()
	if unseen == 0 {
		return 0
	}
	if unseen == all {
		return money.One
	}
	part := money.Quantity(money.Amount(money.One).Share(int64(unseen), int64(all)))
	return max(1, min(money.One-1, part))
}

// shown is how much of the length looks have shown. A hole of which nobody said
// how far it showed is taken to show what a hole does.
func (c Cluster) shown() length.Length {
	out := c.Length() - c.UnseenLength()
	for _, o := range c.Parts {
		if blindHole(o) {
			out += min(c.sight(), o.To-o.From)
		}
	}
	return out
}

// sight is how much of an overhead a probe hole shows.
func (c Cluster) sight() length.Length { return c.figures.Length(kitchen.ProbeSight) }

// blindHole: somebody looked in through a hole, and nobody said how far.
func blindHole(o *survey.Overhead) bool {
	return o.Inside.Looked == survey.ProbeHole && len(o.Inside.Seen) == 0
}

func lookedInto(o *survey.Overhead) bool { return o.Inside.Looked != survey.NotLooked }

func notAllSeen(o *survey.Overhead) bool { return len(UnseenSpans(o)) > 0 }
