package survey

import (
	"slices"
	"testing"
)

func span(from, to int) Span { return Span{mm(from), mm(to)} }

func TestSpansJoinAndPart(t *testing.T) {
	for _, c := range []struct {
		name           string
		spans, holes   []Span
		union, without []Span
	}{
		{"apart, out of order", []Span{span(5, 6), span(1, 2)}, nil, []Span{span(1, 2), span(5, 6)}, []Span{span(5, 6), span(1, 2)}},
		{"touching", []Span{span(1, 2), span(2, 3)}, nil, []Span{span(1, 3)}, []Span{span(1, 2), span(2, 3)}},
		{"one within another", []Span{span(1, 9), span(2, 3)}, []Span{span(8, 12)}, []Span{span(1, 9)}, []Span{span(1, 8), span(2, 3)}},
		{"empty ones", []Span{span(2, 2), span(4, 3)}, nil, nil, nil},
		{"holes that overlap, out of order", []Span{span(0, 10)}, []Span{span(6, 8), span(2, 4), span(3, 5)}, []Span{span(0, 10)}, []Span{span(0, 2), span(5, 6), span(8, 10)}},
		{"a hole over all of it", []Span{span(2, 4)}, []Span{span(0, 9)}, []Span{span(2, 4)}, nil},
		{"a hole that only touches", []Span{span(2, 4)}, []Span{span(4, 9)}, []Span{span(2, 4)}, []Span{span(2, 4)}},
	} {
		if got := Union(c.spans); !slices.Equal(got, c.union) {
			t.Errorf("%s: union %v, want %v", c.name, got, c.union)
		}
		if got := Without(c.spans, c.holes); !slices.Equal(got, c.without) {
			t.Errorf("%s: without %v, want %v", c.name, got, c.without)
		}
	}
	if got := span(2, 8).Clip(span(5, 20)); got != span(5, 8) {
		t.Errorf("clipped to %v", got)
	}
}
