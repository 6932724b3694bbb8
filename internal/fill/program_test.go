package fill

import (
	"railhead/internal/length"
	"railhead/internal/mip"
)

// program writes a run as a mixed-integer program, from the model's documentation alone: what covers each step, and
// what may touch what at each place. It knows nothing of the search's states.
type program struct {
	*model
	*mip.Model
	steps int

	cabinets     []variant
	filler, open []*mip.Sum // by step; constants 0 where there is no variable
	begins       []spot     // by place: what begins there, and what ends there
	ends         []spot
}

// variant is a new cabinet somewhere, with a panel on neither, one or both of its sides.
type variant struct {
	from, to int // with its panels
	size     int
	panels   [2]bool
	is       mip.Var
}

// place is what begins or ends at a place.
type spot struct {
	hard     *mip.Sum                   // cabinets without a panel there, those that stay among them
	panelled *mip.Sum                   // cabinets with one
	byHeight map[length.Length]*mip.Sum // hard ones of each height
	bySize   map[extent]*mip.Sum        // new ones of each width and height, whatever their side
	bound    bool                       // a segment begins or ends
	side     End
	stays    *thing
}

func newSpot() spot {
	return spot{hard: &mip.Sum{}, panelled: &mip.Sum{}, byHeight: map[length.Length]*mip.Sum{}, bySize: map[extent]*mip.Sum{}}
}

func newProgram(name string, r *Run) *program {
	p := &program{model: newModel(r), Model: &mip.Model{Name: name}, steps: int(r.Length / r.Grid)}
	for range p.steps + 1 {
		p.begins, p.ends = append(p.begins, newSpot()), append(p.ends, newSpot())
	}
	p.bounds()
	p.stand()
	p.cover()
	for q := range p.steps + 1 {
		p.fillersAt(q)
		p.panelsAt(q)
		p.jointAt(q)
	}
	p.segments()
	p.heightChanges()
	p.wholes()
	p.pairs()
	return p
}

func (p *program) step(l length.Length) int { return int(l / p.Grid) }

// free says whether anything new may be at a step.
func (p *program) free(q int) bool { return q >= 0 && q < p.steps && p.most[q] > 0 }

// bounds marks where segments begin and end, and what stays. Two cabinets that stay in one place cannot be.
func (p *program) bounds() {
	p.begins[0].bound, p.begins[0].side = true, p.Ends[0]
	p.ends[p.steps].bound, p.ends[p.steps].side = true, p.Ends[1]
	for i := range p.bound {
		b := &p.bound[i]
		from, to := p.step(b.from), p.step(b.to)
		if i > 0 && p.bound[i-1].to > b.from {
			p.AtLeast(&mip.Sum{}, 1)
		}
		if !b.isCabinet() {
			p.ends[from].bound, p.ends[from].side = true, b.meets[0]
			p.begins[to].bound, p.begins[to].side = true, b.meets[1]
			continue
		}
		for _, at := range []*spot{&p.begins[from], &p.ends[to]} {
			at.stays = b
			at.hard.Constant++
			sumOf(at.byHeight, b.height).Constant++
		}
	}
}

func sumOf[K comparable](of map[K]*mip.Sum, key K) *mip.Sum {
	if of[key] == nil {
		of[key] = &mip.Sum{}
	}
	return of[key]
}

// stand adds a variable for each size wherever it may stand.
func (p *program) stand() {
	panel := p.step(p.Panel)
	for i, s := range p.Sizes {
		for from := range p.steps {
			for _, panels := range [][2]bool{{}, {true, false}, {false, true}, {true, true}} {
				v := variant{from: from, to: from + p.step(s.Width), size: i, panels: panels}
				gain := s.Worth - p.Weights.Cabinet
				if panels[0] {
					v.from -= panel
					gain -= p.Weights.Panel
				}
				if panels[1] {
					v.to += panel
					gain -= p.Weights.Panel
				}
				if p.stands(length.Length(v.from)*p.Grid, length.Length(v.to)*p.Grid, s.Height) && !p.tooNear(from, from+p.step(s.Width)) {
					v.is = p.Binary(int64(gain))
					p.note(v)
				}
			}
		}
	}
}

// tooNear says whether a new cabinet is nearer to a bound that closes its segment than it may. If another new one were
// between, that would be nearer still.
func (p *program) tooNear(from, to int) bool {
	for q := from; q >= 0; q-- {
		if b := p.begins[q]; b.bound && !b.side.Open && length.Length(from-q)*p.Grid < b.side.Least {
			return true
		}
		if !p.free(q - 1) {
			break
		}
	}
	for q := to; q <= p.steps; q++ {
		if b := p.ends[q]; b.bound && !b.side.Open && length.Length(q-to)*p.Grid < b.side.Least {
			return true
		}
		if !p.free(q) {
			break
		}
	}
	return false
}

// note puts a variant where others look for it.
func (p *program) note(v variant) {
	s := p.Sizes[v.size]
	p.cabinets = append(p.cabinets, v)
	for which, at := range []*spot{&p.begins[v.from], &p.ends[v.to]} {
		if v.panels[which] {
			at.panelled.Plus(1, v.is)
		} else {
			at.hard.Plus(1, v.is)
			sumOf(at.byHeight, s.Height).Plus(1, v.is)
		}
		if v.panels[which] == at.side.Open { // as it meets the bound
			sumOf(at.bySize, extent{s.Width, s.Height}).Plus(1, v.is)
		}
	}
}

// cover has each free step covered by one thing, and settles where fillers begin and end.
func (p *program) cover() {
	over := make([]*mip.Sum, p.steps)
	for q := range p.steps {
		over[q] = &mip.Sum{}
		p.filler, p.open = append(p.filler, &mip.Sum{}), append(p.open, &mip.Sum{})
		if p.free(q) {
			p.filler[q].Plus(1, p.Binary(-int64(p.Weights.FillerPerGrid)))
			p.open[q].Plus(1, p.Binary(-int64(p.Weights.OpenPerGrid)))
			over[q].Add(1, p.filler[q]).Add(1, p.open[q])
		}
	}
	for _, v := range p.cabinets {
		for q := v.from; q < v.to; q++ {
			over[q].Plus(1, v.is)
		}
	}
	for q := range p.steps {
		if p.free(q) {
			p.Equals(over[q], 1)
		}
	}
}

// at is the sum of a step, nothing beyond the ends.
func (p *program) at(of []*mip.Sum, q int) *mip.Sum {
	if q < 0 || q >= len(of) {
		return &mip.Sum{}
	}
	return of[q]
}

// fillersAt says what may be where a filler begins or ends at q, and how wide it is.
func (p *program) fillersAt(q int) {
	begins, ends := p.Binary(-int64(p.Weights.Filler)), p.Binary(0)
	p.Equals(new(mip.Sum).Add(1, p.at(p.filler, q)).Add(-1, p.at(p.filler, q-1)).Plus(-1, begins).Plus(1, ends), 0)
	p.AtMost(new(mip.Sum).Plus(1, begins, ends), 1)
	for k := range p.step(p.whole(p.LeastFiller)) {
		p.AtMost(new(mip.Sum).Plus(1, begins).Add(-1, p.at(p.filler, q+k)), 0)
	}
	p.AtMost(new(mip.Sum).Plus(1, begins).Add(-1, closing(p.ends[q], p.begins[q])), 0)
	p.AtMost(new(mip.Sum).Plus(1, ends).Add(-1, closing(p.begins[q], p.ends[q])), 0)
}

// closing is what a filler can close against: the cabinets on the other side of a place, or a bound that is not open.
func closing(cabinets, bound spot) *mip.Sum {
	out := new(mip.Sum).Add(1, cabinets.hard)
	if bound.bound && !bound.side.Open {
		out.Constant++
	}
	return out
}

// panelsAt says what a side with a panel at q is beside, and that one without shows to nothing.
func (p *program) panelsAt(q int) {
	p.shows(p.ends[q], p.ends[q].bound, q, +1)
	p.shows(p.begins[q], p.begins[q].bound, q-1, -1)
}

// shows is panelsAt for what ends (begins) at a place, with the step behind (before) it.
func (p *program) shows(at spot, bound bool, beside, direction int) {
	if bound && at.side.Open {
		fresh := new(mip.Sum).Add(1, at.hard)
		if at.stays != nil {
			fresh.Constant--
		}
		p.AtMost(fresh, 0)
		return
	}
	for k := range p.step(p.whole(p.LeastOpen)) {
		q := beside + k*direction
		if k > 0 && p.openBound(q, direction) {
			break
		}
		p.AtMost(new(mip.Sum).Add(1, at.panelled).Add(-1, p.at(p.open, q)), 0)
	}
	if at.stays == nil {
		p.AtMost(new(mip.Sum).Add(1, at.hard).Add(1, p.at(p.open, beside)), 1)
	}
}

// openBound says whether an open bound lies just before step q, seen in a direction.
func (p *program) openBound(q, direction int) bool {
	if direction > 0 {
		return q <= p.steps && p.ends[q].bound && p.ends[q].side.Open
	}
	return q+1 >= 0 && p.begins[q+1].bound && p.begins[q+1].side.Open
}
