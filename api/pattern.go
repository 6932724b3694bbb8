package api

// The forms of texts that field tags cannot share by name.
const (
	// IDPattern is what ids look like.
	IDPattern = `^[A-Za-z0-9._-]{1,40}$`
	// AmountPattern is what an [Amount] looks like as a text.
	AmountPattern = `^-?(0|[1-9][0-9]*)(\.[0-9]+)?$`
)
