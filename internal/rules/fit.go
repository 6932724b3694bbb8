package rules

var fitRules = []Rule{}
