package httpapi

import (
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"railhead/api"
	"railhead/internal/assess"
)

// realCore is the trade core itself.
func realCore() Core {
	return Core{Assess: assess.Assess, Check: assess.Check, Layouts: assess.Layouts, CheckLayouts: assess.CheckLayouts, Systems: assess.Systems, System: assess.System}
}

// rooms are the rooms of the test data that any path answers.
func rooms(t testing.TB) [][]byte { return roomsOf(t, "cases") }

// layoutRooms are those that ask for layouts.
func layoutRooms(t testing.TB) [][]byte { return roomsOf(t, "layouts") }

func roomsOf(t testing.TB, folder string) (all [][]byte) {
	t.Helper()
	paths, err := filepath.Glob("../../testdata/" + folder + "/*/request.json")
	if err != nil || len(paths) == 0 {
		t.Fatalf("no rooms: %v", err)
	}
	for _, path := range paths {
		body, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		all = append(all, body)
	}
	return all
}

// Every room of the test data is answered on every path that reads its form of body, by the contract and without a null.
func TestRoomsAreAnsweredByTheContract(t *testing.T) {
	h := serviceWith(t, Options{Core: realCore()}).Handler()
	for _, p := range postings {
		bodies := append(rooms(t), []byte(p.body.example))
		if p.body == layoutForm {
			bodies = append(bodies, layoutRooms(t)...)
		}
		for _, body := range bodies {
			w := exchange(t, h, post(p.path, string(body)))
			if w.Code != 200 {
				t.Fatalf("%s: %d %s", p.path, w.Code, w.Body)
			}
			nothingNull(t, w.Body.Bytes())
		}
	}
	list := exchange(t, h, get("/v1/systems"))
	var systems api.SystemList
	if err := json.Unmarshal(list.Body.Bytes(), &systems); err != nil {
		t.Fatal(err)
	}
	for _, s := range systems.Systems {
		if w := exchange(t, h, get("/v1/systems/"+s.ID)); w.Code != 200 {
			t.Errorf("%s: %d", s.ID, w.Code)
		}
	}
}

// A spoilt room is answered or refused; nothing of it makes the service fail,
// and both sides of the exchange keep to the contract.
func TestSpoiltRoomsAreAnsweredOrRefused(t *testing.T) {
	h, good := serviceWith(t, Options{Core: realCore()}).Handler(), append(rooms(t), layoutRooms(t)...)
	rapid.Check(t, func(rt *rapid.T) {
		body := spoilt(rt, rapid.SampledFrom(good).Draw(rt, "room"))
		w := exchange(t, h, post(rapid.SampledFrom(postings).Draw(rt, "path").path, string(body)))
		if w.Code != 200 && w.Code != 422 {
			rt.Fatalf("%d %s\n%s", w.Code, w.Body, body)
		}
		nothingNull(t, w.Body.Bytes())
		if t.Failed() {
			rt.Fatalf("%s\n%s", w.Body, body)
		}
	})
}

// spoilt draws a body with a few members left out or given other values.
func spoilt(t *rapid.T, body []byte) []byte {
	var tree any
	if err := json.Unmarshal(body, &tree); err != nil {
		t.Fatal(err)
	}
	for range rapid.IntRange(1, 3).Draw(t, "changes") {
		tree = spoil(t, tree)
	}
	out, err := json.Marshal(tree)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

var spoiling = []any{
	0, -1, 1, 0.5, 1e9, 1968, "", "mm", "x", "30 in", "1/3 in", "99 m", "long", true, nil, []any{}, map[string]any{}, []any{1}, map[string]any{"up": 5}, map[string]any{"down": 9999}, "soffit", "trim", "wall", "tall", "unknown",
}

func spoil(t *rapid.T, at any) any {
	switch at := at.(type) {
	case map[string]any:
		name := rapid.SampledFrom(sortedNames(at)).Draw(t, "member")
		switch {
		case name == "":
			return at
		case rapid.IntRange(0, 9).Draw(t, "leave out") == 0:
			delete(at, name)
		default:
			at[name] = spoil(t, at[name])
		}
		return at
	case []any:
		if len(at) == 0 {
			return at
		}
		i := rapid.IntRange(0, len(at)-1).Draw(t, "item")
		switch rapid.IntRange(0, 9).Draw(t, "list") {
		case 0:
			return append(at[:i:i], at[i+1:]...)
		case 1:
			return append(at, at[i])
		}
		at[i] = spoil(t, at[i])
		return at
	}
	return rapid.SampledFrom(spoiling).Draw(t, "value")
}

// sortedNames are a map's names; one that stands for none keeps the list from being empty.
func sortedNames(m map[string]any) []string {
	names := slices.Sorted(maps.Keys(m))
	if len(names) == 0 {
		return []string{""}
	}
	return names
}
