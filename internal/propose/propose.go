package propose

import (
	"fmt"
	"slices"

	"railhead/internal/cabinet"
	"railhead/internal/decide"
	"railhead/internal/kitchen"
	"railhead/internal/layout"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// proposer is one room being planned.
type proposer struct {
	k, kept *kitchen.Kitchen
	f       *kitchen.Filling
	all     []group
	index   map[string]int // of a group in all
	solver  layout.Solver
	out     Proposal
	plans   []*candidate
	seen    map[string]bool
	run     length.Length // that may go up to the ceiling
	priced  int           // what deciding about plans took
}

// effort is how much one room may take, in sizes tried at places: a second or three. Rooms
// of four walls stay far below it. pricing is how much deciding about its plans may, in
// cabinets for each overhead group: as long again.
const (
	effort  = 250_000_000
	pricing = 100_000
)

// atLeast is how many plans are priced for each sky, even if fewer are asked for.
const atLeast = 3

// Propose plans a room.
//
// stop, which may be nil, is asked now and then whether to give up; then what comes is
// of no use.
func Propose(k *kitchen.Kitchen, f *kitchen.Filling, stop func() bool) *Proposal {
	p := &proposer{k: k, f: f, index: map[string]int{}, seen: map[string]bool{}, solver: layout.Solver{Effort: effort, Stop: stop}}
	p.kept, p.out.Stays = stripped(k, f)
	p.kept.Datums = kitchen.Datums(k.Room, p.kept.Plan, k.GivenDatums())
	p.all = p.groups()
	for i, g := range p.all {
		p.index[g.ID] = i
	}
	p.run = p.upper()
	states, proven := skies(p.all)
	p.out.Skies, p.out.Proven = len(states), proven
	for _, s := range states {
		if len(f.Kinds) > 0 && !p.solver.Stopped() {
			p.fill(s)
		}
	}
	p.rank()
	p.treat()
	p.empty()
	return &p.out
}

// fill plans the room under the sky that some states leave: by what cabinets are worth
// alone; where going up to the ceiling is worth something, also by each cabinet's share
// of that; and where that or one even line is, with every line by itself, since what
// cabinets are worth together no share tells.
func (p *proposer) fill(states []state) {
	worth := p.k.Prices.Worth
	aims := []layout.Aim{{}}
	if worth.ToCeiling.Amount > 0 {
		aims = append(aims, layout.Aim{Run: p.run})
	}
	if worth.ToCeiling.Amount > 0 || worth.EvenLine.Amount > 0 {
		for _, top := range p.tops() {
			aims = append(aims, layout.Aim{Top: &top})
		}
	}
	for _, aim := range aims {
		p.fillTo(states, aim)
	}
}

// upper is the run that may go up to the ceiling: the length along which wall cabinets
// may stand once every overhead is gone that may go, and what stays. So it is the same
// for every plan, and leaving the wall bare earns nothing.
func (p *proposer) upper() length.Length {
	bare := make([]state, len(p.all))
	for i, g := range p.all {
		bare[i] = g.states[len(g.states)-1]
	}
	out := layout.Upper(p.kept, p.f, p.sky(bare))
	for i := range p.kept.Plan.Cabinets {
		if c := &p.kept.Plan.Cabinets[i]; c.Kind != cabinet.Base {
			out += c.Width()
		}
	}
	return out
}

// tops are the lines at which rows of the system end.
func (p *proposer) tops() []length.Length {
	var out []length.Length
	s, shift := p.k.System, p.k.Plan.RowShift
	for _, h := range s.Wall.Heights {
		out = append(out, s.WallUnderside+shift+h)
	}
	for _, h := range s.Tall.Heights {
		out = append(out, s.Legs+shift+h)
	}
	slices.Sort(out)
	return slices.Compact(out)
}

// rounds is how often the datum is brought down to the floor that cabinets stand on.
const rounds = 4

func (p *proposer) fillTo(states []state, aim layout.Aim) {
	sky, datums := p.sky(states), p.assumed()
	for range rounds {
		k := *p.kept
		k.Datums = datums
		answers, clashes, proven := p.solver.Best(&layout.Room{Kitchen: &k, Sky: sky, Filling: p.f, Aim: aim}, max(atLeast, p.f.Best))
		p.out.Proven = p.out.Proven && proven
		if len(answers) == 0 {
			if aim == (layout.Aim{}) {
				p.clash(clashes)
			}
			return
		}
		var own []survey.Datum
		for i := range answers {
			l := p.planned(&answers[i])
			if p.add(l, states); i == 0 {
				own = l.Kitchen.Datums
			}
		}
		if !moved(own, datums) {
			return
		}
		datums = own
	}
}

// add adds a plan, unless it is there already for a sky that leaves less room.
func (p *proposer) add(l *Layout, states []state) {
	name := l.name + fmt.Sprint(states)
	switch cost := len(l.Kitchen.Plan.Cabinets) * (len(p.all) + 1); {
	case p.seen[name]:
	case p.priced > pricing:
		p.out.Proven = false
	default:
		p.seen[name] = true
		p.priced += cost
		p.plans = append(p.plans, p.weigh(l, states))
	}
}

// clash keeps what clashes whatever hangs above; what only a kept overhead is in the
// way of does not.
func (p *proposer) clash(in []layout.Clash) {
	for _, c := range in {
		if !slices.ContainsFunc(p.out.Clashes, func(o layout.Clash) bool { return o.Wall == c.Wall && o.Kind == c.Kind }) {
			p.out.Clashes = append(p.out.Clashes, c)
		}
	}
}

// rank finds the best layouts as the gates stand, and the best once they are open.
func (p *proposer) rank() {
	found := p.best(p.f.Best, anyOption, decide.Ungated)
	if len(found) == 0 && len(p.k.Choices) > 0 {
		found = p.best(p.f.Best, p.asChosen, decide.Somebody)
	}
	for _, l := range found {
		p.out.Layouts = append(p.out.Layouts, *l)
	}
	if once := p.best(1, anyOption, decide.Openable); len(once) > 0 && (len(p.out.Layouts) == 0 || once[0].Total > p.out.Layouts[0].Total) {
		p.out.Once = once[0]
	}
	p.unfit()
}

// asChosen reports whether an option may be taken where what was chosen is behind a
// gate: about other groups nothing is done then that was not chosen.
func (p *proposer) asChosen(group string, o kitchen.Option) bool {
	_, chosen := p.k.Choices[group]
	return chosen || o == kitchen.Keep || p.goesAnyhow(group)
}

func (p *proposer) goesAnyhow(group string) bool {
	return !anyPart(p.all[p.index[group]].OverheadGroup, func(o *survey.Overhead) bool { return !o.GoesWithOldCabinets() })
}

func anyOption(string, kitchen.Option) bool { return true }

// unfit leaves what clashes where there is no layout at all, and says so where plans
// were made of which none fits.
func (p *proposer) unfit() {
	switch {
	case len(p.out.Layouts) > 0 || p.out.Once != nil:
		p.out.Clashes = nil
	case len(p.plans) > 0:
		p.out.Clashes = []layout.Clash{{Wall: p.f.Walls[0], Kind: p.f.Kinds[0], Alone: true, What: []layout.Bar{{What: layout.BarMisfit, Pointer: "/fill/walls"}}}}
	}
}
