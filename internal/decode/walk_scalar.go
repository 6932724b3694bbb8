package decode

import (
	"math/big"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/go-json-experiment/json/jsontext"
	"github.com/santhosh-tekuri/jsonschema/v6"
)

func (w *walk) scalar(s *jsonschema.Schema) (bool, error) {
	switch w.dec.PeekKind() {
	case '"':
		return w.string(s)
	case '0':
		return w.number(s)
	}
	token, err := w.dec.ReadToken() // true, false, or no JSON at all
	if err == nil {
		w.out.WriteString(token.String())
	}
	return true, err
}

// text reads a text or a name; it is not sound where it holds bytes or surrogates that are no characters.
func (w *walk) text() (text string, sound bool, err error) {
	value, err := w.dec.ReadValue()
	if err != nil {
		return "", false, err
	}
	sound = value.IsValid()
	unquoted, err := jsontext.AppendUnquote(nil, value)
	if !sound {
		err = nil
	}
	return string(unquoted), sound, err
}

func (w *walk) string(s *jsonschema.Schema) (bool, error) {
	text, sound, err := w.text()
	if err != nil {
		return false, err
	}
	if !sound {
		w.note(CodeEncoding, "This text is not valid UTF-8, or holds half a surrogate pair.")
		return false, nil
	}
	quoted, err := jsontext.AppendQuote(nil, text)
	w.out.Write(quoted)
	return w.allowed(s, text), err
}

// allowed notes the first thing that is wrong with a text.
func (w *walk) allowed(s *jsonschema.Schema, text string) bool {
	n := utf8.RuneCountInString(text)
	switch {
	case s.Enum != nil && !listed(s.Enum, text):
		words := allowedWords(s.Enum)
		w.note(CodeNotAllowed, "This must be one of "+words+".", "allowed", words)
	case s.MinLength != nil && n < *s.MinLength:
		w.note(CodeTextShort, "This must have at least "+counted(*s.MinLength, "character")+".", "least", strconv.Itoa(*s.MinLength))
	case s.MaxLength != nil && n > *s.MaxLength:
		w.note(CodeTextLong, "This must have at most "+counted(*s.MaxLength, "character")+".", "most", strconv.Itoa(*s.MaxLength))
	case s.Pattern != nil && !s.Pattern.MatchString(text):
		f := formOf(s.Pattern.String())
		w.note(CodePattern, "This "+f.words+".", "form", f.key)
	default:
		return true
	}
	return false
}

func listed(e *jsonschema.Enum, text string) bool {
	for _, word := range e.Values {
		if word == text {
			return true
		}
	}
	return false
}

func allowedWords(e *jsonschema.Enum) string {
	var words []string
	for _, word := range e.Values {
		if text, ok := word.(string); ok {
			words = append(words, text)
		}
	}
	return strings.Join(words, ", ")
}

func (w *walk) number(s *jsonschema.Schema) (bool, error) {
	token, err := w.dec.ReadToken()
	if err != nil {
		return false, err
	}
	text := token.String()
	if types(s)[0] != "integer" {
		w.out.WriteString(text)
		return true, nil
	}
	n, whole := wholeNumber(text)
	if !whole {
		w.note(CodeType, "This must be a whole number.", "expected", typeWords["integer"])
		return false, nil
	}
	w.out.WriteString(strconv.Itoa(n))
	return w.inRange(s, n), nil
}

func (w *walk) inRange(s *jsonschema.Schema, n int) bool {
	value := big.NewRat(int64(n), 1)
	switch {
	case s.Minimum != nil && value.Cmp(s.Minimum) < 0:
		w.note(CodeTooSmall, "This must be at least "+s.Minimum.RatString()+".", "least", s.Minimum.RatString())
	case s.Maximum != nil && value.Cmp(s.Maximum) > 0:
		w.note(CodeTooLarge, "This must be at most "+s.Maximum.RatString()+".", "most", s.Maximum.RatString())
	default:
		return true
	}
	return false
}
