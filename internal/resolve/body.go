package resolve

import (
	"railhead/api"
	"railhead/internal/cabinet"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// body is one request being resolved, and what has come of it so far.
type body struct {
	req     *api.Request
	fill    *api.Fill   // what is asked of layouts; nil where none are asked for
	units   length.Unit // of the numbers that are being read
	ids     ids
	frame   frame
	walls   []wall
	room    *survey.Room
	system  *cabinet.System // nil where it is not usable
	made    made
	plan    *cabinet.Plan
	given   kitchen.Given
	moved   changes
	kitchen kitchen.Kitchen
	filling kitchen.Filling
	out     Case
	faults  []Fault
	once    map[string]bool // assumptions made and questions asked

	// How far what is not usable reaches.
	guess    guess
	guessed  guessed
	losses   map[string]int // levels that are not known, numbered
	twice    map[named]bool // names that more than one thing has
	strays   []stray
	nameless map[string]int // things whose name is not usable, by kind
	nowhere  wall           // the wall of what names none
}

func newBody(req *api.Request, fill *api.Fill, g guess) *body {
	if req == nil {
		req = &api.Request{}
	}
	return &body{
		req:      req,
		fill:     fill,
		room:     &survey.Room{},
		plan:     &cabinet.Plan{},
		given:    kitchen.Given{},
		once:     map[string]bool{},
		made:     made{play: length.Max},
		guess:    g,
		losses:   map[string]int{},
		twice:    map[named]bool{},
		nameless: map[string]int{},
		nowhere:  wall{Wall: &survey.Wall{Index: -1, Prev: -1, Next: -1}, in: &api.Wall{}, line: unknownLine},
	}
}

// enoughFaults is more than anybody reads.
const enoughFaults = 5000

// fault refuses the request for one more reason.
func (b *body) fault(code, pointer string, params ...finding.Param) {
	if len(b.faults) < enoughFaults {
		b.faults = append(b.faults, Fault{code, pointer, params})
	}
}

// note, caution report something odd.
func (b *body) note(code, pointer string, params ...finding.Param) {
	b.found(finding.AsNote, code, pointer, params)
}

func (b *body) caution(code, pointer string, params ...finding.Param) {
	b.found(finding.AsCaution, code, pointer, params)
}

// weigh adds what a finding needs and what there is to the last one.
func (b *body) weigh(need, have *finding.Measure) {
	last := &b.out.Findings[len(b.out.Findings)-1]
	last.Need, last.Have = need, have
}

func (b *body) found(s finding.Severity, code, pointer string, params []finding.Param) {
	b.out.Findings = append(b.out.Findings, finding.Finding{Code: code, Severity: s, Pointer: pointer, Params: params})
}

// ask asks a question once a member.
func (b *body) ask(code, pointer string) {
	if b.first(code + pointer) {
		b.out.Questions = append(b.out.Questions, finding.Question{Code: code, Pointer: pointer})
	}
}

// assume names a default that nobody gave, once; override is the first member that would replace it.
func (b *body) assume(code string, value length.Length, override string) {
	if b.first(code) {
		b.out.Assumptions = append(b.out.Assumptions, finding.Assumption{
			Code: code, Value: size("value", value), Override: override,
		})
	}
}

func (b *body) first(key string) bool {
	seen := b.once[key]
	b.once[key] = true
	return !seen
}

// size is a parameter that is a plain length.
func size(name string, l length.Length) finding.Param {
	return finding.Size(name, finding.Near(l.Exact()))
}

func (b *body) finished() *Case {
	b.kitchen.Room, b.kitchen.System, b.kitchen.Plan = b.room, b.system, b.plan
	b.kitchen.Datums = kitchen.Datums(b.room, b.plan, b.given)
	b.out.Kitchen = &b.kitchen
	return &b.out
}
