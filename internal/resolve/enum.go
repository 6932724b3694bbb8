package resolve

import "slices"

// oneOf is the index of a word in the words of an enumeration, which stand in the order of the core's constants.
func oneOf[T ~int](b *body, word, pointer string, words ...string) T {
	i, _ := among[T](b, word, pointer, words...)
	return i
}

// among is oneOf, and false where the word is refused.
func among[T ~int](b *body, word, pointer string, words ...string) (T, bool) {
	i := slices.Index(words, word)
	if i >= 0 {
		return T(i), true
	}
	b.fault(missingOr(word, "body.value.not_allowed"), pointer)
	return 0, false
}
