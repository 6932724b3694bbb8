package assess

import (
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// TestReadmeTellsThePlansThatAreAnswered holds the amounts and litres that the README
// tells of proposed plans against the answers beside their rooms.
func TestReadmeTellsThePlansThatAreAnswered(t *testing.T) {
	_, section, _ := strings.Cut(read(t, "../..", "README.md"), "\n## Plan it for me\n")
	section, _, _ = strings.Cut(section, "\n## ")
	var answers strings.Builder
	for _, room := range rooms(t, layoutsFolder) {
		if !strings.Contains(section, filepath.Base(room)) {
			t.Errorf("the README does not name %s", filepath.Base(room))
		}
		answers.WriteString(read(t, room, "answer.json"))
	}
	told := regexp.MustCompile(`(\d+\.\d+) (?:€|l\b)`).FindAllStringSubmatch(section, -1)
	for _, number := range told {
		if !strings.Contains(answers.String(), `"`+number[1]+`"`) && !strings.Contains(answers.String(), `"-`+number[1]+`"`) {
			t.Errorf("the README tells of %s, which no answer holds", number[0])
		}
	}
	if len(told) < 5 {
		t.Errorf("the README tells %d amounts, so this holds nothing", len(told))
	}
}
