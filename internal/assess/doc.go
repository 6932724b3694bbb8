// Package assess runs the trade core in order, once for a request: resolve the
// body, find the datum, check the fit, decide, cut, hang, sum up, and report.
// It is the only place that knows the order.
package assess
