package resolve

import (
	"bytes"
	"encoding/json"
	"slices"
	"strconv"
	"strings"
	"testing"

	"railhead/internal/finding"
)

// change is a member to set, by pointer; an empty value takes it out. A list grows by one at "/-".
type change struct{ pointer, value string }

// changed is a body with members set.
func changed(t failing, text string, changes ...change) string {
	t.Helper()
	var doc any
	dec := json.NewDecoder(strings.NewReader(text))
	dec.UseNumber()
	if err := dec.Decode(&doc); err != nil {
		t.Fatal(err)
	}
	for _, c := range changes {
		doc = set(t, doc, strings.Split(c.pointer, "/")[1:], c.value)
	}
	var out bytes.Buffer
	if err := json.NewEncoder(&out).Encode(doc); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func set(t failing, node any, path []string, value string) any {
	t.Helper()
	if len(path) == 0 {
		var v any
		dec := json.NewDecoder(strings.NewReader(value))
		dec.UseNumber()
		if err := dec.Decode(&v); err != nil {
			t.Fatal(value, err)
		}
		return v
	}
	switch n := node.(type) {
	case map[string]any:
		if len(path) == 1 && value == "" {
			delete(n, path[0])
			return n
		}
		n[path[0]] = set(t, n[path[0]], path[1:], value)
		return n
	case []any:
		if path[0] == "-" {
			return append(n, set(t, nil, path[1:], value))
		}
		i, err := strconv.Atoi(path[0])
		if err != nil || i >= len(n) {
			t.Fatal("no element", path[0])
		}
		if len(path) == 1 && value == "" {
			return slices.Delete(n, i, i+1)
		}
		n[i] = set(t, n[i], path[1:], value)
		return n
	case nil:
		return set(t, map[string]any{}, path, value)
	}
	t.Fatal("nothing to step into at", path[0])
	return nil
}

// refused is what is wrong with a body, as "code pointer".
func refused(t testing.TB, text string) (out []string) {
	t.Helper()
	c, faults := Request(decode(t, text))
	if len(faults) == 0 || c != nil {
		t.Error("not refused")
	}
	for _, f := range faults {
		out = append(out, f.Code+" "+f.Pointer)
	}
	return out
}

func findings(c *Case) (out []string) {
	for _, f := range c.Findings {
		out = append(out, f.Code+" "+f.Pointer)
	}
	return out
}

func questions(c *Case) (out []string) {
	for _, q := range c.Questions {
		out = append(out, q.Code+" "+q.Pointer)
	}
	return out
}

func assumptions(c *Case) (out []string) {
	for _, a := range c.Assumptions {
		value := a.Value.Text
		if a.Value.Length != nil {
			value = millimetres(a.Value)
		}
		out = append(out, a.Code+" "+value+" "+a.Override)
	}
	return out
}

func notAssessed(c *Case) (out []string) {
	for _, n := range c.NotAssessed {
		out = append(out, n.Part+" "+n.Code+" "+n.Pointer)
	}
	return out
}

func millimetres(p finding.Param) string {
	l, _ := p.Length.Value.Whole()
	return l.MM()
}

func sameLines(t testing.TB, what string, got, want []string) {
	t.Helper()
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("%s:\n  %s\nwant:\n  %s", what, strings.Join(got, "\n  "), strings.Join(want, "\n  "))
	}
}
