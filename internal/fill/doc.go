// Package fill fills a run of one row of cabinets, exactly: no way to fill it is worth more than the first answer, and
// none that is not told is worth more than the last. It knows widths, heights and money, and no rooms.
//
// # What a run may hold
//
// From its left end to its right end a run is parted by gaps (the stretches of [Limit] height 0, as far as no cabinet
// stays there: windows, hoods, appliances) into segments. In a segment stand cabinets: new ones, of the sizes given, as
// often as wanted, each below every limit over it; and all those that stay, where they are, whatever the limits say,
// because they hang there already.
//
// Between two neighbours, which are cabinets or the ends of a segment, there is one of these:
//
//   - nothing: they touch;
//   - a filler, of any width from LeastFiller on. It closes a gap for good, so it has a cabinet on one side at least, and
//     on the other a cabinet or an end that there is something at ([End.Open] is false). There is no filler beside a
//     window, and none in a segment without cabinets;
//   - an open stretch. A new cabinet beside it shows its side and gets a panel, which is as high as the cabinet and takes
//     its thickness off the stretch. What is left is at least LeastOpen wide, since nobody can finish a wall in a slit;
//     only beside an open end it may be anything, because the opening goes on there, and between cabinets that stay it
//     is what it is.
//
// A new cabinet next to an end that is not open stays away from it by [End.Least] or more, for its doors and pulls,
// whatever is between; with 0 it may touch. Next to an open end it shows its side and gets a panel, too. To cabinets that
// stay nothing of this applies: they stand as they stand, with the sides that they have.
//
// Closed asks for a row without holes: then open stretches are only beside open ends.
//
// Over each of the stretches [Run.Whole] stands one cabinet, a new one or one that stays, which may reach beyond it: the
// cabinet that a sink or a hob hangs in. So nothing begins or ends inside, and none of it is under a panel, filled, left
// open or in a gap. Where two of them overlap, the same cabinet stands over both.
//
// # What it is worth
//
// The worth of all new cabinets' sizes and of all pairs, less what [Weights] say. A change of height counts where two
// cabinets touch and where only a filler is between them, for the line of the row breaks there all the same; over an open
// stretch or a gap it does not. A joint is where two cabinets touch; it misses the lines if it meets none of them exactly.
//
// A pair's neighbours are equal in width and height, and have nothing between them and the gap but the panel, where the
// gap's side is open, or the narrowest filler there may be, where the side keeps them away. A cabinet that stays counts
// as a neighbour if it touches the gap.
//
// # Which answers there are
//
// Two answers differ if their ordered lists of cabinets do, with the gaps and the cabinets that stay among them; of the
// ways to place one list the best is told, and of equals the one furthest to the left. With AnyOrder they differ if their
// new cabinets do. Answers come by worth; of equal worth with fewer new cabinets first, then with the wider and taller
// cabinet at the first difference from the left. So the answers depend on the run alone, and not on the order of its sizes.
//
// # How they are found
//
// By the longest path through a graph without circles (graph.go). What is still to come depends only on a place and what
// was last there, a new cabinet's height, a filler or an open stretch; so the best way from each such state to the end is
// found from right to left (best.go), in a time that grows as the length does. The next best ways are looked for only at
// the states that they come through (more.go). All money is in whole numbers.
package fill
