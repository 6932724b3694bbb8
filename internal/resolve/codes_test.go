package resolve

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"railhead/internal/finding"
	"railhead/internal/rules"
)

// Codes put together at run time.
var assembled = map[string][]string{
	".length.not_positive": {"survey", "plan", "system", "fill"},
	".length.negative":     {"survey", "plan", "system", "fill"},
	".span.empty":          {"survey", "plan", "choices"},
	".amount.syntax":       {"survey", "plan", "system", "money", "fill"},
	".amount.negative":     {"survey", "plan", "system", "money", "fill"},
	".amount.too_large":    {"survey", "plan", "system", "money", "fill"},
	".amount.too_fine":     {"money", "fill"},
	"assume.overhead.":     {"lining", "bottom_member", "new_bottom", "least_stub", "least_run"},
	"assume.appliance.": {"fridge_depth", "range_depth", "dishwasher_depth", "sink_depth", "hood_depth", "other_depth",
		"fridge_beside", "fridge_above", "range_above", "sink_above"},
	"assume.fill.": {"cabinet", "filler", "filler_per_mm", "open_per_mm", "panel", "height_change", "base_line_miss", "symmetry", "duct_pair", "counter_per_mm"},
	"assume.old.":  {"wall_depth", "tall_depth", "base_depth"},
}

// Every code that this package or the packages under it can give has its words in the catalogue.
func TestEveryCodeHasWords(t *testing.T) {
	var codes []string
	literal := regexp.MustCompile(`"([a-z_]*(?:\.[a-z_]*)+)"`)
	for _, dir := range []string{".", "../level", "../length"} {
		files, err := filepath.Glob(dir + "/*.go")
		if err != nil || len(files) == 0 {
			t.Fatal("no source to look through")
		}
		for _, file := range files {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if strings.HasSuffix(file, "_test.go") {
				continue
			}
			for _, m := range literal.FindAllStringSubmatch(string(text), -1) {
				codes = append(codes, m[1])
			}
		}
	}
	for _, code := range codes {
		for _, whole := range spelled(code) {
			if r, ok := rules.Of(whole); !ok || r.Says == "" || r.Source == "" || r.Status == "" {
				t.Errorf("%s has no words, source or status in the catalogue", whole)
			}
		}
	}
	if len(codes) < 100 {
		t.Errorf("only %d codes found", len(codes))
	}
}

func spelled(code string) (out []string) {
	parts, found := assembled[code]
	if !found {
		if strings.HasPrefix(code, ".") || strings.HasSuffix(code, ".") {
			return nil
		}
		return []string{code}
	}
	for _, p := range parts {
		if strings.HasPrefix(code, ".") {
			out = append(out, p+code)
		} else {
			out = append(out, code+p)
		}
	}
	return out
}

var placeholder = regexp.MustCompile(`\{([a-z_]+)\}`)

// worded holds a code against the catalogue: it has words, and they name only what the code carries.
func worded(t *testing.T, code string, params []finding.Param, need, have *finding.Measure) {
	t.Helper()
	r, ok := rules.Of(code)
	if !ok {
		t.Errorf("%s is not in the catalogue", code)
	}
	names := map[string]bool{"need": need != nil, "have": have != nil}
	for _, p := range params {
		names[p.Name] = true
	}
	for _, m := range placeholder.FindAllStringSubmatch(r.Says, -1) {
		if !names[m[1]] {
			t.Errorf("%s names {%s}, which it does not carry", code, m[1])
		}
	}
}
