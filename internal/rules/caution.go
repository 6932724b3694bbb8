package rules

var cautionRules = []Rule{}
