package main

import (
	"context"
	"errors"
	"flag"

	"railhead/openapi"
)

// openapi prints the contract as it is served.
func (p program) openapi(_ context.Context, args []string) int {
	flags := flag.NewFlagSet("openapi", flag.ContinueOnError)
	flags.SetOutput(p.stderr)
	old := flags.Bool("3.0", false, "in OpenAPI 3.0")
	yaml := flags.Bool("yaml", false, "as YAML")
	if err := flags.Parse(args); err != nil {
		return exitFailed
	}
	document := openapi.JSON
	switch {
	case flags.NArg() > 0:
		return p.fail(errors.New("openapi takes no arguments"))
	case *old && *yaml:
		return p.fail(errors.New("the contract in OpenAPI 3.0 is JSON only"))
	case *old:
		document = openapi.JSON30
	case *yaml:
		document = openapi.YAML
	}
	if _, err := p.stdout.Write(document); err != nil {
		return p.fail(err)
	}
	return exitDone
}
