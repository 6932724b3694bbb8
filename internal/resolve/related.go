package resolve

import (
	"errors"
	"reflect"
	"strings"

	"github.com/go-playground/validator/v10"

	"railhead/api"
)

// relations knows what the members of one object ask of each other: the `validate`
// tags of the wire types. It is made once and changes nothing afterwards.
var relations = newRelations()

func newRelations() *validator.Validate {
	v := validator.New()
	v.RegisterTagNameFunc(func(field reflect.StructField) string {
		name, _, _ := strings.Cut(field.Tag.Get("json"), ",")
		return name
	})
	v.RegisterCustomTypeFunc(func(v reflect.Value) any { return v.Interface().(api.Length).Text }, api.Length{})
	v.RegisterCustomTypeFunc(func(v reflect.Value) any { return v.Interface().(api.Amount).Text }, api.Amount{})
	return v
}

// related refuses members that lack the one that belongs to them, and those that
// exclude each other, which is told by excluded.
func (b *body) related(object any, pointer, excluded string) {
	var broken validator.ValidationErrors
	if !errors.As(relations.Struct(object), &broken) {
		return
	}
	for _, e := range broken {
		code := "body.member.missing"
		if strings.HasPrefix(e.Tag(), "excluded") {
			code = excluded
		}
		b.fault(code, member(pointer, e.Field()))
	}
}
