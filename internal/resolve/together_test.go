package resolve

import (
	"encoding/json"
	"maps"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"railhead/api"
	wire "railhead/internal/decode"
	"railhead/openapi"
)

// slip is one error in a good body, and the members that it takes to see it.
type slip struct {
	name    string
	changes []change
	want    string   // code and pointer
	rests   []string // beside the members changed, and the one it is told at
}

const (
	longWall  = "/survey/walls/0"
	shortWall = "/survey/walls/1"
	soffitA   = longWall + "/overheads/0"
	gapA      = longWall + "/overheads/1"
	boxA      = longWall + "/overheads/2"
)

// slips has some for every kind of object that a request is made of.
var slips = []slip{
	{"a tape without steps", []change{{"/tape", "0"}}, "request.tape.not_sensible /tape", nil},

	{"a doubt below nothing", []change{{"/survey/tolerance", "-1"}}, "survey.length.negative /survey/tolerance", nil},
	{"two zeros and nothing between them", []change{{"/survey/laser_height", ""}}, "survey.laser_height.missing /survey/laser_height", []string{"/survey/walls"}},
	{"a first line above itself", []change{{"/survey/lasers/0/above", "5"}}, "survey.laser.first_not_zero /survey/lasers/0/above", nil},
	{"a line tied to nothing", []change{{"/survey/lasers/1/above", ""}}, "survey.laser.untied /survey/lasers/1/above", nil},
	{"a tie of less than no doubt", []change{{"/survey/lasers/1/tolerance", "-1"}}, "survey.length.negative /survey/lasers/1/tolerance", nil},
	{"two lasers of one name", []change{{"/survey/lasers/1/id", `"A"`}}, "id.duplicate /survey/lasers/1/id", []string{"/survey/lasers/0/id"}},
	{"a bench mark off the wall", []change{{"/survey/bench/at", "4000"}}, "survey.bench.off_wall /survey/bench/at", []string{"/survey/bench/wall", longWall + "/id", longWall + "/length"}},
	{"a bench mark on no wall", []change{{"/survey/bench/wall", `"nowhere"`}}, "ref.unknown /survey/bench/wall", nil},
	{"a bench mark read twice", []change{{"/survey/bench/level/up", "10"}}, "survey.reading.not_one /survey/bench/level", nil},
	{"a bench mark read by nobody's laser", []change{{"/survey/bench/level/laser", `"Q"`}}, "ref.unknown /survey/bench/level/laser", []string{"/survey/bench/level/down"}},

	{"a wall of no length", []change{{longWall + "/length", "0"}}, "survey.length.not_positive " + longWall + "/length", nil},
	{"a wall by nobody's laser", []change{{longWall + "/laser", `"Z"`}}, "ref.unknown " + longWall + "/laser", nil},
	{"a wall levelled with none", []change{{shortWall + "/level_with", `"zz"`}}, "ref.unknown " + shortWall + "/level_with", nil},
	{"a wall levelled with itself", []change{{shortWall + "/level_with", `"short"`}}, "survey.wall.level_with_itself " + shortWall + "/level_with", []string{shortWall + "/id"}},
	{"a last wall that goes on", []change{{shortWall + "/joins_next", "true"}}, "survey.wall.joins_nothing " + shortWall + "/joins_next", nil},
	{"two walls of one name", []change{{shortWall + "/id", `"long"`}}, "id.duplicate " + shortWall + "/id", []string{longWall + "/id"}},
	{"a ceiling that dips under the floor", []change{{longWall + "/ceiling/0/up", "-1300"}, {longWall + "/overheads", "[]"}, {longWall + "/openings", "[]"}, {"/choices", "{}"}, {"/plan/cooking", ""}}, "survey.ceiling.under_floor " + longWall + "/ceiling", []string{longWall + "/floor", longWall + "/ceiling", "/survey/lasers"}},
	{"a facing wall in the same place", []change{{longWall + "/facing/distance", "0"}}, "survey.length.not_positive " + longWall + "/facing/distance", nil},
	{"a wall that faces itself", []change{{longWall + "/facing/wall", `"long"`}}, "survey.facing.itself " + longWall + "/facing/wall", []string{longWall + "/id"}},
	{"a forest of studs", []change{{longWall + "/studs/spacing", "1"}}, "survey.studs.too_close " + longWall + "/studs/spacing", []string{longWall + "/studs"}},
	{"a stud before the wall", []change{{longWall + "/studs/first", "-5"}}, "survey.stud.off_wall " + longWall + "/studs/first", []string{longWall + "/studs"}},
	{"studs both ways", []change{{longWall + "/studs/at", "[100]"}}, "survey.studs.two_ways " + longWall + "/studs/at", []string{longWall + "/studs"}},
	{"studs that go back", []change{{shortWall + "/studs/at", "[100, 500, 300]"}}, "survey.studs.unordered " + shortWall + "/studs/at/2", []string{shortWall + "/studs/at"}},
	{"studs that are nowhere", []change{{shortWall + "/studs", "{}"}}, "body.member.missing " + shortWall + "/studs/first", []string{shortWall + "/studs"}},
	{"a floor taped from itself", []change{{longWall + "/floor/1/down", ""}, {longWall + "/floor/1/laser", ""}, {longWall + "/floor/1/above_floor", "3"}}, "survey.floor.above_floor " + longWall + "/floor/1/above_floor", nil},
	{"a floor point before the wall", []change{{longWall + "/floor/0/at", "-5"}}, "survey.profile.off_wall " + longWall + "/floor/0/at", nil},
	{"a floor that goes back", []change{{longWall + "/floor/-", `{"at": 3500, "down": 1200}`}}, "survey.profile.unordered " + longWall + "/floor/2/at", []string{longWall + "/floor"}},
	{"a ceiling read in two ways", []change{{longWall + "/ceiling/1/up", "1290"}}, "survey.reading.not_one " + longWall + "/ceiling/1", nil},
	{"a ceiling read by no way", []change{{longWall + "/ceiling/0/up", ""}}, "survey.reading.not_one " + longWall + "/ceiling/0", nil},
	{"a height that names a laser", []change{{longWall + "/ceiling/2/laser", `"A"`}}, "survey.reading.laser_unused " + longWall + "/ceiling/2/laser", []string{longWall + "/ceiling/2/height", "/survey/lasers/0/id"}},
	{"a point of less than no doubt", []change{{longWall + "/floor/1/tolerance", "-1"}}, "survey.length.negative " + longWall + "/floor/1/tolerance", []string{longWall + "/floor/1/down"}},

	{"an opening that ends before it starts", []change{{longWall + "/openings/0/to", "1300"}}, "survey.span.empty " + longWall + "/openings/0/to", []string{longWall + "/openings/0/from"}},
	{"an opening before the wall", []change{{longWall + "/openings/0/from", "-10"}}, "survey.opening.off_wall " + longWall + "/openings/0/from", []string{longWall + "/openings/0/to"}},
	{"an opening past the wall", []change{{longWall + "/openings/0/to", "3700"}}, "survey.opening.off_wall " + longWall + "/openings/0/to", []string{longWall + "/openings/0/from", longWall + "/length"}},
	{"a head at the sill", []change{{longWall + "/openings/0/head", "1050"}}, "survey.opening.head_under_sill " + longWall + "/openings/0/head", []string{longWall + "/openings/0/sill"}},
	{"a head in the storey above", []change{{longWall + "/openings/0/head", `{"up": 1400}`}}, "survey.opening.head_above_ceiling " + longWall + "/openings/0/head",
		[]string{longWall + "/openings/0/from", longWall + "/openings/0/to", longWall + "/ceiling", longWall + "/floor", "/survey/laser_height", longWall + "/laser", "/survey/lasers"}},
	{"a sill in the cellar", []change{{longWall + "/openings/0/sill", `{"down": 1300}`}}, "survey.opening.sill_under_floor " + longWall + "/openings/0/sill",
		[]string{longWall + "/openings/0/from", longWall + "/openings/0/to", longWall + "/floor", longWall + "/laser", "/survey/lasers"}},
	{"a casing of less than nothing", []change{{longWall + "/openings/0/casing", "-1"}}, "survey.length.negative " + longWall + "/openings/0/casing", nil},
	{"a socket of no width", []change{{longWall + "/points/0/width", "0"}}, "survey.length.not_positive " + longWall + "/points/0/width", nil},
	{"a socket off the wall", []change{{longWall + "/points/0/at", "5000"}}, "survey.point.off_wall " + longWall + "/points/0/at", []string{longWall + "/length"}},
	{"a socket read in two ways", []change{{longWall + "/points/0/level", `{"up": 1, "down": 1}`}}, "survey.reading.not_one " + longWall + "/points/0/level", nil},

	{"an overhead of no depth", []change{{soffitA + "/depth", "0"}}, "survey.length.not_positive " + soffitA + "/depth", nil},
	{"an overhead behind the wall", []change{{soffitA + "/out", "-1"}}, "survey.length.negative " + soffitA + "/out", nil},
	{"an overhead past the wall", []change{{soffitA + "/to", "3700"}}, "survey.overhead.off_wall " + soffitA + "/to", []string{soffitA + "/from", longWall + "/length"}},
	{"an underside read before the wall", []change{{soffitA + "/underside/0/at", "-1"}}, "survey.profile.off_wall " + soffitA + "/underside/0/at", nil},
	{"an underside above the ceiling", []change{{soffitA + "/underside/0/up", "1400"}, {soffitA + "/behind", ""}}, "survey.overhead.above_ceiling " + soffitA + "/underside",
		[]string{soffitA + "/from", soffitA + "/to", soffitA + "/underside", longWall + "/ceiling", longWall + "/floor", "/survey/laser_height", longWall + "/laser", "/survey/lasers"}},
	{"a soffit of a thickness", []change{{soffitA + "/thickness", "100"}}, "survey.overhead.not_a_closed_gap " + soffitA + "/thickness", []string{soffitA + "/kind"}},
	{"a soffit on the old cabinets", []change{{soffitA + "/carried_by", `"ceiling"`}}, "survey.overhead.not_a_closed_gap " + soffitA + "/carried_by", []string{soffitA + "/kind"}},
	{"a part of what is part of something", []change{{soffitA + "/part_of", `"d1"`}, {boxA + "/part_of", `"e"`}, {"/choices", "{}"}}, "survey.overhead.part_of_taken " + soffitA + "/part_of", []string{boxA + "/id"}},
	{"two overheads of one name", []change{{gapA + "/id", `"d1"`}}, "id.duplicate " + boxA + "/id", nil},
	{"a gap under two levels", []change{{gapA + "/underside", `[{"at": 3000, "up": 900}]`}}, "survey.overhead.two_undersides " + gapA + "/thickness", []string{gapA + "/kind"}},
	{"a gap of no thickness", []change{{gapA + "/thickness", "0"}}, "survey.length.not_positive " + gapA + "/thickness", nil},
	{"a box with no underside", []change{{boxA + "/underside", ""}}, "body.member.missing " + boxA + "/underside", nil},
	{"a lining of less than nothing", []change{{soffitA + "/make/lining", "-1"}}, "survey.length.negative " + soffitA + "/make/lining", nil},
	{"framing on top of itself", []change{{soffitA + "/make/spacing", "0"}}, "survey.length.not_positive " + soffitA + "/make/spacing", nil},
	{"a ceiling behind under the underside", []change{{soffitA + "/behind/ceiling_level", `{"up": 800}`}}, "survey.behind.under_underside " + soffitA + "/behind/ceiling_level",
		[]string{soffitA + "/from", soffitA + "/to", soffitA + "/underside", longWall + "/laser", "/survey/lasers"}},
	{"a look that ends before it starts", []change{{soffitA + "/inside/seen/0/to", "50"}}, "survey.span.empty " + soffitA + "/inside/seen/0/to", []string{soffitA + "/inside/seen/0/from"}},
	{"a look beside the soffit", []change{{soffitA + "/inside/seen/0/to", "4000"}}, "survey.seen.off_overhead " + soffitA + "/inside/seen/0/to", []string{soffitA + "/inside/seen/0/from", soffitA + "/from", soffitA + "/to"}},
	{"a pipe beside the soffit", []change{{soffitA + "/inside/services/0/to", "4000"}}, "survey.service.off_overhead " + soffitA + "/inside/services/0/to", []string{soffitA + "/inside/services/0/from", soffitA + "/from", soffitA + "/to"}},
	{"a pipe that ends before it starts", []change{{soffitA + "/inside/services/0/to", "50"}}, "survey.span.empty " + soffitA + "/inside/services/0/to", []string{soffitA + "/inside/services/0/from"}},
	{"a pipe read in no way", []change{{soffitA + "/inside/services/0/underside", `{"tolerance": 1}`}}, "survey.reading.not_one " + soffitA + "/inside/services/0/underside", nil},
	{"a pipe with less than no room", []change{{soffitA + "/inside/services/0/clearance", "-1"}}, "survey.length.negative " + soffitA + "/inside/services/0/clearance", nil},
	{"odds that miss 1", []change{{soffitA + "/inside/priors/empty", "0.4"}}, "survey.priors.not_one " + soffitA + "/inside/priors", []string{soffitA + "/inside/priors"}},
	{"odds below nothing", []change{{soffitA + "/inside/priors/empty", "-0.5"}}, "survey.amount.negative " + soffitA + "/inside/priors/empty", nil},
	{"contents shared with nothing", []change{{soffitA + "/inside/shares_with", `"d9"`}}, "ref.unknown " + soffitA + "/inside/shares_with", nil},
	{"a bath nearer than near", []change{{soffitA + "/inside/bath_away", "-1"}}, "survey.length.negative " + soffitA + "/inside/bath_away", nil},
	{"a duct of no width", []change{{boxA + "/duct/diameter", "0"}}, "survey.length.not_positive " + boxA + "/duct/diameter", nil},
	{"a duct in a gap", []change{{gapA + "/duct", `{"length": 100}`}}, "survey.overhead.not_a_duct_box " + gapA + "/duct", []string{gapA + "/kind"}},
	{"a bend the other way", []change{{boxA + "/duct/bends/0", "-90"}}, "survey.amount.negative " + boxA + "/duct/bends/0", nil},

	{"a system of another world", []change{{"/system", `"nobody"`}, {"/plan/cabinets", "[]"}}, "system.id.unknown /system", nil},
	{"a gap of less than nothing", []change{{"/system/fit_gap", "-1"}}, "system.length.negative /system/fit_gap", nil},
	{"legs shorter than nothing", []change{{"/system/legs", "-1"}}, "system.length.negative /system/legs", nil},
	{"legs that wind below nothing", []change{{"/system/leg_travel/down", "121"}}, "system.legs.travel_too_long /system/leg_travel/down", []string{"/system/legs", "/system/units"}},
	{"wall cabinets of no height", []change{{"/system/wall/heights/0", "0"}}, "system.length.not_positive /system/wall/heights/0", nil},
	{"a row in the floor", []change{{"/system/wall/underside", "0"}}, "system.length.not_positive /system/wall/underside", nil},
	{"a tall row of no depth", []change{{"/system/tall/depths", "[0]"}}, "system.length.not_positive /system/tall/depths/0", []string{"/system/tall/depths"}},
	{"a counter of less than nothing", []change{{"/system/base/counter", "-1"}}, "system.length.negative /system/base/counter", nil},
	{"a rail below the cabinets", []change{{"/system/rail/drop", "5000"}}, "system.rail.drop_too_long /system/rail/drop", []string{"/system/wall/heights", "/system/tall/heights"}},
	{"a saw that adds", []change{{"/system/rail/kerf", "-1"}}, "system.length.negative /system/rail/kerf", nil},
	{"a kitchen that floats", []change{{"/system/mass/wall_per_m2_front", "-24"}}, "system.amount.negative /system/mass/wall_per_m2_front", nil},

	{"a counter on the floor", []change{{"/plan/counter", "0"}}, "plan.length.not_positive /plan/counter", nil},
	{"a ceiling down to the soffit", []change{{"/plan/ceiling_change", "-450"}}, "plan.ceiling_change.swallows_overhead /plan/ceiling_change",
		[]string{longWall + "/floor", longWall + "/ceiling", longWall + "/overheads", longWall + "/length", longWall + "/laser", "/units", "/survey/laser_height", "/survey/lasers"}},
	{"a floor up to the box", []change{{"/plan/floor_change", "1900"}}, "plan.floor_change.meets_overhead /plan/floor_change",
		[]string{longWall + "/floor", longWall + "/ceiling", longWall + "/overheads", longWall + "/length", longWall + "/laser", "/units", "/survey/lasers"}},
	{"a datum off the wall", []change{{"/plan/datums/0/at", "9999"}}, "plan.datum.off_wall /plan/datums/0/at", []string{"/plan/datums/0/wall", longWall + "/id", longWall + "/length"}},
	{"a datum on no wall", []change{{"/plan/datums/0/wall", `"nowhere"`}}, "ref.unknown /plan/datums/0/wall", nil},
	{"a datum read twice", []change{{"/plan/datums/0/level/up", "1"}}, "survey.reading.not_one /plan/datums/0/level", nil},
	{"two datums", []change{{"/plan/datums/-", `{"wall": "short", "at": 0, "level": {"down": 1203}}`}}, "plan.datum.twice /plan/datums/1/wall",
		[]string{"/plan/datums/0", shortWall + "/id", longWall + "/id", longWall + "/joins_next", shortWall + "/level_with"}},
	{"a hob that ends before it starts", []change{{"/plan/cooking/to", "2000"}}, "plan.span.empty /plan/cooking/to", []string{"/plan/cooking/from"}},
	{"a hob past the wall", []change{{"/plan/cooking/to", "4000"}}, "plan.cooking.off_wall /plan/cooking/to", []string{"/plan/cooking/from", "/plan/cooking/wall", longWall + "/id", longWall + "/length"}},
	{"a hob on the floor", []change{{"/plan/cooking/surface", "0"}}, "plan.length.not_positive /plan/cooking/surface", nil},
	{"a hood in the soffit", []change{{"/plan/cooking/hood/duct_box", `"s1"`}}, "plan.hood.not_a_duct_box /plan/cooking/hood/duct_box", []string{soffitA + "/kind", soffitA + "/id"}},
	{"a hood in a box that is not there", []change{{"/plan/cooking/hood/duct_box", `"d9"`}}, "ref.unknown /plan/cooking/hood/duct_box", nil},
	{"an airflow of no unit", []change{{"/plan/cooking/hood/airflow_unit", ""}}, "body.member.missing /plan/cooking/hood/airflow_unit", []string{"/plan/cooking/hood/airflow"}},
	{"a unit of no airflow", []change{{"/plan/cooking/hood/airflow", ""}}, "body.member.missing /plan/cooking/hood/airflow", []string{"/plan/cooking/hood/airflow_unit"}},
	{"a hood on the floor", []change{{"/plan/cooking/hood/underside", "0"}}, "plan.length.not_positive /plan/cooking/hood/underside", nil},
	{"a cabinet of no width", []change{{"/plan/cabinets/0/width", "-1"}}, "plan.length.not_positive /plan/cabinets/0/width", nil},
	{"a cabinet of no height", []change{{"/plan/cabinets/0/height", "0"}}, "plan.length.not_positive /plan/cabinets/0/height", nil},
	{"a cabinet on no wall", []change{{"/plan/cabinets/0/wall", `"nowhere"`}}, "ref.unknown /plan/cabinets/0/wall", nil},
	{"a cabinet placed twice", []change{{"/plan/cabinets/0/top", "2120"}}, "plan.cabinet.top_and_underside /plan/cabinets/0/top", []string{"/plan/cabinets/0/underside"}},
	{"two cabinets of one name", []change{{"/plan/cabinets/1/id", `"a"`}}, "id.duplicate /plan/cabinets/1/id", []string{"/plan/cabinets/0/id"}},
	{"a tall cabinet that hangs", []change{{"/plan/cabinets/2/top", ""}, {"/plan/cabinets/2/underside", "100"}}, "plan.cabinet.underside_of_standing /plan/cabinets/2/underside", []string{"/plan/cabinets/2/kind"}},
	{"a tall cabinet in the floor", []change{{"/plan/cabinets/2/top", "500"}}, "plan.cabinet.under_datum /plan/cabinets/2/top", []string{"/plan/cabinets/2/height"}},
	{"a row that nobody makes", []change{{"/system/tall", ""}}, "plan.cabinet.no_depth /plan/cabinets/2/depth", []string{"/plan/cabinets/2/kind"}},
	{"a front of no thickness", []change{{"/plan/cabinets/0/door/thickness", "0"}}, "plan.length.not_positive /plan/cabinets/0/door/thickness", nil},
	{"a corner that is none", []change{{"/plan/cabinets/1/corner/other_wall", `"long"`}}, "plan.corner.not_joined /plan/cabinets/1/corner/other_wall", []string{"/plan/cabinets/1/wall", longWall + "/id", longWall + "/joins_next"}},
	{"a corner cabinet off its corner", []change{{"/plan/cabinets/1/from", "2000"}}, "plan.corner.not_in_corner /plan/cabinets/1/from",
		[]string{"/plan/cabinets/1/width", "/plan/cabinets/1/wall", "/plan/cabinets/1/corner", longWall + "/id", longWall + "/length", longWall + "/joins_next", shortWall + "/id", "/system/side_clearance", "/system/units"}},
	{"a corner cabinet of one side", []change{{"/plan/cabinets/1/corner/other_width", "0"}}, "plan.length.not_positive /plan/cabinets/1/corner/other_width", nil},
	{"a filler of no width", []change{{"/plan/fillers/0/width", "0"}}, "plan.length.not_positive /plan/fillers/0/width", nil},
	{"a filler on no wall", []change{{"/plan/fillers/0/wall", `"nowhere"`}}, "ref.unknown /plan/fillers/0/wall", nil},
	{"an old cabinet of no depth", []change{{"/plan/old_cabinets/0/depth", "0"}}, "plan.length.not_positive /plan/old_cabinets/0/depth", nil},
	{"an old cabinet on no wall", []change{{"/plan/old_cabinets/0/wall", `"nowhere"`}}, "ref.unknown /plan/old_cabinets/0/wall", nil},
	{"an old cabinet read in two ways", []change{{"/plan/old_cabinets/0/top", `{"up": 1, "height": 1}`}}, "survey.reading.not_one /plan/old_cabinets/0/top", nil},

	{"a choice about nothing", []change{{"/choices/zz", `"keep"`}}, "ref.unknown /choices/zz", nil},
	{"a choice about a part", []change{{"/choices/s1", `"keep"`}}, "choice.overhead.is_part /choices/s1", []string{soffitA + "/id", soffitA + "/part_of"}},
	{"a soffit that walks", []change{{"/choices/s", `"move"`}}, "choice.move.not_a_duct_box /choices/s", []string{soffitA + "/kind", soffitA + "/part_of", gapA, boxA}},
	{"stretches of a trim", []change{{"/choices/d1/option", `"trim"`}}, "choice.spans.not_open_part /choices/d1/spans", []string{"/choices/d1/spans"}},
	{"an opening beyond the box", []change{{"/choices/d1/spans/0/to", "2790"}}, "choice.span.off_overhead /choices/d1/spans/0",
		[]string{"/choices/d1/spans/0/from", "/choices/d1/spans/0/wall", boxA + "/from", boxA + "/to", boxA + "/id", longWall + "/id"}},
	{"an opening on another wall", []change{{"/choices/d1/spans/0/wall", `"short"`}}, "choice.span.wrong_wall /choices/d1/spans/0/wall", []string{boxA + "/id", longWall + "/id", shortWall + "/id"}},
	{"an opening of nothing", []change{{"/choices/d1/spans/0/to", "2620"}}, "choices.span.empty /choices/d1/spans/0/to", []string{"/choices/d1/spans/0/from"}},

	{"money of another world", []change{{"/money/currency", `"XQZ"`}}, "money.currency.unknown /money/currency", nil},
	{"two euros for a euro", []change{{"/money/per_euro", "2"}}, "money.per_euro.of_euro /money/per_euro", []string{"/money/currency"}},
	{"a litre that costs", []change{{"/money/storage_per_litre", "-1"}}, "money.amount.negative /money/storage_per_litre", nil},
	{"a worth beyond all money", []change{{"/money/to_ceiling_worth", "1e12"}}, "money.amount.too_large /money/to_ceiling_worth", nil},
	{"a hole priced twice", []change{{"/money/rates/material.probe", "60"}}, "money.rate.twice /money/probe", nil},
	{"a rate of nothing", []change{{"/money/rates/wage.nobody", "60"}}, "money.rate.unknown /money/rates/wage.nobody", nil},
	{"a least above the most likely", []change{{"/money/rates/wage.carpenter/low", "50"}}, "money.rate.out_of_order /money/rates/wage.carpenter/low", []string{"/money/rates/wage.carpenter/likely"}},
	{"a tax that is paid out", []change{{"/money/rates/wage.carpenter/tax_percent", "-1"}}, "money.amount.negative /money/rates/wage.carpenter/tax_percent", nil},
}

// touches reports whether a slip rests on a member, on what holds it, or on what is in it.
func (s *slip) touches(pointer string) bool {
	_, at, _ := strings.Cut(s.want, " ")
	near := func(other string) bool { return inside(pointer, other) || inside(other, pointer) }
	return s.misses(pointer) || near(at) || slices.ContainsFunc(s.rests, near) ||
		slices.ContainsFunc(s.changes, func(c change) bool { return near(strings.TrimSuffix(c.pointer, "/-")) })
}

func inside(pointer, other string) bool {
	return pointer == other || strings.HasPrefix(pointer, other+"/")
}

// misses reports whether a slip is to refer to nothing, and what it refers to may be what is not usable at a pointer.
func (s *slip) misses(pointer string) bool {
	_, at, reference := strings.Cut(s.want, "ref.unknown ")
	switch {
	case !reference:
		return false
	case strings.HasSuffix(at, "/laser"):
		return inside("/survey/lasers/0", pointer)
	case strings.HasSuffix(at, "/wall") || strings.HasSuffix(at, "/level_with"):
		return inside(longWall, pointer) && pointer != longWall
	}
	return inside(soffitA, pointer) || pointer == shortWall || strings.HasPrefix(pointer, longWall+"/overheads/") &&
		(strings.Count(pointer, "/") == strings.Count(soffitA, "/") || strings.HasSuffix(pointer, "/id") || strings.HasSuffix(pointer, "/part_of"))
}

// holder is the object that a slip is in.
func (s *slip) holder() string {
	_, at, _ := strings.Cut(s.want, " ")
	at, last, _ := cutLast(at)
	if strings.Trim(last, "0123456789") == "" {
		at, _, _ = cutLast(at)
	}
	return at
}

func cutLast(pointer string) (before, last string, found bool) {
	i := strings.LastIndexByte(pointer, '/')
	return pointer[:max(i, 0)], pointer[i+1:], i >= 0
}

// wholeBody is a good body with every object and every member that a request may have.
func wholeBody(t failing) string {
	t.Helper()
	data, err := os.ReadFile("../decode/testdata/full.json")
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func reader(t failing) *wire.Decoder {
	t.Helper()
	d, err := wire.New(openapi.JSON)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// said is what is wrong with a body as a caller is told: by its shape, and by what it means.
func said(d *wire.Decoder, text string) (out []string) {
	req, refusal := d.Decode([]byte(text))
	if refusal == nil {
		refusal = &wire.Refusal{Rest: req}
	}
	_, faults := Request(refusal.Rest)
	var more []api.Fault
	for _, f := range faults {
		params := map[string]string{}
		for _, p := range f.Params {
			params[p.Name] = p.Text
		}
		more = append(more, api.Fault{Code: f.Code, Pointer: f.Pointer, Params: params})
	}
	refusal.Add(more)
	for _, f := range refusal.Faults {
		out = append(out, f.Code+" "+f.Pointer)
	}
	return out
}

// blots are slips in the form of single members: a null, or a value of another type, wherever there is a member.
func blots(t failing, text string) (out []change) {
	t.Helper()
	var doc any
	if err := json.Unmarshal([]byte(text), &doc); err != nil {
		t.Fatal(err)
	}
	for _, pointer := range pointers(doc, "") {
		out = append(out, change{pointer, "null"}, change{pointer, otherType(doc, pointer)})
	}
	return out
}

// otherType is a value of no type that a member could have.
func otherType(doc any, pointer string) string {
	for _, part := range strings.Split(pointer, "/")[1:] {
		switch n := doc.(type) {
		case map[string]any:
			doc = n[part]
		case []any:
			i, _ := strconv.Atoi(part)
			doc = n[i]
		}
	}
	if _, list := doc.([]any); list {
		return "{}"
	}
	return "[[]]"
}

func TestEverySlipIsToldAlone(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	sameLines(t, "the good body", said(d, good), nil)
	for _, s := range slips {
		sameLines(t, s.name, said(d, changed(t, good, s.changes...)), []string{s.want})
	}
}

// One thing wrong is told once: nothing that only follows from it is told beside it.
func TestEveryBlotIsToldAlone(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	for _, blot := range blots(t, good) {
		told := said(d, changed(t, good, blot))
		if len(told) != 1 || !strings.Contains(told[0]+"/", " "+blot.pointer+"/") {
			t.Errorf("%s for %s: told %q", blot.value, blot.pointer, told)
		}
	}
}

// Nor does anything follow from several together.
func TestBlotsAreToldAlone(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	all := blots(t, good)
	rapid.Check(t, func(t *rapid.T) {
		var changes []change
		for range rapid.IntRange(2, 4).Draw(t, "blots") {
			blot := rapid.SampledFrom(all).Draw(t, "blot")
			if !slices.ContainsFunc(changes, func(c change) bool { return inside(c.pointer, blot.pointer) || inside(blot.pointer, c.pointer) }) {
				changes = append(changes, blot)
			}
		}
		told := said(d, changed(t, good, changes...))
		for _, fault := range told {
			_, at, _ := strings.Cut(fault, " ")
			if !slices.ContainsFunc(changes, func(c change) bool { return inside(at, c.pointer) }) {
				t.Fatalf("%v: told %q", changes, told)
			}
		}
	})
}

// Whatever else is wrong in an object, a slip in it is told.
func TestSlipsAreToldTogether(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	all := blots(t, good)
	for i, s := range slips {
		for _, blot := range all {
			if parent, _, _ := cutLast(blot.pointer); blot.value != "null" || parent != s.holder() || s.touches(blot.pointer) {
				continue
			}
			told := said(d, changed(t, good, append([]change{blot}, s.changes...)...))
			if !slices.Contains(told, s.want) || !slices.Contains(told, "body.value.null "+blot.pointer) {
				t.Errorf("%s, and a null at %s: told %q", s.name, blot.pointer, told)
			}
		}
		for _, other := range slips[i+1:] {
			if s.holder() != other.holder() || slices.ContainsFunc(other.changes, func(c change) bool { return s.touches(c.pointer) }) ||
				slices.ContainsFunc(s.changes, func(c change) bool { return other.touches(c.pointer) }) {
				continue
			}
			told := said(d, changed(t, good, slices.Concat(s.changes, other.changes)...))
			if !slices.Contains(told, s.want) || !slices.Contains(told, other.want) {
				t.Errorf("%s, and %s: told %q", s.name, other.name, told)
			}
		}
	}
}

// Wherever in the body something else is wrong, a slip is told.
func TestSlipsAreToldWithWhateverElseIsWrong(t *testing.T) {
	d, good := reader(t), wholeBody(t)
	all := blots(t, good)
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.SampledFrom(slips).Draw(t, "slip")
		changes := slices.Clone(s.changes)
		for range rapid.IntRange(1, 3).Draw(t, "others") {
			blot := rapid.SampledFrom(all).Draw(t, "blot")
			if free := !s.touches(blot.pointer) && !slices.ContainsFunc(changes, func(c change) bool { return inside(c.pointer, blot.pointer) || inside(blot.pointer, c.pointer) }); free {
				changes = append(changes, blot)
			}
		}
		if told := said(d, changed(t, good, changes...)); !slices.Contains(told, s.want) {
			t.Fatalf("%s, with %v: told %q", s.name, changes[len(s.changes):], told)
		}
	})
}

// A body with more wrong in it than anybody reads is refused with as much as somebody might.
func TestNobodyIsToldMoreThanIsRead(t *testing.T) {
	points := "[" + strings.Repeat(`{"at":1},`, 999) + `{"at":1}]`
	wall := `{"id":"w","length":1,"floor":` + points + `,"ceiling":` + points + `}`
	body := `{"units":"ft","system":"s","survey":{"walls":[` + strings.Repeat(wall+",", 49) + wall + `]}}`
	if told := said(reader(t), body); len(told) < 1000 || len(told) > 1002 {
		t.Errorf("%d errors", len(told))
	}
}

// Every object that a request is made of has a slip of its own.
func TestSlipsForEveryKindOfObject(t *testing.T) {
	var doc any
	if err := json.Unmarshal([]byte(wholeBody(t)), &doc); err != nil {
		t.Fatal(err)
	}
	none := map[string]bool{"": true, "/survey/cleared": true, longWall + "/overheads/0/ends": true} // only words and truths, which the decoder knows
	held := map[string]bool{}
	for _, s := range slips {
		_, at, _ := strings.Cut(s.want, " ")
		held[shapeOf(s.holder())], held[shapeOf(at)] = true, true
	}
	for _, pointer := range objects(doc, "") {
		if !held[shapeOf(pointer)] && !none[pointer] {
			t.Errorf("no slip in %s", pointer)
		}
	}
}

// shapeOf is a pointer without the positions in lists.
func shapeOf(pointer string) string {
	parts := strings.Split(pointer, "/")
	for i, part := range parts {
		if strings.Trim(part, "0123456789") == "" {
			parts[i] = ""
		}
	}
	return strings.Join(parts, "/")
}

func objects(node any, base string) (out []string) {
	switch n := node.(type) {
	case map[string]any:
		out = append(out, base)
		for _, name := range slices.Sorted(maps.Keys(n)) {
			out = append(out, objects(n[name], member(base, name))...)
		}
	case []any:
		for i := range n {
			out = append(out, objects(n[i], element(base, i))...)
		}
	}
	return out
}
