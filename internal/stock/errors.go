package stock

import (
	"strconv"
	"strings"

	"railhead/internal/length"
)

// The codes of an Error.
const (
	CodeNone        = "stock.none"               // nothing to cut from
	CodeNotPositive = "stock.value.not_positive" // a piece or stock of no length, or a kerf below 0
	CodeTooLarge    = "stock.value.too_large"    // beyond length.Max
	CodeTooLong     = "stock.piece.too_long"     // longer than the longest stock
	CodeTooMany     = "stock.value.too_many"     // more than MaxPieces or MaxStock
)

// How much one problem may hold. A house has some dozens of rails and a supplier a handful of lengths.
const (
	MaxPieces = 2000
	MaxStock  = 50
)

// Member is the part of a Problem that an Error is about.
type Member string

// The parts.
const (
	InStock  Member = "stock"
	InKerf   Member = "kerf"
	InPieces Member = "pieces"
)

// Error is one thing wrong with a Problem.
type Error struct {
	Code   string
	Member Member
	Index  int           // position in Stock or Pieces; -1 for the member as a whole
	Have   length.Length // the offending length, if the error is about one
	Limit  length.Length // what it may be at most, for too_long and too_large
}

func (e Error) Error() string {
	if e.Index < 0 {
		return e.Code + ": " + string(e.Member)
	}
	return e.Code + ": " + string(e.Member) + " " + strconv.Itoa(e.Index)
}

// Errors is all that is wrong, in the order stock, kerf, pieces.
type Errors []Error

func (e Errors) Error() string {
	lines := make([]string, len(e))
	for i, one := range e {
		lines[i] = one.Error()
	}
	return strings.Join(lines, "; ")
}

// check collects what is wrong with a problem.
func check(p Problem) Errors {
	var wrong Errors
	if len(p.Stock) == 0 {
		wrong = append(wrong, Error{Code: CodeNone, Member: InStock, Index: -1})
	}
	if len(p.Stock) > MaxStock {
		return append(wrong, Error{Code: CodeTooMany, Member: InStock, Index: -1})
	}
	if len(p.Pieces) > MaxPieces {
		return append(wrong, Error{Code: CodeTooMany, Member: InPieces, Index: -1})
	}
	var longest length.Length
	for i, l := range p.Stock {
		wrong = append(wrong, checkLength(InStock, i, l, 1)...)
		longest = max(longest, l)
	}
	wrong = append(wrong, checkLength(InKerf, -1, p.Kerf, 0)...)
	for i, piece := range p.Pieces {
		wrong = append(wrong, checkPiece(i, piece.Length, longest)...)
	}
	return wrong
}

// checkLength refuses a length below least or beyond what a length may be.
func checkLength(in Member, i int, l, least length.Length) Errors {
	switch {
	case l < least:
		return Errors{{Code: CodeNotPositive, Member: in, Index: i, Have: l}}
	case l > length.Max:
		return Errors{{Code: CodeTooLarge, Member: in, Index: i, Have: l, Limit: length.Max}}
	}
	return nil
}

// checkPiece also refuses a piece that no stock is long enough for, unless there is no usable stock to compare with.
func checkPiece(i int, l, longest length.Length) Errors {
	if wrong := checkLength(InPieces, i, l, 1); wrong != nil {
		return wrong
	}
	if longest > 0 && l > longest {
		return Errors{{Code: CodeTooLong, Member: InPieces, Index: i, Have: l, Limit: longest}}
	}
	return nil
}
