package decode

import (
	"os"
	"strings"
	"testing"

	"railhead/api"
	"railhead/openapi"
)

func decoder(t testing.TB) *Decoder[api.Request] { return decoderOf[api.Request](t) }

func decoderOf[T any](t testing.TB) *Decoder[T] {
	t.Helper()
	contract, err := Read(openapi.JSON)
	if err != nil {
		t.Fatal(err)
	}
	d, err := New[T](contract)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

func body(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// full is a good request with every member that there is.
func full(t testing.TB) []byte { return body(t, "full.json") }

// fullLayout is a good request for layouts with every member that there is.
func fullLayout(t testing.TB) []byte {
	return []byte(strings.Replace(string(full(t)), "{", `{"fill": `+string(body(t, "fill.json"))+",", 1))
}

func TestGoodBodiesAreReadAtOnce(t *testing.T) {
	requests, layouts := decoder(t), decoderOf[api.LayoutRequest](t)
	readAtOnce(t, requests, "full", full(t))
	readAtOnce(t, requests, "small", body(t, "small.json"))
	readAtOnce(t, layouts, "full, of layouts", fullLayout(t))
	readAtOnce(t, layouts, "full, with nothing said of layouts", full(t))
	readAtOnce(t, layouts, "small, of layouts", body(t, "small.json"))
}

func readAtOnce[T any](t *testing.T, d *Decoder[T], name string, body []byte) {
	t.Helper()
	if d.typed(body) == nil {
		t.Errorf("%s: not read by the typed decode alone", name)
	}
	if _, refusal := d.Decode(body); refusal != nil {
		t.Errorf("%s: %v", name, refusal.Faults)
	}
}

// change is one edit of a good body that makes it a bad one.
type change struct {
	name, old, new string
	code, pointer  string
}

var changes = []change{
	{"a null for a member", `"tape": 1`, `"tape": null`, CodeNull, "/tape"},
	{"a null in a list", `"hints": ["bath_above", `, `"hints": [null, `, CodeNull, "/survey/walls/0/overheads/0/inside/hints/0"},
	{"a null for an object", `"cleared": {"asbestos": true, "lead": false}`, `"cleared": null`, CodeNull, "/survey/cleared"},
	{"a null within a reading", `{"down": 203}`, `{"down": null}`, CodeNull, "/survey/bench/level/down"},
	{"an unknown member", `"tape": 1`, `"tape": 1, "colour": "red"`, CodeUnknown, "/colour"},
	{"an unknown member of a level", `{"down": 203}`, `{"down": 203, "by": 1}`, CodeUnknown, "/survey/bench/level/by"},
	{"an unknown member of a system", `"fit_gap": 2`, `"fit_gap": 2, "brand": "x"`, CodeUnknown, "/system/brand"},
	{"an unknown member of a choice", `{"option": "open_part"`, `{"why": 1, "option": "open_part"`, CodeUnknown, "/choices/d1/why"},
	{"an unknown member of a rate", `{"low": 30`, `{"lowest": 9, "low": 30`, CodeUnknown, "/money/rates/wage.carpenter/lowest"},
	{"another case", `"tape": 1`, `"Tape": 1`, CodeUnknown, "/Tape"},
	{"another case in a system", `"fit_gap": 2`, `"fit_gap": 2, "Kerf": 1`, CodeUnknown, "/system/Kerf"},
	{"a member twice", `"tape": 1`, `"tape": 1, "tape": 2`, CodeDuplicate, "/tape"},
	{"a member twice in a reading", `{"down": 203}`, `{"down": 203, "down": 203}`, CodeDuplicate, "/survey/bench/level/down"},
	{"a name twice by escapes", `"tape": 1`, `"tape": 1, "\u0074ape": 2`, CodeDuplicate, "/tape"},
	{"a choice twice", `"choices": {"s": "trim"`, `"choices": {"s": "keep", "s": "trim"`, CodeDuplicate, "/choices/s"},
	{"a missing member", `"id": "w1", "kind"`, `"kind"`, CodeMissing, "/survey/walls/0/openings/0/id"},
	{"a missing object", `"head": {"up": 850}, `, ``, CodeMissing, "/survey/walls/0/openings/0/head"},
	{"a text for a list", `"stock": [2400]`, `"stock": "2400 mm"`, CodeType, "/system/rail/stock"},
	{"a list for a length", `"tape": 1`, `"tape": [1]`, CodeType, "/tape"},
	{"a truth for a level", `"sill": 1050`, `"sill": true`, CodeType, "/survey/walls/0/openings/0/sill"},
	{"a number for a truth", `"joins_next": true`, `"joins_next": 1`, CodeType, "/survey/walls/0/joins_next"},
	{"a number for a choice", `"s": "trim"`, `"s": 1`, CodeType, "/choices/s"},
	{"a fraction of a year", `1968`, `1968.5`, CodeType, "/survey/built"},
	{"a year as a text", `1968`, `"1968"`, CodeType, "/survey/built"},
	{"the year zero", `1968`, `0`, CodeTooSmall, "/survey/built"},
	{"a year too early", `1968`, `999`, CodeTooSmall, "/survey/built"},
	{"a year too late", `1968`, `2201`, CodeTooLarge, "/survey/built"},
	{"a year beyond any", `1968`, `1e999`, CodeTooLarge, "/survey/built"},
	{"a word that is not listed", `"units": "mm",` + "\n", `"units": "ft",` + "\n", CodeNotAllowed, "/units"},
	{"an empty word", `"painted": "yes"`, `"painted": ""`, CodeNotAllowed, "/survey/walls/0/overheads/0/painted"},
	{"an option that is not listed", `"s": "trim"`, `"s": "paint"`, CodeNotAllowed, "/choices/s"},
	{"a hint that is not listed", `"bath_above"`, `"ghost"`, CodeNotAllowed, "/survey/walls/0/overheads/0/inside/hints/0"},
	{"an id with a space", `"id": "A"`, `"id": "A 1"`, CodePattern, "/survey/lasers/0/id"},
	{"an id that is too long", `"id": "A"`, `"id": "` + strings.Repeat("a", 41) + `"`, CodePattern, "/survey/lasers/0/id"},
	{"a length without a unit", `"12.5 mm"`, `"12.5"`, CodePattern, "/survey/lasers/1/above"},
	{"an empty length", `"12.5 mm"`, `""`, CodePattern, "/survey/lasers/1/above"},
	{"a level that is no length", `"above_floor": "2.5 m"`, `"above_floor": "high"`, CodePattern, "/survey/walls/0/ceiling/1/above_floor"},
	{"an amount in no decimals", `"0.40"`, `"1/3"`, CodePattern, "/money/storage_per_litre"},
	{"an amount with a comma", `"0.40"`, `"0,40"`, CodePattern, "/money/storage_per_litre"},
	{"an amount with an exponent", `"0.40"`, `"4e-1"`, CodePattern, "/money/storage_per_litre"},
	{"a currency in small letters", `"EUR"`, `"eur"`, CodePattern, "/money/currency"},
	{"a choice for no id", `"choices": {"s"`, `"choices": {"s/t"`, CodeName, "/choices/s~1t"},
	{"a prior of no kind", `"few_wires"`, `"some_wires"`, CodeName, "/survey/walls/0/overheads/0/inside/priors/some_wires"},
	{"a corner of no shape", `"shape": "blind", "width"`, `"shape": "u", "width"`, CodeNotAllowed, "/system/base/corners/1/shape"},
	{"a corner of no width", `{"shape": "blind", "width": 1000}`, `{"shape": "blind"}`, CodeMissing, "/system/base/corners/1/width"},
	{"an empty list", `"heights": [740]`, `"heights": []`, CodeListShort, "/system/base/heights"},
	{"too long a list", `"stock": [2400]`, `"stock": [1,2,3,4,5,6,7,8,9,10,11]`, CodeListLong, "/system/rail/stock"},
	{"an empty text", `"pencil line by the door"`, `""`, CodeTextShort, "/survey/bench/says"},
	{"too long a text", `"pencil line by the door"`, `"` + strings.Repeat("ä", 201) + `"`, CodeTextLong, "/survey/bench/says"},
	{"an empty level", `{"down": 203}`, `{}`, CodeNoReading, "/survey/bench/level"},
	{"bytes that are no UTF-8", `pencil line`, "pencil\xff line", CodeEncoding, "/survey/bench/says"},
	{"half a surrogate pair", `pencil line`, `pencil \ud800 line`, CodeEncoding, "/survey/bench/says"},
	{"a name that is no UTF-8", `"tape": 1`, "\"ta\xffpe\": 1", CodeEncoding, ""},
}

// layoutChanges are edits of a good request for layouts.
var layoutChanges = []change{
	{"a null for what is to be filled", `"walls": ["long", "short"]`, `"walls": null`, CodeNull, "/fill/walls"},
	{"an unknown wish", `"best": 5`, `"best": 5, "nicest": 1`, CodeUnknown, "/fill/nicest"},
	{"an unknown weight", `"symmetry": 20`, `"symmetry": 20, "beauty": 1`, CodeUnknown, "/fill/weights/beauty"},
	{"a weight twice", `"symmetry": 20`, `"symmetry": 20, "symmetry": 20`, CodeDuplicate, "/fill/weights/symmetry"},
	{"what is to be filled twice", `"units": "mm",` + "\n", `"units": "mm", "fill": {},` + "\n", CodeDuplicate, "/fill"},
	{"no walls", `"walls": ["long", "short"]`, `"walls": []`, CodeListShort, "/fill/walls"},
	{"a wall by no id", `"walls": ["long", "short"]`, `"walls": ["long wall"]`, CodePattern, "/fill/walls/0"},
	{"a kind by no word", `["wall", "tall", "base"]`, `["wall", "corner"]`, CodeNotAllowed, "/fill/kinds/1"},
	{"a kind too many", `["wall", "tall", "base"]`, `["wall", "tall", "base", "wall"]`, CodeListLong, "/fill/kinds"},
	{"a gap by no word", `"hood", "duct_box"]`, `"hood", "door"]`, CodeNotAllowed, "/fill/equal_beside/2"},
	{"more layouts than anybody reads", `"best": 5`, `"best": 21`, CodeTooLarge, "/fill/best"},
	{"no layouts at all", `"best": 5`, `"best": 0`, CodeTooSmall, "/fill/best"},
	{"a part of a tall cabinet", `"most_tall": 1`, `"most_tall": 1.5`, CodeType, "/fill/most_tall"},
	{"a price of no size", `"kind": "base", "width": "800 mm", `, `"kind": "base", `, CodeMissing, "/fill/prices/1/width"},
	{"a price with a comma", `"120.50"`, `"120,50"`, CodePattern, "/fill/prices/0/price"},
	{"a filler by no unit", `"25 mm"`, `"25"`, CodePattern, "/fill/wall_filler"},
	{"a member of the request that is missing", `"units": "mm",` + "\n", ``, CodeMissing, "/units"},
	{"a choice for no id", `"choices": {"s"`, `"choices": {"s/t"`, CodeName, "/choices/s~1t"},
}

func (c change) apply(t testing.TB, good []byte) []byte {
	if !strings.Contains(string(good), c.old) {
		t.Fatalf("%s: the good body has no %s", c.name, c.old)
	}
	return []byte(strings.Replace(string(good), c.old, c.new, 1))
}

func TestBadBodiesAreRefusedWhereTheyAreBad(t *testing.T) {
	requests, layouts := decoder(t), decoderOf[api.LayoutRequest](t)
	for _, c := range changes {
		t.Run(c.name, func(t *testing.T) {
			c.refused(t, requests.refusedFor(c.apply(t, full(t))))
			c.refused(t, layouts.refusedFor(c.apply(t, fullLayout(t))))
		})
	}
	for _, c := range layoutChanges {
		t.Run(c.name, func(t *testing.T) { c.refused(t, layouts.refusedFor(c.apply(t, fullLayout(t)))) })
	}
}

func (d *Decoder[T]) refusedFor(body []byte) []api.Fault {
	_, refusal := d.Decode(body)
	if refusal == nil {
		return nil
	}
	return refusal.Faults
}

func (c change) refused(t *testing.T, faults []api.Fault) {
	t.Helper()
	for _, f := range faults {
		if f.Code == c.code && f.Pointer == c.pointer {
			return
		}
	}
	t.Errorf("want %s at %s, have %v", c.code, c.pointer, faults)
}

// What one path reads is unknown to the others.
func TestOnlyLayoutsAreToldWhatToFill(t *testing.T) {
	got := codes(decoder(t).refusedFor(fullLayout(t)))
	if len(got) != 1 || got[0] != CodeUnknown+" /fill" {
		t.Errorf("%v", got)
	}
}

// An embedded struct that is left out altogether is missing, and not just empty.
func TestMembersOfARequestForLayoutsAreNeeded(t *testing.T) {
	for _, text := range []string{`{}`, `{"fill": {}}`} {
		got := codes(decoderOf[api.LayoutRequest](t).refusedFor([]byte(text)))
		if want := "body.member.missing /survey, body.member.missing /system, body.member.missing /units"; strings.Join(got, ", ") != want {
			t.Errorf("%s: %v", text, got)
		}
	}
}

// A number means the same however it is written (JSON Schema 2020-12 core, 4.2.3).
func TestWholeNumbersMayBeWrittenInAnyWay(t *testing.T) {
	d := decoder(t)
	for _, text := range []string{"1968", "1968.0", "1.968e3", "19680e-1", "1968.000E+00"} {
		c := change{name: text, old: "1968", new: text}
		req, refusal := d.Decode(c.apply(t, full(t)))
		if refusal != nil {
			t.Errorf("%s: %v", text, refusal.Faults)
		} else if req.Survey.Built != 1968 {
			t.Errorf("%s: read as %d", text, req.Survey.Built)
		}
	}
}

func TestNotJSONIsToldFromRefused(t *testing.T) {
	d := decoder(t)
	for name, text := range map[string]string{
		"nothing": "", "blank": " \n ", "cut short": `{"units": "mm"`, "two values": `{} {}`, "a trailing comma": `{"units": "mm",}`,
		"a comment": `{"units": "mm" /* here */}`, "a bare word": `units`, "a single quote": `{'units': 1}`, "a leading zero": `{"tape": 01}`,
		"not a number": `{"tape": NaN}`, "a raw tab in a text": "{\"units\": \"m\tm\"}", "a byte order mark": "\ufeff{}",
	} {
		_, refusal := d.Decode([]byte(text))
		if refusal == nil || !NotJSON(refusal.Faults) {
			t.Errorf("%s: %v", name, refusal)
		}
	}
	if _, refusal := d.Decode([]byte(`{"units": 3}`)); NotJSON(refusal.Faults) {
		t.Error("a body that is JSON was called none")
	}
}

func TestSyntaxIsLocated(t *testing.T) {
	_, refusal := decoder(t).Decode([]byte("{\n  \"units\": \"mm\",\n  \"ä\" 1\n}"))
	if got := refusal.Faults[0].Params; got["line"] != "3" || got["column"] != "7" {
		t.Errorf("located at %v", got)
	}
}

func TestNestingIsLimited(t *testing.T) {
	d := decoder(t)
	for name, text := range map[string]string{
		"a few too many":         `{"units": ` + strings.Repeat("[", 32) + strings.Repeat("]", 32) + `}`,
		"within an unknown name": `{"x": ` + strings.Repeat(`{"x":`, 40) + "1" + strings.Repeat("}", 40) + `}`,
		"beyond reading":         strings.Repeat("[", 20_000),
	} {
		_, refusal := d.Decode([]byte(text))
		if refusal == nil || !has(refusal.Faults, CodeDeep) {
			t.Errorf("%s: not refused for its nesting", name)
		}
	}
	_, refusal := d.Decode([]byte(`{"units": ` + strings.Repeat("[", 31) + strings.Repeat("]", 31) + `}`))
	if has(refusal.Faults, CodeDeep) {
		t.Error("32 deep is allowed")
	}
}

func has(faults []api.Fault, code string) bool {
	for _, f := range faults {
		if f.Code == code {
			return true
		}
	}
	return false
}
