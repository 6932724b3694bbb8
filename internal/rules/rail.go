package rules

var railRules = []Rule{}
