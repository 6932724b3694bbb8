package contents

import (
	"slices"

	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Cluster is overhead groups that share their contents: what one turns out to
// hold, all do.
type Cluster struct {
	Groups []int // into [kitchen.Kitchen.Groups], in order
	Parts  []*survey.Overhead
	// figures are those of the request, by which looks and probe holes are weighed.
	figures kitchen.Figures
}

// Clusters are the room's clusters in order of their first group. Groups are
// linked where an overhead of one says that its contents run on into the other,
// over any number of steps.
func Clusters(k *kitchen.Kitchen) []Cluster {
	groups := k.Groups()
	var out []Cluster
	place := map[int]int{} // of a root in out
	for g, root := range roots(groups) {
		i, ok := place[root]
		if !ok {
			i = len(out)
			place[root] = i
			out = append(out, Cluster{figures: k.Prices.Figures})
		}
		out[i].Groups = append(out[i].Groups, g)
		out[i].Parts = append(out[i].Parts, groups[g].Parts...)
	}
	return out
}

// roots gives every group the first group of its cluster.
func roots(groups []kitchen.OverheadGroup) []int {
	of, out := groupOf(groups), make([]int, len(groups))
	for g := range out {
		out[g] = g
	}
	for g := range groups {
		for _, o := range groups[g].Parts {
			if other, ok := of[o.Inside.SharesWith]; ok && o.Inside.SharesWith != "" {
				join(out, out[g], out[other])
			}
		}
	}
	return out
}

// join gives two clusters the earlier of their roots.
func join(roots []int, a, b int) {
	for g, root := range roots {
		if root == a || root == b {
			roots[g] = min(a, b)
		}
	}
}

// groupOf finds an overhead's group by its id.
func groupOf(groups []kitchen.OverheadGroup) map[string]int {
	out := map[string]int{}
	for g := range groups {
		for _, o := range groups[g].Parts {
			out[o.ID] = g
		}
	}
	return out
}

// Length is how long the parts are together.
func (c Cluster) Length() length.Length { return c.sum(whole) }

// sum adds up stretches of the parts.
func (c Cluster) sum(of func(*survey.Overhead) []survey.Span) length.Length {
	var out length.Length
	for _, o := range c.Parts {
		for _, s := range of(o) {
			out += s.To - s.From
		}
	}
	return out
}

// holds reports whether an overhead is one of the parts.
func (c Cluster) holds(id string) bool {
	return slices.ContainsFunc(c.Parts, func(o *survey.Overhead) bool { return o.ID == id })
}

// evidence is a member of every part that some rule picks.
func (c Cluster) evidence(member string, pick func(*survey.Overhead) bool) []string {
	var out []string
	for _, o := range c.Parts {
		if pick(o) {
			out = append(out, o.Inside.Pointer+member)
		}
	}
	return out
}
