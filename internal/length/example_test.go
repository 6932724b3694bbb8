package length_test

import (
	"errors"
	"fmt"

	"railhead/internal/length"
)

func Example() {
	cabinet, _ := length.Parse("30 in")
	ceiling, _ := length.ParseNumber("2403.5", length.MM)
	fmt.Println((ceiling - cabinet).Tape(length.IN, length.Inch/16, length.Down))
	_, err := length.Parse("1/3 in")
	var refused *length.Error
	if errors.As(err, &refused) {
		fmt.Println(refused.Code)
	}
	// Output:
	// 64 5/8 in 1641.475 mm
	// length.text.too_fine
}

// A ceiling that falls 5 mm over three metres, a metre from its left end: rounded only where a mark is wanted.
func ExampleInterpolate() {
	left, right := (2405 * length.Millimetre).Exact(), (2400 * length.Millimetre).Exact()
	height := length.Interpolate(0, left, 3*length.Metre, right, length.Metre)
	fmt.Println(height, "=", height.Round(length.Down).MM(), "mm, rounded down")
	// Output: 7210000000/3 nm = 2403.333333 mm, rounded down
}
