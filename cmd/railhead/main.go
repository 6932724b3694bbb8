// Railhead checks modular kitchen cabinets against a surveyed room, as a
// service and as a command.
package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"net"
	"os"
	"slices"

	"railhead/internal/assess"
	"railhead/internal/httpapi"
)

func main() {
	p := program{stdin: os.Stdin, stdout: os.Stdout, stderr: os.Stderr, getenv: os.Getenv, core: core()}
	os.Exit(p.run(context.Background(), os.Args[1:]))
}

// program is what a command works with.
type program struct {
	stdin          io.Reader
	stdout, stderr io.Writer
	getenv         func(string) string
	core           httpapi.Core
	listening      func(public, admin net.Addr) // told once both sides listen; may be nil
}

// Exit codes.
const (
	exitDone    = 0
	exitFailed  = 1
	exitRefused = 2 // by assess, of a body that cannot be used
)

// core is the trade core as the HTTP layer asks for it.
func core() httpapi.Core {
	return httpapi.Core{Assess: assess.Assess, Check: assess.Check, Layouts: assess.Layouts, CheckLayouts: assess.CheckLayouts, Systems: assess.Systems, System: assess.System}
}

func (p program) run(ctx context.Context, args []string) int {
	name := "help"
	if len(args) > 0 && !isHelp(args[0]) {
		name, args = args[0], args[1:]
	}
	for _, c := range commands() {
		if c.name != name {
			continue
		}
		if slices.ContainsFunc(args, isHelp) {
			return p.help(ctx, nil)
		}
		if c.args == "" && len(args) > 0 {
			return p.fail(fmt.Errorf("%s takes nothing more; railhead help says what each command takes", name))
		}
		return c.run(p, ctx, args)
	}
	return p.fail(errors.New("there is no such command; railhead help lists them"))
}

// isHelp reports whether somebody asks what a command takes.
func isHelp(arg string) bool { return arg == "-h" || arg == "--help" }

// fail tells what went wrong.
func (p program) fail(err error) int {
	fmt.Fprintln(p.stderr, "railhead:", err)
	return exitFailed
}

// command is one thing that the program does.
type command struct {
	name, args, says string
	run              func(p program, ctx context.Context, args []string) int
}

func commands() []command {
	return []command{
		{"serve", "", "run the service until it is told to end", program.serve},
		{"assess", "[FILE|-]", "print what POST /v1/assessments would answer; exit 2 where it refuses", program.assess},
		{"openapi", "[--3.0] [--yaml]", "print the contract", program.openapi},
		{"healthcheck", "", "ask the running service whether it is ready", program.healthcheck},
		{"version", "", "print the version", program.version},
		{"help", "", "print this", program.help},
	}
}
