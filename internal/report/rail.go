package report

import (
	"railhead/api"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/rail"
	"railhead/internal/stock"
)

// Rails writes where every rail goes.
func (s Scale) Rails(k *kitchen.Kitchen, in []rail.Rail) []api.Rail {
	return each(in, func(r rail.Rail) api.Rail {
		out := api.Rail{
			Wall: k.Room.Walls[r.Wall].ID, RowTop: s.plan(r.RowTop), LowerEdge: s.downL(r.LowerEdge),
			FromLaser: s.fromLaser(k, r.Wall, r.LowerEdge, length.Down), BeforeCut: r.BeforeCut,
			FromBench: s.fromBench(k, r.Wall, r.LowerEdge, length.Down),
			Fixings: each(r.Fixings, func(f rail.Fixing) api.Fixing {
				return api.Fixing{At: s.plan(f.At), Into: f.Into.String()}
			}),
			Pieces:   each(r.Pieces, s.piece),
			Findings: s.Findings(r.Findings),
		}
		out.Stations = each(r.Stations, func(st rail.Station) api.RailStation {
			return api.RailStation{At: s.plan(st.At), AboveFloor: s.near(st.AboveFloor), AboveLaser: out.FromLaser}
		})
		return out
	})
}

func (s Scale) piece(p rail.Piece) api.RailPiece {
	return api.RailPiece{From: s.plan(p.From), To: s.plan(p.To), Length: s.downL(p.Length()), Joint: p.Joint}
}

// fromLaser is a height above the datum counted from the wall's laser line,
// upwards positive; nil where no laser was used.
func (s Scale) fromLaser(k *kitchen.Kitchen, wall int, height length.Length, d length.Direction) *api.Measure {
	line, ok := k.LineAbove(wall)
	if !ok {
		return nil
	}
	return ptr(s.measure(height.Exact().Sub(line), d))
}

// fromBench is a height above the datum counted from the bench mark, upwards
// positive; nil where there is none.
func (s Scale) fromBench(k *kitchen.Kitchen, wall int, height length.Length, d length.Direction) *api.Measure {
	over, ok := k.OverBench(wall, height)
	if !ok {
		return nil
	}
	return ptr(s.measure(over, d))
}

// struck is the tape mark at which a rail's lower edge really lies, as a height
// above the datum: it is marked from the laser line where there is one, else
// from the datum, and rounded down.
func (s Scale) struck(k *kitchen.Kitchen, wall int, edge length.Length) length.Exact {
	line, ok := k.LineAbove(wall)
	if !ok {
		return edge.RoundTo(s.Step, length.Down).Exact()
	}
	fromLine := edge.Exact().Sub(line).Floor()
	return line.Plus(fromLine.RoundTo(s.Step, length.Down))
}

// RailStock writes the shopping and cutting list.
func (s Scale) RailStock(p *stock.Plan) *api.RailStock {
	if p == nil {
		return nil
	}
	out := &api.RailStock{
		Bars: each(p.Bars, s.bar), Waste: s.upL(p.Bought - p.Used), Bought: s.plan(p.Bought), Proven: p.Proven,
	}
	if !p.Proven {
		out.Bound = ptr(s.plan(p.Bound))
	}
	return out
}

func (s Scale) bar(b stock.Bar) api.Bar {
	return api.Bar{
		Stock: s.plan(b.Stock), Offcut: s.downL(b.Offcut),
		Cuts: each(b.Cuts, func(p stock.Piece) api.Measure { return s.downL(p.Length) }),
	}
}
