package decode

import (
	"encoding/json"
	"reflect"
	"slices"
	"strings"
	"testing"

	"railhead/api"
	"railhead/openapi"
)

func codes(faults []api.Fault) (all []string) {
	for _, f := range faults {
		all = append(all, f.Code+" "+f.Pointer)
	}
	return all
}

func TestAllErrorsComeAtOnceAndInOrder(t *testing.T) {
	bad := `{"survey": {"built": 12, "walls": [
		{"id": "a b", "length": "3 yards", "floor": [{"at": 0, "down": 1, "up": 2}], "ceiling": [], "studs": {"spacing": 400}},
		{"id": "w", "length": 1, "floor": [{"at": 0, "above_floor": 1}], "ceiling": [{"at": 0, "up": null}, {"at": 1, "up": 2, "up": 3}]}]},
		"system": {"legs": 1, "Fit_Gap": 2}, "choices": {"s": {"option": "trim", "spans": []}}, "units": "furlong"}`
	want := []string{
		"body.value.too_small /survey/built",
		"body.list.too_short /survey/walls/0/ceiling",
		"body.value.pattern /survey/walls/0/id",
		"body.value.pattern /survey/walls/0/length",
		"body.value.null /survey/walls/1/ceiling/0/up",
		"body.member.duplicate /survey/walls/1/ceiling/1/up",
		"body.member.unknown /system/Fit_Gap",
		"body.member.missing /system/fit_gap",
		"body.value.not_allowed /units",
	}
	_, refusal := decoder(t).Decode([]byte(bad))
	got := codes(refusal.Faults)
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
	_, again := decoder(t).Decode([]byte(bad))
	if !reflect.DeepEqual(again.Faults, refusal.Faults) {
		t.Error("the same body is refused in another way the second time")
	}
}

func TestWhatFollowsFromAnErrorIsNotListed(t *testing.T) {
	r := &Refusal[api.Request]{
		Faults: []api.Fault{{Code: "a", Pointer: "/x/1"}, {Code: "b", Pointer: "/y/0/floor"}},
		holes:  []hole{{"/x/1", false}, {"/y/0/length", false}, {"/y/0/floor", true}, {"/survey/lasers", true}, {"/survey/walls/1", false}, {"/survey/walls/0/joins_next", false}},
	}
	unknown := func(kind, pointer string) api.Fault {
		return api.Fault{Code: "ref.unknown", Pointer: pointer, Params: map[string]string{"kind": kind}}
	}
	r.Add([]api.Fault{
		{Code: "c", Pointer: "/x/1/at"},                      // of what could not be used
		{Code: "d", Pointer: "/y/0/length"},                  // of what is missing
		{Code: "e", Pointer: "/y/0/floor"},                   // beside it
		{Code: "f", Pointer: "/y/0/floor/3"},                 // within a list that is too long, say
		{Code: "g", Pointer: "/y"},                           // of what holds it
		{Code: "h", Pointer: "/x/10"},                        // of its own
		unknown("laser", "/l/0"),                             // some lasers are gone
		unknown("overhead", "/l/1"),                          // some overheads are gone
		unknown("wall", "/l/2"),                              // whoever follows references tells whether one wall explains it
		{Code: "plan.corner.not_joined", Pointer: "/l/3"},    // who knows which walls join
		{Code: "plan.corner.not_in_corner", Pointer: "/l/4"}, // it does not matter which
		{Code: "e", Pointer: "/y/0/floor"},                   // said twice
	})
	want := []string{"ref.unknown /l/2", "plan.corner.not_in_corner /l/4", "a /x/1", "h /x/10", "g /y", "b /y/0/floor", "e /y/0/floor", "f /y/0/floor/3"}
	if got := codes(r.Faults); !slices.Equal(got, want) {
		t.Errorf("got %v, want %v", got, want)
	}
}

// Further checks see all that is good of a refused body, and that something stood where it is not.
func TestTheRestOfABodyStandsIn(t *testing.T) {
	good := string(body(t, "full.json"))
	for _, c := range []struct{ name, old, new, rest string }{
		{"a length of another type", `"length": 3600`, `"length": [1]`, `"length":"?"`},
		{"a level of another type", `"sill": 1050`, `"sill": null`, `"sill":"?"`},
		{"a level with nothing known in it", `"sill": 1050`, `"sill": {"by": 1}`, `"sill":"?"`},
		{"a reading of another type", `{"up": 850}`, `{"up": true}`, `{"up":"?"}`},
		{"an id that is none", `"id": "w1"`, `"id": "w 1"`, `"id":"?"`},
		{"a word that is not listed", `"kind": "window"`, `"kind": "windows"`, `"kind":"?"`},
		{"an object of another type", `{"left": "wall", "right": "corner"}`, `"wall"`, `"ends":{}`},
		{"a list of objects of another type", `"seen": [{"from": 100, "to": 200}]`, `"seen": 100`, `"seen":[{}]`},
		{"a list of texts of another type", `["bath_above", "sounds_hollow"]`, `"bath_above"`, `"hints":["?"]`},
		{"one of a list of lengths", `[300, 400, 600, 800], "depths": [360]`, `[300, true, 600, "800"], "depths": [360]`, `"widths":[300,"?",600,"?"]`},
		{"one of a list of objects", `{"at": 0, "up": 897}, `, `897, `, `"underside":[{},{"at":3600,`},
		{"a choice of another type", `"s": "trim"`, `"s": []`, `"s":"?"`},
		{"a rate of another type", `"material.patch": 4`, `"material.patch": []`, `"material.patch":"?"`},
		{"more of a list than is allowed", `"stock": [2400]`, `"stock": [1,2,3,4,5,6,7,8,9,10,11,true,13]`, `"stock":[1,2,3,4,5,6,7,8,9,10],`},
		{"a number out of range", `"built": 1968, "code_set"`, `"built": 3000, "code_set"`, `"tolerance":1.5,"code_set"`},
		{"a truth of another type", `"joins_next": true, `, `"joins_next": 1, `, `"length":3600,"laser"`},
		{"an unknown member", `"length": 3600`, `"colour": 1, "length": 3600`, `"id":"long","length":3600`},
		{"the second of two", `"length": 3600`, `"length": 3600, "length": null`, `"length":3600,"joins_next"`},
	} {
		bad := strings.Replace(good, c.old, c.new, 1)
		if bad == good {
			t.Fatalf("%s: the good body has no %s", c.name, c.old)
		}
		if rest := string(decoder(t).schema.walk([]byte(bad)).rest); !strings.Contains(rest, c.rest) {
			t.Errorf("%s: no %s in\n%s", c.name, c.rest, rest)
		}
	}
}

// Errors repeat nothing of the body but the names in pointers, and no Go names.
func TestErrorsDoNotEchoTheBody(t *testing.T) {
	const secret = "Zq7secret"
	d := decoder(t)
	for _, c := range changes {
		data := strings.ReplaceAll(string(c.apply(t, full(t))), "ghost", secret)
		data = strings.Replace(data, `"fit_gap": 2`, `"fit_gap": "`+secret+`"`, 1)
		_, refusal := d.Decode([]byte(data))
		for _, f := range refusal.Faults {
			text, err := json.Marshal(f)
			if err != nil {
				t.Fatal(err)
			}
			for _, word := range []string{secret, "api.", "Request", "Go ", "json:", "struct", "unmarshal", "InlineSystem", "AirflowUnit"} {
				if strings.Contains(string(text), word) {
					t.Errorf("%s: %s holds %q", c.name, text, word)
				}
			}
		}
	}
}

func TestLikelyNamesAreSuggested(t *testing.T) {
	_, refusal := decoder(t).Decode([]byte(strings.Replace(string(body(t, "full.json")), `"joins_next"`, `"joinsNext"`, 1)))
	if got := refusal.Faults[0].Params["did_you_mean"]; got != "joins_next" {
		t.Errorf("suggested %q", got)
	}
}

// Every pattern of a request has words of its own, so that nobody is shown a regular expression.
func TestEveryPatternHasWords(t *testing.T) {
	var contract any
	if err := json.Unmarshal(openapi.JSON, &contract); err != nil {
		t.Fatal(err)
	}
	eachMember(contract, "pattern", func(value any) {
		pattern, ok := value.(string)
		if _, known := patternForms[pattern]; ok && !known {
			t.Errorf("no words for %s", pattern)
		}
	})
}

func eachMember(tree any, name string, visit func(any)) {
	switch at := tree.(type) {
	case map[string]any:
		for key, value := range at {
			if key == name {
				visit(value)
			}
			eachMember(value, name, visit)
		}
	case []any:
		for _, value := range at {
			eachMember(value, name, visit)
		}
	}
}

func TestHostileBodiesAreRefusedWithFewErrors(t *testing.T) {
	d := decoder(t)
	const size = 1 << 20
	for name, text := range map[string]string{
		"a list of numbers":    `{"survey":{"walls":[` + strings.Repeat("1,", size/2) + `1]}}`,
		"a list of objects":    `{"survey":{"walls":[` + strings.Repeat("{},", size/3) + `{}]}}`,
		"one unknown name":     `{` + strings.Repeat(`"x":1,`, size/6) + `"y":1}`,
		"long names":           `{"` + strings.Repeat("x", size/2) + `":1}`,
		"many exponents":       `{"survey":{"built":1e999999,"lasers":[` + strings.Repeat("1e999999,", size/9) + `1]}}`,
		"many choices":         `{"choices":{` + strings.Repeat(`"a b":1,`, size/8) + `"c":1}}`,
		"a long text":          `{"units":"` + strings.Repeat("m", size) + `"}`,
		"a long number":        `{"survey":{"built":` + strings.Repeat("1", size) + `}}`,
		"a long length":        `{"tape":"` + strings.Repeat("1", size) + ` mm"}`,
		"escapes in a pointer": `{"choices":{"` + strings.Repeat("~/", 90) + `":1}}`,
	} {
		_, refusal := d.Decode([]byte(text))
		if refusal == nil {
			t.Errorf("%s: accepted", name)
			continue
		}
		answer, err := json.Marshal(refusal.Faults)
		if err != nil || len(refusal.Faults) > 2*enoughFaults || len(answer) > size {
			t.Errorf("%s: %d errors in %d bytes, %v", name, len(refusal.Faults), len(answer), err)
		}
	}
}

func TestWhatOnlyTheContractTakesIsRefusedAllTheSame(t *testing.T) {
	contract, err := Read([]byte(`{"components": {"schemas": {"Request": {"type": "object", "properties": {"later": {"type": "number"}}}}}}`))
	if err != nil {
		t.Fatal(err)
	}
	d, err := New[api.Request](contract)
	if err != nil {
		t.Fatal(err)
	}
	if _, refusal := d.Decode([]byte(`{"later": 1}`)); refusal == nil || codes(refusal.Faults)[0] != CodeUnreadable+" " {
		t.Errorf("%v", refusal)
	}
	if _, err := Read([]byte(`{`)); err == nil {
		t.Error("a contract that is no JSON was taken")
	}
}
