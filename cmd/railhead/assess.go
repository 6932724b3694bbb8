package main

import (
	"context"
	"errors"
	"io"
	"net/http"
	"os"

	"railhead/internal/config"
	"railhead/internal/httpapi"
	"railhead/internal/telemetry"
)

// assess answers one body, byte for byte as the service would.
func (p program) assess(ctx context.Context, args []string) int {
	settings, err := config.Read(p.getenv)
	if err != nil {
		return p.fail(err)
	}
	body, err := p.input(args, settings.MaxBody)
	if err != nil {
		return p.fail(err)
	}
	service, err := httpapi.New(httpapi.Options{
		Core: p.core, MaxBody: settings.MaxBody, Timeout: settings.RequestTimeout, Log: telemetry.NewLog(p.stderr, settings.LogLevel),
	})
	if err != nil {
		return p.fail(err)
	}
	answer, problem := service.Assess(httpapi.WithRequestID(ctx, "command"), body)
	out, code := p.stdout, exitDone
	if problem != nil {
		out, code = p.stderr, exitRefused
		if answer, err = httpapi.Encode(problem); err != nil {
			return p.fail(err)
		}
		if problem.Status >= http.StatusInternalServerError {
			code = exitFailed
		}
	}
	if _, err := out.Write(answer); err != nil {
		return p.fail(err)
	}
	return code
}

// input reads the body from a file, or from standard input; one byte beyond the limit is enough to refuse it.
func (p program) input(args []string, limit int64) ([]byte, error) {
	if len(args) > 1 {
		return nil, errors.New("assess takes one file")
	}
	in := p.stdin
	if len(args) == 1 && args[0] != "-" {
		file, err := os.Open(args[0])
		if err != nil {
			return nil, err
		}
		defer file.Close()
		in = file
	}
	return io.ReadAll(io.LimitReader(in, limit+1))
}
