package resolve

import "testing"

// plainRoom is as little as can be assessed: one wall, levelled, and a cabinet system.
const plainRoom = `{"units": "mm", "survey": {"walls": [{"id": "a", "length": 3000,
  "floor": [{"at": 0, "down": 1200}], "ceiling": [{"at": 0, "up": 1300}]}]}, "system": "demo-rail"}`

// everythingWrong has one slip after the other; none of them hides another.
const everythingWrong = `{
  "units": "mm", "tape": 0,
  "survey": {
    "tolerance": -1,
    "lasers": [{"id": "A", "above": 5}, {"id": "B"}, {"id": "A", "above": 12}],
    "bench": {"wall": "nowhere", "at": "12 bananas", "level": 900},
    "walls": [
      {"id": "a", "length": 3000, "level_with": "a", "laser": "Z", "facing": {"wall": "a", "distance": 0}, "joins_next": true,
       "studs": {"first": 3400, "spacing": 0},
       "floor": [{"at": 0, "down": 1200}, {"at": 3001, "down": 1200}, {"at": 2000, "down": 1201}],
       "ceiling": [{"at": 0, "up": 1300, "laser": "Q"}, {"at": 500, "up": 1300, "tolerance": -2}, {"at": 500, "up": 1290}, {"at": 500, "up": 1280}, {"at": 500, "up": 1270}],
       "openings": [{"id": "w", "kind": "window", "from": 800, "to": 800, "head": {"up": 900}},
                    {"id": "w", "kind": "door", "from": -10, "to": 3100, "head": {"up": 900}, "casing": -1}],
       "points": [{"id": "p", "kind": "socket", "at": 3300, "level": {"down": 100}, "width": 0}]},
      {"id": "b", "length": 2000, "joins_next": true,
       "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 2400, "laser": "A"}],
       "overheads": [
         {"id": "s", "kind": "soffit", "from": 0, "to": 2001, "depth": 0, "thickness": 300},
         {"id": "g", "part_of": "s", "kind": "closed_gap", "from": 10, "to": 500, "depth": 300, "thickness": 300, "underside": [{"at": 0, "height": 2100}]},
         {"id": "d", "part_of": "g", "kind": "beam", "from": 0, "to": 500, "depth": 300, "underside": [{"at": 0, "height": 2100}],
          "duct": {"diameter": -5, "bends": ["ninety"]}, "carried_by": "ceiling",
          "inside": {"seen": [{"from": 400, "to": 600}], "priors": {"empty": "0.5", "immovable": 0.4},
                     "services": [{"kind": "wire", "from": 450, "to": 550, "underside": {"height": 2200}}]}}]}
    ]},
  "system": {"legs": 100, "leg_travel": {"up": 20, "down": 101}, "fit_gap": -2,
             "wall": {"heights": [0, 600], "depths": [350], "underside": 0},
             "rail": {"drop": 601, "kerf": -1, "stock": [0]}, "mass": {"wall_per_m2_front": "heavy"}},
  "plan": {
    "counter": 0,
    "datums": [{"wall": "a", "at": 4000, "level": {"down": 1200}}, {"wall": "b", "at": 0, "level": {"height": 0}}],
    "cooking": {"wall": "b", "from": 1800, "to": 2600, "energy": "gas", "hood": {"kind": "ducted", "airflow": 400, "duct_box": "s"}},
    "cabinets": [
      {"id": "c", "kind": "wall", "wall": "b", "from": 0, "width": -600, "height": 0, "door": {"opens": "left", "thickness": 0}},
      {"id": "c", "kind": "tall", "wall": "x", "from": 0, "width": 600, "height": 2000, "depth": 600, "underside": 100},
      {"id": "k", "kind": "base", "wall": "b", "from": 300, "width": 900, "height": 720, "depth": 600, "corner": {"other_wall": "b", "other_width": 0, "shape": "l"}}],
    "fillers": [{"wall": "b", "from": 0, "width": 0}],
    "appliances": [{"id": "f", "kind": "fridge", "wall": "b", "from": -5, "width": 3000, "height": 0, "underside": 3, "clearance": {"right": -1}},
                   {"id": "f", "kind": "sink", "wall": "y", "from": 0, "width": 0, "height": 200},
                   {"id": "h", "kind": "other", "wall": "b", "from": 0, "width": 10}],
    "old_cabinets": [{"id": "o", "kind": "wall", "wall": "?", "from": 0, "width": 600, "top": 2100}]},
  "choices": {"s": {"option": "trim", "spans": [{"wall": "a", "from": 0, "to": 10}]}, "g": "move", "d": "keep", "a/b~c": "keep"},
  "money": {"to_ceiling_worth": "-3", "probe": "about 60", "rates": {"board": {"low": 3, "likely": 2, "high": 1}}}
}`

func TestEverythingWrongIsSaidAtOnce(t *testing.T) {
	sameLines(t, "refused", refused(t, everythingWrong), []string{
		"request.tape.not_sensible /tape",
		"id.duplicate /survey/lasers/2/id",
		"id.duplicate /survey/walls/0/openings/1/id",
		"survey.overhead.part_of_taken /survey/walls/1/overheads/2/part_of",
		"id.duplicate /plan/cabinets/1/id",
		"id.duplicate /plan/appliances/1/id",
		"survey.length.negative /survey/tolerance",
		"survey.laser_height.missing /survey/laser_height",
		"survey.laser.first_not_zero /survey/lasers/0/above",
		"survey.laser.untied /survey/lasers/1/above",
		"ref.unknown /survey/walls/0/laser",
		"survey.profile.off_wall /survey/walls/0/floor/1/at",
		"survey.profile.unordered /survey/walls/0/floor/2/at",
		"ref.unknown /survey/walls/0/ceiling/0/laser",
		"survey.length.negative /survey/walls/0/ceiling/1/tolerance",
		"survey.profile.third_at_station /survey/walls/0/ceiling/3/at",
		"survey.profile.third_at_station /survey/walls/0/ceiling/4/at",
		"survey.length.not_positive /survey/walls/0/studs/spacing",
		"survey.stud.off_wall /survey/walls/0/studs/first",
		"survey.reading.laser_unused /survey/walls/1/ceiling/0/laser",
		"survey.wall.joins_nothing /survey/walls/1/joins_next",
		"survey.wall.level_with_itself /survey/walls/0/level_with",
		"survey.length.not_positive /survey/walls/0/facing/distance",
		"survey.facing.itself /survey/walls/0/facing/wall",
		"survey.span.empty /survey/walls/0/openings/0/to",
		"survey.length.negative /survey/walls/0/openings/1/casing",
		"survey.opening.off_wall /survey/walls/0/openings/1/from",
		"survey.opening.off_wall /survey/walls/0/openings/1/to",
		"survey.length.not_positive /survey/walls/0/points/0/width",
		"survey.point.off_wall /survey/walls/0/points/0/at",
		"survey.overhead.off_wall /survey/walls/1/overheads/0/to",
		"survey.length.not_positive /survey/walls/1/overheads/0/depth",
		"survey.overhead.not_a_closed_gap /survey/walls/1/overheads/0/thickness",
		"survey.overhead.two_undersides /survey/walls/1/overheads/1/thickness",
		"survey.overhead.not_a_closed_gap /survey/walls/1/overheads/2/carried_by",
		"survey.seen.off_overhead /survey/walls/1/overheads/2/inside/seen/0/to",
		"survey.service.off_overhead /survey/walls/1/overheads/2/inside/services/0/to",
		"survey.priors.not_one /survey/walls/1/overheads/2/inside/priors",
		"survey.overhead.not_a_duct_box /survey/walls/1/overheads/2/duct",
		"survey.length.not_positive /survey/walls/1/overheads/2/duct/diameter",
		"survey.amount.syntax /survey/walls/1/overheads/2/duct/bends/0",
		"length.text.syntax /survey/bench/at",
		"ref.unknown /survey/bench/wall",
		"system.length.negative /system/fit_gap",
		"system.legs.travel_too_long /system/leg_travel/down",
		"system.length.not_positive /system/wall/heights/0",
		"system.length.not_positive /system/wall/underside",
		"system.length.not_positive /system/rail/stock/0",
		"system.length.negative /system/rail/kerf",
		"system.rail.drop_too_long /system/rail/drop",
		"system.amount.syntax /system/mass/wall_per_m2_front",
		"plan.length.not_positive /plan/counter",
		"plan.length.not_positive /plan/cabinets/0/width",
		"plan.length.not_positive /plan/cabinets/0/height",
		"plan.length.not_positive /plan/cabinets/0/door/thickness",
		"ref.unknown /plan/cabinets/1/wall",
		"plan.cabinet.underside_of_standing /plan/cabinets/1/underside",
		"plan.length.not_positive /plan/cabinets/2/corner/other_width",
		"plan.corner.not_joined /plan/cabinets/2/corner/other_wall",
		"plan.length.not_positive /plan/fillers/0/width",
		"ref.unknown /plan/old_cabinets/0/wall",
		"plan.cooking.off_wall /plan/cooking/to",
		"body.member.missing /plan/cooking/hood/airflow_unit",
		"plan.hood.not_a_duct_box /plan/cooking/hood/duct_box",
		"plan.appliance.off_wall /plan/appliances/0/from",
		"plan.appliance.off_wall /plan/appliances/0/width",
		"plan.length.not_positive /plan/appliances/0/height",
		"plan.appliance.underside_of_standing /plan/appliances/0/underside",
		"plan.length.negative /plan/appliances/0/clearance/right",
		"ref.unknown /plan/appliances/1/wall",
		"plan.length.not_positive /plan/appliances/1/width",
		"plan.appliance.height_of_sink /plan/appliances/1/height",
		"body.member.missing /plan/appliances/2/height",
		"plan.datum.off_wall /plan/datums/0/at",
		"plan.datum.twice /plan/datums/1/wall",
		"ref.unknown /choices/a~1b~0c",
		"choice.overhead.is_part /choices/d",
		"choice.move.not_a_duct_box /choices/g",
		"choice.spans.not_open_part /choices/s/spans",
		"choice.span.wrong_wall /choices/s/spans/0/wall",
		"money.rate.unknown /money/rates/board",
		"money.rate.out_of_order /money/rates/board/low",
		"money.rate.out_of_order /money/rates/board/high",
		"money.amount.syntax /money/probe",
		"money.amount.negative /money/to_ceiling_worth",
	})
}

// Every refusal has its words.
func TestRefusalsHaveWords(t *testing.T) {
	_, faults := Request(decode(t, everythingWrong))
	for _, f := range faults {
		worded(t, f.Code, f.Params, nil, nil)
	}
}
