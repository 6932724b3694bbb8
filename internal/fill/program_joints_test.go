package fill

import (
	"cmp"
	"maps"
	"slices"

	"railhead/internal/length"
	"railhead/internal/mip"
)

// jointAt has a joint at q pay for the line that it misses.
func (p *program) jointAt(q int) {
	at := length.Length(q) * p.Grid
	if len(p.Lines) == 0 {
		return
	}
	for _, l := range p.Lines {
		if l == at {
			return
		}
	}
	miss := p.Number(-int64(p.Weights.LineMiss))
	p.AtLeast(new(mip.Sum).Plus(1, miss).Add(-1, p.ends[q].hard).Add(-1, p.begins[q].hard), -1)
}

// heightChanges has neighbours of different heights pay, whether they touch or have a filler between them.
func (p *program) heightChanges() {
	behind := map[length.Length]*mip.Sum{} // the filler step before q carries the height to its left
	for q := range p.steps + 1 {
		heights := p.heightsAt(q, behind)
		change := p.Number(-int64(p.Weights.HeightChange))
		for _, h := range heights {
			others := new(mip.Sum).Add(1, p.begins[q].hard).Add(-1, sumOf(p.begins[q].byHeight, h))
			p.AtLeast(new(mip.Sum).Plus(1, change).Add(-1, sumOf(p.ends[q].byHeight, h)).Add(-1, others), -1)
			p.AtLeast(new(mip.Sum).Plus(1, change).Add(-1, sumOf(behind, h)).Add(-1, others), -1)
		}
		behind = p.carry(q, heights, behind)
	}
}

// heightsAt is every height that may be to the left of q.
func (p *program) heightsAt(q int, behind map[length.Length]*mip.Sum) []length.Length {
	seen := map[length.Length]bool{}
	for h := range behind {
		seen[h] = h != endless
	}
	for h := range p.ends[q].byHeight {
		seen[h] = true
	}
	delete(seen, endless)
	return slices.Sorted(maps.Keys(seen))
}

// carry has the filler at step q carry the height to its left.
func (p *program) carry(q int, heights []length.Length, behind map[length.Length]*mip.Sum) map[length.Length]*mip.Sum {
	now := map[length.Length]*mip.Sum{}
	if !p.free(q) {
		return now
	}
	sum := new(mip.Sum).Add(-1, p.filler[q])
	for _, h := range heights {
		now[h] = new(mip.Sum).Plus(1, p.Binary(0))
		sum.Add(1, now[h])
		p.AtMost(new(mip.Sum).Add(1, now[h]).Add(-1, sumOf(behind, h)).Add(-1, sumOf(p.ends[q].byHeight, h)), 0)
	}
	end := p.Binary(0) // behind an end
	sum.Plus(1, end)
	now[endless] = new(mip.Sum).Plus(1, end)
	from := new(mip.Sum).Plus(1, end).Add(-1, sumOf(behind, endless))
	if p.begins[q].bound {
		from.Constant--
	}
	p.AtMost(from, 0)
	p.Equals(sum, 0)
	return now
}

// endless stands for the height of an end.
const endless = -1

// pairs adds a variable for each width and height that may stand on both sides of a gap.
func (p *program) pairs() {
	for _, b := range p.bound {
		if b.isCabinet() {
			continue
		}
		asked, must, worth := false, false, int64(0)
		for _, one := range p.Pairs {
			if b.from <= one.From && one.To <= b.to {
				asked, must, worth = true, must || one.Must, worth+int64(one.Worth)
			}
		}
		if asked {
			p.pair(b, must, worth)
		}
	}
}

func (p *program) pair(b thing, must bool, worth int64) {
	left := p.neighbours(b.meets[0], p.step(b.from), -1)
	right := p.neighbours(b.meets[1], p.step(b.to), +1)
	either := &mip.Sum{}
	for _, key := range sortedKeys(left) {
		if right[key] == nil {
			continue
		}
		is := p.Binary(worth)
		either.Plus(1, is)
		p.AtMost(new(mip.Sum).Plus(1, is).Add(-1, left[key]), 0)
		p.AtMost(new(mip.Sum).Plus(1, is).Add(-1, right[key]), 0)
	}
	p.AtMost(either, 1)
	if must {
		p.Equals(either, 1)
	}
}

// neighbours is what may stand beside a gap, as near as it may, by width and height.
func (p *program) neighbours(meets End, at, direction int) map[extent]*mip.Sum {
	far := 0
	if !meets.Open && meets.Least > 0 {
		far = p.step(max(p.whole(meets.Least), p.whole(p.LeastFiller)))
	}
	places := p.begins
	if direction < 0 {
		places = p.ends
	}
	out := map[extent]*mip.Sum{}
	if f := places[at].stays; f != nil {
		sumOf(out, extent{f.to - f.from, f.height}).Constant++
		return out
	}
	for k := 1; k <= far; k++ {
		if q := at + k*direction; !p.free(min(q, q-direction)) {
			return out
		}
	}
	for key, sum := range places[at+far*direction].bySize {
		sumOf(out, key).Add(1, sum)
	}
	return out
}

// extent is a width and a height.
type extent [2]length.Length

func sortedKeys(of map[extent]*mip.Sum) []extent {
	return slices.SortedFunc(maps.Keys(of), func(a, b extent) int {
		return cmp.Or(cmp.Compare(a[0], b[0]), cmp.Compare(a[1], b[1]))
	})
}
