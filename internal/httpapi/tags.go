package httpapi

import (
	"reflect"
	"strings"

	"github.com/danielgtaylor/huma/v2"

	"railhead/api"
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
	for i := range t.NumField() {
		field := t.Field(i)
		if pattern := field.Tag.Get("keys"); pattern != "" {
			name, _, _ := strings.Cut(field.Tag.Get("json"), ",")
			r.Map()[t.Name()].Properties[name].Extensions = map[string]any{
				"propertyNames": map[string]any{"pattern": pattern},
			}
		}
		keySchemas(r, field.Type, seen)
	}
}

// openAnswers lets answers gain members: only what a request is made of is closed.
func openAnswers(r huma.Registry) {
	request := map[string]bool{}
	reach(r, "Request", request)
	for name, schema := range r.Map() {
		if !request[name] && schema.Type == huma.TypeObject {
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
	object[api.Request](r)
	keySchemas(r, reflect.TypeFor[api.Request](), map[reflect.Type]bool{})
}
