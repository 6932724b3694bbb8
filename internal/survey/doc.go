// Package survey holds the room as it is: walls with their floors, ceilings,
// openings, fixtures and overheads, all levels reduced to one frame, and the
// level groups with the datum that heights refer to.
//
// Stations (`at`) run along a wall from its left end as seen from inside the
// room; `out` is the distance from the wall. Levels are in the survey's frame;
// subtract a group's datum to get heights.
package survey
