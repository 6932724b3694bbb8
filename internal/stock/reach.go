package stock

import "slices"

// reach is the prices that some number of bars can add up to, rising. A bound between two of them is worth the upper.
type reach []int64

// reachLimit is how many are listed; where there are more they lie so close that it does not matter.
const reachLimit = 1 << 16

// reachable lists the prices up to a limit.
func reachable(sizes []size, limit int64) reach {
	sums := reach{0}
	for _, s := range sizes {
		if sums = sums.and(s.price, limit); len(sums) > reachLimit {
			return nil
		}
	}
	return sums
}

// and is what can be reached with any number of one more price.
func (r reach) and(price, limit int64) reach {
	var out reach
	i, j := 0, 0
	for len(out) <= reachLimit {
		again := int64(none)
		if j < len(out) {
			again = out[j] + price
		}
		switch {
		case i < len(r) && r[i] <= again:
			if r[i] == again {
				j++
			}
			out = append(out, r[i])
			i++
		case again <= limit:
			out = append(out, again)
			j++
		default:
			return out
		}
	}
	return out
}

// up is the least that can be reached and is not below v.
func (r reach) up(v int64) int64 {
	if i, _ := slices.BinarySearch(r, v); i < len(r) {
		return r[i]
	}
	return v
}

// down is the most that can be reached and is not above v.
func (r reach) down(v int64) int64 {
	i, found := slices.BinarySearch(r, v)
	switch {
	case found || i == len(r):
		return v
	case i == 0:
		return 0
	}
	return r[i-1]
}
