package decide

// beside works something out while the caller goes on, and hands it over when it is
// asked for. What panics there panics in the caller, whose guard it then meets.
func beside[T any](work func() T) (wait func() T) {
	type outcome struct {
		result T
		fault  any
	}
	done := make(chan outcome, 1)
	go func() {
		var out outcome
		defer func() {
			out.fault = recover()
			done <- out
		}()
		out.result = work()
	}()
	return func() T {
		out := <-done
		if out.fault != nil {
			panic(out.fault)
		}
		return out.result
	}
}
