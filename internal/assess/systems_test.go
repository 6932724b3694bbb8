package assess

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"

	"railhead/internal/cabinet"
	"railhead/internal/resolve"
)

// What is listed of a built-in system can be pasted into a request, whatever its units, and is the same system.
func TestBuiltInSystemsCanBePasted(t *testing.T) {
	const body = `{"units": "cm", "survey": {"walls": [{"id": "w", "length": 300, "floor": [{"at": 0, "height": 0}], "ceiling": [{"at": 0, "height": 250}]}]}, "system": SYSTEM}`
	for _, b := range cabinet.BuiltIns() {
		detail, ok := System(b.ID)
		text, err := json.Marshal(detail.System)
		if !ok || err != nil {
			t.Fatal(b.ID, err)
		}
		c, faults := resolve.Request(request(t, strings.Replace(body, "SYSTEM", string(text), 1)))
		if len(faults) > 0 {
			t.Fatalf("%s: %+v", b.ID, faults)
		}
		want := b.System
		want.ID = ""
		if got := *c.Kitchen.System; !reflect.DeepEqual(got, want) {
			t.Errorf("%s came back as\n%+v\nand was\n%+v", b.ID, got, want)
		}
	}
}
