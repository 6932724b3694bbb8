package fill

import "slices"

// lists are lists of signs, each kept once, so that equal lists have equal numbers. The empty list is 0.
type lists struct {
	nodes []link
	table []int32 // by hash: a list's number, or 0
}

type link struct{ sign, rest int32 }

// clear forgets all lists and makes room for as many as are expected.
func (l *lists) clear(expected int) {
	size := 64
	for size < 2*expected {
		size *= 2
	}
	l.nodes = append(slices.Grow(l.nodes[:0], expected+1), link{})
	if size > cap(l.table) {
		l.table = make([]int32, size)
		return
	}
	l.table = l.table[:size]
	clear(l.table)
}

// put is the list of a sign and the rest of it; without a sign it is the rest.
func (l *lists) put(sign, rest int32) int32 {
	if sign == none {
		return rest
	}
	one := link{sign, rest}
	at := l.slot(one)
	if l.table[at] != 0 {
		return l.table[at]
	}
	l.nodes = append(l.nodes, one)
	l.table[at] = int32(len(l.nodes) - 1)
	if 2*len(l.nodes) > len(l.table) {
		l.grow()
		return int32(len(l.nodes) - 1)
	}
	return l.table[at]
}

// slot is where in the table a list is, or belongs.
func (l *lists) slot(one link) uint32 {
	mask := uint32(len(l.table) - 1)
	at := (uint32(one.sign)*0x9E3779B1 ^ uint32(one.rest)*0x85EBCA77)
	at ^= at >> 15
	for at &= mask; ; at = (at + 1) & mask {
		if n := l.table[at]; n == 0 || l.nodes[n] == one {
			return at
		}
	}
}

func (l *lists) grow() {
	l.table = make([]int32, 2*len(l.table))
	for n := 1; n < len(l.nodes); n++ {
		l.table[l.slot(l.nodes[n])] = int32(n)
	}
}

// first takes the first sign off a list that may have another one before it.
func (l *lists) first(sign, rest int32) (int32, int32) {
	if sign != none {
		return sign, rest
	}
	return l.nodes[rest].sign, l.nodes[rest].rest
}

// less says whether the first of two lists, each with a sign before it or none, comes before the second: at the first
// place where they differ its sign is the smaller one.
func (l *lists) less(signA, a, signB, b int32) bool {
	for {
		if signA == signB && a == b {
			return false
		}
		if signA == none && a == 0 || signB == none && b == 0 {
			return signA == none && a == 0 && !(signB == none && b == 0)
		}
		headA, restA := l.first(signA, a)
		headB, restB := l.first(signB, b)
		if headA != headB {
			return headA < headB
		}
		signA, a, signB, b = none, restA, none, restB
	}
}
