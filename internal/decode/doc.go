// Package decode turns a request's bytes into api types, or into everything
// that is wrong with their shape.
//
// A good body is read once: one strict typed decode, and a check of what the
// field tags say (shape). Only when one of them finds something is the body
// walked against the contract's own JSON schema, so that every error is reported
// at once, each with its code and its pointer. That the two ways agree on what is
// good is held by a property and a fuzz target.
//
// What one member asks of another is not looked at here. So that whoever does
// look finds it in a refused body too, a refusal comes with the rest of the
// body: all that is good of it, and in place of each bad value a stand-in that
// nothing can be made of.
package decode
