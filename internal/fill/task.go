package fill

import (
	"cmp"
	"slices"

	"railhead/internal/length"
)

// task is a checked run in whole steps of a grid, with all money in shares (see share) as what is gained.
type task struct {
	r     *Run
	grid  length.Length
	times int // grids of the run in a step
	steps int32
	share int64

	sizes     []size // those worth having, in the order in which ties are settled
	heights   []length.Length
	class     [][2]int32 // of each height: its sizes, from and to, in byClass
	byClass   []int32
	narrowest []int32 // of each height: its narrowest size, or more than there is room for

	fixed   []fixed
	fixedAt []int32   // by step: the cabinet that stays and begins there, or none
	clear   []int32   // by step: where the stretch ends that nothing need stand in
	room    [][]int32 // by height and step: where the stretch ends that a cabinet of the height may stand in
	onLine  []bool    // by step: a joint there misses no line

	segments []segment // what lies between the gaps
	segment  []int32   // by step: the segment around it, or none within a gap and where nothing may begin or end
	gaps     []gap     // gap i lies between segments i and i+1

	leastFiller, leastOpen, panel           int32
	perFiller, perOpen                      int64
	oneFiller, onePanel, oneChange, oneMiss int64
}

const none = -1

// size is a size in steps.
type size struct {
	width, height int32 // the height as its place in task.heights
	gain          int64
	index         int // in Run.Sizes
}

// fixed is a cabinet that stays, in steps.
type fixed struct {
	from, to, height int32
	index            int  // in Run.Fixed
	clash            bool // overlaps another one
}

// segment is a stretch between two gaps, or a gap and an end.
type segment struct {
	from, to int32
	sides    [2]side
}

// side is an End in steps.
type side struct {
	least int32
	open  bool
}

// gap is a stretch where nothing may stand, with something on both sides.
type gap struct {
	paired, must bool
	whole        bool // a cabinet would have to stand there: no way leads across
	gain         int64
}

// share is how many shares a ten-thousandth of money has: more than there can be cabinets, so that one share, the price
// of a cabinet, settles only ties.
func (r *Run) share() int64 {
	narrowest := r.Length + 1
	for _, s := range r.Sizes {
		narrowest = min(narrowest, max(s.Width, r.Grid))
	}
	return int64(r.Length/narrowest) + 2
}

// reduce makes the task of a checked run.
func reduce(r *Run) *task { return reduceOn(r, r.coarsest()) }

// reduceOn makes the task on a grid.
func reduceOn(r *Run, grid length.Length) *task {
	t := &task{r: r, share: r.share(), grid: grid}
	t.times, t.steps = int(t.grid/r.Grid), int32(r.Length/t.grid)
	t.weights()
	t.sort()
	t.classes()
	t.stay()
	t.divide()
	t.rooms()
	t.keepWhole()
	t.lines()
	return t
}

func (t *task) weights() {
	w := t.r.Weights
	step := t.share * int64(t.times)
	t.perFiller, t.perOpen = int64(w.FillerPerGrid)*step, int64(w.OpenPerGrid)*step
	t.oneFiller, t.onePanel = int64(w.Filler)*t.share, int64(w.Panel)*t.share
	t.oneChange, t.oneMiss = int64(w.HeightChange)*t.share, int64(w.LineMiss)*t.share
	t.leastFiller, t.leastOpen = t.in(t.r.leastFiller()), t.in(t.r.leastOpen())
	t.panel = t.in(t.r.Panel)
}

// in is a length in steps.
func (t *task) in(l length.Length) int32 { return int32(l / t.grid) }

// length is a number of steps as a length.
func (t *task) length(q int32) length.Length { return length.Length(q) * t.grid }

func (t *task) side(e End) side { return side{t.in(t.r.whole(e.Least)), e.Open} }

// stay puts the cabinets that stay in their places.
func (t *task) stay() {
	t.fixedAt = make([]int32, t.steps+1)
	for i := range t.fixedAt {
		t.fixedAt[i] = none
	}
	for i, p := range t.r.Fixed {
		from := t.in(p.At)
		t.fixed = append(t.fixed, fixed{from, from + t.in(p.Width), t.heightClass(p.Height), i, false})
	}
	slices.SortFunc(t.fixed, func(a, b fixed) int {
		return cmp.Or(cmp.Compare(a.from, b.from), cmp.Compare(a.to, b.to), cmp.Compare(a.index, b.index))
	})
	last := -1
	for i, f := range t.fixed {
		t.fixedAt[f.from] = int32(i)
		if last >= 0 && t.fixed[last].to > f.from {
			t.fixed[last].clash, t.fixed[i].clash = true, true
		}
		if last < 0 || t.fixed[last].to < f.to {
			last = i // the one that reaches furthest
		}
	}
}

// lines marks the places where a joint misses no line.
func (t *task) lines() {
	t.onLine = make([]bool, t.steps+1)
	for i := range t.onLine {
		t.onLine[i] = len(t.r.Lines) == 0
	}
	for _, l := range t.r.Lines {
		if l >= 0 && l <= t.r.Length && l%t.grid == 0 {
			t.onLine[t.in(l)] = true
		}
	}
}
