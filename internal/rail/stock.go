package rail

import (
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/stock"
)

// Stock is how the pieces of the whole room are cut from the lengths that are
// sold; nil where there is nothing to cut, or nobody said what is sold: that is
// asked where the system is read. A
// piece's ID is its place in the rails' order.
func Stock(k *kitchen.Kitchen, rails []Rail) (*stock.Plan, []finding.NotAssessed) {
	var pieces []stock.Piece
	for _, r := range rails {
		for _, p := range r.Pieces {
			pieces = append(pieces, stock.Piece{ID: len(pieces), Length: p.Length()})
		}
	}
	if k.System.Rail == nil || len(pieces) == 0 || len(k.System.Rail.Stock) == 0 {
		return nil, nil
	}
	plan, err := stock.Cut(stock.Problem{Stock: k.System.Rail.Stock, Kerf: k.System.Rail.Kerf, Pieces: pieces})
	if err != nil {
		return nil, notCut(k, "rail.stock.cannot_cut")
	}
	return &plan, nil
}

func notCut(k *kitchen.Kitchen, code string) []finding.NotAssessed {
	return []finding.NotAssessed{{Part: "rail_stock", Code: code, Pointer: member(k.System, "stock")}}
}
