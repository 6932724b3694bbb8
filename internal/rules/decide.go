package rules

var decideRules = []Rule{}
