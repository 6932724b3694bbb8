// Package api holds the wire types of railhead's v1 contract: what a caller
// sends, what the service answers, and how it refuses.
//
// The types carry no behaviour of the trade and import nothing of the service,
// so a Go program can use them to build requests and read answers.
//
// Conventions that hold everywhere:
//
//   - Lengths in a request are numbers in the request's units or strings that
//     name their own unit ([Length]); lengths in an answer are [Measure]s.
//   - `at` is a position along a wall from its left end, as seen from inside
//     the room; `out` is the distance from the wall into the room.
//   - Heights in an answer are above the datum of their level group.
//   - Pointers are RFC 6901 JSON pointers into the body that was sent.
package api
