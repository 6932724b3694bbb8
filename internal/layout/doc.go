// Package layout fills the walls of a room with cabinets, under one sky: wall, tall and base rows of all walls that are
// asked for, with the corners between them.
//
// What is told apart here:
//
//   - A row ([row]) is one kind along one wall: the room there is for it (package space), turned into a run that package
//     fill fills exactly. Everything is on one grid ([gridOf]).
//   - A corner ([corner]) is a way for two rows to turn an inside corner: dead, one of them running on, or with a corner
//     cabinet of the system. Rows that turn corners into each other are a chain ([solver.chain]).
//   - Tall cabinets ([towers]) stand at the ends of free stretches, and are in the way of both other rows.
//   - Lines couple the rows: the joints of a wall row should meet edges below ([solver.under], [solver.slid]).
//
// For each choice of tall cabinets each kind's rows are filled exactly, with all ways to turn corners; choices that
// cannot be among the best are passed over by their bounds. Only the lines are met in turns, the wall row after the
// base row and back.
package layout
