package decode

import (
	"reflect"
	"regexp"
)

// all holds when every rule does; nil for no rules.
func all(rules []rule) rule {
	var given []rule
	for _, r := range rules {
		if r != nil {
			given = append(given, r)
		}
	}
	switch len(given) {
	case 0:
		return nil
	case 1:
		return given[0]
	}
	return func(v reflect.Value) bool {
		for _, r := range given {
			if !r(v) {
				return false
			}
		}
		return true
	}
}

func pointerRule(r rule) rule {
	if r == nil {
		return nil
	}
	return func(v reflect.Value) bool { return v.IsNil() || r(v.Elem()) }
}

func eachRule(r rule) rule {
	if r == nil {
		return nil
	}
	return func(v reflect.Value) bool {
		for i := range v.Len() {
			if !r(v.Index(i)) {
				return false
			}
		}
		return true
	}
}

func valuesRule(r rule) rule {
	if r == nil {
		return nil
	}
	return func(v reflect.Value) bool {
		for _, key := range v.MapKeys() {
			value := reflect.New(v.Type().Elem()).Elem()
			value.Set(v.MapIndex(key))
			if !r(value) {
				return false
			}
		}
		return true
	}
}

func keysRule(r rule) rule {
	return func(v reflect.Value) bool {
		for _, key := range v.MapKeys() {
			if !r(key) {
				return false
			}
		}
		return true
	}
}

func patternRule(pattern string) rule {
	matches := regexp.MustCompile(pattern)
	return func(v reflect.Value) bool { return matches.MatchString(v.String()) }
}
