package main

import (
	"context"
	"errors"
	"net"
	"net/http"
	"time"

	"railhead/internal/config"
)

// healthcheck asks the service that runs by the same settings whether it is ready.
func (p program) healthcheck(ctx context.Context, _ []string) int {
	settings, err := config.Read(p.getenv)
	if err != nil {
		return p.fail(err)
	}
	ctx, cancel := context.WithTimeout(ctx, 2*time.Second)
	defer cancel()
	request, err := http.NewRequestWithContext(ctx, http.MethodGet, "http://"+reachable(settings.AdminAddr)+"/readyz", nil)
	if err != nil {
		return p.fail(err)
	}
	response, err := http.DefaultClient.Do(request)
	if err != nil {
		return p.fail(err)
	}
	defer response.Body.Close()
	if response.StatusCode != http.StatusOK {
		return p.fail(errors.New("not ready"))
	}
	return exitDone
}

// reachable is where a listener is found from its own machine.
func reachable(addr string) string {
	host, port, err := net.SplitHostPort(addr)
	if err != nil {
		return addr
	}
	switch ip := net.ParseIP(host); {
	case host == "" || ip != nil && ip.IsUnspecified() && ip.To4() != nil:
		host = "127.0.0.1"
	case ip != nil && ip.IsUnspecified():
		host = "::1"
	}
	return net.JoinHostPort(host, port)
}
