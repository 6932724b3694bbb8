package resolve

import "testing"

// contractRoom is a room with one of everything.
const contractRoom = `{
  "units": "mm",
  "survey": {
    "tolerance": 1.5, "built": 1968, "code_set": "none",
    "lasers": [{"id": "A", "above": 0}],
    "bench": {"wall": "long", "at": 40, "level": {"down": 203}, "says": "pencil line by the door"},
    "walls": [{
      "id": "long", "length": 3600, "joins_next": false, "laser": "A", "backing": "wood_stud", "board": 12.5,
      "studs": {"first": 200, "spacing": 400},
      "floor":   [{"at": 0, "down": 1203}, {"at": 3600, "down": 1211, "tolerance": 3}],
      "ceiling": [{"at": 0, "up": 1297}, {"at": 3600, "up": 1301}],
      "openings": [{"id": "w1", "kind": "window", "from": 1400, "to": 2200, "sill": 1050, "head": 2050, "casing": 70}],
      "points": [{"id": "p1", "kind": "socket", "at": 700, "level": 1150, "width": 80, "height": 80}],
      "overheads": [
        {"id": "s1", "part_of": "s", "kind": "soffit", "from": 0, "to": 3600, "depth": 330,
         "underside": [{"at": 0, "up": 897}, {"at": 3600, "up": 893}],
         "structure": "framed", "finish": "gypsum_board", "may_cut": "yes",
         "make": {"lining": 12.5, "bottom_member": 38, "spacing": 400, "hung_from": "joists"},
         "ends": {"left": "wall", "right": "wall"},
         "behind": {"ceiling": "unknown", "wall": "unknown"},
         "inside": {"looked": "no", "hints": ["bath_above"], "seen": [], "services": []}},
        {"id": "d1", "kind": "duct_box", "from": 2620, "to": 2780, "depth": 300, "underside": [{"at": 2620, "up": 640}],
         "structure": "framed", "finish": "gypsum_board",
         "duct": {"diameter": 150, "length": 2500, "bends": [90], "material": "steel", "exits": "roof"}}
      ]
    }]
  },
  "system": "demo-rail",
  "plan": {
    "counter": 900, "row_shift": 0, "floor_change": 0, "floor_under_cabinets": true, "ceiling_change": 0,
    "cooking": {"wall": "long", "from": 2400, "to": 3000, "surface": 910, "energy": "gas",
                "hood": {"kind": "ducted", "airflow": 400, "airflow_unit": "m3/h", "duct_box": "d1", "underside": 1600, "protected": false}},
    "cabinets": [
      {"id": "a", "kind": "wall", "wall": "long", "from": 0, "width": 600, "height": 660, "door": {"opens": "left"}},
      {"id": "t", "kind": "tall", "wall": "long", "from": 3000, "width": 600, "height": 2000}
    ],
    "fillers": [],
    "old_cabinets": [{"id": "o1", "kind": "wall", "wall": "long", "from": 0, "width": 1200, "top": 2100, "depth": 320}]
  },
  "choices": {"s": "trim"},
  "money": {"currency": "EUR", "rates": {}, "storage_per_litre": "0.40", "to_ceiling_worth": "300", "probe": "60"}
}`

func TestARoomWithOneOfEverythingResolves(t *testing.T) {
	c := resolved(t, contractRoom)
	for _, p := range c.Kitchen.Plan.Cabinets {
		if p.Top.MM() != "2120" {
			t.Errorf("%s tops out at %s, want 2120: 120 + 2000 and 1460 + 660 are one top line", p.ID, p.Top)
		}
	}
	d := c.Kitchen.DatumOf(0)
	if at := d.At.MM(); at != "3000" {
		t.Errorf("datum at %s, want 3000: the highest floor under the tall cabinet", at)
	}
}
