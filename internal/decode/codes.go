package decode

// The codes of what can be wrong with a body's shape.
const (
	CodeSyntax     = "body.json.syntax"
	CodeEmpty      = "body.json.empty"
	CodeDeep       = "body.nesting.too_deep"
	CodeEncoding   = "body.text.encoding"
	CodeUnknown    = "body.member.unknown"
	CodeDuplicate  = "body.member.duplicate"
	CodeMissing    = "body.member.missing"
	CodeName       = "body.member.name"
	CodeNull       = "body.value.null"
	CodeType       = "body.value.type"
	CodeNotAllowed = "body.value.not_allowed"
	CodePattern    = "body.value.pattern"
	CodeTooSmall   = "body.value.too_small"
	CodeTooLarge   = "body.value.too_large"
	CodeTextShort  = "body.text.too_short"
	CodeTextLong   = "body.text.too_long"
	CodeListShort  = "body.list.too_short"
	CodeListLong   = "body.list.too_long"
	CodeUnreadable = "body.value.unreadable"
)

// CodeNoReading is what a level that says nothing is refused for. A reading is the one
// object of the contract that must not be empty, and one that says something, but
// not how high, is refused for the same by whoever looks at what it means.
const CodeNoReading = "survey.reading.not_one"
