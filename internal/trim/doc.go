// Package trim says where an overhead is cut so that cabinets fit under it: the
// cut line, the strip that comes off at every break of its underside, the faces
// that have to be closed, what runs too near to the cut, and the steps.
package trim
