// Package combine finds the best combination of ways to do several things that
// share charges and bear on each other. It is exact: no combination is better
// than the one it returns.
package combine
