package decode

import (
	"bytes"
	"regexp"
	"strings"
	"testing"

	"github.com/go-json-experiment/json/jsontext"
	"github.com/santhosh-tekuri/jsonschema/v6"
	"pgregory.net/rapid"
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

// agree checks that the typed path, the explaining walk and the contract say the same of a body.
func agree(t interface{ Fatalf(string, ...any) }, d *Decoder, body []byte) {
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
	if req, err := typed(found.rest); err != nil || good && !d.shape.holds(req) {
		t.Fatalf("contract: good is %v; the rest is not read: %v\n%s\n%s", good, err, body, found.rest)
	}
}

// wellFormed is a refusal that a caller can work with: pointers that are
// pointers, nothing null, no Go names, in order, no repeats.
func wellFormed(t interface{ Fatalf(string, ...any) }, d *Decoder, body []byte) {
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
	d, full := decoder(t), body(t, "full.json")
	agree(t, d, full)
	for _, c := range changes {
		agree(t, d, c.apply(t))
	}
	rapid.Check(t, func(t *rapid.T) {
		bad := spoilt(t, full)
		agree(t, d, bad)
		wellFormed(t, d, bad)
	})
}

func FuzzContractAndTypedPathAgree(f *testing.F) {
	d := decoder(f)
	f.Add(body(f, "full.json"))
	f.Add(body(f, "small.json"))
	for _, c := range changes {
		f.Add(c.apply(f))
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
		agree(t, d, body)
		wellFormed(t, d, body)
	})
}
