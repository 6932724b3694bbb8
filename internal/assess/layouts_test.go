package assess

import (
	"context"
	"reflect"
	"strings"
	"testing"

	"github.com/go-json-experiment/json"
	"pgregory.net/rapid"

	"railhead/api"
)

func layoutRequest(t testing.TB, body string) *api.LayoutRequest {
	t.Helper()
	var req api.LayoutRequest
	if err := json.Unmarshal([]byte(body), &req, json.RejectUnknownMembers(true)); err != nil {
		t.Fatal(err)
	}
	return &req
}

func layouts(t testing.TB, body string) *api.LayoutAnswer {
	t.Helper()
	out, faults := Layouts(context.Background(), layoutRequest(t, body))
	if len(faults) > 0 {
		t.Fatalf("refused: %+v", faults)
	}
	return out
}

// asLayouts is a drawn room without its plan's cabinets, with what is asked of layouts.
func asLayouts(t *rapid.T, m model, w writing, fill string) *api.LayoutRequest {
	m.cabinets = nil
	body := m.body(w)
	var req api.LayoutRequest
	if err := json.Unmarshal([]byte(body[:strings.LastIndex(body, "}")]+`,"fill":`+fill+"}"), &req); err != nil {
		t.Fatal(err)
	}
	return &req
}

func proposedFor(t *rapid.T, req *api.LayoutRequest) *api.LayoutAnswer {
	out, faults := Layouts(context.Background(), req)
	if len(faults) > 0 {
		t.Fatalf("refused: %+v", faults)
	}
	return out
}

// all are a proposal's layouts, wherever they stand.
func all(a *api.LayoutAnswer) (out []*api.Layout) {
	for i := range a.Layouts {
		out = append(out, &a.Layouts[i])
	}
	if a.Once != nil {
		out = append(out, a.Once)
	}
	for i := range a.Overheads {
		for j := range a.Overheads[i].Options {
			if l := a.Overheads[i].Options[j].Layout; l != nil {
				out = append(out, l)
			}
		}
	}
	return out
}

// Every layout can be pasted back as it stands, and then everything in it fits once
// its choices are carried out, above the datum that it tells.
func TestALayoutPastedBackFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		req := asLayouts(t, anyRoom(t), writing{units: rapid.SampledFrom([]string{"mm", "cm", "in"}).Draw(t, "units")}, `{"best": 2}`)
		answer := proposedFor(t, req)
		for _, l := range all(answer) {
			pastedBackFits(t, req, l)
		}
	})
}

func pastedBackFits(t rapid.TB, req *api.LayoutRequest, l *api.Layout) {
	back, faults := Assess(context.Background(), pasted(&req.Request, l), Fit)
	if len(faults) > 0 {
		t.Fatalf("refused: %+v", faults)
	}
	for _, f := range back.Fit {
		if f.After.Verdict != "fits" && f.After.Verdict != "snug" {
			t.Fatalf("%s: %s by %s under %v", f.Cabinet, f.After.Verdict, f.After.LimitedBy, l.Choices)
		}
	}
	if !reflect.DeepEqual(back.Datums, l.Datums) {
		t.Fatalf("datum %+v, told %+v", back.Datums, l.Datums)
	}
}

// inCentimetres moves everything along the wall to whole centimetres, so that the marks
// that cabinets stand at are the same from either end.
func (m model) inCentimetres() model {
	whole := func(tenths int) int { return tenths / 100 * 100 }
	m.length = whole(m.length)
	for _, spots := range [][]spot{m.floor, m.ceiling} {
		for i := range spots {
			spots[i].at = whole(spots[i].at)
		}
	}
	return m
}

// A room seen in the mirror gets a plan that is worth as much. Overheads are left out:
// of plans that are worth as much before those are priced only a few are priced, those
// furthest to the left; so is the floor's fall, which follows the first plan; and lines,
// which the wall row meets over the first few base rows.
func TestAMirroredRoomIsPlannedAsWell(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := anyRoom(t).inCentimetres()
		m.overheads, m.floor = nil, m.floor[:1]
		here := proposedFor(t, asLayouts(t, m, writing{units: "mm"}, `{"best": 1, "weights": {"base_line_miss": 0}}`))
		there := proposedFor(t, asLayouts(t, m.mirrored(), writing{units: "mm"}, `{"best": 1, "weights": {"base_line_miss": 0}}`))
		if len(here.Layouts) != len(there.Layouts) {
			t.Fatalf("%d layouts, mirrored %d", len(here.Layouts), len(there.Layouts))
		}
		for i := range here.Layouts {
			if a, b := here.Layouts[i].Value.Total, there.Layouts[i].Value.Total; a != b {
				t.Fatalf("worth %s, mirrored %s\n%+v\n%+v", a, b, here.Layouts[i].Cabinets, there.Layouts[i].Cabinets)
			}
		}
	})
}

// "Plan it for me": what is answered along with the layouts is the assessment of the
// best of them, as if it were pasted back.
func TestTheBestLayoutAssessed(t *testing.T) {
	body := merged(t, read(t, "../../testdata/cases/mill-lane-corner", "request.json"), `{"plan": {"cabinets": null, "fillers": null}, "fill": {"assess": true, "best": 1}}`)
	got := layouts(t, body)
	req := layoutRequest(t, body)
	want, faults := Assess(context.Background(), pasted(&req.Request, &got.Layouts[0]), All)
	if len(faults) > 0 || !reflect.DeepEqual(got.Assessment, want) {
		t.Fatalf("the assessment is another one than of the layout pasted back: %+v", faults)
	}
	if got.Assessment.Estimate == nil || len(got.Assessment.Fit) != len(got.Layouts[0].Cabinets) {
		t.Errorf("plan, decisions and estimate are wanted in one call: %+v", got.Assessment.Estimate)
	}
}
