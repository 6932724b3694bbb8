// Package level holds levels and profiles: straight lines between surveyed
// stations, their values, extremes and breaks, and how much doubt the readings
// put into them.
//
// A [Height] is an exact value in the survey's frame, together with the
// readings that it is made of and their weights, so that a reading that serves
// both sides of a comparison cancels (JCGM 100:2008, 5.1 and 5.2).
package level
