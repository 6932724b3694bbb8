// Package takeoff measures the work of an option from the room's geometry: what
// comes off and goes on, in square metres, metres, pieces, litres and kilograms.
// It knows no prices.
//
// Every quantity carries its formula and the figures in it, so that a person can
// work it out again with a calculator. Quantities are exact until they are
// rounded, once, to a thousandth of their unit; figures that have no finite
// decimal are shown to the nanometre.
//
// What is built as one thing (the parts of an overhead group) is measured as one:
// where parts meet there is no face, and in a corner that two of them fill the
// area counts once, for the first.
package takeoff
