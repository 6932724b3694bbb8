package fill

import (
	"errors"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
)

func TestWhatToGiveUp(t *testing.T) {
	fixed := func(at, width int) Piece { return Piece{At: span(at, mm), Width: span(width, mm), Height: 700 * mm} }
	for _, c := range []struct {
		name        string
		run         *Run
		either, all []Constraint
	}{
		{"two cabinets that stay in one place", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Fixed = []Piece{fixed(0, 600), fixed(1000, 600), fixed(1500, 600)}
		}), []Constraint{{InFixed, 1}, {InFixed, 2}}, nil},
		{"two such places", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Fixed = []Piece{fixed(0, 600), fixed(500, 600), fixed(2000, 600), fixed(2500, 500)}
		}), nil, []Constraint{{InFixed, 1}, {InFixed, 3}}},
		{"equal neighbours where one side has room for none", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Limits = []Limit{window(500, 1200)}
			r.Pairs = []Pair{{From: 500 * mm, To: 1200 * mm, Must: true}}
		}), []Constraint{{InPairs, 0}, {InLimits, 0}}, nil},
		{"fillers at both ends longer than what is left", row(700, sizes(700, 600)).with(func(r *Run) {
			r.Closed = true
			r.Ends = [2]End{{Least: 100 * mm}, {Least: 50 * mm}}
		}), []Constraint{{InClosed, none}, {InEnds, 0}, {InEnds, 1}}, nil},
		{"a filler too narrow to be cut", row(650, sizes(700, 600)).with(func(r *Run) {
			r.Closed, r.LeastFiller = true, 100*mm
		}), []Constraint{{InClosed, none}, {InLeastFiller, none}}, nil},
		{"a gap too narrow for a filler between cabinets that stay", row(1250, sizes(700, 600)).with(func(r *Run) {
			r.Closed, r.LeastFiller = true, 100*mm
			r.Fixed = []Piece{fixed(0, 600), fixed(650, 600)}
		}), []Constraint{{InClosed, none}, {InLeastFiller, none}, {InFixed, 0}, {InFixed, 1}}, nil},
		{"no holes under a part too low for any cabinet", row(1800, sizes(700, 600)).with(func(r *Run) {
			r.Closed = true
			r.Limits = []Limit{{From: 600 * mm, To: 1200 * mm, Height: 600 * mm}, {From: 1300 * mm, To: 1800 * mm, Height: 10 * mm}}
			r.LeastFiller = length.Max
		}), []Constraint{{InClosed, none}, {InLeastFiller, none}}, nil},
		{"a sink wider than every cabinet", row(3000, sizes(700, 300, 600)).with(func(r *Run) {
			r.Whole = []Span{{300 * mm, 800 * mm}, {1000 * mm, 1601 * mm}}
		}), []Constraint{{InWhole, 1}}, nil},
		{"two sinks that overlap, together wider than every cabinet", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Whole = []Span{{300 * mm, 800 * mm}, {700 * mm, 1200 * mm}}
		}), []Constraint{{InWhole, 0}, {InWhole, 1}}, nil},
		{"a sink where the dishwasher is", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Limits = []Limit{window(1000, 1600)}
			r.Whole = []Span{{1100 * mm, 1500 * mm}}
		}), []Constraint{{InWhole, 0}, {InLimits, 0}}, nil},
		{"a sink across the side of a cabinet that stays", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Fixed = []Piece{fixed(600, 600), fixed(1800, 600)}
			r.Whole = []Span{{1000 * mm, 1400 * mm}}
		}), []Constraint{{InWhole, 0}, {InFixed, 0}}, nil},
		{"a sink over the panel of a free end", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Panel, r.Ends[1].Open = 50*mm, true
			r.Whole = []Span{{2500 * mm, 2951 * mm}}
		}), []Constraint{{InWhole, 0}}, nil},
		{"a stretch no wider than the panel of a free end over it", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Panel, r.Ends[0].Open = 50*mm, true
			r.Whole = []Span{{10 * mm, 40 * mm}}
		}), []Constraint{{InWhole, 0}}, nil},
		{"a sink too near to a wall that doors keep away from", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Ends[0].Least = 50 * mm
			r.Whole = []Span{{20 * mm, 520 * mm}}
		}), []Constraint{{InEnds, 0}, {InWhole, 0}}, nil},
		{"two sinks, each wider than every cabinet", row(3000, sizes(700, 600)).with(func(r *Run) {
			r.Whole = []Span{{300 * mm, 1000 * mm}, {1500 * mm, 2200 * mm}}
		}), nil, []Constraint{{InWhole, 0}, {InWhole, 1}}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := Fill(c.run)
			var got *Infeasible
			if !errors.As(err, &got) {
				t.Fatal(err)
			}
			if !reflect.DeepEqual(got.Either, c.either) || !reflect.DeepEqual(got.All, c.all) {
				t.Errorf("got %+v", *got)
			}
		})
	}
}

// Any one of Either, or All together, makes a run possible, and nothing told could be left out; by trying all ways.
func TestGivingUpHelps(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRun(t, tiny)
		r.Closed = r.Closed || rapid.Bool().Draw(t, "no holes")
		_, err := Fill(r)
		var got *Infeasible
		if !errors.As(err, &got) {
			return
		}
		can := func(up ...Constraint) bool { return len(brute(r.without(up))) > 0 }
		for _, c := range constraints(r) {
			if can(c) != slices.Contains(got.Either, c) {
				t.Fatalf("%+v alone: %v; told %+v", c, can(c), got)
			}
		}
		if len(got.Either) > 0 {
			return
		}
		if !can(got.All...) {
			t.Fatalf("%+v together do not help", got.All)
		}
		for _, c := range got.All {
			if can(except(got.All, c)...) {
				t.Fatalf("%+v can be kept of %+v", c, got.All)
			}
		}
	})
}

// A house of cabinets that stay, two and two in one place: more to try than there is time for. What is told helps.
func TestTooMuchToTry(t *testing.T) {
	r := wall(60)
	for at := 0; at < 59_000; at += 300 {
		r.Fixed = append(r.Fixed, Piece{At: span(at, mm), Width: 200 * mm, Height: 500 * mm}, Piece{At: span(at, mm), Width: 100 * mm, Height: 500 * mm})
	}
	_, err := Fill(r)
	var got *Infeasible
	if !errors.As(err, &got) || !got.Partly || len(got.Either) > 0 {
		t.Fatal(err)
	}
	if _, err := Fill(r.without(got.All)); err != nil {
		t.Error(err)
	}
}
