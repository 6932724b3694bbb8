package main

import (
	"context"
	"fmt"
	"runtime"
	"runtime/debug"
	"text/tabwriter"

	"railhead/internal/assess"
	"railhead/internal/config"
)

// version may be set when the program is linked: -ldflags "-X main.version=1.2.3".
var version = ""

func programVersion() string {
	if version != "" {
		return version
	}
	if info, ok := debug.ReadBuildInfo(); ok && info.Main.Version != "" {
		return info.Main.Version
	}
	return "unknown"
}

func (p program) version(context.Context, []string) int {
	fmt.Fprintf(p.stdout, "railhead %s, edition %s, %s %s/%s\n", programVersion(), assess.Edition, runtime.Version(), runtime.GOOS, runtime.GOARCH)
	return exitDone
}

func (p program) help(context.Context, []string) int {
	w := tabwriter.NewWriter(p.stdout, 0, 0, 2, ' ', 0)
	fmt.Fprintln(w, "Usage: railhead COMMAND")
	fmt.Fprintln(w, "\nCommands:")
	for _, c := range commands() {
		fmt.Fprintf(w, "  %s %s\t%s\n", c.name, c.args, c.says)
	}
	fmt.Fprintln(w, "\nSettings, by environment variables:")
	for _, s := range config.Settings() {
		fmt.Fprintf(w, "  %s\t%s\t%s\t%s\n", s.Name, s.Default, s.Form, s.Says)
	}
	fmt.Fprintln(w, "\nTraces are sent where the standard OTEL_ variables ask for it.")
	if err := w.Flush(); err != nil {
		return p.fail(err)
	}
	return exitDone
}
