package combine

import "slices"

// line is where the tops end so far: one of the lines below, or the number of a
// line known, from one.
type line int32

const (
	anyLine line = 0  // nothing stands under what is done so far
	uneven  line = -1 // there will be no even line
	oneLine line = -2 // one line that no way still to come can leave, or not leave
)

// lines follows the line that everything may end at.
type lines struct {
	worth  int64
	others Line
	known  []Line // every line that some way may leave, in order
	until  []int  // the last stage that may leave it
	broken []int  // the last stage that must leave another
	bare   int    // the last stage that must leave some line
	hope   int    // the last stage that may leave a line which nothing later breaks
	alive  []int  // lines that no stage passed has broken
}

// prepare lists the lines of a problem.
func (l *lines) prepare(p *Problem) {
	l.worth, l.others, l.known = clamp(p.Even.Worth, p.most()), p.Even.Others, l.known[:0]
	if l.worth == 0 {
		return
	}
	for _, thing := range p.Things {
		for _, w := range thing.Ways {
			if w.Line > NoLine {
				l.known = append(l.known, w.Line)
			}
		}
	}
	if l.others > NoLine {
		l.known = append(l.known, l.others)
	}
	slices.Sort(l.known)
	l.known = slices.Compact(l.known)
}

// number is the line of a way; no line matters where an even one is worth
// nothing.
func (l *lines) number(given Line) line {
	switch {
	case l.worth == 0 || given == NoLine:
		return anyLine
	case given < NoLine:
		return uneven
	}
	n, _ := slices.BinarySearch(l.known, given)
	return line(n + 1)
}

// settle finds how long each line can last.
func (l *lines) settle(t *task) {
	l.until, l.broken, l.bare, l.hope = l.until[:0], l.broken[:0], -1, -1
	if l.worth == 0 {
		return
	}
	l.alive = l.alive[:0]
	for n := range l.known {
		l.until, l.broken, l.alive = append(l.until, -1), append(l.broken, -1), append(l.alive, n)
	}
	for k := len(t.stages) - 1; k >= 0; k-- {
		l.pass(t.ways[t.stages[k].from:t.stages[k].to], k)
	}
	for n, until := range l.until {
		if until > l.broken[n] {
			l.hope = max(l.hope, until)
		}
	}
}

// pass takes in the ways of stage k, the last stage first.
func (l *lines) pass(ways []way, k int) {
	bare := true
	for _, w := range ways {
		if w.line > 0 {
			l.until[w.line-1] = max(l.until[w.line-1], k)
		}
		bare = bare && w.line != anyLine
	}
	if !bare {
		return
	}
	l.bare = max(l.bare, k)
	left := l.alive[:0]
	for _, n := range l.alive {
		if leaves(ways, line(n+1)) {
			left = append(left, n)
		} else {
			l.broken[n] = k
		}
	}
	l.alive = left
}

func leaves(ways []way, n line) bool {
	for _, w := range ways {
		if w.line == n {
			return true
		}
	}
	return false
}

// start is the line before anything is done.
func (l *lines) start() line { return l.after(-1, l.number(l.others)) }

// with is the line that a way leaves on top of the line so far.
func (at line) with(w line) line {
	switch {
	case w == anyLine || w == at:
		return at
	case at == anyLine:
		return w
	default:
		return uneven
	}
}

// after is the line as it counts after stage k: lines that nothing tells apart
// from then on are one.
func (l *lines) after(k int, at line) line {
	switch {
	case at > 0 && l.broken[at-1] > k, at == oneLine && l.bare > k, at == anyLine && l.hope <= k:
		return uneven
	case at > 0 && l.until[at-1] <= k:
		return oneLine
	default:
		return at
	}
}

// lead is the most that what stands at line b may gain on what stands at line a
// by an even line.
func (l *lines) lead(a, b line) int64 {
	switch {
	case a == b:
		return 0
	case l.worth < 0:
		if a == uneven {
			return 0
		}
		return -l.worth
	case b == uneven:
		return 0
	default:
		return l.worth
	}
}

// most is the most that an even line is still worth.
func (l *lines) most(at line) int64 {
	if at == uneven {
		return 0
	}
	return max(0, l.worth)
}
