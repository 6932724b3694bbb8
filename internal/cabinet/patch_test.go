package cabinet

import (
	"testing"

	"pgregory.net/rapid"

	"railhead/internal/length"
	"railhead/internal/survey"
)

func mm(n int) length.Length { return length.Length(n) * length.Millimetre }

// lRoom has a wall of 3000 and, around a right-hand inside corner, one of 2000.
func lRoom() *survey.Room {
	return &survey.Room{Walls: []survey.Wall{
		{Index: 0, Length: mm(3000), Prev: -1, Next: 1},
		{Index: 1, Length: mm(2000), Prev: 0, Next: -1},
	}}
}

func patch(wall, from, to, near, far int, native bool) Patch {
	return Patch{wall, mm(from), mm(to), mm(near), mm(far), native}
}

func TestPatchesAroundAnInsideCorner(t *testing.T) {
	for _, c := range []struct {
		name string
		c    Placed
		want []Patch
	}{
		{"against the corner: the next wall sees its depth along, and its width outwards",
			Placed{Wall: 0, From: mm(2400), To: mm(3000), Depth: mm(360)},
			[]Patch{patch(0, 2400, 3000, 0, 360, true), patch(1, 0, 360, 0, 600, false)}},
		{"away from the corner: the next wall sees it far out",
			Placed{Wall: 0, From: mm(600), To: mm(1200), Depth: mm(360)},
			[]Patch{patch(0, 600, 1200, 0, 360, true), patch(1, 0, 360, 1800, 2400, false)}},
		{"on the second wall: the first sees it at its right end",
			Placed{Wall: 1, From: 0, To: mm(800), Depth: mm(600)},
			[]Patch{patch(1, 0, 800, 0, 600, true), patch(0, 2400, 3000, 0, 800, false)}},
		{"an L in the right corner stands on both walls, and each sees the other leg too",
			Placed{Wall: 0, From: mm(2100), To: mm(3000), Depth: mm(360), Corner: &Corner{OtherWall: 1, OtherWidth: mm(900), AtRight: true}},
			[]Patch{patch(0, 2100, 3000, 0, 360, true), patch(1, 0, 900, 0, 360, true), patch(1, 0, 360, 0, 900, false), patch(0, 2640, 3000, 0, 900, false)}},
		{"an L in the left corner ends at the other wall's right end",
			Placed{Wall: 1, From: 0, To: mm(900), Depth: mm(360), Corner: &Corner{OtherWall: 0, OtherWidth: mm(800)}},
			[]Patch{patch(1, 0, 900, 0, 360, true), patch(0, 2200, 3000, 0, 360, true), patch(0, 2640, 3000, 0, 900, false), patch(1, 0, 360, 0, 800, false)}},
		{"a diagonal one counts as its whole square",
			Placed{Wall: 0, From: mm(2400), To: mm(3000), Depth: mm(360), Corner: &Corner{OtherWall: 1, OtherWidth: mm(600), AtRight: true, Shape: CornerDiagonal}},
			[]Patch{patch(0, 2400, 3000, 0, 600, true), patch(1, 0, 600, 0, 360, true), patch(1, 0, 600, 0, 600, false), patch(0, 2640, 3000, 0, 600, false)}},
		{"a blind one is a plain box",
			Placed{Wall: 0, From: mm(2100), To: mm(3000), Depth: mm(360), Corner: &Corner{OtherWall: 1, OtherWidth: mm(600), AtRight: true, Shape: CornerBlind}},
			[]Patch{patch(0, 2100, 3000, 0, 360, true), patch(1, 0, 360, 0, 900, false)}},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := c.c.Patches(lRoom())
			if len(got) != len(c.want) {
				t.Fatalf("patches %v, want %v", got, c.want)
			}
			for i := range got {
				if got[i] != c.want[i] {
					t.Errorf("patch %d is %v, want %v", i, got[i], c.want[i])
				}
			}
		})
	}
}

func TestBoxesOverlapWhereTheirInteriorsMeet(t *testing.T) {
	box := patch(0, 600, 1200, 0, 360, true)
	for _, c := range []struct {
		name string
		o    Patch
		want bool
	}{
		{"side by side", patch(0, 1200, 1800, 0, 360, true), false},
		{"one in front of the other", patch(0, 600, 1200, 360, 600, true), false},
		{"a corner in common", patch(0, 1200, 1800, 360, 600, true), false},
		{"a millimetre in common", patch(0, 1199, 1800, 359, 600, true), true},
		{"inside", patch(0, 700, 800, 100, 200, true), true},
		{"on another wall", patch(1, 600, 1200, 0, 360, true), false},
	} {
		if got := box.Overlaps(c.o); got != c.want || c.o.Overlaps(box) != got {
			t.Errorf("%s: overlaps %v, want %v both ways", c.name, got, c.want)
		}
	}
}

// Mapping a patch around the corner and back gives the patch.
func TestMappingAroundACornerAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := func(name string, low, high int) int { return rapid.IntRange(low, high).Draw(t, name) }
		from := n("from", 0, 2999)
		near := n("near", 0, 1998)
		p := patch(0, from, n("to", from+1, 3000), near, n("far", near+1, 1999), false)
		images := p.Joined(lRoom())
		if len(images) != 1 {
			t.Fatalf("images %v", images)
		}
		for _, q := range images[0].Joined(lRoom()) {
			if q != p {
				t.Fatalf("%v went around to %v and came back as %v", p, images[0], q)
			}
		}
	})
}
