// Package stock cuts pieces from the lengths that can be bought: one-dimensional, exact, with the kerf of the saw.
//
// A plan is the better one, in this order:
//
//  1. the total length bought is least;
//  2. the bars are fewest;
//  3. the longest single offcut is longest, because a long offcut is stock for the next job and two short ones are waste.
//
// Up to fourteen pieces, or more where many are equal, all three hold exactly: a table goes through everything (small.go).
// Beyond that quick plans (greedy.go) are improved and the first two aims proven by branch and price (search.go, with the
// linear program of relax.go) and by going through all bars that a better plan could be made of (settle.go). There the
// third aim is met by moving and swapping pieces (offcut.go), without a proof. With more kinds of pieces than the linear
// program can bear, the worst part of the plan is cut anew (rework.go).
//
// What still ties is settled by the order of the lengths, so a plan depends on the lengths alone: neither on the order of
// the pieces nor on the unit they are given in.
//
// The effort is counted in steps, never in time. A problem that runs out of them gets the best plan found, the length
// that no plan can beat ([Plan.Bound]), and Proven false.
//
// The one trick used throughout: n pieces need n-1 cuts between them, so they fit when the sum of (piece + kerf) is at
// most bar + kerf. With the kerf added to both, the saw disappears from the arithmetic.
package stock
