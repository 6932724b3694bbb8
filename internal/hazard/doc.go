// Package hazard warns of what can hurt someone in the work that an answer
// calls for; who may deal with each hazard stands in package rules.
package hazard
