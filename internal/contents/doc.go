// Package contents holds what is believed of an overhead's inside: the odds
// before anyone looked, what hints and looks make of them, and what a probe hole
// would tell.
package contents
