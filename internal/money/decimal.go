package money

import "strconv"

// Decimal is n parts of which a unit has so many, a power of ten, as a decimal
// number without needless zeros.
func Decimal(n, unit int64) string {
	text := make([]byte, 0, len("-1000000000000.0000"))
	if n < 0 {
		text = append(text, '-')
	}
	whole, rest := size(n)/uint64(unit), size(n)%uint64(unit)
	text = strconv.AppendUint(text, whole, 10)
	if rest == 0 {
		return string(text)
	}
	for text = append(text, '.'); rest > 0; rest %= uint64(unit) {
		rest *= 10
		text = append(text, '0'+byte(rest/uint64(unit)))
	}
	return string(text)
}
