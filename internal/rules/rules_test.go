package rules

import (
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// isCode is the form of a code, area.subject.problem.
var isCode = regexp.MustCompile(`^[a-z]+(_[a-z]+)*(\.[a-z]+(_[a-z]+)*){1,2}$`)

// literals are the string literals of the core's sources that look like codes.
func literals(t *testing.T) map[string]string {
	t.Helper()
	out := map[string]string{}
	for _, dir := range []string{"length", "level", "survey", "cabinet", "kitchen", "fit", "rail", "trim", "takeoff", "decide", "estimate", "hazard", "contents", "resolve", "assess"} {
		err := filepath.WalkDir("../"+dir, func(path string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(path, ".go") || strings.HasSuffix(path, "_test.go") {
				return err
			}
			file, err := parser.ParseFile(token.NewFileSet(), path, nil, parser.SkipObjectResolution)
			if err != nil {
				return err
			}
			ast.Inspect(file, func(n ast.Node) bool {
				if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING {
					if text, err := strconv.Unquote(lit.Value); err == nil && isCode.MatchString(text) {
						out[text] = path
					}
				}
				return true
			})
			return nil
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	return out
}

func TestEveryCodeOfTheCoreHasAnEntry(t *testing.T) {
	found := literals(t)
	if len(found) < 100 {
		t.Fatalf("only %d codes found in the sources", len(found))
	}
	for code, path := range found {
		if _, ok := Of(code); !ok {
			t.Errorf("%s: code %q has no entry", path, code)
		}
	}
}

func TestEveryEntrySaysWhatItIsAndWhereItIsFrom(t *testing.T) {
	for i, r := range All() {
		if r.Says == "" || r.Source == "" || r.Status == "" {
			t.Errorf("%s lacks words, source or status: %+v", r.Code, r)
		}
		if strings.HasPrefix(r.Code, "caution.") && r.Who == "" {
			t.Errorf("%s does not say who may deal with it", r.Code)
		}
		if i > 0 && All()[i-1].Code == r.Code {
			t.Errorf("%s stands twice", r.Code)
		}
	}
}
