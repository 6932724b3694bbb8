// Package propose plans a room: cabinets for its walls together with what happens to
// each overhead.
//
// What cabinets there is room for hangs on what hangs above them, and what an overhead
// costs to cut or to take down hangs on the cabinets. So the room is filled (package
// layout) under every sky that the overheads may leave: as found, cut as high as a cut
// can be built, or gone; each of the best ways to fill it is a plan, for which package
// decide finds the best options that leave it such a sky, and package fit has the last
// word on whether everything then fits. What a plan is worth is what its cabinets are
// worth less what its options cost.
//
// Filling is exact for each sky, and so is the choice of options for each plan. Plans
// are priced only after they are filled: of the plans for one sky the best few are, so
// one that is worth less by itself but is cheaper to make room for may be passed over.
//
// Heights are above the datum that a plan's own standing cabinets produce. They are
// first taken to be above the highest floor along the walls; where the cabinets then
// keep off that, the walls are filled again above the highest floor that they do stand
// on, as long as that changes anything.
package propose
