package rules

var trimRules = []Rule{}
