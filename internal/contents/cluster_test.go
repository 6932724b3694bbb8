package contents

import (
	"fmt"
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/survey"
)

func groupsOf(clusters []Cluster) string {
	var out [][]int
	for _, c := range clusters {
		out = append(out, c.Groups)
	}
	return fmt.Sprint(out)
}

func TestWhatSharesItsContents(t *testing.T) {
	for _, c := range []struct {
		name      string
		overheads []survey.Overhead
		want      string
	}{
		{"two by themselves", []survey.Overhead{over("a", 0, 0, 900), over("b", 0, 1200, 2400)}, "[[0] [1]]"},
		{"two parts of one", []survey.Overhead{over("a", 0, 0, 900, group("s")), over("b", 1, 0, 900, group("s"))}, "[[0]]"},
		{"one runs on into the other", []survey.Overhead{over("a", 0, 0, 900), over("b", 0, 1200, 2400, shares("a"))}, "[[0 1]]"},
		{"each into the next", []survey.Overhead{over("a", 0, 0, 600, shares("b")), over("b", 0, 600, 900, shares("c")), over("c", 0, 900, 1200)}, "[[0 1 2]]"},
		{"all into the last", []survey.Overhead{over("a", 0, 0, 600, shares("c")), over("b", 0, 600, 900, shares("c")), over("c", 0, 900, 1200)}, "[[0 1 2]]"},
		{"past one in between", []survey.Overhead{over("a", 0, 0, 600), over("b", 0, 600, 900), over("c", 1, 0, 900, shares("a"))}, "[[0 2] [1]]"},
		{"into a part of another", []survey.Overhead{over("a", 0, 0, 600, group("s")), over("b", 0, 600, 900, group("s")), over("c", 1, 0, 900, shares("b"))}, "[[0 1]]"},
		{"into itself", []survey.Overhead{over("a", 0, 0, 600, shares("a")), over("b", 0, 600, 900)}, "[[0] [1]]"},
		{"into one that is not there", []survey.Overhead{over("a", 0, 0, 600, shares("x")), over("b", 0, 600, 900)}, "[[0] [1]]"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := groupsOf(Clusters(corner(c.overheads...))); got != c.want {
				t.Errorf("clusters %s, want %s", got, c.want)
			}
		})
	}
}

// Sharing goes both ways: it does not matter which of two says so.
func TestSharingGoesBothWays(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 6).Draw(t, "overheads")
		there, back := make([]survey.Overhead, n), make([]survey.Overhead, n)
		for i := range n {
			there[i] = over(fmt.Sprint(i), 0, 100*i, 100*i+100)
			back[i] = there[i]
		}
		for i := range n / 2 { // links between one half and the other, so that each can say it of the other
			j := n/2 + i
			if rapid.Bool().Draw(t, "linked") {
				there[i].Inside.SharesWith, back[j].Inside.SharesWith = fmt.Sprint(j), fmt.Sprint(i)
			}
		}
		a, b := Clusters(corner(there...)), Clusters(corner(back...))
		if groupsOf(a) != groupsOf(b) {
			t.Fatalf("%s one way, %s the other", groupsOf(a), groupsOf(b))
		}
		seen := 0
		for _, c := range a {
			seen += len(c.Parts)
		}
		if seen != n {
			t.Fatalf("%d overheads in clusters, want %d", seen, n)
		}
	})
}

func TestHowFarAwayAlongTheWalls(t *testing.T) {
	k := corner()
	for _, c := range []struct {
		name     string
		o        survey.Overhead
		wall     int
		from, to int
		want     int // −1: no way
	}{
		{"above it", over("s", 0, 1000, 2000), 0, 1200, 1800, 0},
		{"just beside it", over("s", 0, 1000, 2000), 0, 2000, 2600, 0},
		{"to the right", over("s", 0, 1000, 2000), 0, 2300, 2900, 300},
		{"to the left", over("s", 0, 1000, 2000), 0, 0, 600, 400},
		{"around the corner to the right", over("s", 0, 1000, 2000), 1, 500, 900, 2100},
		{"around the corner to the left", over("s", 1, 200, 900), 0, 3000, 3300, 500},
	} {
		t.Run(c.name, func(t *testing.T) {
			d, ok := away(k.Room, &c.o, c.wall, survey.Span{From: mm(c.from), To: mm(c.to)})
			if !ok || d != mm(c.want) {
				t.Errorf("%s away (%v), want %d", d, ok, c.want)
			}
		})
	}
	apart := corner()
	apart.Room.Walls[0].Next, apart.Room.Walls[1].Prev = -1, -1
	o := over("s", 0, 0, 900)
	if d, ok := away(apart.Room, &o, 1, survey.Span{}); ok {
		t.Errorf("%s to a wall that does not join; want no way", d)
	}
}
