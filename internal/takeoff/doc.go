// Package takeoff measures the work of an option from the room's geometry: what
// comes off and goes on, in square metres, metres, hours' worth of pieces,
// litres and kilograms. It knows no prices.
package takeoff
