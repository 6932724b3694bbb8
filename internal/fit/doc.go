// Package fit checks each planned cabinet against the room: what is above it,
// beside it and in front of it, how it gets onto its rail or onto its feet, and
// what helps where it does not fit.
//
// "Does not fit" is an answer here, never an error.
package fit
