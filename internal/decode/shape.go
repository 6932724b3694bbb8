package decode

import (
	"errors"
	"fmt"
	"reflect"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"unicode/utf8"

	"railhead/api"
	"railhead/internal/length"
)

// rule says whether a decoded value is as the field tags of the wire types say.
// The contract's schema is made from the same tags, so no range is written twice.
type rule func(v reflect.Value) bool

var amountForm = regexp.MustCompile(api.AmountPattern)

// typeRule is what a type asks for by itself; nil for nothing.
func typeRule(t reflect.Type) rule {
	switch t {
	case reflect.TypeFor[api.Length]():
		return lengthHolds
	case reflect.TypeFor[api.Amount]():
		return amountHolds
	case reflect.TypeFor[api.System]():
		return systemRule()
	}
	switch t.Kind() {
	case reflect.Struct:
		return structRule(t)
	case reflect.Pointer:
		return pointerRule(typeRule(t.Elem()))
	case reflect.Slice:
		return eachRule(typeRule(t.Elem()))
	case reflect.Map:
		return valuesRule(typeRule(t.Elem()))
	}
	return nil
}

func lengthHolds(v reflect.Value) bool {
	l := v.Addr().Interface().(*api.Length)
	if !l.Quoted {
		return true
	}
	_, err := length.Parse(l.Text)
	var refused *length.Error
	return !errors.As(err, &refused) || refused.Code != length.CodeSyntax
}

func amountHolds(v reflect.Value) bool {
	a := v.Interface().(api.Amount)
	return !a.Quoted || amountForm.MatchString(a.Text)
}

func systemRule() rule {
	id := patternRule(api.IDPattern)
	inline := structRule(reflect.TypeFor[api.InlineSystem]())
	return func(v reflect.Value) bool {
		if pointer := v.FieldByName("Inline"); !pointer.IsNil() {
			return inline(pointer.Elem())
		}
		return id(v.FieldByName("ID"))
	}
}

// structRule checks each member; an absent one must be optional. The members of
// an embedded struct are members of the one that embeds it.
func structRule(t reflect.Type) rule {
	var checks []rule
	for i := range t.NumField() {
		field := t.Field(i)
		name, options, _ := strings.Cut(field.Tag.Get("json"), ",")
		var check rule
		switch {
		case name == "-":
		case field.Anonymous:
			check = typeRule(field.Type)
		default:
			check = memberRule(field, strings.Contains(options, "omit"))
		}
		if check != nil {
			checks = append(checks, func(v reflect.Value) bool { return check(v.Field(i)) })
		}
	}
	return all(checks)
}

func memberRule(field reflect.StructField, optional bool) rule {
	if kind := field.Type.Kind(); !optional && (kind == reflect.Bool || kind == reflect.Int) {
		panic(fmt.Sprintf("decode: %s is required, but its zero value could not be told from an absent one", field.Name))
	}
	check := all(append(tagRules(field), typeRule(field.Type)))
	if check == nil && optional {
		return nil
	}
	return func(v reflect.Value) bool {
		if v.IsZero() {
			return optional
		}
		return check == nil || check(v)
	}
}

// tagRules are what the tags of a member say; a list's tags on texts are about its items.
func tagRules(field reflect.StructField) (rules []rule) {
	tag := field.Tag
	var texts []rule
	if words := tag.Get("enum"); words != "" {
		allowed := strings.Split(words, ",")
		texts = append(texts, func(v reflect.Value) bool { return slices.Contains(allowed, v.String()) })
	}
	if pattern := tag.Get("pattern"); pattern != "" {
		texts = append(texts, patternRule(pattern))
	}
	if field.Type.Kind() == reflect.Slice {
		rules = append(rules, eachRule(all(texts)))
	} else {
		rules = append(rules, texts...)
	}
	if pattern := tag.Get("keys"); pattern != "" {
		rules = append(rules, keysRule(patternRule(pattern)))
	}
	rules = append(rules, limits(tag, "Items", reflect.Value.Len)...)
	rules = append(rules, limits(tag, "Length", runes)...)
	rules = append(rules, limits(tag, "imum", integer)...)
	return rules
}

func runes(v reflect.Value) int   { return utf8.RuneCountInString(v.String()) }
func integer(v reflect.Value) int { return int(v.Int()) }

// limits reads a pair of tags such as minItems and maxItems.
func limits(tag reflect.StructTag, what string, size func(reflect.Value) int) (rules []rule) {
	if least, err := strconv.Atoi(tag.Get("min" + what)); err == nil {
		rules = append(rules, func(v reflect.Value) bool { return size(v) >= least })
	}
	if most, err := strconv.Atoi(tag.Get("max" + what)); err == nil {
		rules = append(rules, func(v reflect.Value) bool { return size(v) <= most })
	}
	return rules
}
