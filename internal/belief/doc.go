// Package belief holds what is believed of an unknown, how evidence changes it,
// and what knowing more would be worth before deciding: the expected value of
// perfect information and of sample information.
package belief
