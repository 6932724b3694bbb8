package resolve

import (
	"maps"
	"slices"

	"railhead/api"
	"railhead/internal/kitchen"
	"railhead/internal/survey"
)

// readChoices reads what was decided, by overhead group in order of name.
func (b *body) readChoices() {
	b.kitchen.Choices = map[string]kitchen.Choice{}
	for _, group := range slices.Sorted(maps.Keys(b.req.Choices)) {
		in, pointer := b.req.Choices[group], member("/choices", group)
		known := b.isGroup(group, pointer)
		c := kitchen.Choice{Pointer: pointer}
		option, ok := among[kitchen.Option](b, in.Option, optionOf(&in, pointer),
			"keep", "trim", "open_part", "remove_taller", "remove_close", "remove_open", "move")
		c.Option = option
		if ok && known && option == kitchen.Move && !b.allDuctBoxes(group) {
			b.fault("choice.move.not_a_duct_box", optionOf(&in, pointer))
		}
		if len(in.Spans) > 0 && ok && option != kitchen.OpenPart {
			b.fault("choice.spans.not_open_part", pointer+"/spans")
		}
		for i := range in.Spans {
			c.Spans = append(c.Spans, b.choiceSpan(group, known, &in.Spans[i], item(pointer, "spans", i)))
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
	b.astray("overhead", name, pointer)
	return false
}

// allDuctBoxes reports whether every part of a group is a duct box, or may be one.
func (b *body) allDuctBoxes(group string) bool {
	for w := range b.walls {
		for i := range b.walls[w].overheads {
			if o := &b.walls[w].overheads[i]; o.Group == group && o.kindOK && o.Kind != survey.DuctBox {
				return false
			}
		}
	}
	return true
}

// choiceSpan reads a stretch to open; it must lie within a part of the thing on that wall.
func (b *body) choiceSpan(group string, known bool, in *api.ChoiceSpan, pointer string) survey.WallSpan {
	s, ok := b.span(in.From, in.To, pointer)
	w, found := b.onWall(in.Wall, pointer+"/wall")
	if known && found {
		b.withinPart(w, group, s, ok, pointer)
	}
	return survey.WallSpan{Wall: w.Index, From: s.From, To: s.To}
}

func (b *body) withinPart(w *wall, group string, s survey.Span, usable bool, pointer string) {
	here := false
	for i := range w.overheads {
		o := &w.overheads[i]
		if o.Group != group {
			continue
		}
		here = true
		if !usable || !o.spanOK || s.From >= o.From && s.To <= o.To {
			return
		}
	}
	if here {
		b.fault("choice.span.off_overhead", pointer)
	} else {
		b.fault("choice.span.wrong_wall", pointer+"/wall")
	}
}
