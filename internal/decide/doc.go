// Package decide says what to do with each overhead: every option with the
// gates in front of it, the reasons under fixed factors, and the advice.
//
// Options, gates and reasons are facts about the case; only advice.go ranks
// them, so that another ranking can take its place.
package decide
