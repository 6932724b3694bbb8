// Package contents holds what is believed of an overhead's inside: the odds
// before anyone looked, what hints and looks make of them, and what a probe hole
// would tell.
//
// Overheads whose contents run on from one to the other are one cluster and have
// one state. The odds start from the kind of overhead, or from what the request
// gives; each hint multiplies them by factors, and so does each look at a part.
// Every step is kept, so that a person can multiply it out again. None of the
// built-in numbers was counted in houses: they are estimates from memory, each an
// assumption with a code that the request can replace.
package contents
