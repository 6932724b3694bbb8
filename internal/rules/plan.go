package rules

var planRules = []Rule{}
