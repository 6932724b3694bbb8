package decode

import (
	"bytes"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/go-json-experiment/json/jsontext"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"pgregory.net/rapid"

	"railhead/api"
)

// oracle is a third party's word on a body: strict JSON, and valid by the
// published contract as a JSON schema validator reads it.
//
// It reads numbers as big fractions, so huge exponents take it seconds; bodies that hold one are left to the table.
var hugeExponent = regexp.MustCompile(`[eE][+-]?[0-9]{5}`)

func oracle(root *jsonschema.Schema, body []byte) bool {
	if !jsontext.Value(body).IsValid() {
		return false
	}
	document, err := jsonschema.UnmarshalJSON(bytes.NewReader(body))
	return err == nil && root.Validate(document) == nil
}

// failing is what a test, a fuzz target and a property have in common.
type failing interface {
	Fatalf(format string, args ...any)
}

// agree checks that the typed path, the explaining walk and the contract say the same of a body.
func agree[T any](t failing, d *Decoder[T], body []byte) {
	good := oracle(d.schema.root, body)
	found := d.schema.walk(body)
	if explained := len(found.faults) == 0; explained != good {
		t.Fatalf("contract: good is %v; the walk finds %v\n%s", good, found.faults, body)
	}
	quick := d.typed(body) != nil
	if quick && !good || good && !quick && !suspect(body) {
		t.Fatalf("contract: good is %v; typed path: %v\n%s", good, quick, body)
	}
	if found.unusable {
		return
	}
	if req, err := typed[T](found.rest); err != nil || good && !d.holds(req) {
		t.Fatalf("contract: good is %v; the rest is not read: %v\n%s\n%s", good, err, body, found.rest)
	}
}

// wellFormed is a refusal that a caller can work with: pointers that are
// pointers, nothing null, no Go names, in order, no repeats.
func wellFormed[T any](t failing, d *Decoder[T], body []byte) {
	_, refusal := d.Decode(body)
	if refusal == nil {
		return
	}
	if len(refusal.Faults) == 0 {
		t.Fatalf("refused without a reason: %s", body)
	}
	for _, f := range refusal.Faults {
		if f.Pointer != "" && !strings.HasPrefix(f.Pointer, "/") || f.Params == nil || f.Detail == "" || f.Code == CodeUnreadable {
			t.Fatalf("%+v\n%s", f, body)
		}
	}
}

func TestContractAndTypedPathAgree(t *testing.T) {
	agreeAbout(t, decoder(t), full(t), changes)
	agreeAbout(t, decoderOf[api.LayoutRequest](t), fullLayout(t), slices.Concat(changes, layoutChanges))
}

func agreeAbout[T any](t *testing.T, d *Decoder[T], good []byte, changes []change) {
	t.Helper()
	agree(t, d, good)
	for _, c := range changes {
		agree(t, d, c.apply(t, good))
	}
	rapid.Check(t, func(t *rapid.T) {
		bad := spoilt(t, good)
		agree(t, d, bad)
		wellFormed(t, d, bad)
	})
}

func FuzzContractAndTypedPathAgree(f *testing.F) {
	requests, layouts := decoder(f), decoderOf[api.LayoutRequest](f)
	f.Add(full(f))
	f.Add(fullLayout(f))
	f.Add(body(f, "small.json"))
	for _, c := range changes {
		f.Add(c.apply(f, full(f)))
	}
	for _, c := range layoutChanges {
		f.Add(c.apply(f, fullLayout(f)))
	}
	small := string(body(f, "small.json"))
	for _, value := range spoiling {
		f.Add([]byte(strings.Replace(small, `"96 1/2 in"`, value, 1)))
		f.Add([]byte(strings.Replace(small, `"in"`, value, 1)))
		f.Add([]byte(strings.Replace(small, `"system": "demo-rail"`, `"system": `+value, 1)))
	}
	f.Fuzz(func(t *testing.T, body []byte) {
		if len(body) > 1<<16 || hugeExponent.Match(body) {
			return
		}
		agree(t, requests, body)
		wellFormed(t, requests, body)
		agree(t, layouts, body)
		wellFormed(t, layouts, body)
	})
}
