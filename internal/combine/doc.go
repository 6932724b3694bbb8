// Package combine finds the best combination of ways to do several things that
// share charges and bear on each other. It is exact: no combination is better
// than the one it returns, and of equals it returns the first.
//
// The search takes the things one after the other and keeps, as labels, the
// choices that may still become the best: a label falls when another one with
// the same future is at least as good however the rest is done, and when even the
// most that it may come to (see bound) is less than a combination known already.
// Widths that grow from pass to pass find good combinations before the search is
// widened; the pass that leaves out nothing that might matter ends it.
//
// Choosing which work shares a minimum charge is a knapsack for each trade, so
// nothing bounds the time for every problem. Where a few things fill a trade's
// minimum, as in the trade, hundreds of things take milliseconds; where dozens of
// them must share one minimum, for several trades at a time, and their labour
// comes out near it, a hundred things may take minutes: Solver.Effort ends that.
package combine
