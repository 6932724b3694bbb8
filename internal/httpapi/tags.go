package httpapi

import (
	"reflect"
	"strings"

	"github.com/danielgtaylor/huma/v2"
)

// keySchemas writes the `keys` tags of map members into the contract, which the
// framework does not know: the pattern that a map's names must match.
func keySchemas(r huma.Registry, t reflect.Type, seen map[reflect.Type]bool) {
	for t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct || seen[t] {
		return
	}
	seen[t] = true
	for _, field := range reflect.VisibleFields(t) { // an embedded struct's members stand in the struct that embeds it
		if pattern := field.Tag.Get("keys"); pattern != "" {
			name, _, _ := strings.Cut(field.Tag.Get("json"), ",")
			r.Map()[t.Name()].Properties[name].Extensions = map[string]any{
				"propertyNames": map[string]any{"pattern": pattern},
			}
		}
		if !field.Anonymous {
			keySchemas(r, field.Type, seen)
		}
	}
}

// openAnswers lets answers gain members: only what is sent is closed.
func openAnswers(r huma.Registry) {
	sent := map[string]bool{}
	for _, body := range bodyForms {
		reach(r, body.of.Name(), sent)
	}
	for name, schema := range r.Map() {
		if !sent[name] && schema.Type == huma.TypeObject {
			schema.AdditionalProperties = nil
		}
	}
}

// reach collects the components that a component is made of.
func reach(r huma.Registry, name string, seen map[string]bool) {
	if name == "" || seen[name] {
		return
	}
	seen[name] = true
	reachIn(r, r.Map()[name], seen)
}

func reachIn(r huma.Registry, s *huma.Schema, seen map[string]bool) {
	if s == nil {
		return
	}
	reach(r, strings.TrimPrefix(s.Ref, "#/components/schemas/"), seen)
	reachIn(r, s.Items, seen)
	for _, property := range s.Properties {
		reachIn(r, property, seen)
	}
	for _, form := range s.OneOf {
		reachIn(r, form, seen)
	}
	if values, ok := s.AdditionalProperties.(*huma.Schema); ok {
		reachIn(r, values, seen)
	}
}

// registerSchemas puts every type of the contract into the registry.
func registerSchemas(r huma.Registry) {
	aliasSchemas(r)
	seen := map[reflect.Type]bool{}
	for _, body := range bodyForms {
		r.Schema(body.of, true, "")
		keySchemas(r, body.of, seen)
	}
}
