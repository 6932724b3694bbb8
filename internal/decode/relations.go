package decode

import (
	"errors"
	"reflect"
	"strings"

	"github.com/go-playground/validator/v10"

	"railhead/api"
)

// relations checks what one member asks of another, where each by itself is good.
type relations struct {
	validate *validator.Validate
	names    map[string]string // Go field names as JSON names, so that none is told to a caller
}

func newRelations() *relations {
	r := &relations{validate: validator.New(), names: map[string]string{}}
	r.validate.RegisterTagNameFunc(jsonName)
	r.validate.RegisterCustomTypeFunc(lengthText, api.Length{})
	r.validate.RegisterCustomTypeFunc(amountText, api.Amount{})
	r.prepare(reflect.TypeFor[api.Request](), map[reflect.Type]bool{})
	r.register()
	return r
}

// check finds every broken relation.
func (r *relations) check(req *api.Request) (faults []api.Fault) {
	var broken validator.ValidationErrors
	if errors.As(r.validate.Struct(req), &broken) {
		for _, e := range broken {
			faults = append(faults, r.fault(e))
		}
	}
	return faults
}

func lengthText(v reflect.Value) any { return v.Interface().(api.Length).Text }
func amountText(v reflect.Value) any { return v.Interface().(api.Amount).Text }

func jsonName(field reflect.StructField) string {
	name, _, _ := strings.Cut(field.Tag.Get("json"), ",")
	return name
}

// prepare tells the validator what to look into: lists, maps and objects that
// hold relations somewhere, and nothing else. The tags of the wire types need
// then say no more than the relations themselves.
func (r *relations) prepare(t reflect.Type, seen map[reflect.Type]bool) {
	if seen[t] || t.Kind() != reflect.Struct {
		return
	}
	seen[t] = true
	rules := map[string]string{}
	for i := range t.NumField() {
		field := t.Field(i)
		r.names[field.Name] = jsonName(field)
		rules[field.Name] = fieldRule(field)
		r.prepare(objectIn(field.Type), seen)
	}
	r.validate.RegisterStructValidationMapRules(rules, reflect.New(t).Elem().Interface())
}

func fieldRule(field reflect.StructField) string {
	tag := field.Tag.Get("validate")
	object := objectIn(field.Type)
	deep := object.Kind() == reflect.Struct && !isText(object) && !field.Anonymous
	switch kind := field.Type.Kind(); {
	case !deep && tag == "":
		return "-"
	case deep && (kind == reflect.Slice || kind == reflect.Map) && tag == "":
		return "omitempty,dive"
	case deep && (kind == reflect.Slice || kind == reflect.Map):
		return tag + ",omitempty,dive"
	}
	return tag
}

// objectIn is the type of a member's value, or of its values.
func objectIn(t reflect.Type) reflect.Type {
	for t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice || t.Kind() == reflect.Map {
		t = t.Elem()
	}
	return t
}

func isText(t reflect.Type) bool {
	return t == reflect.TypeFor[api.Length]() || t == reflect.TypeFor[api.Amount]()
}
