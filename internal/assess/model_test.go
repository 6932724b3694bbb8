package assess

import (
	"encoding/json"
	"fmt"
	"slices"
	"strconv"

	"pgregory.net/rapid"
)

// model is a random room of one wall, in tenths of a millimetre; levels count
// from the laser line, upwards positive. It is written out as a request in
// several ways that must all get the same answer.
type model struct {
	length         int
	floor, ceiling []spot
	overheads      []overhead
	cabinets       []cabinetModel
}

type spot struct{ at, level int }

type overhead struct {
	id, kind, structure string
	from, to, depth     int
	underside           []spot
}

type cabinetModel struct {
	id, kind            string
	from, width, height int
	opens               string
}

// writing is how a model is written out.
type writing struct {
	units   string // mm, cm or in
	laser   int    // how far the laser line is moved up
	heights bool   // levels as heights over the survey's zero, not from the line
}

func (m model) body(w writing) string {
	overheads := []any{}
	for _, o := range m.overheads {
		overheads = append(overheads, map[string]any{
			"id": o.id, "kind": o.kind, "structure": o.structure, "from": w.length(o.from), "to": w.length(o.to),
			"depth": w.length(o.depth), "underside": w.profile(o.underside), "finish": "gypsum_board", "painted": "no",
			"make":   map[string]any{"lining": w.length(125), "bottom_member": w.length(380), "least_run": w.length(1500), "hung_from": "joists"},
			"inside": map[string]any{"looked": "opened"},
		})
	}
	cabinets := []any{}
	for _, c := range m.cabinets {
		cabinets = append(cabinets, map[string]any{
			"id": c.id, "kind": c.kind, "wall": "w", "from": w.length(c.from), "width": w.length(c.width), "height": w.length(c.height),
			"door": map[string]any{"opens": c.opens, "thickness": w.length(200), "pull": w.length(400)},
		})
	}
	body := map[string]any{
		"units": w.units, "tape": "1 mm", "system": json.RawMessage(modelSystem),
		"survey": map[string]any{"tolerance": w.length(5), "built": 1995, "walls": []any{map[string]any{
			"id": "w", "length": w.length(m.length), "floor": w.profile(m.floor), "ceiling": w.profile(m.ceiling),
			"overheads": overheads, "backing": "masonry",
		}}},
		"plan": map[string]any{"counter": w.length(9000), "least_counter": w.length(8900), "floor_change": w.length(0), "ceiling_change": w.length(0), "cabinets": cabinets},
	}
	out, _ := json.Marshal(body)
	return string(out)
}

const modelSystem = `{"units": "mm", "legs": 120, "leg_travel": {"up": 40, "down": 30},
	"wall": {"heights": [340, 500, 660, 900], "widths": [300, 400, 600, 800], "depths": [360], "underside": 1460},
	"tall": {"heights": [1840, 2000, 2240], "widths": [400, 600], "depths": [600]},
	"base": {"heights": [740], "widths": [300, 400, 600, 800], "depths": [600], "counter": 40},
	"rail": {"drop": 64, "profile": 32, "stock": [2400], "kerf": 3, "hanger_up": 12, "hanger_down": 8, "lift": 10, "end_inset": 40, "longest_span": 610},
	"fit_gap": 2, "side_clearance": 3}`

// length writes tenths of a millimetre: as a number in mm or cm, and in inches
// as text that says its own unit.
func (w writing) length(tenths int) any {
	switch w.units {
	case "cm":
		return json.Number(decimal(tenths, 2))
	case "in":
		return decimal(tenths, 1) + " mm"
	default:
		return json.Number(decimal(tenths, 1))
	}
}

func decimal(n, places int) string {
	sign := ""
	if n < 0 {
		sign, n = "-", -n
	}
	digits := fmt.Sprintf("%0*s", places+1, strconv.Itoa(n))
	return sign + digits[:len(digits)-places] + "." + digits[len(digits)-places:]
}

func (w writing) profile(spots []spot) []any {
	out := []any{}
	for _, s := range spots {
		p := map[string]any{"at": w.length(s.at)}
		level := s.level - w.laser
		switch {
		case w.heights:
			p["height"] = w.length(s.level + 12000)
		case level < 0:
			p["down"] = w.length(-level)
		default:
			p["up"] = w.length(level)
		}
		out = append(out, p)
	}
	return out
}

// mirrored is the room seen in a mirror.
func (m model) mirrored() model {
	flip := func(in []spot) []spot {
		out := slices.Clone(in)
		slices.Reverse(out)
		for i := range out {
			out[i].at = m.length - out[i].at
		}
		return out
	}
	out := model{length: m.length, floor: flip(m.floor), ceiling: flip(m.ceiling)}
	for _, o := range m.overheads {
		o.from, o.to, o.underside = m.length-o.to, m.length-o.from, flip(o.underside)
		out.overheads = append(out.overheads, o)
	}
	for _, c := range m.cabinets {
		c.from = m.length - c.from - c.width
		if other := map[string]string{"left": "right", "right": "left"}[c.opens]; other != "" {
			c.opens = other
		}
		out.cabinets = append(out.cabinets, c)
	}
	return out
}

// anyRoom draws a room whose ceiling stands well over its floor, with overheads
// between them and cabinets side by side.
func anyRoom(t *rapid.T) model {
	m := model{length: 10 * rapid.IntRange(1200, 6000).Draw(t, "length")}
	m.floor = profile(t, "floor", 0, m.length, -12100, -11900)
	m.ceiling = profile(t, "ceiling", 0, m.length, 11000, 14500)
	for i := range rapid.IntRange(0, 3).Draw(t, "overheads") {
		m.overheads = append(m.overheads, anyOverhead(t, i, m.length))
	}
	m.cabinets = anyRun(t, m.length)
	return m
}

func profile(t *rapid.T, name string, from, to, low, high int) []spot {
	n := rapid.IntRange(1, 4).Draw(t, name+" points")
	base := rapid.IntRange(low, high).Draw(t, name)
	var out []spot
	for i := range n {
		at := from
		if n > 1 {
			at = from + (to-from)*i/(n-1)
		}
		out = append(out, spot{at, base + rapid.IntRange(-150, 150).Draw(t, name+" level")})
		if i > 0 && i < n-1 && rapid.Bool().Draw(t, name+" step") {
			out = append(out, spot{at, base + rapid.IntRange(-150, 150).Draw(t, name+" step level")})
		}
	}
	return out
}

func anyOverhead(t *rapid.T, i, long int) overhead {
	from := 10 * rapid.IntRange(0, long/10-200).Draw(t, "from")
	to := from + 10*rapid.IntRange(100, (long-from)/10).Draw(t, "to")
	return overhead{
		id: fmt.Sprintf("o%d", i), from: from, to: to, depth: 10 * rapid.IntRange(100, 500).Draw(t, "depth"),
		kind:      rapid.SampledFrom([]string{"soffit", "beam", "lowered_ceiling", "duct_box"}).Draw(t, "kind"),
		structure: rapid.SampledFrom([]string{"framed", "framed", "bearing", "unknown"}).Draw(t, "structure"),
		underside: profile(t, "underside", from, to, 7500, 10000),
	}
}

func anyRun(t *rapid.T, long int) []cabinetModel {
	var out []cabinetModel
	at := 10 * rapid.IntRange(0, 300).Draw(t, "run from")
	for i := range rapid.IntRange(1, 6).Draw(t, "cabinets") {
		c := cabinetModel{
			id: fmt.Sprintf("c%d", i), from: at, kind: rapid.SampledFrom([]string{"wall", "wall", "tall"}).Draw(t, "cabinet kind"),
			opens: rapid.SampledFrom([]string{"left", "right", "pair", "none"}).Draw(t, "opens"),
		}
		c.width = 10 * rapid.SampledFrom([]int{300, 400, 600}).Draw(t, "width")
		c.height = 10 * rapid.SampledFrom(map[string][]int{"wall": {340, 500, 660, 900}, "tall": {1840, 2000, 2240}}[c.kind]).Draw(t, "height")
		if at+c.width > long {
			break
		}
		out = append(out, c)
		at += c.width + 10*rapid.SampledFrom([]int{0, 0, 30, 400}).Draw(t, "gap")
	}
	return out
}
