// Package rail says where the rails go: the level of each row's lower edge, the
// pieces it runs in between interruptions, the screws that hold it, the checks
// along it, and how the pieces are cut from the lengths that are sold.
package rail
