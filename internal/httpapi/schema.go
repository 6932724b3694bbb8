package httpapi

import (
	"reflect"

	"github.com/danielgtaylor/huma/v2"

	"railhead/api"
	"railhead/internal/length"
)

// The types of package api know nothing of the HTTP framework. Those that take
// more than one JSON form get their schema from the stand-ins below; all others
// are read from their field tags.

type (
	lengthSchema  struct{}
	amountSchema  struct{}
	decimalSchema struct{}
	levelSchema   struct{}
	rateSchema    struct{}
	choiceSchema  struct{}
	systemSchema  struct{}

	// ChoiceDetail and RateSpread name the object forms in the contract.
	ChoiceDetail api.Choice
	RateSpread   api.Rate
)

func aliasSchemas(r huma.Registry) {
	alias[api.Length, lengthSchema](r)
	alias[api.Amount, amountSchema](r)
	alias[api.Decimal, decimalSchema](r)
	alias[api.Level, levelSchema](r)
	alias[api.Rate, rateSchema](r)
	alias[api.Choice, choiceSchema](r)
	alias[api.System, systemSchema](r)
}

func alias[T, S any](r huma.Registry) {
	r.RegisterTypeAlias(reflect.TypeFor[T](), reflect.TypeFor[S]())
}

// component registers a schema under a name of its own and refers to it.
func component(r huma.Registry, name string, build func() *huma.Schema) *huma.Schema {
	if _, made := r.Map()[name]; !made {
		r.Map()[name] = &huma.Schema{}
		r.Map()[name] = build()
	}
	return &huma.Schema{Ref: "#/components/schemas/" + name}
}

func object[T any](r huma.Registry) *huma.Schema {
	return r.Schema(reflect.TypeFor[T](), true, "")
}

func count(n int) *int { return &n }

func (lengthSchema) Schema(r huma.Registry) *huma.Schema {
	return component(r, "Length", func() *huma.Schema {
		return &huma.Schema{
			Description: "A length: a number in the body's units, or a text that says its own unit.",
			OneOf: []*huma.Schema{
				{Type: huma.TypeNumber, Description: "In the body's units; read as decimal text, so nothing is lost."},
				{Type: huma.TypeString, Pattern: length.Pattern, MaxLength: count(length.MaxText), Description: "With its own unit."},
			},
			Examples: []any{803.3, "803.3 mm", "31 5/8 in", `2' 7 5/8"`},
		}
	})
}

func (amountSchema) Schema(r huma.Registry) *huma.Schema {
	return component(r, "Amount", func() *huma.Schema {
		return &huma.Schema{
			Description: "An exact decimal, as a number or as a text.",
			OneOf: []*huma.Schema{
				{Type: huma.TypeNumber},
				{Type: huma.TypeString, Pattern: api.AmountPattern},
			},
			Examples: []any{"12.50", 12.5},
		}
	})
}

func (decimalSchema) Schema(huma.Registry) *huma.Schema {
	return &huma.Schema{Type: huma.TypeNumber}
}

func (levelSchema) Schema(r huma.Registry) *huma.Schema {
	return component(r, "Level", func() *huma.Schema {
		reading := object[api.Reading](r)
		r.Map()["Reading"].MinProperties = count(1)
		return &huma.Schema{
			Description: "A surveyed level: a length is above the floor right there, an object says how it was read.",
			OneOf:       append(lengthForms(r), reading),
			Examples:    []any{1150, map[string]any{"down": 203}, map[string]any{"up": `3' 2"`}},
		}
	})
}

// lengthForms is a length spelt out, since a oneOf within a oneOf is hard on readers.
func lengthForms(r huma.Registry) []*huma.Schema {
	lengthSchema{}.Schema(r)
	forms := r.Map()["Length"].OneOf
	return append([]*huma.Schema{}, forms...)
}

func (rateSchema) Schema(r huma.Registry) *huma.Schema {
	return component(r, "Rate", func() *huma.Schema {
		amountSchema{}.Schema(r)
		forms := append([]*huma.Schema{}, r.Map()["Amount"].OneOf...)
		return &huma.Schema{
			Description: "A single amount, or a spread.",
			OneOf:       append(forms, object[RateSpread](r)),
			Examples:    []any{"12.50", map[string]any{"low": "10", "likely": "12.50", "high": "18"}},
		}
	})
}

func (choiceSchema) Schema(r huma.Registry) *huma.Schema {
	return component(r, "Choice", func() *huma.Schema {
		detail := object[ChoiceDetail](r)
		options := r.Map()["ChoiceDetail"].Properties["option"].Enum
		return &huma.Schema{
			Description: "What is done with an overhead: an option, or an option with its spans.",
			OneOf:       []*huma.Schema{{Type: huma.TypeString, Enum: options}, detail},
			Examples:    []any{"trim"},
		}
	})
}

func (systemSchema) Schema(r huma.Registry) *huma.Schema {
	return component(r, "System", func() *huma.Schema {
		return &huma.Schema{
			Description: "A cabinet system: the id of a built-in, or its parameters.",
			OneOf:       []*huma.Schema{{Type: huma.TypeString, Pattern: api.IDPattern}, object[api.InlineSystem](r)},
			Examples:    []any{"demo-rail"},
		}
	})
}
