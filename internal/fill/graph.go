package fill

// The run is filled from left to right through states; what is still to come depends on the state alone. Most states are
// of a place; they are numbered kind by kind, and within a kind by place:
//
//	start  a new cabinet of a height begins here
//	fresh  a new cabinet of whatever height begins here
//	after  a new cabinet of a height ended here
//	filler a filler that is wide enough already ends here or goes on; it carries the height to its left, or none at an end
//	open   an open stretch that is wide enough ends here or goes on; either behind a cabinet or behind an end
//	stayed a cabinet that stays ended
//	begin  a segment begins
//	across a gap with equal neighbours follows a size
//	match  the size that follows such a gap is settled
//	end    nothing is left
type graph struct {
	*task
	heightN, places int32

	stayed, begin, across, match, end int32 // the first state of each kind that has no place in its number
}

// move leads from one state to another.
type move struct {
	to   int32
	sign int32 // what it puts into the list of cabinets: a size, or one of the signs below, or none
	gain int64
	how  how
}

// how is what a move puts between the cabinet or end before it and what follows.
type how uint8

const (
	same    how = iota // what was begun goes on
	nothing            // they touch
	filled
	left // open
)

// keeps and passes are the signs of a cabinet that stays and of a gap; both come after all sizes.
func (t *task) keeps() int32  { return int32(len(t.sizes)) }
func (t *task) passes() int32 { return int32(len(t.sizes)) + 1 }

func (t *task) graph() *graph {
	g := &graph{task: t, heightN: int32(len(t.heights))}
	g.places = t.steps + 1
	g.stayed = g.places * (3*g.heightN + 4)
	g.begin = g.stayed + int32(len(t.fixed))
	g.across = g.begin + int32(len(t.segments))
	each := int32(len(t.sizes)) + 1
	g.match = g.across + int32(len(t.gaps))*each
	g.end = g.match + int32(len(t.gaps))*each
	return g
}

func (g *graph) start(q, h int32) int32  { return h*g.places + q }
func (g *graph) after(q, h int32) int32  { return (g.heightN+h)*g.places + q }
func (g *graph) filler(q, h int32) int32 { return (2*g.heightN+h)*g.places + q } // h = heightN: behind an end
func (g *graph) open(q, end int32) int32 { return (3*g.heightN+1+end)*g.places + q }
func (g *graph) fresh(q int32) int32     { return (3*g.heightN+3)*g.places + q }

// mayEnd says whether a new cabinet of height h can end at q. Where none can, what would follow need not be known.
func (g *graph) mayEnd(q, h int32) bool {
	from := q - g.narrowest[h]
	return from >= 0 && g.room[h][from] >= q
}

// pairState is the state of a size at a gap; of a cabinet that stays it is the one after all sizes.
func (g *graph) pairState(first, gap, s int32) int32 {
	return first + gap*(int32(len(g.sizes))+1) + s
}

// moves appends all moves from a state.
func (g *graph) moves(out []move, x int32) []move {
	switch {
	case x < g.stayed:
		return g.movesAt(out, x%g.places, x/g.places)
	case x < g.begin:
		return g.fromStayed(out, x-g.stayed)
	case x < g.across:
		return g.fromBegin(out, x-g.begin)
	case x < g.end:
		n := int32(len(g.sizes)) + 1
		if x < g.match {
			return g.fromAcross(out, (x-g.across)/n, (x-g.across)%n)
		}
		return g.fromMatch(out, (x-g.match)/n, (x-g.match)%n)
	}
	return out
}

func (g *graph) movesAt(out []move, q, kind int32) []move {
	n := g.heightN
	switch {
	case kind < n:
		return g.fromStart(out, q, kind)
	case kind < 2*n:
		return g.fromAfter(out, q, kind-n)
	case kind <= 3*n:
		return g.fromFiller(out, q, kind-2*n)
	case kind < 3*n+3:
		return g.fromOpen(out, q, kind-3*n-1)
	}
	return g.fromFresh(out, q)
}
