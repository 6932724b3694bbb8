package resolve

import (
	"maps"
	"slices"

	"railhead/api"
	"railhead/internal/finding"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// readChoices reads what was decided, by overhead group in order of name.
func (b *body) readChoices() {
	b.kitchen.Choices = map[string]kitchen.Choice{}
	for _, group := range slices.Sorted(maps.Keys(b.req.Choices)) {
		in, pointer := b.req.Choices[group], member("/choices", group)
		if !b.isGroup(group, pointer) {
			continue
		}
		c := kitchen.Choice{Pointer: pointer, Option: oneOf[kitchen.Option](b, in.Option, optionOf(&in, pointer),
			"keep", "trim", "open_part", "remove_taller", "remove_close", "remove_open", "move")}
		if c.Option == kitchen.Move && !b.allDuctBoxes(group) {
			b.fault("choice.move.not_a_duct_box", optionOf(&in, pointer))
		}
		if len(in.Spans) > 0 && c.Option != kitchen.OpenPart {
			b.fault("choice.spans.not_open_part", pointer+"/spans")
		}
		for i := range in.Spans {
			if s, ok := b.choiceSpan(group, &in.Spans[i], item(pointer, "spans", i)); ok {
				c.Spans = append(c.Spans, s)
			}
		}
		b.kitchen.Choices[group] = c
	}
}

func optionOf(in *api.Choice, pointer string) string {
	if in.Bare {
		return pointer
	}
	return pointer + "/option"
}

// isGroup refuses a name that nothing is decided by. A part is decided with the rest of its thing.
func (b *body) isGroup(name, pointer string) bool {
	if b.ids.groups[name] {
		return true
	}
	if _, part := b.ids.overheads[name]; part {
		b.fault("choice.overhead.is_part", pointer)
		return false
	}
	b.fault("ref.unknown", pointer, finding.Word("kind", "overhead"))
	return false
}

func (b *body) allDuctBoxes(group string) bool {
	for w := range b.room.Walls {
		for i := range b.room.Walls[w].Overheads {
			if o := &b.room.Walls[w].Overheads[i]; o.Group == group && o.Kind != survey.DuctBox {
				return false
			}
		}
	}
	return true
}

// choiceSpan reads a stretch to open; it must lie within a part of the thing on that wall.
func (b *body) choiceSpan(group string, in *api.ChoiceSpan, pointer string) (survey.WallSpan, bool) {
	s, ok := b.span(in.From, in.To, pointer)
	w, found := b.onWall(in.Wall, pointer+"/wall")
	if !ok || !found {
		return survey.WallSpan{}, false
	}
	here := false
	for i := range w.Overheads {
		o := &w.Overheads[i]
		if o.Group != group {
			continue
		}
		here = true
		if s.From >= o.From && s.To <= o.To {
			return survey.WallSpan{Wall: w.Index, From: s.From, To: s.To}, true
		}
	}
	if here {
		b.fault("choice.span.off_overhead", pointer)
	} else {
		b.fault("choice.span.wrong_wall", pointer+"/wall")
	}
	return survey.WallSpan{}, false
}
