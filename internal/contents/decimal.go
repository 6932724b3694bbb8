package contents

import (
	"strconv"
	"strings"
)

// decimal writes n/unit, where n is not negative and unit a power of ten, without
// idle zeros.
func decimal(n, unit int64) string {
	whole := strconv.FormatInt(n/unit, 10)
	rest := strings.TrimRight(strconv.FormatInt(unit+n%unit, 10)[1:], "0")
	if rest == "" {
		return whole
	}
	return whole + "." + rest
}
