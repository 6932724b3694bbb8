package combine

// order is the order in which the things are taken: as they stand, but where
// joints bind them those that share one come close together, so that few joints
// are open at a time. It hangs on who bears on what, and on no number.
func (p *Problem) order() []int {
	order := make([]int, 0, len(p.Things))
	if len(p.Joints) == 0 {
		for i := range p.Things {
			order = append(order, i)
		}
		return order
	}
	o := ordering{p: p, left: make([]int, len(p.Joints)), open: make([]bool, len(p.Joints))}
	o.members = p.members()
	for _, joints := range o.members {
		for _, j := range joints {
			o.left[j]++
		}
	}
	rest := make([]int, len(p.Things))
	for i := range rest {
		rest[i] = i
	}
	for len(rest) > 0 {
		at := o.next(rest)
		o.take(rest[at])
		order = append(order, rest[at])
		rest = append(rest[:at], rest[at+1:]...)
	}
	return order
}

// ordering is how far the ordering has come.
type ordering struct {
	p       *Problem
	members [][]int // the joints that each thing bears on
	left    []int   // how many things have still to come, for each joint
	open    []bool
}

// next is the place in rest of the thing that leaves the fewest joints open; the
// first of equals.
func (o *ordering) next(rest []int) int {
	best, fewest := 0, len(o.left)+1
	for at, i := range rest {
		grows := 0
		for _, j := range o.members[i] {
			if !o.open[j] {
				grows++
			}
			if o.left[j] == 1 {
				grows--
			}
		}
		if grows < fewest {
			best, fewest = at, grows
		}
	}
	return best
}

func (o *ordering) take(i int) {
	for _, j := range o.members[i] {
		o.left[j]--
		o.open[j] = o.left[j] > 0
	}
}

// members is which joints each thing bears on, in order.
func (p *Problem) members() [][]int {
	members := make([][]int, len(p.Things))
	seen := make([]int, len(p.Joints)) // the last thing that was seen to bear on it, plus one
	for i, thing := range p.Things {
		for _, w := range thing.Ways {
			for _, e := range w.Effects {
				if seen[e.Joint] != i+1 {
					seen[e.Joint] = i + 1
					members[i] = append(members[i], e.Joint)
				}
			}
		}
	}
	return members
}
