package fill

import (
	"errors"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
)

// large is a wall in millimetres or so, which nobody tries all ways on.
var large = shape{steps: 990, narrowest: 100, widest: 400, sizes: 8, others: 4}

// drawn is a run without slips, and its best answers; none where it is impossible.
func drawn(t *rapid.T, of shape) (*Run, []Answer) {
	r := drawRun(t, of)
	r.Best = rapid.IntRange(1, 6).Draw(t, "best")
	if len(reduce(r).checkPairs()) > 0 {
		r.Pairs = nil
	}
	return r, answers(t, r)
}

func answers(t *rapid.T, r *Run) []Answer {
	got, err := Fill(r)
	var impossible *Infeasible
	if err != nil && !errors.As(err, &impossible) {
		t.Fatal(err)
	}
	return got
}

// worths is what answers are worth, one after the other.
func worths(of []Answer) []int64 {
	var out []int64
	for _, a := range of {
		out = append(out, int64(a.Worth))
	}
	return out
}

func shapes(t *rapid.T) shape {
	return rapid.SampledFrom([]shape{wide, middle, large}).Draw(t, "shape")
}

// Answers are as the model has them, differ, and none is worth more than the one before.
func TestAnswersStand(t *testing.T) { rapid.Check(t, answersStand) }

func answersStand(t *rapid.T) {
	r, got := drawn(t, shapes(t))
	keys := map[string]bool{}
	for i, a := range got {
		worth, key := readAnswer(t, r, a)
		if keys[key] {
			t.Fatalf("%s twice", key)
		}
		keys[key] = true
		if i > 0 && worth > got[i-1].Worth {
			t.Fatalf("answer %d is worth more than the one before: %v", i, worths(got))
		}
	}
}

func FuzzFill(f *testing.F) { f.Fuzz(rapid.MakeFuzz(answersStand)) }

// Asked for fewer answers, the first of them come.
func TestFewerAnswersAreTheFirst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, got := drawn(t, shapes(t))
		r.Best = rapid.IntRange(1, r.Best).Draw(t, "fewer")
		fewer := answers(t, r)
		if !reflect.DeepEqual(fewer, got[:min(len(got), r.Best)]) {
			t.Fatalf("%v, not the first of %v", fewer, got)
		}
	})
}

// Sizes, limits and all else may come in any order.
func TestAnyOrderOfWhatIsGiven(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, got := drawn(t, shapes(t))
		turned := *r
		turned.Sizes, turned.Limits, turned.Fixed = slices.Clone(r.Sizes), slices.Clone(r.Limits), slices.Clone(r.Fixed)
		turned.Whole, turned.Pairs, turned.Lines = slices.Clone(r.Whole), slices.Clone(r.Pairs), slices.Clone(r.Lines)
		slices.Reverse(turned.Sizes)
		slices.Reverse(turned.Limits)
		slices.Reverse(turned.Fixed)
		slices.Reverse(turned.Whole)
		slices.Reverse(turned.Pairs)
		slices.Reverse(turned.Lines)
		again := answers(t, &turned)
		for _, of := range [][]Answer{got, again} {
			for i := range of {
				for j := range of[i].Pieces {
					of[i].Pieces[j].Size = 0
				}
			}
		}
		if !reflect.DeepEqual(again, got) {
			t.Fatalf("%v, turned %v", got, again)
		}
	})
}

// With less effort there may be fewer answers, which are the first ones, and it is told.
func TestLessEffort(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, _ := drawn(t, shapes(t))
		r.AnyOrder = rapid.Bool().Draw(t, "any order")
		got := answers(t, r)
		if len(got) == 0 {
			return
		}
		m := reduce(r).best(&memory{}).more()
		m.left = rapid.IntRange(0, 400).Draw(t, "effort")
		fewer := m.answers(r.Best)
		told := fewer[len(fewer)-1].Unsought
		if fewer[len(fewer)-1].Unsought = false; !reflect.DeepEqual(fewer, got[:len(fewer)]) {
			t.Fatalf("%v, not the first of %v", fewer, got)
		}
		if len(fewer) < len(got) && !told {
			t.Fatalf("%d of %d, and it is not told", len(fewer), len(got))
		}
	})
}

// A solver that has filled other runs finds the same.
func TestSolverForgets(t *testing.T) {
	var s Solver
	rapid.Check(t, func(t *rapid.T) {
		r, got := drawn(t, shapes(t))
		again, _ := s.Fill(r)
		if !reflect.DeepEqual(again, got) {
			t.Fatalf("%v, again %v", got, again)
		}
	})
}

// Nothing costs anything and nothing is worth anything: any cabinet may be anywhere on 60 m.
func TestEverythingIsWorthTheSame(t *testing.T) {
	r := wall(60)
	r.Weights, r.Best = Weights{}, MaxBest
	for i := range r.Sizes {
		r.Sizes[i].Worth = 0
	}
	got := fill(t, r)
	if last := got[len(got)-1]; !last.Unsought || len(got[0].Pieces) > 0 {
		t.Errorf("%d answers, %+v", len(got), last)
	}
}

// A wall seen in a mirror is worth the same.
func TestMirroredRun(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, got := drawn(t, shapes(t))
		if mirrored := answers(t, mirror(r)); !slices.Equal(worths(mirrored), worths(got)) {
			t.Fatalf("%v, mirrored %v", worths(got), worths(mirrored))
		}
	})
}

// The same run in another unit of length has the same answers in that unit.
func TestRunInAnotherUnit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, got := drawn(t, shapes(t))
		times := rapid.SampledFrom([]length.Length{2, 5}).Draw(t, "times")
		if times*r.Length > length.Max {
			times = 1
		}
		scaled := answers(t, scale(r, times))
		for i := range scaled {
			for j := range scaled[i].Pieces {
				scaled[i].Pieces[j].At /= times
				scaled[i].Pieces[j].Width /= times
			}
			for _, of := range [][]Span{scaled[i].Fillers, scaled[i].Panels, scaled[i].Open} {
				for j := range of {
					of[j] = Span{of[j].From / times, of[j].To / times}
				}
			}
		}
		if !reflect.DeepEqual(scaled, got) {
			t.Fatalf("%v, scaled %v", got, scaled)
		}
	})
}

// On a grid finer than its lengths need, a run has the same answers, even where one thing alone needs the grid finer.
func TestFinerGrid(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, _ := drawn(t, rapid.SampledFrom([]shape{wide, middle}).Draw(t, "shape"))
		r.LeastFiller, r.LeastOpen = max(r.LeastFiller, r.Grid), max(r.LeastOpen, r.Grid)
		r.Weights.FillerPerGrid *= 4
		r.Weights.OpenPerGrid *= 4
		fine := *r
		fine.Grid /= 4
		fine.Weights.FillerPerGrid /= 4
		fine.Weights.OpenPerGrid /= 4
		nudge(t, &fine)
		got := answers(t, &fine)
		finer := worthsAt(&fine, fine.Grid)
		if !slices.Equal(finer, worths(got)) {
			t.Fatalf("%v, on a finer grid %v", worths(got), finer)
		}
	})
}

// worthsAt is what the answers to a run are worth that is reckoned on just that grid.
func worthsAt(r *Run, grid length.Length) []int64 {
	m := reduceOn(r, grid).best(&memory{}).more()
	if m.gain[m.begin] == impossible {
		return nil
	}
	return worths(m.answers(max(1, r.Best)))
}

// Without pairs, a gap parts a run in two that know nothing of each other: a run and its mirror image, a gap between
// them, are worth twice the run.
func TestGapPartsARun(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := drawRun(t, shapes(t))
		r.Pairs = nil
		half, both := answers(t, r), answers(t, withItsMirror(r))
		if len(both) != len(half) || len(both) > 0 && both[0].Worth != 2*half[0].Worth {
			t.Fatalf("%v, twice %v", half, both)
		}
	})
}

// What only takes away choices never makes the best worth more: a size less, a lower limit, a longer least filler, no
// holes, one cabinet over a stretch.
func TestFewerChoicesAreWorthNoMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, got := drawn(t, shapes(t))
		less := *r
		switch rapid.IntRange(1, 5).Draw(t, "less") {
		case 1:
			less.Sizes = r.Sizes[:len(r.Sizes)/2]
		case 2:
			less.Limits = append(slices.Clone(r.Limits), Limit{To: r.Length, Height: 600 * mm})
		case 3:
			less.LeastFiller += 2 * r.Grid
			less.Pairs = nil // whose narrowest filler is another one then
		case 4:
			less.Closed = true
		case 5:
			less.Whole = append(slices.Clone(r.Whole), part(t, Span{0, r.Length}))
		}
		if r.Length == 0 || len(r.Pairs) > 0 && less.Pairs == nil {
			return
		}
		if then := answers(t, &less); len(then) > 0 && (len(got) == 0 || then[0].Worth > got[0].Worth) {
			t.Fatalf("%v, with less %v", worths(got), worths(then))
		}
	})
}

// part is any part of a stretch, if there is anything of it.
func part(t *rapid.T, of Span) Span {
	wide := int64(of.To - of.From)
	if wide == 0 {
		return of
	}
	from := rapid.Int64Range(0, wide-1).Draw(t, "from")
	return Span{of.From + length.Length(from), of.From + length.Length(rapid.Int64Range(from+1, wide).Draw(t, "to"))}
}

// Where one cabinet stands anyway it may be asked for, be it over all of it or a part.
func TestAskedForWhatIsThere(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, got := drawn(t, shapes(t))
		if len(got) == 0 {
			return
		}
		asked := *r
		asked.Whole = slices.Clone(r.Whole)
		for _, p := range got[0].Pieces {
			asked.Whole = append(asked.Whole, part(t, Span{p.At, p.At + p.Width}))
		}
		if then := answers(t, &asked); !sameFirst(then, got) {
			t.Fatalf("%+v, asked for it %+v", got[0], then)
		}
	})
}

func sameFirst(a, b []Answer) bool {
	if len(a) == 0 || len(b) == 0 {
		return false
	}
	a[0].Unsought, b[0].Unsought = false, false
	return reflect.DeepEqual(a[0], b[0])
}

// A stretch in two parts that touch asks for less than the whole of it does.
func TestWholeInParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, got := drawn(t, shapes(t))
		if len(r.Whole) == 0 || r.Whole[0].To-r.Whole[0].From < 2 {
			return
		}
		first := r.Whole[0]
		middle := first.From + length.Length(rapid.Int64Range(1, int64(first.To-first.From)-1).Draw(t, "middle"))
		parts := *r
		parts.Whole = append(slices.Clone(r.Whole[1:]), Span{first.From, middle}, Span{middle, first.To})
		if then := answers(t, &parts); len(got) > 0 && (len(then) == 0 || then[0].Worth < got[0].Worth) {
			t.Fatalf("%v, in parts %v", worths(got), worths(then))
		}
	})
}
