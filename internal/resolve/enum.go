package resolve

import "slices"

// oneOf is the index of a word in the words of an enumeration, which stand in the order of the core's constants.
func oneOf[T ~int](b *body, word, pointer string, words ...string) T {
	switch i := slices.Index(words, word); {
	case i >= 0:
		return T(i)
	case word == "":
		b.fault("request.member.missing", pointer)
	default:
		b.fault("request.value.unknown", pointer)
	}
	return 0
}
