package decide

import (
	"go/ast"
	"go/parser"
	"go/token"
	"strconv"
	"strings"
	"testing"

	"railhead/internal/rules"
)

// The constants of codes.go and the catalogue list the same gates and reasons.
func TestCatalogueHoldsEveryCode(t *testing.T) {
	declared := map[string]bool{}
	file, err := parser.ParseFile(token.NewFileSet(), "codes.go", nil, 0)
	if err != nil {
		t.Fatal(err)
	}
	ast.Inspect(file, func(n ast.Node) bool {
		if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING {
			code, _ := strconv.Unquote(lit.Value)
			declared[code] = true
			rule, listed := rules.Of(code)
			switch {
			case !listed:
				t.Errorf("%s is not in the catalogue", code)
			case rule.Says == "" || rule.Source == "" || rule.Status == "":
				t.Errorf("%s lacks its words, its source or its status", code)
			}
		}
		return true
	})
	for _, r := range rules.All() {
		if (strings.HasPrefix(r.Code, "gate.") || strings.HasPrefix(r.Code, "reason.")) && !declared[r.Code] {
			t.Errorf("nothing says %s", r.Code)
		}
	}
}

// A gate that the licensed trade opens says which trade.
func TestLicensedGatesNameTheTrade(t *testing.T) {
	for _, code := range []string{
		gateBearing, gateBearingConfirm, gateSolid, gateBeam, gateInside, gateGas, gateSprinkler,
		gateAsbestos, gateAsbestosYear, gateAsbestosCode, gateLeadArea, gateLeadDemolition, gateLeadCode,
	} {
		if r, _ := rules.Of(code); r.Who == "" {
			t.Errorf("%s names no trade", code)
		}
	}
}
