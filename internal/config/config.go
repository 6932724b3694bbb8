// Package config reads the service's settings from the environment. Every bad
// one is told at once, by its name, its form and what is wrong with it.
package config

import (
	"log/slog"
	"net"
	"strconv"
	"time"
)

// Config is how the service runs.
type Config struct {
	Addr      string // public listener
	AdminAddr string // operators' listener

	MaxBody        int64         // largest body, in bytes
	RequestTimeout time.Duration // how long an answer may take
	HeaderTimeout  time.Duration // how long a request's header may take to arrive
	ReadTimeout    time.Duration // how long a whole request may take to arrive
	WriteTimeout   time.Duration // from a request's header until its answer is sent
	IdleTimeout    time.Duration // how long a connection is kept between requests
	Drain          time.Duration // how long requests under way may take at the end

	LogLevel slog.Level
}

// Setting is one setting, for whoever lists them.
type Setting struct {
	Name, Form, Default, Says string

	set func(c *Config, text string) error
}

// Settings are all settings, in the order in which they are told.
func Settings() []Setting {
	return []Setting{
		{"RAILHEAD_ADDR", addressForm, "127.0.0.1:8080", "where the public side listens", address(func(c *Config) *string { return &c.Addr })},
		{"RAILHEAD_ADMIN_ADDR", addressForm, "127.0.0.1:8081", "where the operators' side listens", address(func(c *Config) *string { return &c.AdminAddr })},
		{"RAILHEAD_MAX_BODY", bytesForm, "1048576", "largest body that is read, in bytes", bytes(func(c *Config) *int64 { return &c.MaxBody })},
		{"RAILHEAD_REQUEST_TIMEOUT", timeForm, "10s", "how long an answer may take", duration(func(c *Config) *time.Duration { return &c.RequestTimeout })},
		{"RAILHEAD_HEADER_TIMEOUT", timeForm, "5s", "how long a request's header may take to arrive", duration(func(c *Config) *time.Duration { return &c.HeaderTimeout })},
		{"RAILHEAD_READ_TIMEOUT", timeForm, "15s", "how long a whole request may take to arrive", duration(func(c *Config) *time.Duration { return &c.ReadTimeout })},
		{"RAILHEAD_WRITE_TIMEOUT", timeForm, "30s", "how long it may take from a request's header until its answer is sent", duration(func(c *Config) *time.Duration { return &c.WriteTimeout })},
		{"RAILHEAD_IDLE_TIMEOUT", timeForm, "60s", "how long a connection is kept between requests", duration(func(c *Config) *time.Duration { return &c.IdleTimeout })},
		{"RAILHEAD_DRAIN", timeForm, "20s", "how long requests under way may take once the service is told to end", duration(func(c *Config) *time.Duration { return &c.Drain })},
		{"RAILHEAD_LOG_LEVEL", levelForm, "info", "what is logged", level},
	}
}

// Read reads the settings. An error is of type *Error.
func Read(getenv func(string) string) (Config, error) {
	var c Config
	var bad []Bad
	for _, s := range Settings() {
		text := getenv(s.Name)
		if text == "" {
			text = s.Default
		}
		if err := s.set(&c, text); err != nil {
			bad = append(bad, Bad{s.Name, s.Form, err.Error()})
		}
	}
	bad = append(bad, c.relations(bad)...)
	if len(bad) > 0 {
		return Config{}, &Error{bad}
	}
	return c, nil
}

// relations are what one setting asks of another; they are looked at once each is good by itself.
func (c Config) relations(bad []Bad) []Bad {
	_, port, _ := net.SplitHostPort(c.Addr)
	switch {
	case len(bad) > 0:
		return nil
	case c.Addr == c.AdminAddr && port != "0":
		return []Bad{{"RAILHEAD_ADMIN_ADDR", addressForm, "is the same as RAILHEAD_ADDR"}}
	case c.WriteTimeout <= c.RequestTimeout:
		return []Bad{{"RAILHEAD_WRITE_TIMEOUT", timeForm, "must be longer than RAILHEAD_REQUEST_TIMEOUT, or no late answer could be sent"}}
	}
	return nil
}

const maxBodyBytes = 1 << 30

const (
	addressForm = "HOST:PORT"
	bytesForm   = "a whole number from 1024 to 1073741824"
	timeForm    = "a time such as 500ms, 10s or 2m, up to 1h"
	levelForm   = "debug, info, warn or error"
)

func validPort(port string) bool {
	n, err := strconv.Atoi(port)
	return err == nil && n >= 0 && n <= 65535
}
