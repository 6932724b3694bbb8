package assess

import (
	"maps"
	"math/big"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/api"
)

// flipsHold puts every threshold of an answer into its request: at the threshold
// the advice of the overhead is what it says; one step nearer to what was sent, and
// half-way there, the advice of the whole room is still the same.
func flipsHold(t tester, body string) int {
	t.Helper()
	told := assessed(t, body, Decisions).Decisions
	room := told.Room
	for _, f := range room.Flips {
		if got := advised(t, flipped(t, body, f, f.At, f.With)); got[f.Overhead] != f.To || room.Advice[f.Overhead] != f.From {
			t.Fatalf("%s at %s: %s is %s, not %s; before it was %s\n%s", f.Pointer, f.At, f.Overhead, got[f.Overhead], f.To, room.Advice[f.Overhead], body)
		}
		for _, nearer := range nearerThan(t, f) {
			at, with := nearer.text, rescaled(t, f, priorOf(told, f.Pointer), nearer.value)
			if got := advised(t, flipped(t, body, f, at, with)); !maps.Equal(got, room.Advice) {
				t.Fatalf("%s at %s, before %s: %v, not %v\n%s", f.Pointer, at, f.At, got, room.Advice, body)
			}
		}
	}
	return len(room.Flips)
}

// flipped is a request with a threshold in it: odds all together, the rest as it
// stands.
func flipped(t tester, body string, f api.Flip, at string, with map[string]string) string {
	t.Helper()
	if len(with) > 0 {
		return put(t, body, f.Pointer[:strings.LastIndex(f.Pointer, "/")], with)
	}
	return put(t, body, f.Pointer, at)
}

// valued is a value of a member, as the request would give it.
type valued struct {
	value *big.Rat
	text  string
}

// nearerThan is one step from a threshold towards what was sent, and half-way there:
// steps are 0.0001 of an amount or of hours, 0.01 mm, and 0.000001 of a chance, for
// which the others make room in proportion.
func nearerThan(t tester, f api.Flip) []valued {
	t.Helper()
	unit, places := "", 4
	switch {
	case strings.HasSuffix(f.At, " mm"):
		unit, places = " mm", 2
	case len(f.With) > 0:
		places = 6
	}
	at, now := rational(t, strings.TrimSuffix(f.At, unit)), rational(t, strings.TrimSuffix(f.Now, unit))
	step := rational(t, "0."+strings.Repeat("0", places-1)+"1")
	if at.Cmp(now) > 0 {
		step.Neg(step)
	}
	told := func(v *big.Rat) valued {
		text := v.FloatString(places)
		return valued{rational(t, text), text + unit}
	}
	out := []valued{told(new(big.Rat).Add(at, step))}
	half := new(big.Rat).Add(at, now)
	if middle := told(half.Quo(half, big.NewRat(2, 1))); middle.value.Cmp(at) != 0 {
		out = append(out, middle)
	}
	return out
}

func rational(t tester, text string) *big.Rat {
	t.Helper()
	out, ok := new(big.Rat).SetString(text)
	if !ok {
		t.Fatalf("%q is no number", text)
	}
	return out
}

// priorOf are the odds that a threshold of odds starts from; nil for any other. They
// may be given with an overhead all of which was seen: then they are told of another
// that shares its contents.
func priorOf(told api.Decisions, pointer string) map[string]string {
	for _, o := range told.Overheads {
		for _, p := range o.Pointers {
			if strings.HasPrefix(pointer, p+"/inside/priors/") {
				return sharedPrior(told, o)
			}
		}
	}
	return nil
}

func sharedPrior(told api.Decisions, giver api.OverheadDecision) map[string]string {
	for _, o := range told.Overheads {
		if o.Contents != nil && slices.Contains(o.Contents.Shared, giver.Overhead) {
			return o.Contents.Prior
		}
	}
	return nil
}

// rescaled is odds with one of them moved to where a threshold moves it; nil where
// it moves none. What rounding to billionths leaves goes to the largest of the
// others.
func rescaled(t tester, f api.Flip, prior map[string]string, to *big.Rat) map[string]string {
	t.Helper()
	if len(f.With) == 0 {
		return nil
	}
	state := f.Pointer[strings.LastIndex(f.Pointer, "/")+1:]
	one := big.NewRat(1, 1)
	rest, was := new(big.Rat).Sub(one, to), new(big.Rat).Sub(one, rational(t, prior[state]))
	out, sum, largest := map[string]string{state: to.FloatString(9)}, new(big.Rat).Set(to), ""
	for name, chance := range prior {
		if name == state {
			continue
		}
		scaled := rational(t, chance)
		if was.Sign() == 0 {
			scaled.Quo(rest, big.NewRat(int64(len(prior)-1), 1))
		} else {
			scaled.Mul(scaled, rest).Quo(scaled, was)
		}
		out[name] = scaled.FloatString(9)
		sum.Add(sum, rational(t, out[name]))
		if largest == "" || rational(t, out[name]).Cmp(rational(t, out[largest])) > 0 {
			largest = name
		}
	}
	left := new(big.Rat).Sub(one, sum)
	out[largest] = left.Add(left, rational(t, out[largest])).FloatString(9)
	return out
}

func TestThresholdsOfTheCasesHold(t *testing.T) {
	folders, _ := filepath.Glob("../../testdata/cases/*")
	for _, folder := range folders {
		t.Run(filepath.Base(folder), func(t *testing.T) {
			body, err := os.ReadFile(filepath.Join(folder, "request.json"))
			if err != nil {
				t.Fatal(err)
			}
			if flipsHold(t, string(body)) == 0 {
				t.Error("no threshold is told")
			}
		})
	}
}

func TestThresholdsHold(t *testing.T) {
	few(t, "40", func(t *rapid.T) { flipsHold(t, richRoom(t)) })
}

// Where no threshold of a worth is told, no amount of it that thresholds are looked
// for changes the advice.
func TestWhereNoThresholdIsToldAWorthChangesNothing(t *testing.T) {
	few(t, "40", func(t *rapid.T) {
		body := richRoom(t)
		room := assessed(t, body, Decisions).Decisions.Room
		for _, worth := range []struct{ pointer, most string }{
			{"/money/to_ceiling_worth", "100000"}, {"/money/even_line_worth", "100000"}, {"/money/storage_per_litre", "1000"},
		} {
			if slices.ContainsFunc(room.Flips, func(f api.Flip) bool { return f.Pointer == worth.pointer }) {
				continue
			}
			if got := advised(t, put(t, body, worth.pointer, worth.most)); !maps.Equal(got, room.Advice) {
				t.Fatalf("%s at %s: advised %v, before %v\n%s", worth.pointer, worth.most, got, room.Advice, body)
			}
		}
	})
}
