// Package report turns what the core found into the wire's answer: it rounds
// each length once, to its safe side, finds the words for each code, and leaves
// no list out.
package report
