// Package space says where along a wall cabinets of one row may stand: what is in
// the way beside them and above them, how high they may reach, what stands at
// the ends of each free stretch, and what they should line up with.
//
// It decides as package fit does. Fit holds a cabinet that is placed against the
// room; this package turns that around and says beforehand which places are free.
package space
