package httpapi

import (
	"bytes"
	"flag"
	"os"
	"testing"
)

var update = flag.Bool("update", false, "rewrite the committed contract")

// The committed contract is what the code says: nobody can forget to update it.
func TestContractIsUpToDate(t *testing.T) {
	written, err := Contract()
	if err != nil {
		t.Fatal(err)
	}
	for name, document := range map[string][]byte{
		"openapi.json": written.JSON, "openapi.yaml": written.YAML, "openapi-3.0.json": written.JSON30,
	} {
		path := "../../openapi/" + name
		if *update {
			if err := os.WriteFile(path, document, 0o644); err != nil {
				t.Fatal(err)
			}
		}
		committed, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(committed, document) {
			t.Errorf("openapi/%s differs from the code; run this test with -update and look at the difference", name)
		}
	}
}
