package trim

import (
	"railhead/internal/kitchen"
	"railhead/internal/length"
	"railhead/internal/survey"
)

// Sky is what hangs under the ceiling once the applied options are carried out:
// what is kept as found, what is cut at its new level, and what is gone.
func Sky(k *kitchen.Kitchen, applied kitchen.AppliedOptions, trims []Trim) kitchen.Sky {
	found := k.Found()
	out := kitchen.Sky{Gone: found.Gone}
	for _, h := range found.Hung {
		o := h.Overhead
		if a, ok := applied[o.Group]; ok && a.Option.TakesDown() {
			out.Gone = append(out.Gone, kitchen.Gone{Overhead: o, From: o.From, To: o.To})
			continue
		}
		from := o.From
		for i := range trims {
			t := &trims[i]
			if t.Overhead != o || t.Work == None {
				continue
			}
			hang(&out, o, from, t.From)
			from = t.To
			cutInto(k, &out, t)
		}
		hang(&out, o, from, o.To)
	}
	return out
}

// hang adds a stretch as found, unless it is empty.
func hang(sky *kitchen.Sky, o *survey.Overhead, from, to length.Length) {
	if from < to {
		sky.Hung = append(sky.Hung, kitchen.Hung{Overhead: o, From: from, To: to})
	}
}

func cutInto(k *kitchen.Kitchen, sky *kitchen.Sky, t *Trim) {
	o := t.Overhead
	if t.Work == TakeDown {
		sky.Gone = append(sky.Gone, kitchen.Gone{Overhead: o, From: t.From, To: t.To})
		return
	}
	line := k.DatumOf(o.Wall).Level.Value.Plus(t.CutLine)
	sky.Hung = append(sky.Hung, kitchen.Hung{Overhead: o, From: t.From, To: t.To, Cut: &line})
}
