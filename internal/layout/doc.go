// Package layout fills the walls of a room with cabinets, under one sky.
package layout
