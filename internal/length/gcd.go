package length

// GCD is the longest length of which both are whole multiples; the other one where one
// is 0.
func GCD(a, b Length) Length {
	for b != 0 {
		a, b = b, a%b
	}
	return a.Abs()
}
