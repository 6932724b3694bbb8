package fill

// bags are the new cabinets of lists, in any order: kept as sorted lists, so that equal ones have equal numbers.
type bags struct {
	sorted   lists
	lists    *lists
	cabinets int32   // signs below this are of new cabinets
	known    []int32 // by list: its bag + 1, or 0
}

// of is the bag of a list.
func (b *bags) of(list int32) int32 {
	if list == 0 {
		return 0
	}
	if more := len(b.lists.nodes) - len(b.known); more > 0 {
		b.known = append(b.known, make([]int32, more)...)
	}
	if b.known[list] == 0 {
		one := b.lists.nodes[list]
		bag := b.of(one.rest)
		if one.sign < b.cabinets {
			bag = b.with(one.sign, bag)
		}
		b.known[list] = bag + 1
	}
	return b.known[list] - 1
}

// with is a bag with one more.
func (b *bags) with(sign, bag int32) int32 {
	if bag == 0 || sign <= b.sorted.nodes[bag].sign {
		return b.sorted.put(sign, bag)
	}
	one := b.sorted.nodes[bag]
	return b.sorted.put(one.sign, b.with(sign, one.rest))
}
