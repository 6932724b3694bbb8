package config

import (
	"errors"
	"log/slog"
	"slices"
	"strings"
	"testing"
	"time"
)

func env(values map[string]string) func(string) string {
	return func(name string) string { return values[name] }
}

func TestDefaultsListenOnThisMachineOnly(t *testing.T) {
	c, err := Read(env(nil))
	if err != nil {
		t.Fatal(err)
	}
	if c.Addr != "127.0.0.1:8080" || c.AdminAddr != "127.0.0.1:8081" || c.MaxBody != 1<<20 || c.Drain != 20*time.Second || c.LogLevel != slog.LevelInfo {
		t.Errorf("%+v", c)
	}
}

func TestSettingsAreRead(t *testing.T) {
	c, err := Read(env(map[string]string{
		"RAILHEAD_ADDR": "0.0.0.0:80", "RAILHEAD_ADMIN_ADDR": "[::1]:0", "RAILHEAD_MAX_BODY": "2048", "RAILHEAD_DRAIN": "1m", "RAILHEAD_LOG_LEVEL": "debug",
	}))
	if err != nil || c.Addr != "0.0.0.0:80" || c.AdminAddr != "[::1]:0" || c.MaxBody != 2048 || c.Drain != time.Minute || c.LogLevel != slog.LevelDebug {
		t.Errorf("%+v, %v", c, err)
	}
}

func TestEveryBadSettingIsToldAtOnce(t *testing.T) {
	bad := map[string]string{
		"RAILHEAD_ADDR": "8080", "RAILHEAD_ADMIN_ADDR": "localhost:http", "RAILHEAD_MAX_BODY": "1MB", "RAILHEAD_REQUEST_TIMEOUT": "10",
		"RAILHEAD_HEADER_TIMEOUT": "0s", "RAILHEAD_READ_TIMEOUT": "-1s", "RAILHEAD_WRITE_TIMEOUT": "2h", "RAILHEAD_IDLE_TIMEOUT": "soon", "RAILHEAD_DRAIN": "1", "RAILHEAD_LOG_LEVEL": "INFO",
	}
	_, err := Read(env(bad))
	var all *Error
	if !errors.As(err, &all) {
		t.Fatal(err)
	}
	var told []string
	for _, b := range all.Bad {
		told = append(told, b.Name)
		if b.Form == "" || b.Problem == "" || !strings.Contains(err.Error(), b.Name+" "+b.Problem+"; it should be "+b.Form) {
			t.Errorf("%+v is not told in full: %v", b, err)
		}
		if strings.Contains(b.Problem, bad[b.Name]) && len(bad[b.Name]) > 3 {
			t.Errorf("%s: the value is repeated", b.Name)
		}
	}
	var want []string
	for _, s := range Settings() {
		want = append(want, s.Name)
	}
	if !slices.Equal(told, want) {
		t.Errorf("told %v, want %v", told, want)
	}
}

func TestSettingsMustGoTogether(t *testing.T) {
	for name, c := range map[string]struct {
		values map[string]string
		bad    string
	}{
		"both sides at one place":           {map[string]string{"RAILHEAD_ADMIN_ADDR": "127.0.0.1:8080"}, "RAILHEAD_ADMIN_ADDR"},
		"both sides anywhere":               {map[string]string{"RAILHEAD_ADDR": "127.0.0.1:0", "RAILHEAD_ADMIN_ADDR": "127.0.0.1:0"}, ""},
		"answers later than they are taken": {map[string]string{"RAILHEAD_WRITE_TIMEOUT": "5s"}, "RAILHEAD_WRITE_TIMEOUT"},
		"a size below any room":             {map[string]string{"RAILHEAD_MAX_BODY": "10"}, "RAILHEAD_MAX_BODY"},
		"a size beyond any memory":          {map[string]string{"RAILHEAD_MAX_BODY": "9999999999"}, "RAILHEAD_MAX_BODY"},
		"a port beyond the last":            {map[string]string{"RAILHEAD_ADDR": ":65536"}, "RAILHEAD_ADDR"},
	} {
		_, err := Read(env(c.values))
		if c.bad == "" && err != nil || c.bad != "" && (err == nil || !strings.Contains(err.Error(), c.bad)) {
			t.Errorf("%s: %v", name, err)
		}
	}
}
