package config

import (
	"errors"
	"log/slog"
	"net"
	"strconv"
	"time"
)

// The forms that a setting may take. What is wrong is told without repeating it:
// whoever mixes up variables may have put a secret there.

func address(field func(*Config) *string) func(*Config, string) error {
	return func(c *Config, text string) error {
		_, port, err := net.SplitHostPort(text)
		if err != nil {
			return errors.New("is not a host and a port")
		}
		if !validPort(port) {
			return errors.New("has no port from 0 to 65535")
		}
		*field(c) = text
		return nil
	}
}

func bytes(field func(*Config) *int64) func(*Config, string) error {
	return func(c *Config, text string) error {
		n, err := strconv.ParseInt(text, 10, 64)
		switch {
		case err != nil:
			return errors.New("is not a whole number")
		case n < 1024:
			return errors.New("is too small")
		case n > maxBodyBytes:
			return errors.New("is too large")
		}
		*field(c) = n
		return nil
	}
}

func duration(field func(*Config) *time.Duration) func(*Config, string) error {
	return func(c *Config, text string) error {
		d, err := time.ParseDuration(text)
		switch {
		case err != nil:
			return errors.New("is not a time with its unit")
		case d <= 0:
			return errors.New("must be more than nothing")
		case d > time.Hour:
			return errors.New("is longer than an hour")
		}
		*field(c) = d
		return nil
	}
}

var levels = map[string]slog.Level{
	"debug": slog.LevelDebug, "info": slog.LevelInfo, "warn": slog.LevelWarn, "error": slog.LevelError,
}

func level(c *Config, text string) error {
	l, known := levels[text]
	if !known {
		return errors.New("is not one of these words")
	}
	c.LogLevel = l
	return nil
}
