package decode

import (
	"encoding/json"
	"strings"
	"testing"

	"railhead/api"
)

// wide is a body of ordinary size: about 20 KB.
func wide(b *testing.B) []byte {
	const one = `{"at": 0, "up": 1297}`
	points := make([]string, 300)
	for i := range points {
		points[i] = one
	}
	c := change{name: "wide", old: `"ceiling": [` + one, new: `"ceiling": [` + strings.Join(points, ", ")}
	full := string(body(b, "full.json"))
	cabinets := strings.Repeat(`{"id": "k", "kind": "wall", "wall": "long", "from": "31 5/8 in", "width": "600 mm", "height": 660, "door": {"opens": "left"}}, `, 60)
	return []byte(strings.Replace(strings.Replace(full, c.old, c.new, 1), `"cabinets": [`, `"cabinets": [`+cabinets, 1))
}

func BenchmarkGoodBody(b *testing.B) {
	d, data := decoder(b), wide(b)
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		if _, refusal := d.Decode(data); refusal != nil {
			b.Fatal(refusal.Faults)
		}
	}
}

func BenchmarkGoodBodyDecodedOnly(b *testing.B) {
	data := wide(b)
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := typed[api.Request](data); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkGoodBodyByStandardLibrary is what a service without any checks would pay.
func BenchmarkGoodBodyByStandardLibrary(b *testing.B) {
	data := wide(b)
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		var req api.Request
		if err := json.Unmarshal(data, &req); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkBadBody(b *testing.B) {
	d := decoder(b)
	data := []byte(strings.Replace(string(wide(b)), `"units": "mm"`, `"units": "furlong", "colour": null`, 1))
	b.SetBytes(int64(len(data)))
	b.ReportAllocs()
	for b.Loop() {
		if _, refusal := d.Decode(data); refusal == nil {
			b.Fatal("accepted")
		}
	}
}
