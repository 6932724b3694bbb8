package api

import (
	stdjson "encoding/json"
	"reflect"
	"strings"
	"testing"

	"github.com/go-json-experiment/json"
)

// written are values that come back as they were written, by this module's JSON
// library and by the standard one.
var written = map[string]string{
	"a number":                `{"units":"mm","survey":{"walls":[]},"system":"demo-rail"}`,
	"a length with its unit":  `{"units":"in","tape":"1/16 in","survey":{"walls":[]},"system":"s"}`,
	"many digits":             `{"units":"in","tape":0.10000000000000000000000001,"survey":{"walls":[]},"system":"s"}`,
	"a bare level":            `{"units":"mm","survey":{"bench":{"wall":"w","at":1,"level":1150},"walls":[]},"system":"s"}`,
	"a level read by laser":   `{"units":"mm","survey":{"bench":{"wall":"w","at":1,"level":{"down":"3 in","laser":"A"}},"walls":[]},"system":"s"}`,
	"choices of both forms":   `{"units":"mm","survey":{"walls":[]},"system":"s","choices":{"a":"trim","b":{"option":"open_part","spans":[{"wall":"w","from":0,"to":1}]}}}`,
	"rates of both forms":     `{"units":"mm","survey":{"walls":[]},"system":"s","money":{"rates":{"a":"12.50","b":{"low":1,"likely":2}}}}`,
	"a system of its own":     `{"units":"mm","survey":{"walls":[]},"system":{"legs":120,"fit_gap":2}}`,
	"a service proved dead":   `{"units":"mm","survey":{"walls":[{"id":"w","length":1,"floor":[],"ceiling":[],"overheads":[{"id":"o","kind":"beam","from":0,"to":1,"depth":1,"inside":{"services":[{"kind":"wire","from":0,"to":1,"underside":5,"live":false}]}}]}]},"system":"s"}`,
	"nothing under the floor": `{"units":"mm","survey":{"walls":[]},"system":"s","plan":{"floor_under_cabinets":false}}`,
}

func TestRequestsComeBackAsTheyWereWritten(t *testing.T) {
	for name, text := range written {
		var one, other Request
		if err := json.Unmarshal([]byte(text), &one); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if err := stdjson.Unmarshal([]byte(text), &other); err != nil {
			t.Errorf("%s, standard library: %v", name, err)
		}
		if !reflect.DeepEqual(one, other) {
			t.Errorf("%s: read differently by the two libraries", name)
		}
		back, err := json.Marshal(one, json.Deterministic(true))
		if err != nil || string(back) != text {
			t.Errorf("%s: came back as %s, %v", name, back, err)
		}
		back, err = stdjson.Marshal(one)
		if err != nil || string(back) != text {
			t.Errorf("%s, standard library: came back as %s, %v", name, back, err)
		}
	}
}

// What takes more than one form is strict inside, also by the standard library.
func TestFormsAreStrictInside(t *testing.T) {
	cases := map[string]struct {
		into any
		text string
	}{
		"an unknown member of a level":   {new(Level), `{"down":1,"by":2}`},
		"a level's member twice":         {new(Level), `{"down":1,"down":2}`},
		"a level in other case":          {new(Level), `{"Down":1}`},
		"an empty level":                 {new(Level), `{}`},
		"a level that is a list":         {new(Level), `[]`},
		"an unknown member of a rate":    {new(Rate), `{"likely":1,"most":2}`},
		"an unknown member of a choice":  {new(Choice), `{"option":"trim","why":"so"}`},
		"a choice that is a number":      {new(Choice), `1`},
		"an unknown member of a system":  {new(System), `{"legs":1,"brand":"x"}`},
		"deep in a system":               {new(System), `{"legs":1,"rail":{"drop":1,"Kerf":2}}`},
		"a length that is true":          {new(Length), `true`},
		"a length that is an object":     {new(Length), `{}`},
		"an amount that is a list":       {new(Amount), `[1]`},
		"a length of half a surrogate":   {new(Length), `"\ud800"`},
		"a system that is a truth value": {new(System), `false`},
	}
	for name, c := range cases {
		if err := stdjson.Unmarshal([]byte(c.text), c.into); err == nil {
			t.Errorf("%s: accepted", name)
		}
	}
}

func TestAnswersWriteDecimalsAsNumbers(t *testing.T) {
	m := Measure{MM: "803.275", Inches: "31.625", Tape: "31 5/8 in"}
	for name, marshal := range map[string]func(any) ([]byte, error){
		"this module's": func(v any) ([]byte, error) { return json.Marshal(v) }, "standard": stdjson.Marshal,
	} {
		text, err := marshal(m)
		if want := `{"mm":803.275,"in":31.625,"tape":"31 5/8 in"}`; err != nil || string(text) != want {
			t.Errorf("%s: %s, %v", name, text, err)
		}
	}
	var back Measure
	if err := stdjson.NewDecoder(strings.NewReader(`{"mm":803.275,"in":31.625,"tape":"x","tape_off":0.1}`)).Decode(&back); err != nil || back.TapeOff != "0.1" {
		t.Errorf("read back as %+v, %v", back, err)
	}
}
