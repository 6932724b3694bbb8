package fill

import (
	"railhead/internal/length"
	"railhead/internal/money"
)

// checker collects what is wrong with a run.
type checker struct {
	r     *Run
	wrong Errors
}

func (c *checker) no(code string, m Member, index int) {
	c.wrong = append(c.wrong, Error{code, m, index})
}

// check collects what is wrong with a run.
func check(r *Run) Errors {
	c := &checker{r: r}
	c.counts()
	switch {
	case r.Grid <= 0:
		c.no(CodeNotPositive, InGrid, none)
		return c.wrong
	case r.Length < 0:
		c.no(CodeNotPositive, InLength, none)
		return c.wrong
	case r.Length > length.Max || r.Length/r.Grid > MaxSteps || r.Length/r.Grid*length.Length(r.heights()+1) > MaxPlaces:
		c.no(CodeTooLarge, InLength, none)
		return c.wrong
	}
	c.grid(InLength, none, r.Length)
	for i, s := range r.Sizes {
		c.width(InSizes, i, s.Width, s.Height)
	}
	for i, l := range r.Limits {
		c.limit(i, l)
	}
	for i, p := range r.Fixed {
		c.width(InFixed, i, p.Width, p.Height)
		c.stretch(InFixed, i, p.At, p.At+p.Width)
	}
	for i, s := range r.Whole {
		c.within(InWhole, i, s.From, s.To)
	}
	for i, e := range r.Ends {
		c.least(InEnds, i, e.Least)
	}
	for i, p := range r.Pairs {
		c.stretch(InPairs, i, p.From, p.To)
	}
	c.least(InLeastFiller, none, r.LeastFiller)
	c.least(InLeastOpen, none, r.LeastOpen)
	c.least(InPanel, none, r.Panel)
	c.grid(InPanel, none, r.Panel)
	c.amounts()
	return c.wrong
}

func (c *checker) counts() {
	for _, m := range []struct {
		in        Member
		have, max int
	}{
		{InSizes, len(c.r.Sizes), MaxSizes},
		{InLimits, len(c.r.Limits), MaxOthers},
		{InFixed, len(c.r.Fixed), MaxOthers},
		{InWhole, len(c.r.Whole), MaxOthers},
		{InLines, len(c.r.Lines), MaxOthers},
		{InPairs, len(c.r.Pairs), MaxOthers},
		{InBest, c.r.Best, MaxBest},
		{InSizes, c.r.heights(), MaxHeights},
	} {
		if m.have > m.max {
			c.no(CodeTooMany, m.in, none)
		}
	}
}

// heights counts the different ones.
func (r *Run) heights() int {
	seen := map[length.Length]bool{}
	for _, s := range r.Sizes {
		seen[s.Height] = true
	}
	for _, p := range r.Fixed {
		seen[p.Height] = true
	}
	return len(seen)
}

func (c *checker) grid(m Member, index int, l length.Length) {
	if l%c.r.Grid != 0 {
		c.no(CodeOffGrid, m, index)
	}
}

func (c *checker) least(m Member, index int, l length.Length) {
	switch {
	case l < 0:
		c.no(CodeNotPositive, m, index)
	case l > length.Max:
		c.no(CodeTooLarge, m, index)
	}
}

func (c *checker) width(m Member, index int, width, height length.Length) {
	switch {
	case width <= 0 || height <= 0:
		c.no(CodeNotPositive, m, index)
	case width > length.Max || height > length.Max:
		c.no(CodeTooLarge, m, index)
	default:
		c.grid(m, index, width)
	}
}

func (c *checker) stretch(m Member, index int, from, to length.Length) {
	if c.within(m, index, from, to) && (from%c.r.Grid != 0 || to%c.r.Grid != 0) {
		c.no(CodeOffGrid, m, index)
	}
}

// within refuses a stretch that is none, or not one of the run.
func (c *checker) within(m Member, index int, from, to length.Length) bool {
	switch {
	case from < 0 || to > c.r.Length:
		c.no(CodeOutside, m, index)
	case to <= from:
		c.no(CodeNotPositive, m, index)
	default:
		return true
	}
	return false
}

func (c *checker) limit(i int, l Limit) {
	c.stretch(InLimits, i, l.From, l.To)
	if l.Height < 0 {
		c.no(CodeNotPositive, InLimits, i)
	}
	for _, s := range l.Sides {
		c.least(InLimits, i, s.Least)
	}
}

// amounts refuses weights below 0, and money that sums could lead out of range.
func (c *checker) amounts() {
	most := c.most()
	for i, s := range c.r.Sizes {
		if s.Worth < -most || s.Worth > most {
			c.no(CodeTooLarge, InSizes, i)
		}
	}
	for i, p := range c.r.Pairs {
		c.weight(InPairs, i, p.Worth, most)
	}
	w := c.r.Weights
	for i, a := range []money.Amount{w.Cabinet, w.Filler, w.FillerPerGrid, w.Panel, w.OpenPerGrid, w.HeightChange, w.LineMiss} {
		c.weight(InWeights, i, a, most)
	}
}

func (c *checker) weight(m Member, index int, a, most money.Amount) {
	switch {
	case a < 0:
		c.no(CodeNotPositive, m, index)
	case a > most:
		c.no(CodeTooLarge, m, index)
	}
}

// most is the largest amount with which no sum leaves the range. At one place there are fewer than eight amounts, and
// all is counted in shares (see share).
func (c *checker) most() money.Amount {
	places := int64(c.r.Length/c.r.Grid) + 1 + int64(len(c.r.Pairs))
	return min(money.Most, money.Amount((1<<62)/(8*places*c.r.share())))
}
