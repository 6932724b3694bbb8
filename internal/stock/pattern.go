package stock

import "encoding/binary"

// take is so many pieces of one kind.
type take struct{ kind, count int }

// pattern is what is cut from one bar, kinds in order.
type pattern struct {
	takes []take
	width int64
	size  int // the shortest that has the room, unless a longer one was chosen for its offcut
}

// cutting makes the pattern of some takes.
func (t *task) cutting(takes []take) *pattern {
	p := &pattern{takes: takes}
	for _, each := range takes {
		p.width += int64(each.count) * t.widths[each.kind]
	}
	p.size = t.fit(p.width)
	return p
}

// price of a pattern is that of its bar.
func (t *task) price(p *pattern) int64 { return t.sizes[p.size].price }

// prices adds up a plan.
func (t *task) prices(plan []*pattern) int64 {
	var sum int64
	for _, p := range plan {
		sum += t.price(p)
	}
	return sum
}

// offcut is what the last saw cut leaves of the bar.
func (t *task) offcut(p *pattern) int64 { return max(0, t.sizes[p.size].room-p.width-t.kerf) }

// key tells patterns apart.
func key(takes []take) string {
	b := make([]byte, 0, 4*len(takes))
	for _, each := range takes {
		b = binary.AppendUvarint(b, uint64(each.kind))
		b = binary.AppendUvarint(b, uint64(each.count))
	}
	return string(b)
}

// within says that the demand holds everything the pattern takes.
func (p *pattern) within(demand []int) bool {
	for _, each := range p.takes {
		if each.count > demand[each.kind] {
			return false
		}
	}
	return true
}

// from takes the pattern out of the demand; times is -1 to put it back.
func (p *pattern) from(demand []int, times int) {
	for _, each := range p.takes {
		demand[each.kind] -= times * each.count
	}
}
