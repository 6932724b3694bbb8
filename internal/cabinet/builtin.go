package cabinet

import "railhead/internal/length"

// BuiltInSystem is a system that comes with the service: generic sizes of the trade.
type BuiltInSystem struct {
	ID     string
	Says   string // what it is, in a sentence
	Source string // where its sizes are from, and how they were obtained
	Units  length.Unit
	System System
	Mass   MassPerArea
}

// MassPerArea is what cabinets weigh in kilograms per square metre of front, as decimals; empty where not stated.
type MassPerArea struct{ Wall, Tall, Base string }

// BuiltIns are the built-in systems in order of id. The caller owns them.
func BuiltIns() []BuiltInSystem {
	return []BuiltInSystem{demoRail(), faceFrameInch(), framelessMetric()}
}

// BuiltIn finds a built-in system.
func BuiltIn(id string) (BuiltInSystem, bool) {
	for _, b := range BuiltIns() {
		if b.ID == id {
			return b, true
		}
	}
	return BuiltInSystem{}, false
}

// corners are corner cabinets of one shape, in whole numbers of a unit: as wide along one wall as along the other, but
// blind ones reach along their own wall only.
func corners(shape CornerShape, unit length.Length, numbers ...int) []CornerSize {
	out := make([]CornerSize, len(numbers))
	for i, width := range sizes(unit, numbers...) {
		out[i] = CornerSize{Shape: shape, Width: width}
		if shape != CornerBlind {
			out[i].OtherWidth = width
		}
	}
	return out
}

// sizes are whole numbers of a unit.
func sizes(unit length.Length, numbers ...int) []length.Length {
	out := make([]length.Length, len(numbers))
	for i, n := range numbers {
		out[i] = length.Length(n) * unit
	}
	return out
}
