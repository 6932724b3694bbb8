package layout

import (
	"errors"

	"railhead/internal/cabinet"
	"railhead/internal/fill"
)

// Clash is a row that cannot be filled as it is asked for.
type Clash struct {
	Wall int
	Kind cabinet.Kind
	What []Bar
	// Alone is whether giving up any one of them is enough; else all have to be.
	Alone bool
}

// Bar is one thing that is in the way of filling a row.
type Bar struct {
	What    BarKind
	Pointer string // the member of the request that asks for it; empty where none does
}

// BarKind is what a Bar is.
type BarKind int

// What may be in the way.
const (
	BarEqual    BarKind = iota // equal neighbours at a gap
	BarClosed                  // no holes
	BarFiller                  // the least filler
	BarEnd                     // what is kept free at an end of the wall
	BarCabinet                 // a cabinet that stays
	BarPlace                   // something in the way
	BarWhole                   // one cabinet under a sink or a hob
	BarTooLarge                // the wall or the system is beyond what is searched
	BarMisfit                  // what is placed does not fit in the end
	BarTooFine                 // widths have too little in common to stand side by side on marks
)

// String is the kind's name in the catalogue of rules.
func (b BarKind) String() string {
	return [...]string{"equal", "closed", "least_filler", "end", "cabinet", "place", "whole", "too_large", "misfit", "too_fine"}[b]
}

// why says which rows cannot be filled whatever stands on the others, and what they
// ask for together that cannot be had.
func (s *solver) why() []Clash {
	g := &given{walls: s.room.Filling.Walls, towers: make([]int, len(s.rows[0])), stand: make([][]standing, len(s.rows[0]))}
	var out []Clash
	for _, kind := range []cabinet.Kind{cabinet.Base, cabinet.Wall} {
		for _, w := range s.room.Filling.Walls {
			if r := s.rows[kind][w]; r != nil {
				if c, clashes := s.clash(r, g); clashes {
					out = append(out, c)
				}
			}
		}
	}
	return out
}

func (s *solver) clash(r *row, g *given) (Clash, bool) {
	begins, turnings := []*corner{nil}, []*corner{nil}
	if prev := s.room.Kitchen.Room.Walls[r.Wall].Prev; prev >= 0 && s.turns(r.Kind, prev) {
		begins = s.ways[turning{r.Kind, prev}]
	}
	if s.turns(r.Kind, r.Wall) {
		turnings = s.ways[turning{r.Kind, r.Wall}]
	}
	for _, b := range begins {
		for _, e := range turnings {
			if len(s.wall(r.Kind, r.Wall, ends{b, e}, g)) > 0 {
				return Clash{}, false
			}
		}
	}
	run := r.run(ends{begins[0], turnings[0]}, nil, nil, 1)
	return s.barsOf(r, run, s.fill(run).wrong), true
}

func (s *solver) barsOf(r *row, run *fill.Run, err error) Clash {
	out := Clash{Wall: r.Wall, Kind: r.Kind}
	var no *fill.Infeasible
	if !errors.As(err, &no) {
		out.What, out.Alone = []Bar{{BarTooLarge, s.room.Kitchen.Room.Walls[r.Wall].Pointer + "/length"}}, true
		if s.grid < s.room.Filling.Step/4 {
			out.What[0] = Bar{BarTooFine, "/system/" + r.Kind.String() + "/widths"}
		}
		return out
	}
	all := no.All
	if out.Alone = len(no.Either) > 0; out.Alone {
		all = no.Either
	}
	for _, c := range all {
		out.What = append(out.What, s.bar(r, run, c))
	}
	return out
}

// bar is what a constraint of a run stands for.
func (s *solver) bar(r *row, run *fill.Run, c fill.Constraint) Bar {
	switch c.Member {
	case fill.InPairs:
		return Bar{BarEqual, r.paired[c.Index].By}
	case fill.InClosed:
		return Bar{BarClosed, "/fill/closed"}
	case fill.InLeastFiller:
		return Bar{BarFiller, "/fill/least_filler"}
	case fill.InEnds:
		return Bar{BarEnd, "/fill/wall_filler"}
	case fill.InFixed:
		return Bar{BarCabinet, s.staysAt(r, run.Fixed[c.Index])}
	case fill.InWhole:
		return Bar{BarWhole, s.wholeAt(r, run.Whole[c.Index])}
	default:
		l := run.Limits[c.Index]
		return Bar{BarPlace, s.inTheWay(r, l)}
	}
}

func (s *solver) staysAt(r *row, p fill.Piece) string {
	for i := range s.room.Kitchen.Plan.Cabinets {
		c := &s.room.Kitchen.Plan.Cabinets[i]
		for _, q := range c.Native(s.room.Kitchen.Room) {
			if q.Wall == r.Wall && q.From == p.At && q.To == p.At+p.Width {
				return c.Pointer
			}
		}
	}
	return ""
}

func (s *solver) wholeAt(r *row, w fill.Span) string {
	for _, one := range r.Whole {
		if max(0, one.From) == w.From && min(r.whole, one.To) == w.To {
			return one.By
		}
	}
	return ""
}

// inTheWay is the first thing that a limit is for.
func (s *solver) inTheWay(r *row, l fill.Limit) string {
	height := l.Height + 1
	if len(r.heights) > 0 && l.Height == 0 {
		height = r.heights[0]
	}
	if by, ok := r.Bar(l.From, l.To, r.Levels(height)); ok {
		return by
	}
	return ""
}
