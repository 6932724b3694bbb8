package rules

var surveyRules = []Rule{}
