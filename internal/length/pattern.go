package length

// Pattern is what Parse reads, as a regular expression that ECMA-262 and RE2 both know. Parse accepts only what it
// matches; what it matches Parse accepts or refuses as too fine or out of range. It matches nothing longer than MaxText.
const Pattern = `^[-` + minus + `]?(?:` +
	patWhole + patPlaces + patSpace + `?(?:mm|cm|m)|` +
	`(?:` + patWhole + patPlaces + `|(?:` + patWhole + patJoin + `)?` + patFraction + `|(?:` + patWhole + patJoin + `?)?` + patVulgar + `)` + patSpace + `?(?:` + patInch + `|` + patFoot + `)|` +
	patWhole + patSpace + `?` + patFoot + patSpace + `?(?:` + patHyphen + patSpace + `?)?` +
	`(?:` + patUnder12 + patPlaces + `|(?:` + patUnder12 + patJoin + `)?` + patFraction + `|(?:` + patUnder12 + patJoin + `?)?` + patVulgar + `)` + patSpace + `?` + patInch +
	`)$`

// MaxText is the most characters a length may have as text.
const MaxText = 64

const (
	minus         = "\u2212"
	fractionSlash = "\u2044"
	noBreak       = "\u00a0"
	narrowNoBreak = "\u202f"
	hyphen        = "\u2010"
	noBreakHyphen = "\u2011"
	prime         = "\u2032"
	doublePrime   = "\u2033"
	quote         = "\u2019"
	doubleQuote   = "\u201d"
	vulgars       = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒"
)

// How many digits the parts of a text may have.
const (
	wholeDigits    = 9
	placeDigits    = 30
	fractionDigits = 6
)

const (
	patWhole    = `(?:0|[1-9][0-9]{0,8})`
	patPlaces   = `(?:[.][0-9]{1,30})?`
	patUnder12  = `(?:1[01]|[0-9])`
	patFraction = `(?:0|[1-9][0-9]{0,5})[/` + fractionSlash + `][1-9][0-9]{0,5}`
	patVulgar   = `[` + vulgars + `]`
	patSpace    = `[ ` + noBreak + narrowNoBreak + `]`
	patHyphen   = `[-` + hyphen + noBreakHyphen + `]`
	patJoin     = `[- ` + noBreak + narrowNoBreak + hyphen + noBreakHyphen + `]`
	patInch     = `(?:in|["` + doublePrime + doubleQuote + `])`
	patFoot     = `(?:ft|['` + prime + quote + `])`
)
