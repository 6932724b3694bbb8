package fill

import (
	"errors"
	"reflect"
	"testing"

	"railhead/internal/length"
	"railhead/internal/money"
)

func TestSlips(t *testing.T) {
	for _, c := range []struct {
		name string
		slip func(*Run)
		want Errors
	}{
		{"no grid", func(r *Run) { r.Grid = 0 }, Errors{{CodeNotPositive, InGrid, none}}},
		{"a wall of less than nothing", func(r *Run) { r.Length = -50 * mm }, Errors{{CodeNotPositive, InLength, none}}},
		{"a wall of half a step too much", func(r *Run) { r.Length += 25 * mm }, Errors{{CodeOffGrid, InLength, none}}},
		{"a wall of too many steps", func(r *Run) { r.Length, r.Grid = 100*length.Metre, length.Micrometre }, Errors{{CodeTooLarge, InLength, none}}},
		{"too many heights for so many steps", func(r *Run) {
			r.Length, r.Grid = 20*length.Metre, length.Millimetre/8
			for h := range 10 {
				r.Sizes = append(r.Sizes, Size{600 * mm, span(300+h, mm), 0})
			}
		}, Errors{{CodeTooLarge, InLength, none}}},
		{"a cabinet of no width", func(r *Run) { r.Sizes[1].Width = 0 }, Errors{{CodeNotPositive, InSizes, 1}}},
		{"a cabinet of no height", func(r *Run) { r.Sizes[1].Height = 0 }, Errors{{CodeNotPositive, InSizes, 1}}},
		{"a cabinet wider than any room", func(r *Run) { r.Sizes[1].Width = length.Max + 50*mm }, Errors{{CodeTooLarge, InSizes, 1}}},
		{"a cabinet off the grid", func(r *Run) { r.Sizes[1].Width++ }, Errors{{CodeOffGrid, InSizes, 1}}},
		{"a cabinet worth more than can be added up", func(r *Run) { r.Grid, r.Sizes[1].Worth = mm, money.Most }, Errors{{CodeTooLarge, InSizes, 1}}},
		{"a limit behind the end", func(r *Run) { r.Limits[0].To = 3050 * mm }, Errors{{CodeOutside, InLimits, 0}}},
		{"a limit over nothing", func(r *Run) { r.Limits[0].From = r.Limits[0].To }, Errors{{CodeNotPositive, InLimits, 0}}},
		{"a limit below the floor", func(r *Run) { r.Limits[0].Height = -1 }, Errors{{CodeNotPositive, InLimits, 0}}},
		{"a limit off the grid", func(r *Run) { r.Limits[0].From++ }, Errors{{CodeOffGrid, InLimits, 0}}},
		{"a side that keeps away by less than nothing", func(r *Run) { r.Limits[0].Sides[1].Least = -1 }, Errors{{CodeNotPositive, InLimits, 0}}},
		{"a cabinet that stays before the beginning", func(r *Run) { r.Fixed[0].At = -50 * mm }, Errors{{CodeOutside, InFixed, 0}}},
		{"a cabinet that stays off the grid", func(r *Run) { r.Fixed[0].At++ }, Errors{{CodeOffGrid, InFixed, 0}}},
		{"a whole stretch before the beginning", func(r *Run) { r.Whole[0].From = -1 }, Errors{{CodeOutside, InWhole, 0}}},
		{"a whole stretch behind the end", func(r *Run) { r.Whole[1].To = 3000*mm + 1 }, Errors{{CodeOutside, InWhole, 1}}},
		{"a whole stretch of no width", func(r *Run) { r.Whole[1].To = r.Whole[1].From }, Errors{{CodeNotPositive, InWhole, 1}}},
		{"too many whole stretches", func(r *Run) {
			for len(r.Whole) <= MaxOthers {
				r.Whole = append(r.Whole, r.Whole[0])
			}
		}, Errors{{CodeTooMany, InWhole, none}}},
		{"an end that keeps away too far", func(r *Run) { r.Ends[1].Least = length.Max + 1 }, Errors{{CodeTooLarge, InEnds, 1}}},
		{"a pair about no gap", func(r *Run) { r.Pairs[0].To += 50 * mm }, Errors{{CodeNoGap, InPairs, 0}}},
		{"a pair that is worth less than nothing", func(r *Run) { r.Pairs[0].Worth = -1 }, Errors{{CodeNotPositive, InPairs, 0}}},
		{"a filler below nothing", func(r *Run) { r.LeastFiller = -1 }, Errors{{CodeNotPositive, InLeastFiller, none}}},
		{"an open stretch below nothing", func(r *Run) { r.LeastOpen = -1 }, Errors{{CodeNotPositive, InLeastOpen, none}}},
		{"a panel off the grid", func(r *Run) { r.Panel = 16 * mm }, Errors{{CodeOffGrid, InPanel, none}}},
		{"a weight below nothing", func(r *Run) { r.Weights.Panel = -1 }, Errors{{CodeNotPositive, InWeights, 3}}},
		{"a weight beyond all", func(r *Run) { r.Grid, r.Weights.LineMiss = mm, money.Most }, Errors{{CodeTooLarge, InWeights, 6}}},
		{"too many answers", func(r *Run) { r.Best = MaxBest + 1 }, Errors{{CodeTooMany, InBest, none}}},
		{"too many limits", func(r *Run) {
			for len(r.Limits) <= MaxOthers {
				r.Limits = append(r.Limits, Limit{To: 50 * mm, Height: 1})
			}
		}, Errors{{CodeTooMany, InLimits, none}}},
		{"two slips", func(r *Run) { r.Sizes[0].Width, r.LeastFiller = 1, -1 }, Errors{{CodeOffGrid, InSizes, 0}, {CodeNotPositive, InLeastFiller, none}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := row(3000, sizes(700, 400, 600)).with(func(r *Run) {
				r.Limits = []Limit{window(1000, 1600)}
				r.Pairs = []Pair{{From: 1000 * mm, To: 1600 * mm}}
				r.Fixed = []Piece{{At: 2000 * mm, Width: 400 * mm, Height: 700 * mm}}
				r.Whole = []Span{{1, 2}, {2700*mm + 1, 3000 * mm}}
			})
			c.slip(r)
			_, err := Fill(r)
			var got Errors
			if !errors.As(err, &got) || !reflect.DeepEqual(got, c.want) {
				t.Errorf("got %v, want %v", err, c.want)
			}
		})
	}
}
