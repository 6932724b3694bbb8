// Package mip writes mixed-integer programs as text, in the CPLEX LP format that most solvers read, and has them solved
// by HiGHS. Tests hold the searches of this module against it; nothing else needs it.
package mip
