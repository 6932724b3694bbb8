package length

// Pattern is what Parse reads, as a regular expression that means the same in ECMA-262 (with or without its u and v
// flags) and in RE2. Parse accepts only what it matches; what it matches, Parse accepts or refuses as too fine or out of
// range. It matches nothing longer than MaxText.
const Pattern = `^(?:-|` + minus + `)?(?:` + patMetric + `|` + patImperial + `|` + patFeetInches + `)$`

// MaxText is the most characters a length may have as text.
const MaxText = 64

// How many digits the parts of a text may have. The pattern says the same.
const (
	wholeDigits    = 9
	placeDigits    = 30
	fractionDigits = 6
)

// Characters that look like others, or like nothing.
const (
	minus         = "\u2212"
	hyphens       = hyphen + noBreakHyphen
	hyphen        = "\u2010"
	noBreakHyphen = "\u2011"
	spaces        = " " + noBreak + narrowNoBreak
	noBreak       = "\u00a0"
	narrowNoBreak = "\u202f"
	fractionSlash = "\u2044"
	prime         = "\u2032"
	doublePrime   = "\u2033"
	quote         = "\u2019"
	doubleQuote   = "\u201d"
)

const (
	patMetric     = patWhole + patPlaces + patSpace + `?(?:mm|cm|m)`
	patImperial   = `(?:` + patWhole + patTail + `|` + patFraction + `)` + patSpace + `?(?:` + patInch + `|` + patFoot + `)`
	patFeetInches = patWhole + patSpace + `?` + patFoot + patSpace + `?(?:` + patHyphen + patSpace + `?)?` +
		`(?:` + patUnder12 + patTail + `|` + patFraction + `)` + patSpace + `?` + patInch

	// what may follow a whole number: places, a fraction joined on, a fraction character
	patTail = `(?:` + patPlaces + `|` + patJoin + patFraction + `|` + patVulgar + `)`

	patWhole    = `(?:0|[1-9][0-9]{0,8})`
	patUnder12  = `(?:1[01]|[0-9])`
	patPlaces   = `(?:[.][0-9]{1,30})?`
	patFraction = `(?:(?:0|[1-9][0-9]{0,5})(?:/|` + fractionSlash + `)[1-9][0-9]{0,5}|` + patVulgar + `)`
	patVulgar   = `[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]`
	patSpace    = `[` + spaces + `]`
	patHyphen   = `(?:-|[` + hyphens + `])`
	patJoin     = `(?:-|[` + spaces + hyphens + `])`
	patInch     = `(?:in|["` + doublePrime + doubleQuote + `])`
	patFoot     = `(?:ft|['` + prime + quote + `])`
)
