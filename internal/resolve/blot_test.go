package resolve

import (
	"encoding/json"
	"os"
	"slices"
	"strconv"
	"strings"

	"railhead/api"
	wire "railhead/internal/decode"
	"railhead/openapi"
)

// wholeRequest is a good body with every object and every member that a request may have.
func wholeRequest(t failing) string { return testdata(t, "full.json") }

// wholeBody is one that also says all that may be said of layouts.
func wholeBody(t failing) string {
	return strings.Replace(wholeRequest(t), "{", `{"fill": `+testdata(t, "fill.json")+",", 1)
}

func testdata(t failing, name string) string {
	t.Helper()
	data, err := os.ReadFile("../decode/testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func reader(t failing) *wire.Decoder[api.LayoutRequest] { return readerOf[api.LayoutRequest](t) }

func readerOf[T any](t failing) *wire.Decoder[T] {
	t.Helper()
	contract, err := wire.Read(openapi.JSON)
	if err != nil {
		t.Fatal(err)
	}
	d, err := wire.New[T](contract)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// said is what is wrong with a request for layouts as a caller is told: by its shape, and by what it means.
func said(d *wire.Decoder[api.LayoutRequest], text string) []string {
	return saidBy(d, text, func(req *api.LayoutRequest) []Fault {
		_, _, faults := LayoutRequest(req)
		return faults
	})
}

func saidBy[T any](d *wire.Decoder[T], text string, resolve func(*T) []Fault) (out []string) {
	req, refusal := d.Decode([]byte(text))
	if refusal == nil {
		refusal = &wire.Refusal[T]{Rest: req}
	}
	faults := resolve(refusal.Rest)
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

// blots are slips in the form of single members, wherever there is one: a null, a value of another type, and nothing
// where there has to be something.
func blots(t failing, d *wire.Decoder[api.LayoutRequest], text string) (out []change) {
	t.Helper()
	var doc any
	if err := json.Unmarshal([]byte(text), &doc); err != nil {
		t.Fatal(err)
	}
	for _, pointer := range pointers(doc, "") {
		out = append(out, change{pointer, "null"}, change{pointer, otherType(doc, pointer)})
		if gone := (change{pointer, ""}); needed(t, d, text, gone) {
			out = append(out, gone)
		}
	}
	return out
}

// needed reports whether the contract asks for a member.
func needed(t failing, d *wire.Decoder[api.LayoutRequest], text string, gone change) bool {
	t.Helper()
	_, refusal := d.Decode([]byte(changed(t, text, gone)))
	return refusal != nil && slices.ContainsFunc(refusal.Faults, func(f api.Fault) bool {
		return f.Code == wire.CodeMissing && f.Pointer == gone.pointer
	})
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
