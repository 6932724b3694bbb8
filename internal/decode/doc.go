// Package decode turns a request's bytes into api types, or into everything
// that is wrong with them.
//
// A good body is read once: one strict typed decode, a check of what the field
// tags say (shape), and the relations between members (validator). Only when
// one of them finds something is the body walked against the contract's own
// JSON schema, so that every error is reported at once, each with its code and
// its pointer. That the two ways agree on what is good is held by a property and
// a fuzz target.
package decode
