// Package cabinet holds cabinet systems, their built-in generic sizes, and the
// cabinets of a plan placed along walls, with the floor area each one covers.
// Heights are above the datum of the wall's level group.
package cabinet
