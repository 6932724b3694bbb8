package httpapi

import (
	"context"
	"fmt"
	"runtime/debug"

	"go.opentelemetry.io/otel"

	"railhead/api"
	"railhead/internal/decode"
)

var tracer = otel.Tracer("railhead/httpapi")

// Assess answers a body as POST /v1/assessments does, byte for byte.
func (s *Service) Assess(ctx context.Context, body []byte) (answer []byte, problem *api.Problem) {
	ctx = context.WithValue(ctx, loggerKey{}, s.Log)
	defer func() {
		if caught := recover(); caught != nil {
			s.logPanic(ctx, caught)
			answer, problem = nil, fault.problem()
		}
		if problem != nil {
			problem.RequestID = requestID(ctx)
		}
	}()
	if int64(len(body)) > s.MaxBody {
		return nil, tooLarge(s.MaxBody).problem()
	}
	return s.inTime(ctx, postings[0], body)
}

type outcome struct {
	answer   []byte
	problem  *api.Problem
	panicked any
}

// inTime computes an answer, and gives up waiting when time is up or the caller has gone.
func (s *Service) inTime(ctx context.Context, p posting, body []byte) ([]byte, *api.Problem) {
	ctx, cancel := context.WithTimeout(ctx, s.Timeout)
	defer cancel()
	done := make(chan outcome, 1)
	go func() { done <- s.guarded(ctx, p, body) }()
	select {
	case <-ctx.Done():
		return nil, outOfTime.problem()
	case o := <-done:
		if o.panicked != nil {
			panic(o.panicked)
		}
		return o.answer, o.problem
	}
}

// guarded carries a panic out of its goroutine, with the stack that it had there.
func (s *Service) guarded(ctx context.Context, p posting, body []byte) (o outcome) {
	defer func() {
		if caught := recover(); caught != nil {
			o = outcome{panicked: fmt.Errorf("%v\n%s", caught, debug.Stack())}
		}
	}()
	o.answer, o.problem = s.compute(ctx, p, body)
	return o
}

func (s *Service) compute(ctx context.Context, p posting, body []byte) ([]byte, *api.Problem) {
	answer, faults := p.respond(ctx, s, body)
	if len(faults) > 0 {
		return nil, refused(faults)
	}
	return s.encoded(ctx, answer)
}

// respond reads a body and answers it, or says everything that is wrong with it.
func respond[T, A any](
	ctx context.Context, d *decode.Decoder[T], check func(context.Context, *T) []api.Fault,
	answer func(context.Context, *T) (A, []api.Fault), body []byte,
) (any, []api.Fault) {
	req, refusal := read(ctx, d, check, body)
	if refusal != nil {
		return nil, refusal.Faults
	}
	answered, faults := answer(ctx, req)
	if len(faults) > 0 {
		all := &decode.Refusal[T]{}
		all.Add(faults)
		return nil, all.Faults
	}
	return answered, nil
}

// read reads a body. What is wrong with its shape does not keep the core's
// errors from being listed too, as far as they do not just follow from it.
func read[T any](ctx context.Context, d *decode.Decoder[T], check func(context.Context, *T) []api.Fault, body []byte) (*T, *decode.Refusal[T]) {
	ctx, span := tracer.Start(ctx, "decode")
	defer span.End()
	req, refusal := d.Decode(body)
	if refusal != nil && refusal.Rest != nil {
		refusal.Add(check(ctx, refusal.Rest))
	}
	return req, refusal
}

func (s *Service) encoded(ctx context.Context, answer any) ([]byte, *api.Problem) {
	ctx, span := tracer.Start(ctx, "encode")
	defer span.End()
	body, err := Encode(answer)
	if err != nil {
		logger(ctx).ErrorContext(ctx, "an answer could not be encoded", "request_id", requestID(ctx), "cause", err)
		return nil, fault.problem()
	}
	return body, nil
}
