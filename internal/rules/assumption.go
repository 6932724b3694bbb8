package rules

var assumptionRules = []Rule{}
